package laminate.theory.failure;

import java.util.Objects;

/**
 * One point of a failure surface.
 *
 * @param x value of the first term (its SI unit)
 * @param y value of the second term (its SI unit)
 * @param failure ply and mode that fail there; its factor is on the direction traced and is not needed further
 */
public record SurfacePoint(double x, double y, PlyReserve failure) {
    /**
     * Checks that all is there.
     *
     * @param x value of the first term (its SI unit)
     * @param y value of the second term (its SI unit)
     * @param failure ply and mode that fail there
     */
    public SurfacePoint {
        Objects.requireNonNull(failure, "failure");
    }
}
