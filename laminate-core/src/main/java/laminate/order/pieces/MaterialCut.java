package laminate.order.pieces;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.order.cut.Placement;
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
     * What is pulled off the roll or rolls, or the sheets taken.
     *
     * @return the area (m²)
     */
    public double area() {
        return roll.map(plan -> plan.width() * plan.length()).orElseGet(() -> area(sheets.orElseThrow()));
    }

    /** Of the last of several rolls the rest is left on it; of a sheet it is not. */
    private double area(SheetPlan plan) {
        int whole = plan.sheets().size() - (isOfRolls() ? 1 : 0);
        double used = isOfRolls()
                ? plan.sheets().get(whole).placements().stream()
                        .mapToDouble(placed -> placed.y() + placed.along())
                        .max()
                        .orElse(0)
                : 0;
        return plan.width() * (whole * plan.length() + used);
    }

    /**
     * Whether it is cut off rolls, one or several.
     *
     * @return false for sheets of core
     */
    public boolean isOfRolls() {
        return thickness.isEmpty();
    }

    /**
     * The share of that area that goes into pieces.
     *
     * @return the share, up to 1
     */
    public double yieldFraction() {
        double pieces = placements().stream()
                .mapToDouble(placed -> placed.piece().area())
                .sum();
        return Math.min(1, pieces / area());
    }

    /**
     * Where each piece lies, on its roll or sheet.
     *
     * @return all pieces, sheet by sheet
     */
    public List<Placement> placements() {
        return roll.map(RollPlan::placements)
                .orElseGet(() -> sheets.orElseThrow().sheets().stream()
                        .flatMap(sheet -> sheet.placements().stream())
                        .toList());
    }

    /**
     * Whether the pieces of the plan can be cut from another roll or sheet.
     *
     * @param width its width (m)
     * @param length its length (m), empty if it is not known
     * @return true if it is no narrower than the planned one, and no shorter than the planned sheet, or off rolls than the
     *     longest pull or piece
     */
    public boolean canBeCutFrom(double width, OptionalDouble length) {
        double planned =
                roll.map(RollPlan::width).orElseGet(() -> sheets.orElseThrow().width());
        double longest = longest();
        return width >= planned * (1 - ROUNDING) && length.orElse(longest) >= longest * (1 - ROUNDING);
    }

    private double longest() {
        if (roll.isPresent()) {
            return roll.get().pulls().stream().mapToDouble(Pull::length).max().orElse(0);
        }
        return isOfRolls()
                ? placements().stream().mapToDouble(Placement::along).max().orElse(0)
                : sheets.orElseThrow().length();
    }
}
