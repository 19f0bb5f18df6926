package laminate.theory.failure;

import java.util.Objects;
import laminate.theory.ShearStress;
import laminate.theory.Vector3;

/**
 * Stress at a point of a ply, in the axes of the ply.
 *
 * @param inPlane σ1, σ2, τ12 (Pa)
 * @param across τ13, τ23 (Pa)
 * @param normal σ3 through the thickness, tension positive (Pa)
 */
public record StressState(Vector3 inPlane, ShearStress across, double normal) {
    /** No stress. */
    public static final StressState ZERO = of(Vector3.ZERO);

    /**
     * Checks the stress.
     *
     * @param inPlane σ1, σ2, τ12 (Pa)
     * @param across τ13, τ23 (Pa)
     * @param normal σ3 through the thickness, tension positive (Pa)
     * @throws IllegalArgumentException if σ3 is not finite
     */
    public StressState {
        Objects.requireNonNull(inPlane, "inPlane");
        Objects.requireNonNull(across, "across");
        if (!Double.isFinite(normal)) {
            throw new IllegalArgumentException("normal stress must be a finite number, was " + normal);
        }
    }

    /**
     * Stress in the plane only.
     *
     * @param inPlane σ1, σ2, τ12 (Pa)
     * @return the state
     */
    public static StressState of(Vector3 inPlane) {
        return new StressState(inPlane, ShearStress.ZERO, 0);
    }
}
