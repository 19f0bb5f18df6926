package laminate.order.cut;

import java.util.Objects;
import laminate.theory.Require;

/**
 * A rectangular piece to be cut, laps included.
 *
 * @param name what it is called on the cutting list; several pieces may share a name
 * @param width its size across the roll (m)
 * @param length its size along the roll, in the direction of the warp (m)
 * @param turn how it may be turned
 */
public record Piece(String name, double width, double length, Turn turn) {
    /**
     * Checks the sizes.
     *
     * @param name what it is called on the cutting list
     * @param width its size across the roll (m)
     * @param length its size along the roll (m)
     * @param turn how it may be turned
     * @throws IllegalArgumentException if a size is not positive and finite
     */
    public Piece {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(turn, "turn");
        Require.positive("width of piece " + name, width);
        Require.positive("length of piece " + name, length);
    }

    /**
     * Its area.
     *
     * @return width times length (m²)
     */
    public double area() {
        return width * length;
    }
}
