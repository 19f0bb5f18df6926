package laminate.part.infusion;

import java.util.OptionalDouble;

/**
 * How thick the resin is while it runs: μ(t) = μ₀ exp(t/τ).
 *
 * @param atStart μ₀ at the temperature of the workshop (Pa·s), empty for the resin's own
 * @param riseTime τ, the time in which it grows by the factor e (s), empty where not stated
 */
public record ResinViscosity(OptionalDouble atStart, OptionalDouble riseTime) {

    /** Nothing stated. */
    public static final ResinViscosity OF_THE_RESIN =
            new ResinViscosity(OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if one is not above zero
     */
    public ResinViscosity {
        Checks.positive("viscosity", atStart, "Pa·s");
        Checks.positive("time of a viscosity", riseTime, "s");
    }

    /**
     * A viscosity that stays.
     *
     * @param pascalSeconds μ (Pa·s)
     * @return the viscosity
     * @throws IllegalArgumentException if it is not above zero
     */
    public static ResinViscosity constant(double pascalSeconds) {
        return new ResinViscosity(OptionalDouble.of(pascalSeconds), OptionalDouble.empty());
    }
}
