package laminate.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.check.PartCheck;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ZoneEstimate;
import laminate.part.Limits;
import laminate.part.Part;
import laminate.part.Zone;

/** Estimates, changes and checks every way to make a part. */
final class Comparing {
    private final CompareOptions options;
    private final List<Alternative> alternatives = new ArrayList<>();
    private final List<Refusal> refusals = new ArrayList<>();

    Comparing(CompareOptions options) {
        this.options = options;
    }

    SideBySide compare(List<Candidate> candidates) {
        for (Candidate candidate : candidates) {
            try {
                alternatives.add(reckon(candidate));
            } catch (IllegalArgumentException e) {
                refusals.add(new Refusal(candidate.name(), e.getMessage()));
            }
        }
        return new SideBySide(options, alternatives, refusals);
    }

    private Alternative reckon(Candidate candidate) {
        PartEstimate given = candidate.estimator().estimate(candidate.part());
        List<Adjustment> adjustments = new ArrayList<>();
        boolean kept = alternatives.isEmpty() || options.basis() == Basis.SAME_REINFORCEMENT;
        PartEstimate made = kept ? given : candidate.estimator().estimate(levelled(candidate, given, adjustments));
        CostRun run = new CostRun(candidate, made);
        return new Alternative(
                candidate.name(), made, check(made), adjustments, styrene(made), run.curve(), run.missing());
    }

    /** A zone without what is changed stays as it is; a part of which no zone has any is refused. */
    private Part levelled(Candidate candidate, PartEstimate given, List<Adjustment> adjustments) {
        Levelling levelling = new Levelling(options, candidate.estimator());
        List<Zone> zones = new ArrayList<>();
        for (int i = 0; i < given.zones().size(); i++) {
            ZoneEstimate zone = given.zones().get(i);
            if (levelling.canChange(zone)) {
                Levelling.Levelled levelled = levelling.level(zone, like(given, i));
                zones.add(levelled.zone());
                adjustments.add(levelled.adjustment());
            } else {
                zones.add(zone.zone());
            }
        }
        if (adjustments.isEmpty()) {
            throw new IllegalArgumentException(
                    "no zone has a " + options.means().what() + " that could be changed to reach the "
                            + options.basis().words());
        }
        return given.part().withZones(zones);
    }

    private ZoneEstimate like(PartEstimate given, int number) {
        Alternative first = alternatives.get(0);
        return ZoneMatch.of(first.estimate(), given, number)
                .orElseThrow(() -> new IllegalArgumentException(
                        "zone " + given.zones().get(number).zone().name() + " has no like in " + first.name()
                                + ", which has " + String.join(", ", ZoneMatch.names(first.estimate()))));
    }

    private Optional<PartCheck> check(PartEstimate made) {
        return asksNothing(made.part())
                ? Optional.empty()
                : Optional.of(PartCheck.of(made, options.check())).filter(check -> !check.isEmpty());
    }

    /** A part that asks nothing is not checked, so that a comparison takes no longer than its estimates. */
    private static boolean asksNothing(Part part) {
        return part.panels().isEmpty()
                && part.beams().isEmpty()
                && part.limits().equals(Limits.NONE)
                && part.zones().stream()
                        .allMatch(zone ->
                                zone.loadCases().isEmpty() && zone.limits().equals(Limits.NONE));
    }

    /** Paint gives off solvent, not styrene. */
    private static double styrene(PartEstimate made) {
        return made.quantities().resins().stream()
                .filter(resin -> resin.resin().family().isStyrenic())
                .mapToDouble(ResinQuantity::evaporated)
                .sum();
    }
}
