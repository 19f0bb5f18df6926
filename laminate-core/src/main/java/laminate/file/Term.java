package laminate.file;

import java.util.Optional;

/**
 * What a file states of something that is wanted before the whole is made, as a zone's resin is by its layers.
 *
 * @param stated the value, empty if it does not stand or could not be read
 * @param flawed whether it stands and has been complained of: who needs it then fails in silence
 */
record Term<T>(Optional<Located<T>> stated, boolean flawed) {

    static <T> Term<T> nothing() {
        return new Term<>(Optional.empty(), false);
    }

    static <T> Term<T> of(T value, Node where) {
        return new Term<>(Optional.of(new Located<>(value, where)), false);
    }

    static <T> Term<T> flaw() {
        return new Term<>(Optional.empty(), true);
    }

    /** What was read of a node: a value, or nothing after a complaint. */
    static <T> Term<T> read(Node node, Reading<T> reading, Complaints complaints) {
        Optional<Located<T>> value = Located.of(reading).read(node, complaints);
        return new Term<>(value, value.isEmpty());
    }

    boolean stands() {
        return flawed || stated.isPresent();
    }

    Term<T> or(Term<T> otherwise) {
        return stands() ? this : otherwise;
    }

    Optional<T> value() {
        return stated.isPresent() ? Optional.of(stated.get().value()) : Optional.empty();
    }
}
