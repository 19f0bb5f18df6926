package laminate.print;

import java.util.ArrayList;
import java.util.List;
import laminate.check.LimitCheck;
import laminate.check.LimitCheck.Verdict;
import laminate.check.PartCheck;
import laminate.check.Remedy;
import laminate.print.Table.Column;
import laminate.unit.Significant;
import laminate.unit.Unit;

/** Whether the limits are met, and what would mend those that are not. */
final class LimitSection {
    /** A miss by less than a unit of the last of these counts as met anyway. */
    private static final int MOST_FIGURES = 10;

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
            table.row(
                    CheckWords.subject(limit.where()),
                    CheckWords.limit(limit),
                    (isAtMost(limit) ? "at most " : "at least ") + value(limit, limit.asked(), figures(limit)),
                    limit.found().isPresent() ? value(limit, limit.found().getAsDouble(), figures(limit)) : "",
                    CheckWords.verdict(limit.verdict()));
        }
        if (!limits.isEmpty()) {
            report.heading(2, "Limits, worst first").grid(table.build());
        }
    }

    private static boolean isAtMost(LimitCheck limit) {
        return limit.kind() == LimitCheck.Kind.DEFLECTION || limit.kind() == LimitCheck.Kind.MASS;
    }

    /** As many figures as it takes to show a miss. */
    private int figures(LimitCheck limit) {
        int figures = Measures.FIGURES;
        if (limit.verdict() == Verdict.NOT_MET && limit.found().isPresent()) {
            double found = limit.found().getAsDouble();
            while (figures < MOST_FIGURES
                    && value(limit, limit.asked(), figures).equals(value(limit, found, figures))) {
                figures++;
            }
        }
        return figures;
    }

    private String value(LimitCheck limit, double value, int figures) {
        return switch (limit.kind()) {
            case DEFLECTION, THICKNESS -> Measures.text(value, measures.length(), figures);
            case MASS -> Measures.text(value, measures.mass(), figures);
            case RESERVE_FACTOR ->
                figures == Measures.FIGURES ? Measures.reserve(value) : Significant.format(value, figures);
        };
    }

    private String mending(LimitCheck limit) {
        String lead = CheckWords.subject(limit.where()) + ", " + CheckWords.limit(limit) + ": ";
        if (limit.remedies().isEmpty()) {
            return lead + "no one change of thickness, stiffness or strength by up to ten times mends it.";
        }
        return lead
                + String.join(
                        "; or ", limit.remedies().stream().map(this::remedy).toList()) + ".";
    }

    private String remedy(Remedy remedy) {
        String change = remedy.lever().text() + " × " + Measures.number(remedy.factor());
        if (remedy.from().isEmpty() || remedy.to().isEmpty()) {
            return change;
        }
        Unit unit = remedy.lever() == Remedy.Lever.MASS ? measures.mass() : measures.length();
        return change + ", from " + Measures.text(remedy.from().getAsDouble(), unit) + " to "
                + Measures.text(remedy.to().getAsDouble(), unit);
    }
}
