package laminate.print.check;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import laminate.check.PartCheck;
import laminate.check.ZoneCheck;
import laminate.theory.Strength;
import laminate.theory.failure.Criterion;

/** The criteria behind the reserve factors of a part, each of which states its source. */
final class CriteriaUsed {
    private CriteriaUsed() {}

    /** What decides, and beside a load case, or where every ply is told, what else can judge its plies. */
    static List<Criterion> told(CheckedPart checked, boolean plies) {
        Set<Criterion> used = EnumSet.noneOf(Criterion.class);
        Criterion chosen = checked.check().options().criterion();
        strengths(loaded(checked)).map(chosen::inFor).forEach(used::addAll);
        Stream<ZoneCheck> byAll = plies
                ? loaded(checked)
                : checked.check().zones().stream()
                        .filter(zone -> !zone.loadCases().isEmpty());
        strengths(byAll).map(Criterion::of).forEach(used::addAll);
        return List.copyOf(used);
    }

    /** Every criterion that judges a ply of what is loaded or compared. */
    static List<Criterion> all(CheckedPart checked) {
        return told(checked, true);
    }

    private static Stream<ZoneCheck> loaded(CheckedPart checked) {
        PartCheck check = checked.check();
        boolean compared = !checked.comparisons().isEmpty();
        return check.zones().stream()
                .filter(zone -> compared || !zone.loadCases().isEmpty() || carriesAPanelOrBeam(zone, check));
    }

    private static boolean carriesAPanelOrBeam(ZoneCheck zone, PartCheck check) {
        String name = zone.zone().zone().name();
        return check.panels().stream().anyMatch(panel -> panel.plan().zone().equals(name))
                || check.beams().stream().anyMatch(beam -> beam.plan().zone().equals(name));
    }

    private static Stream<Strength> strengths(Stream<ZoneCheck> zones) {
        return zones.flatMap(zone -> zone.zone().laminate().plies().stream())
                .flatMap(ply -> ply.lamina().strength().stream());
    }
}
