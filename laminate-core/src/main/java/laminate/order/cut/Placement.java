package laminate.order.cut;

import java.util.Objects;
import laminate.theory.Require;

/**
 * A piece in its place on the roll or sheet. The origin is the left corner at the start of the roll; x runs across
 * it, y along it.
 *
 * @param piece the piece
 * @param x distance of its near edge from the left edge (m)
 * @param y distance of its near end from the start (m)
 * @param turned whether it is turned by a quarter
 */
public record Placement(Piece piece, double x, double y, boolean turned) {
    /**
     * Checks the place.
     *
     * @param piece the piece
     * @param x distance from the left edge (m)
     * @param y distance from the start (m)
     * @param turned whether it is turned by a quarter
     * @throws IllegalArgumentException if a distance is negative or not finite, or the piece may not be turned
     */
    public Placement {
        Objects.requireNonNull(piece, "piece");
        Require.notNegative("x of piece " + piece.name(), x);
        Require.notNegative("y of piece " + piece.name(), y);
        if (turned && piece.turn() == Turn.NONE) {
            throw new IllegalArgumentException("piece " + piece.name() + " may not be turned by a quarter");
        }
    }

    /**
     * Its size across the roll as it lies.
     *
     * @return the size (m)
     */
    public double across() {
        return turned ? piece.length() : piece.width();
    }

    /**
     * Its size along the roll as it lies.
     *
     * @return the size (m)
     */
    public double along() {
        return turned ? piece.width() : piece.length();
    }
}
