package laminate.check;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.ReserveKind;
import laminate.theory.failure.PlyReserve;
import laminate.theory.sandwich.LocalCheck;

/**
 * The least reserve factor of something against one kind of failure, and where it was found.
 *
 * @param kind the kind of failure
 * @param factor by which the mechanical load can be multiplied until then; of a panel of which the large deflection
 *     counts by which the stress at this load can, see {@link PanelCheck}; 0 where residual stress alone reaches it
 * @param x place along the length of a panel or the span of a beam (m); empty for a load case and for the whole panel
 * @param y place along the width of a panel (m)
 * @param ply the ply, its criterion and mode, where a ply or core fails by its stress
 * @param local the demand and capacity, where a sandwich fails locally
 */
public record Reserve(
        ReserveKind kind,
        double factor,
        OptionalDouble x,
        OptionalDouble y,
        Optional<PlyReserve> ply,
        Optional<LocalCheck> local) {
    /**
     * Checks the factor.
     *
     * @param kind the kind of failure
     * @param factor the factor, at least 0
     * @param x place along the length of a panel or the span of a beam (m)
     * @param y place along the width of a panel (m)
     * @param ply the ply, its criterion and mode
     * @param local the demand and capacity
     * @throws IllegalArgumentException if the factor is negative or not finite
     */
    public Reserve {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
        Objects.requireNonNull(ply, "ply");
        Objects.requireNonNull(local, "local");
        if (!(factor >= 0) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("a reserve factor is finite and not negative, was " + factor);
        }
    }

    static Reserve whole(ReserveKind kind, double factor) {
        return new Reserve(
                kind, factor, OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), Optional.empty());
    }

    static Reserve of(ReserveKind kind, PlyReserve ply) {
        return new Reserve(
                kind, ply.factor(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(ply), Optional.empty());
    }

    static Reserve of(ReserveKind kind, LocalCheck local) {
        return new Reserve(
                kind,
                local.reserveFactor(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.of(local));
    }

    Reserve at(double alongX, double alongY) {
        return new Reserve(kind, factor, OptionalDouble.of(alongX), OptionalDouble.of(alongY), ply, local);
    }

    Reserve at(double alongSpan) {
        return new Reserve(kind, factor, OptionalDouble.of(alongSpan), OptionalDouble.empty(), ply, local);
    }
}
