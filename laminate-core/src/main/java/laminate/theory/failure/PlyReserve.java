package laminate.theory.failure;

import java.util.Objects;
import laminate.theory.PlyPoint;

/**
 * A reserve factor and where in the laminate it was found.
 *
 * @param ply number of the ply, 0 at the mould face
 * @param at where in the ply
 * @param z height from mid-plane (m)
 * @param reserve the factor, its criterion and mode
 */
public record PlyReserve(int ply, PlyPoint.At at, double z, ReserveFactor reserve) {
    /**
     * Checks that all are there.
     *
     * @param ply number of the ply, 0 at the mould face
     * @param at where in the ply
     * @param z height from mid-plane (m)
     * @param reserve the factor, its criterion and mode
     */
    public PlyReserve {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(reserve, "reserve");
    }

    /**
     * The factor on the mechanical load.
     *
     * @return R, at least 0
     */
    public double factor() {
        return reserve.value();
    }
}
