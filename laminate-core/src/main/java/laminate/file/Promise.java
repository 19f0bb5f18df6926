package laminate.file;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * The answer to a field that was asked for, to be redeemed once all are known to be sound.
 *
 * @param value the value, empty if it has been complained of
 */
record Promise<T>(Optional<T> value) implements Supplier<T> {

    static <T> Promise<T> of(T value) {
        return new Promise<>(Optional.of(value));
    }

    static <T> Promise<T> broken() {
        return new Promise<>(Optional.empty());
    }

    /**
     * The value.
     *
     * @throws IllegalStateException if there is none, as the fields were not required to be sound
     */
    @Override
    public T get() {
        if (value.isEmpty()) {
            throw new IllegalStateException("asked for a value that could not be read");
        }
        return value.get();
    }
}
