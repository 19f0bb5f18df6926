package laminate.file;

import java.util.Optional;

/** Reads a single value, which must not be empty. Quoted and plain text are the same here. */
abstract class ScalarReading<T> extends ShapedReading<Node.Scalar, T> {

    ScalarReading() {
        super(Node.Scalar.class);
    }

    /**
     * The value of a text, which is not stripped, so that an offset in it is a place in the file.
     *
     * @throws IllegalArgumentException if there is none
     */
    abstract T of(String text);

    @Override
    final Optional<T> readShaped(Node.Scalar scalar, Complaints complaints) {
        if (scalar.text().isBlank()) {
            complaints.at(scalar, "the text is empty; at least one letter is wanted");
            return Optional.empty();
        }
        try {
            return Optional.of(of(scalar.text()));
        } catch (IllegalArgumentException e) {
            complaints.at(scalar, e);
            return Optional.empty();
        }
    }

    @Override
    final String wanted() {
        return "a single value is wanted";
    }
}
