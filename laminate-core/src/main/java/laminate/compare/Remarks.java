package laminate.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import laminate.part.Part;
import laminate.part.Tooling;

/** What to mind when reading a comparison. */
final class Remarks {
    private final SideBySide ways;
    private final List<String> remarks = new ArrayList<>();

    private Remarks(SideBySide ways) {
        this.ways = ways;
    }

    static List<String> of(SideBySide ways) {
        Remarks all = new Remarks(ways);
        all.addBasis();
        ways.alternatives().stream().skip(1).forEach(all::addKept);
        ways.alternatives().forEach(all::addMissing);
        ways.alternatives().forEach(all::addMould);
        all.addMade();
        all.addShared();
        return List.copyOf(all.remarks);
    }

    private void addBasis() {
        remarks.add(
                switch (ways.options().basis()) {
                    case SAME_REINFORCEMENT ->
                        (ways.isOneLayUp()
                                        ? "The same reinforcement is laid in each way"
                                        : "Each is laid as it is stated, and not alike")
                                + ", so thickness, weight and stiffness differ together;"
                                + " the same bending stiffness or the same weight tells which way is better for it.";
                    case SAME_STIFFNESS ->
                        "Bending stiffness is of the laminate alone: a thin sandwich deflects more than it says by shear of"
                                + " its core, and strength is not held equal.";
                    case SAME_WEIGHT ->
                        "Mass per area is held equal with coatings, without laps and items; neither stiffness nor strength"
                                + " is.";
                });
    }

    private void addKept(Alternative way) {
        Set<String> changed = way.adjustments().stream().map(Adjustment::zone).collect(Collectors.toSet());
        List<String> kept = ZoneMatch.names(way.estimate()).stream()
                .filter(zone -> !changed.contains(zone))
                .toList();
        if (ways.options().basis() != Basis.SAME_REINFORCEMENT && !kept.isEmpty()) {
            remarks.add("Of " + way.name() + ", without a "
                    + ways.options().means().what() + " to change, is left as it is: " + String.join(", ", kept) + ".");
        }
    }

    private void addMissing(Alternative way) {
        if (!way.missing().isEmpty()) {
            remarks.add("No price for " + way.name() + ": " + String.join(", ", way.missing())
                    + "; the sums it enters, the cost against the number of parts and the break-evens are left out.");
        }
    }

    private void addMade() {
        if (ways.alternatives().stream()
                .flatMap(way -> way.curve().flatMap(CostCurve::mould).stream())
                .anyMatch(mould -> !mould.madeOn().isEmpty())) {
            remarks.add(
                    "Moulds that are made here are at works cost with all that they take; one plug serves all moulds"
                            + " that it lasts for.");
        }
    }

    /** The mouldings of a project may share a mould. */
    private void addShared() {
        Map<Object, Set<String>> sharing = new LinkedHashMap<>();
        for (Alternative way : ways.alternatives()) {
            Tooling tooling = way.estimate().part().toolingInUse();
            Optional<?> mould = tooling.mould().isPresent() ? tooling.mould() : tooling.name();
            if (mould.isPresent() && way.curve().isPresent()) {
                sharing.computeIfAbsent(mould, first -> new LinkedHashSet<>())
                        .add(way.estimate().part().name());
            }
        }
        sharing.values().stream()
                .filter(parts -> parts.size() > 1)
                .forEach(parts -> remarks.add(String.join(", ", parts)
                        + " are made on one mould; against the number of parts each bears it alone here, where a quote of the"
                        + " project shares it."));
    }

    private void addMould(Alternative way) {
        Part part = way.estimate().part();
        if (!part.tooling().isEmpty()
                && way.curve().filter(curve -> curve.mould().isEmpty()).isPresent()) {
            remarks.add("No price of a mould is stated for " + way.name() + "; it is taken to be there.");
        }
    }
}
