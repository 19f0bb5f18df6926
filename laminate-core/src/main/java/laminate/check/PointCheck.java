package laminate.check;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import laminate.theory.PlyPoint;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.ReserveFactor;

/**
 * One point of a ply with its reserve factors.
 *
 * @param point place, strain and stress
 * @param reserves by criterion, in their order; a criterion that does not apply, or is never reached
 *     (beyond 10¹⁰ times the lowest factor of the laminate is rounding of no stress), is left out
 */
public record PointCheck(PlyPoint point, Map<Criterion, ReserveFactor> reserves) {
    /**
     * Keeps a copy.
     *
     * @param point place, strain and stress
     * @param reserves by criterion
     */
    public PointCheck {
        Objects.requireNonNull(point, "point");
        Map<Criterion, ReserveFactor> ordered = new EnumMap<>(Criterion.class);
        ordered.putAll(reserves);
        reserves = Collections.unmodifiableMap(ordered);
    }
}
