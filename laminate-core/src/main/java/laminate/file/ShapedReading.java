package laminate.file;

import java.util.Optional;

/**
 * Reads nodes of one shape, complains of others, and passes over what has been complained of already.
 *
 * @param <N> the shape
 * @param <T> the type of the value
 */
abstract class ShapedReading<N extends Node, T> implements Reading<T> {

    private final Class<N> shape;

    ShapedReading(Class<N> shape) {
        this.shape = shape;
    }

    @Override
    public final Optional<T> read(Node node, Complaints complaints) {
        if (shape.isInstance(node)) {
            return readShaped(shape.cast(node), complaints);
        }
        if (!(node instanceof Node.Flawed)) {
            complaints.at(node, found(node) + " stands here; " + wanted());
        }
        return Optional.empty();
    }

    /** The value of a node that is known to be of the shape. */
    abstract Optional<T> readShaped(N node, Complaints complaints);

    /** What is wanted where another shape stands. */
    abstract String wanted();

    private static String found(Node node) {
        if (node instanceof Node.Scalar scalar) {
            return "a single value " + Complaints.shown(scalar.text());
        }
        return node instanceof Node.Sequence ? "a list" : "a group of keys";
    }
}
