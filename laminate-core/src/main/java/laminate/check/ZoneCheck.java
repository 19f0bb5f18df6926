package laminate.check;

import java.util.List;
import java.util.Objects;
import laminate.estimate.ZoneEstimate;

/**
 * A zone with its load cases.
 *
 * @param zone the zone as it lies
 * @param loadCases its load cases, in the order of the zone
 * @param notJudged plies that have no strength, mould face first
 * @param assumedShear plies whose G13 and G23 were not given and stand as G12, 0 at the mould face
 * @param limits the limits on its thickness and mass, worst first
 */
public record ZoneCheck(
        ZoneEstimate zone,
        List<LoadCaseCheck> loadCases,
        List<NotJudged> notJudged,
        List<Integer> assumedShear,
        List<LimitCheck> limits) {
    /**
     * Keeps copies.
     *
     * @param zone the zone as it lies
     * @param loadCases its load cases
     * @param notJudged plies that have no strength
     * @param assumedShear plies whose G13 and G23 were not given
     * @param limits the limits on its thickness and mass
     */
    public ZoneCheck {
        Objects.requireNonNull(zone, "zone");
        loadCases = List.copyOf(loadCases);
        notJudged = List.copyOf(notJudged);
        assumedShear = List.copyOf(assumedShear);
        limits = List.copyOf(limits);
    }
}
