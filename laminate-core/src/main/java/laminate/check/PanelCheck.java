package laminate.check;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.ZoneEstimate;
import laminate.part.PanelPlan;
import laminate.theory.Laminate;
import laminate.theory.panel.LargeDeflection;
import laminate.theory.panel.PanelBending;
import laminate.theory.panel.PanelPoint;
import laminate.theory.panel.PanelResponse;

/**
 * A panel, reckoned.
 *
 * <p>Moments, stresses and reserve factors are those of the state that counts: of small deflection, where a reserve factor
 * is one on the load; beyond half the thickness of the large deflection, if one was found. Stress does not rise with the
 * load in proportion then, and a reserve factor is one on the stress at the stated load, N and M multiplied alike: by how
 * much strength could fall, not the load rise. (Where stretching bears most of the load, stress rises more slowly than
 * the load, about as its power 2/3.) The deflection that a limit is held against is {@link #governingDeflection()}.
 *
 * @param plan the panel
 * @param zone the zone it is a piece of
 * @param bending its deflection, with parts by bending and by shear, and everything at every point
 * @param large the large deflection, where small-deflection theory gives more than half the thickness, or where wanted
 * @param softEdgeDeflection deflection if the simply supported edges hold only the deflection (m), where shear across
 *     the thickness matters
 * @param spots moments and shear forces at the centre and the middles of the edges
 * @param reserves the least reserve factor of each kind that arises, least first
 * @param worst what the plies carry where {@code worstPlace} is
 * @param worstPlace the point where a ply comes nearest to failure, or which deflects most if no ply is judged; a core has
 *     its place with its reserve factor
 * @param limits the limits that hold for it, worst first
 */
public record PanelCheck(
        PanelPlan plan,
        ZoneEstimate zone,
        PanelBending bending,
        Optional<LargeDeflection> large,
        OptionalDouble softEdgeDeflection,
        Map<PanelSpot, PanelPoint> spots,
        List<Reserve> reserves,
        LaminateCheck worst,
        PanelPoint worstPlace,
        List<LimitCheck> limits) {
    /**
     * Keeps copies.
     *
     * @param plan the panel
     * @param zone the zone it is a piece of
     * @param bending its deflection by small-deflection theory
     * @param large the large deflection
     * @param softEdgeDeflection deflection on soft edges (m)
     * @param spots moments and shear forces at the centre and the middles of the edges
     * @param reserves the least reserve factor of each kind
     * @param worst what the plies carry at the worst place
     * @param worstPlace the worst place
     * @param limits the limits that hold for it
     */
    public PanelCheck {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(bending, "bending");
        Objects.requireNonNull(large, "large");
        Objects.requireNonNull(softEdgeDeflection, "softEdgeDeflection");
        Objects.requireNonNull(worst, "worst");
        Objects.requireNonNull(worstPlace, "worstPlace");
        Map<PanelSpot, PanelPoint> ordered = new EnumMap<>(PanelSpot.class);
        ordered.putAll(spots);
        spots = Collections.unmodifiableMap(ordered);
        reserves = List.copyOf(reserves);
        limits = List.copyOf(limits);
    }

    /**
     * The deflection that counts: the large one where small-deflection theory gives more than half the thickness,
     * otherwise the small one.
     *
     * @return w, positive towards +z (m)
     */
    public double governingDeflection() {
        return governingResponse().mostDeflected().deflection();
    }

    /**
     * The state that counts, from which moments, stresses and reserve factors are.
     *
     * @return that of large deflection where small-deflection theory gives more than half the thickness and a large
     *     deflection was found, otherwise that of small deflection
     */
    public PanelResponse governingResponse() {
        return isBeyondSmallDeflection()
                ? large.map(LargeDeflection::response).orElseGet(bending::response)
                : bending.response();
    }

    /**
     * Whether small-deflection theory is beyond its range.
     *
     * @return true if it gives more than half the thickness of the laminate
     */
    public boolean isBeyondSmallDeflection() {
        return isBeyondSmallDeflection(bending.deflection(), zone.laminate());
    }

    static boolean isBeyondSmallDeflection(double deflection, Laminate laminate) {
        return Math.abs(deflection) > laminate.thickness() / 2;
    }

    /**
     * How much more the panel deflects on soft edges.
     *
     * @return the share of the deflection on hard edges, 0.1 for 10 % more
     */
    public OptionalDouble softEdgeSurplus() {
        return softEdgeDeflection.isEmpty() || bending.deflection() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(softEdgeDeflection.getAsDouble() / bending.deflection() - 1);
    }
}
