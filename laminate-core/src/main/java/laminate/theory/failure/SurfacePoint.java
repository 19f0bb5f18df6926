package laminate.theory.failure;

import java.util.Objects;
import laminate.theory.Require;

/**
 * One point of a failure surface.
 *
 * @param x value of the first term (its SI unit)
 * @param y value of the second term (its SI unit)
 * @param failure ply and mode that fail there; its factor is on the direction traced and is not needed further
 */
public record SurfacePoint(double x, double y, PlyReserve failure) {
    /**
     * Checks the point.
     *
     * @param x value of the first term (its SI unit)
     * @param y value of the second term (its SI unit)
     * @param failure ply and mode that fail there
     * @throws IllegalArgumentException if x or y is not finite
     */
    public SurfacePoint {
        Require.finite("x", x);
        Require.finite("y", y);
        Objects.requireNonNull(failure, "failure");
    }
}
