package laminate.theory.failure;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;

/**
 * Progressive failure by ply discount, from the first ply to the last (Jones 1999, ch. 4; Kaw 2006, ch. 5, from
 * memory).
 *
 * <p>The mechanical load grows; at each step the plies with the least reserve factor fail together (those within 10⁻⁶
 * of it), lose stiffness by a {@link PlyDiscount}, and the laminate is worked out anew, residual stress included. The
 * load is never taken back: what would fail at a lower one fails at once. A ply that has cracked is judged on by
 * maximum stress and breaks when it fails once more; one that has broken carries no more and is not judged. An estimate
 * of ultimate load on the safe side for brittle plies: a cracked ply in truth keeps carrying between its cracks.
 *
 * <p>The failure of a core ends it. Faces that nothing holds apart no longer bend as one, while in laminate theory, with
 * its plane sections, they would: by equilibrium the broken core would even go on carrying the shear force.
 *
 * @param steps the steps in order of load
 * @param survivors plies that have not broken at the end, 0 at the mould face: without strength, never stressed to it,
 *     or left over where a core has failed
 */
public record ProgressiveFailure(List<FailureStep> steps, List<Integer> survivors) {
    /** Plies this near to the first in load go with it, as the pairs of a symmetric laminate do. */
    private static final double TOGETHER = 1e-6;

    /**
     * Keeps copies.
     *
     * @param steps the steps in order of load
     * @param survivors plies that have not broken at the end, 0 at the mould face
     */
    public ProgressiveFailure {
        steps = List.copyOf(steps);
        survivors = List.copyOf(survivors);
    }

    /**
     * Lets a laminate fail.
     *
     * @param laminate the laminate
     * @param load the load; {@link LaminateLoad#mechanical()} of it leaves cure stress out
     * @param chosen the criterion for plies with directions; mats and cores have their own
     * @param discount what a failed ply still carries
     * @return the steps
     * @throws IllegalArgumentException if the laminate cannot answer the load
     */
    public static ProgressiveFailure of(Laminate laminate, LaminateLoad load, Criterion chosen, PlyDiscount discount) {
        List<FailureStep> steps = new ArrayList<>();
        Damage damage = new Damage(laminate, discount);
        double reached = 0;
        List<PlyReserve> next = next(damage, load, chosen);
        while (!next.isEmpty()) {
            reached = Math.max(reached, least(next));
            steps.add(new FailureStep(reached, next));
            next.forEach(damage::add);
            next = isCoreAmong(next) ? List.of() : next(damage, load, chosen);
        }
        return new ProgressiveFailure(steps, damage.survivors());
    }

    private static boolean isCoreAmong(List<PlyReserve> failed) {
        return failed.stream().anyMatch(f -> f.reserve().mode().isOfCore());
    }

    /** The plies that fail next, their worst points, mould face first. */
    private static List<PlyReserve> next(Damage damage, LaminateLoad load, Criterion chosen) {
        Map<Integer, PlyReserve> worst = new TreeMap<>();
        for (LoadedPoint point : FailureAnalysis.of(damage.laminate(), load).points()) {
            damage.next(point, chosen)
                    .ifPresent(r -> worst.merge(
                            point.ply(), point.with(r), (one, other) -> other.factor() < one.factor() ? other : one));
        }
        double limit = least(worst.values()) * (1 + TOGETHER);
        return worst.values().stream().filter(r -> r.factor() <= limit).toList();
    }

    private static double least(Collection<PlyReserve> reserves) {
        return reserves.stream().mapToDouble(PlyReserve::factor).min().orElse(0);
    }

    /**
     * The load factor of first-ply failure.
     *
     * @return the factor; empty if nothing fails
     */
    public OptionalDouble firstPlyFactor() {
        return steps.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(steps.get(0).loadFactor());
    }

    /**
     * The load factor of the last step, of last-ply failure or that of a core: the most that the laminate carries.
     *
     * @return the factor; empty if nothing fails
     */
    public OptionalDouble lastPlyFactor() {
        return steps.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(steps.get(steps.size() - 1).loadFactor());
    }
}
