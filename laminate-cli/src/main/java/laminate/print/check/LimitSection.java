package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.check.LimitCheck;
import laminate.check.LimitCheck.Verdict;
import laminate.check.PartCheck;
import laminate.check.Remedy;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;

/** Whether the limits are met, and what would mend those that are not. */
final class LimitSection {
    private final Measures measures;

    LimitSection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, PartCheck check) {
        report.heading(1, check.estimate().part().name());
        List<LimitCheck> limits = check.limits();
        report.fact("limits", summary(limits));
        report.fact(
                "criterion",
                CheckWords.criterion(check.options().criterion()) + " for plies with directions, their own for mats and"
                        + " cores");
        report.fact(
                "residual stress",
                check.options().residualStress()
                        ? "counted where a load case states temperature or moisture"
                        : "left out");
        addTable(report, limits);
        List<String> mending = new ArrayList<>();
        limits.stream()
                .filter(limit -> limit.verdict() == Verdict.NOT_MET)
                .map(this::mending)
                .forEach(mending::add);
        if (limits.stream().anyMatch(limit -> limit.verdict() == Verdict.NOT_JUDGED)) {
            mending.add("Not judged, and so not met: give the strength that is missing; see \"To mind\" for what.");
        }
        if (!mending.isEmpty()) {
            report.heading(2, "What would mend it").bullets(mending);
        }
    }

    private static String summary(List<LimitCheck> limits) {
        if (limits.isEmpty()) {
            return "none set";
        }
        List<String> counts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count =
                    limits.stream().filter(limit -> limit.verdict() == verdict).count();
            if (count > 0) {
                counts.add(count + " " + CheckWords.verdict(verdict));
            }
        }
        return String.join(", ", counts);
    }

    private void addTable(Report.Builder report, List<LimitCheck> limits) {
        Table.Builder table = new Table.Builder(
                Column.words("of"),
                Column.words("limit"),
                Column.numbers("asked", ""),
                Column.numbers("found", ""),
                Column.words("verdict"));
        for (LimitCheck limit : limits) {
            List<String> values = values(limit);
            table.row(
                    CheckWords.subject(limit.where()),
                    CheckWords.limit(limit),
                    (isAtMost(limit) ? "at most " : "at least ") + values.get(0),
                    values.get(1),
                    CheckWords.verdict(limit.verdict()));
        }
        if (!limits.isEmpty()) {
            report.heading(2, "Limits, worst first").grid(table.build());
        }
    }

    private static boolean isAtMost(LimitCheck limit) {
        return limit.kind() == LimitCheck.Kind.DEFLECTION || limit.kind() == LimitCheck.Kind.MASS;
    }

    /** Asked and found; a miss by little is told with as many figures as show it. */
    private List<String> values(LimitCheck limit) {
        if (limit.verdict() == Verdict.NOT_MET && limit.found().isPresent()) {
            return unit(limit)
                    .map(unit ->
                            Measures.apart(
                                            unit.fromSi(limit.asked()),
                                            unit.fromSi(limit.found().getAsDouble()))
                                    .stream()
                                    .map(number -> number + " " + unit.symbol())
                                    .toList())
                    .orElseGet(() -> Measures.apart(limit.asked(), limit.found().getAsDouble()));
        }
        return List.of(
                value(limit, limit.asked()),
                limit.found().isPresent() ? value(limit, limit.found().getAsDouble()) : "");
    }

    private String value(LimitCheck limit, double value) {
        return unit(limit).map(unit -> Measures.text(value, unit)).orElseGet(() -> Measures.reserve(value));
    }

    /** Empty for a reserve factor. */
    private Optional<Unit> unit(LimitCheck limit) {
        return switch (limit.kind()) {
            case DEFLECTION, THICKNESS -> Optional.of(measures.length());
            case MASS -> Optional.of(measures.mass());
            case RESERVE_FACTOR -> Optional.empty();
        };
    }

    private String mending(LimitCheck limit) {
        String lead = CheckWords.subject(limit.where()) + ", " + CheckWords.limit(limit) + ": ";
        if (limit.remedies().isEmpty()) {
            return lead + "no one change of thickness, stiffness or strength mends it.";
        }
        return lead
                + String.join(
                        "; or ", limit.remedies().stream().map(this::remedy).toList()) + ".";
    }

    /** Rounded to the safe side: the limit is met when what is told is done. */
    private String remedy(Remedy remedy) {
        String change = remedy.lever().text() + " × " + Measures.numberBeyond(remedy.factor(), 1);
        if (remedy.from().isEmpty() || remedy.to().isEmpty()) {
            return change;
        }
        Unit unit = remedy.lever() == Remedy.Lever.MASS ? measures.mass() : measures.length();
        double from = unit.fromSi(remedy.from().getAsDouble());
        double to = unit.fromSi(remedy.to().getAsDouble());
        return change + ", from " + Measures.number(from) + " " + unit.symbol() + " to "
                + Measures.numberBeyond(to, from) + " " + unit.symbol();
    }
}
