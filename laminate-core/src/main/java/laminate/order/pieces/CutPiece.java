package laminate.order.pieces;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.order.cut.Piece;
import laminate.order.cut.Turn;

/**
 * A piece to cut, as often as it is wanted for all mouldings.
 *
 * @param number its number as laid, from 1; of several parts with the part's number in front, as 2.13
 * @param part the part
 * @param zone the zone
 * @param layer the layer's place in the zone, from 1 at the mould face
 * @param material the id
 * @param thickness thickness of a sheet of core (m), empty for anything else
 * @param angle how the warp lies on the part, from x towards y (degrees)
 * @param width size across the roll, laps included (m)
 * @param length size along the warp, laps included (m)
 * @param turn how it may be turned on the roll
 * @param count how many are cut
 */
public record CutPiece(
        String number,
        String part,
        String zone,
        int layer,
        String material,
        OptionalDouble thickness,
        double angle,
        double width,
        double length,
        Turn turn,
        int count) {
    /**
     * Checks the piece.
     *
     * @throws IllegalArgumentException if a size is not above zero and finite, or the count below 1
     */
    public CutPiece {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(material, "material");
        if (count < 1) {
            throw new IllegalArgumentException("piece " + number + " is cut once or more, not " + count + " times");
        }
        new Piece(number, width, length, turn);
    }

    /**
     * One of them, to lay on a roll.
     *
     * @return the piece
     */
    public Piece one() {
        return new Piece(number, width, length, turn);
    }

    /**
     * Area of all of them.
     *
     * @return width times length times count (m²)
     */
    public double area() {
        return width * length * count;
    }
}
