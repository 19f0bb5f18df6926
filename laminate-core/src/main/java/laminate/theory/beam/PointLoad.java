package laminate.theory.beam;

import laminate.theory.Require;

/**
 * A line load across a beam, seen from the side as a point.
 *
 * @param force total force over the width, positive towards +z (N)
 * @param position distance from the start of the beam (m)
 */
public record PointLoad(double force, double position) {
    /**
     * Checks the load.
     *
     * @param force total force over the width, positive towards +z (N)
     * @param position distance from the start of the beam (m)
     * @throws IllegalArgumentException if the force is not finite or the position negative
     */
    public PointLoad {
        Require.finite("force", force);
        Require.notNegative("position of a point load", position);
    }
}
