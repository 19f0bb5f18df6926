package laminate.part;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of a part, a zone, a panel or a beam. Each may state limits of its own; for every one of them the nearest
 * wins: the panel's or beam's, then its zone's, then the part's.
 *
 * @param deflection the most that a panel or beam may deflect
 * @param reserveFactors the least reserve factors (1) by kind of failure
 * @param thickness the least thickness of the laminate, without coatings (m)
 * @param mass the most that the very thing may weigh (kg): one moulding, one zone, the area of one panel, one beam; it is
 *     never handed down, as a zone is not as heavy as the part
 */
public record Limits(
        Optional<DeflectionLimit> deflection,
        Map<ReserveKind, Double> reserveFactors,
        OptionalDouble thickness,
        OptionalDouble mass) {

    /** Nothing asked. */
    public static final Limits NONE =
            new Limits(Optional.empty(), Map.of(), OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if a value is not above zero and finite
     */
    public Limits {
        Objects.requireNonNull(deflection, "deflection");
        for (Map.Entry<ReserveKind, Double> factor : reserveFactors.entrySet()) {
            check("reserve factor " + factor.getKey().word(), factor.getValue());
        }
        check("thickness", thickness.orElse(1));
        check("mass", mass.orElse(1));
        reserveFactors =
                reserveFactors.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(reserveFactors));
    }

    private static void check(String what, double value) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException("a limit of " + what + " must be above zero, not " + value);
        }
    }

    /**
     * These limits, and where they state nothing those of what lies around; but for the mass, which stays these limits'.
     *
     * @param around the limits of the zone around a panel, or of the part around a zone
     * @return the limits that hold
     */
    public Limits within(Limits around) {
        if (around.isEmpty()) {
            return this;
        }
        Map<ReserveKind, Double> factors = new EnumMap<>(ReserveKind.class);
        factors.putAll(around.reserveFactors);
        factors.putAll(reserveFactors);
        return new Limits(
                deflection.or(around::deflection), factors, thickness.isPresent() ? thickness : around.thickness, mass);
    }

    /**
     * Whether nothing is asked.
     *
     * @return true for no limit at all
     */
    public boolean isEmpty() {
        return equals(NONE);
    }

    /**
     * The least reserve factor against a kind of failure.
     *
     * @param kind the kind
     * @return the factor, empty where none is asked
     */
    public OptionalDouble reserveFactor(ReserveKind kind) {
        Double factor = reserveFactors.get(kind);
        return factor == null ? OptionalDouble.empty() : OptionalDouble.of(factor);
    }
}
