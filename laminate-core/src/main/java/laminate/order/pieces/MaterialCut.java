package laminate.order.pieces;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.order.cut.Placement;
import laminate.order.cut.Pull;
import laminate.order.cut.RollPlan;
import laminate.order.cut.SheetPlan;

/**
 * How all pieces of a material are cut: off rolls, or from sheets.
 *
 * @param material the id
 * @param thickness thickness of a sheet of core (m), empty for anything else
 * @param covered area of the layers that the pieces are for, with laps and margin as the estimate has them (m²)
 * @param roll the plan off a roll, or several; exactly one of the plans is there
 * @param sheets the plan from sheets
 */
public record MaterialCut(
        String material,
        OptionalDouble thickness,
        double covered,
        Optional<RollPlan> roll,
        Optional<SheetPlan> sheets) {
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
     * What is pulled off the roll or rolls, without ends of rolls that are left, or the sheets taken.
     *
     * @return the area (m²)
     */
    public double area() {
        return width() * lengths().stream().mapToDouble(length -> length).sum();
    }

    /**
     * The width that it is planned for.
     *
     * @return width of the roll or sheet (m)
     */
    public double width() {
        return roll.map(RollPlan::width).orElseGet(() -> sheets.orElseThrow().width());
    }

    /**
     * The length that it is planned for.
     *
     * @return length of the roll or sheet (m), empty for a roll whose length is not known
     */
    public OptionalDouble stockLength() {
        return roll.isPresent()
                ? roll.get().rollLength()
                : OptionalDouble.of(sheets.orElseThrow().length());
    }

    /**
     * The lengths that are taken, none of which may reach over the end of a roll: pulls, or whole sheets.
     *
     * @return a length (m) for each pull or sheet, in their order
     */
    public List<Double> lengths() {
        return roll.map(plan -> plan.pulls().stream().map(Pull::length).toList())
                .orElseGet(() -> Collections.nCopies(
                        sheets.orElseThrow().sheets().size(),
                        sheets.orElseThrow().length()));
    }

    /**
     * Whether it is cut off rolls, one or several.
     *
     * @return false for sheets of core
     */
    public boolean isOfRolls() {
        return roll.isPresent();
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
}
