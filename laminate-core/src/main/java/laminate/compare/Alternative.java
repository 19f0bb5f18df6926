package laminate.compare;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.check.BeamCheck;
import laminate.check.PanelCheck;
import laminate.check.PartCheck;
import laminate.estimate.PartEstimate;
import laminate.theory.Require;

/**
 * One way to make a part, reckoned.
 *
 * @param name what tells it from the others
 * @param estimate the part as it is made in this way, whole layers laid
 * @param check its load cases, panels, beams and limits; empty where it has none
 * @param adjustments how its zones were changed to reach the basis; none for the first, nor for a zone without what is
 *     changed, which stays as it is
 * @param styrene styrene given off by laminating resins and coatings, for all mouldings (kg)
 * @param curve cost against number of parts; empty without prices, or where one is missing
 * @param missing what has no price and so leaves out the curve
 */
public record Alternative(
        String name,
        PartEstimate estimate,
        Optional<PartCheck> check,
        List<Adjustment> adjustments,
        double styrene,
        Optional<CostCurve> curve,
        List<String> missing) {
    /**
     * Keeps copies.
     *
     * @param name what tells it from the others
     * @param estimate the part as it is made in this way
     * @param check its checks
     * @param adjustments how its zones were changed
     * @param styrene styrene given off, for all mouldings (kg)
     * @param curve cost against number of parts
     * @param missing what has no price
     * @throws IllegalArgumentException if styrene is below zero or not finite
     */
    public Alternative {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(curve, "curve");
        Require.notNegative("styrene", styrene);
        adjustments = List.copyOf(adjustments);
        missing = List.copyOf(missing);
    }

    /**
     * One of its panels.
     *
     * @param panel the name
     * @return the panel as checked, empty where it has none of that name
     */
    public Optional<PanelCheck> panel(String panel) {
        return check.stream()
                .flatMap(all -> all.panels().stream())
                .filter(one -> one.plan().name().equals(panel))
                .findFirst();
    }

    /**
     * One of its beams.
     *
     * @param beam the name
     * @return the beam as checked, empty where it has none of that name
     */
    public Optional<BeamCheck> beam(String beam) {
        return check.stream()
                .flatMap(all -> all.beams().stream())
                .filter(one -> one.plan().name().equals(beam))
                .findFirst();
    }
}
