package laminate.theory.failure;

import java.util.Objects;

/**
 * How often the mechanical load can be carried, and what gives way then.
 *
 * @param value factor on the mechanical load at which the criterion is reached; 0 if residual stress alone reaches it
 * @param criterion the criterion
 * @param mode the mode; for a criterion that mixes stresses, the stress nearest to its strength
 */
public record ReserveFactor(double value, Criterion criterion, Mode mode) {
    /**
     * Checks the factor.
     *
     * @param value factor on the mechanical load at which the criterion is reached; 0 if residual stress alone reaches
     *     it
     * @param criterion the criterion
     * @param mode the mode; for a criterion that mixes stresses, the stress nearest to its strength
     * @throws IllegalArgumentException if the factor is negative or not finite
     */
    public ReserveFactor {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a reserve factor is finite and not negative, was " + value);
        }
        Objects.requireNonNull(criterion, "criterion");
        Objects.requireNonNull(mode, "mode");
    }

    /**
     * Whether cooling and moisture alone already reach the criterion.
     *
     * @return true if no mechanical load is needed
     */
    public boolean failsUnloaded() {
        return value == 0;
    }
}
