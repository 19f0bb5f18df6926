package laminate.theory.sandwich;

import java.util.Objects;
import java.util.Optional;
import laminate.theory.Require;

/**
 * One local failure weighed: what is asked of the sandwich, what it can bear, and the factor between.
 *
 * @param mode how it would fail
 * @param face the face that fails, where it is one
 * @param demand what is asked: a stress or pressure (Pa), for shear crimping and indentation a force per width (N/m);
 *     positive
 * @param capacity what can be borne, in the same unit
 * @param reserveFactor by which the mechanical load can be multiplied until failure
 */
public record LocalCheck(LocalMode mode, Optional<Face> face, double demand, double capacity, double reserveFactor) {
    /**
     * Checks the values.
     *
     * @param mode how it would fail
     * @param face the face that fails, where it is one
     * @param demand what is asked, positive (Pa or N/m)
     * @param capacity what can be borne, in the same unit
     * @param reserveFactor by which the mechanical load can be multiplied until failure
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public LocalCheck {
        Objects.requireNonNull(mode, "mode");
        Objects.requireNonNull(face, "face");
        Require.positive("demand", demand);
        Require.positive("capacity", capacity);
        Require.positive("reserve factor", reserveFactor);
    }

    /** A demand that grows with the load; empty where it is so small that no number holds the reserve. */
    static Optional<LocalCheck> linear(LocalMode mode, Optional<Face> face, double demand, double capacity) {
        double reserve = capacity / demand;
        return Double.isInfinite(reserve)
                ? Optional.empty()
                : Optional.of(new LocalCheck(mode, face, demand, capacity, reserve));
    }

    /** A demand that grows with the square of the load. */
    static LocalCheck quadratic(LocalMode mode, double demand, double capacity) {
        return new LocalCheck(mode, Optional.empty(), demand, capacity, Math.sqrt(capacity / demand));
    }
}
