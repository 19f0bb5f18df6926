package laminate.file;

import java.util.Optional;

/**
 * A value with the place where it stands, for complaints that come only when it meets another value.
 *
 * @param value the value
 * @param node where it stands
 */
record Located<T>(T value, Node node) {

    /** The reading that remembers the place. */
    static <T> Reading<Located<T>> of(Reading<T> reading) {
        return new Locating<>(reading);
    }

    private record Locating<T>(Reading<T> reading) implements Reading<Located<T>> {

        @Override
        public Optional<Located<T>> read(Node node, Complaints complaints) {
            Optional<T> value = reading.read(node, complaints);
            return value.isEmpty() ? Optional.empty() : Optional.of(new Located<>(value.get(), node));
        }
    }
}
