package laminate.print.check;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.check.ZoneComparison;
import laminate.estimate.Estimator;

/**
 * A zone compared with one that it may replace.
 *
 * @param comparison stiffness, strength, thickness and mass
 * @param cost materials by area as a multiple of those of the other; empty where a price is not known
 */
public record ComparedZone(ZoneComparison comparison, OptionalDouble cost) {
    /**
     * Checks that all are there.
     *
     * @param comparison stiffness, strength, thickness and mass
     * @param cost materials by area as a multiple of those of the other
     */
    public ComparedZone {
        Objects.requireNonNull(comparison, "comparison");
        Objects.requireNonNull(cost, "cost");
    }

    static ComparedZone of(ZoneComparison comparison, Estimator estimator) {
        OptionalDouble instead =
                estimator.materialCostPerArea(comparison.candidate().zone());
        OptionalDouble now =
                estimator.materialCostPerArea(comparison.reference().zone());
        boolean known = instead.isPresent() && now.isPresent() && now.getAsDouble() > 0;
        return new ComparedZone(
                comparison,
                known ? OptionalDouble.of(instead.getAsDouble() / now.getAsDouble()) : OptionalDouble.empty());
    }
}
