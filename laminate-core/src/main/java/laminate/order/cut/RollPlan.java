package laminate.order.cut;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import laminate.theory.Require;

/**
 * How pieces are cut from a roll. Places and lengths are exact to some thousand-millionths of the roll's width.
 *
 * @param width width of the roll (m)
 * @param rollLength length of a roll (m), which no pull exceeds; empty for a roll longer than any plan
 * @param length length that is used (m), of all rolls together
 * @param lowerBound a length below which nobody can come (m): areas over the width, the longest piece, or pieces that do
 *     not fit side by side
 * @param pulls what is pulled and cut straight across, end to end; together the length that is used. Where
 *     rolls are shorter, {@link Lengths} lays them on rolls
 * @param offcuts free rectangles that can serve for something else, each within one pull, none over another, largest
 *     first
 */
public record RollPlan(
        double width,
        OptionalDouble rollLength,
        double length,
        double lowerBound,
        List<Pull> pulls,
        List<Offcut> offcuts) {
    /**
     * Checks the sizes.
     *
     * @param width width of the roll (m)
     * @param rollLength length of a roll (m)
     * @param length length that is used (m)
     * @param lowerBound a length below which nobody can come (m)
     * @param pulls what is pulled and cut straight across
     * @param offcuts free rectangles
     * @throws IllegalArgumentException if a size is not positive and finite, or the length is below its bound
     */
    public RollPlan {
        Require.positive("width of the roll", width);
        Objects.requireNonNull(rollLength, "rollLength");
        Require.positive("length used of the roll", length);
        Require.positive("lower bound of the length", lowerBound);
        if (length < lowerBound) {
            throw new IllegalArgumentException("a roll plan of " + length + " m is below its bound " + lowerBound);
        }
        pulls = List.copyOf(pulls);
        offcuts = List.copyOf(offcuts);
    }

    /**
     * Where each piece lies.
     *
     * @return all pieces, pull by pull
     */
    public List<Placement> placements() {
        return pulls.stream().flatMap(pull -> pull.placements().stream()).toList();
    }

    /**
     * The share of the pulled fabric that goes into pieces.
     *
     * @return area of the pieces over width times length, up to 1
     */
    public double yieldFraction() {
        double pieces = placements().stream().mapToDouble(p -> p.piece().area()).sum();
        return Math.min(1, pieces / (width * length));
    }

    /**
     * How far the plan may at most be from the best there is.
     *
     * @return length over lower bound, less 1; 0, or some thousand-millionths, if the plan is proved to be the best
     */
    public double gap() {
        return length / lowerBound - 1;
    }
}
