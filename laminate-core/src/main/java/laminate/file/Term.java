package laminate.file;

import java.util.Optional;
import java.util.function.Supplier;

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

    /** What was read of a node: a value, or nothing after a complaint. */
    static <T> Term<T> read(Node node, Reading<T> reading, Complaints complaints) {
        Optional<Located<T>> value = Located.of(reading).read(node, complaints);
        return new Term<>(value, value.isEmpty());
    }

    boolean stands() {
        return flawed || stated.isPresent();
    }

    Term<T> or(Supplier<Term<T>> otherwise) {
        return stands() ? this : otherwise.get();
    }

    Optional<T> value() {
        return stated.map(Located::value);
    }
}
