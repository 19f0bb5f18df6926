package laminate.order.cut;

import java.util.List;
import laminate.theory.Require;

/**
 * A length pulled off the roll and cut straight across: no piece reaches over its ends.
 *
 * @param from where it begins, from the start of the roll (m)
 * @param length how long it is (m)
 * @param placements the pieces cut out of it, along the roll and then across; their places count from the start of
 *     the roll
 */
public record Pull(double from, double length, List<Placement> placements) {
    /**
     * Checks the sizes.
     *
     * @param from where it begins (m)
     * @param length how long it is (m)
     * @param placements the pieces cut out of it
     * @throws IllegalArgumentException if the length is not positive, the start negative, or no piece is cut out of it
     */
    public Pull {
        Require.notNegative("start of a pull", from);
        Require.positive("length of a pull", length);
        placements = List.copyOf(placements);
        if (placements.isEmpty()) {
            throw new IllegalArgumentException("a pull of " + length + " m has no piece on it");
        }
    }
}
