package laminate.order.pieces;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.order.cut.Pull;
import laminate.order.cut.RollPlan;
import laminate.order.cut.SheetPlan;

/**
 * How all pieces of a material are cut: off one roll, or from sheets or rolls of a given length.
 *
 * @param material the id
 * @param thickness thickness of a sheet of core (m), empty for anything else
 * @param covered area of the layers that the pieces are for, with laps and margin as the estimate has them (m²)
 * @param roll the plan off one roll; exactly one of the plans is there
 * @param sheets the plan from sheets, or from several rolls
 */
public record MaterialCut(
        String material,
        OptionalDouble thickness,
        double covered,
        Optional<RollPlan> roll,
        Optional<SheetPlan> sheets) {
    private static final double ROUNDING = 1e-9;

    /**
     * Checks that there is one plan.
     *
     * @throws IllegalArgumentException if there is none, or both
     */
    public MaterialCut {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(thickness, "thickness");
        if (roll.isPresent() == sheets.isPresent()) {
            throw new IllegalArgumentException(material + " is cut off a roll or from sheets, by one plan");
        }
    }

    /**
     * What is pulled off the roll, or the sheets taken.
     *
     * @return the area (m²)
     */
    public double area() {
        return roll.map(plan -> plan.width() * plan.length())
                .orElseGet(() -> sheets.map(plan ->
                                plan.width() * plan.length() * plan.sheets().size())
                        .orElseThrow());
    }

    /**
     * The share of that area that goes into pieces.
     *
     * @return the share, up to 1
     */
    public double yieldFraction() {
        return roll.map(RollPlan::yieldFraction)
                .orElseGet(() -> sheets.orElseThrow().yieldFraction());
    }

    /**
     * Whether the pieces of the plan can be cut from another roll or sheet.
     *
     * @param width its width (m)
     * @param length its length (m), empty if it is not known
     * @return true if it is no narrower than the planned one, and no shorter than the planned sheet or the longest pull
     */
    public boolean canBeCutFrom(double width, OptionalDouble length) {
        double planned =
                roll.map(RollPlan::width).orElseGet(() -> sheets.orElseThrow().width());
        double longest = roll.map(MaterialCut::longestPull)
                .orElseGet(() -> sheets.orElseThrow().length());
        return width >= planned * (1 - ROUNDING) && length.orElse(longest) >= longest * (1 - ROUNDING);
    }

    private static double longestPull(RollPlan plan) {
        return plan.pulls().stream().mapToDouble(Pull::length).max().orElse(0);
    }
}
