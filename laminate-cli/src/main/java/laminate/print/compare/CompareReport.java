package laminate.print.compare;

import java.util.ArrayList;
import java.util.List;
import laminate.check.LimitCheck;
import laminate.check.Subject;
import laminate.compare.Alternative;
import laminate.compare.Basis;
import laminate.compare.Refusal;
import laminate.compare.Row;
import laminate.compare.SideBySide;
import laminate.estimate.ResinQuantity;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.check.CheckWords;
import laminate.unit.UnitSystem;

/**
 * Tells a comparison as a document, free of any format: the figures of one part first, then zones, panels and beams, why the
 * stiffness differs, what each choice costs or saves, and from how many parts on.
 */
public final class CompareReport {
    private final Measures measures;

    /**
     * How comparisons are told.
     *
     * @param system the reader's units
     */
    public CompareReport(UnitSystem system) {
        this.measures = new Measures(system);
    }

    /**
     * Tells a comparison.
     *
     * @param ways the comparison
     * @return the document
     */
    public Report of(SideBySide ways) {
        Report.Builder report = new Report.Builder().heading(1, title(ways));
        addFacts(report, ways);
        FigureTable figures = new FigureTable(new Scale(measures), ways.alternatives());
        report.heading(2, "One part").grid(figures.of("", rows(ways, Subject.Kind.PART)));
        addResinNote(report, ways);
        add(report, "Zones", figures.of("zone", rows(ways, Subject.Kind.ZONE)));
        add(report, "Load cases", figures.of("load case", rows(ways, Subject.Kind.LOAD_CASE)));
        add(report, "Panels", figures.of("panel", rows(ways, Subject.Kind.PANEL)));
        add(report, "Beams", figures.of("beam", rows(ways, Subject.Kind.BEAM)));
        new WhySection(measures).addTo(report, ways);
        new PriceSection(ways.alternatives()).addTo(report, ways);
        new BreakEvenSection(ways.alternatives()).addTo(report, ways);
        if (!ways.remarks().isEmpty()) {
            report.heading(2, "To mind").bullets(ways.remarks());
        }
        return report.build();
    }

    private static void add(Report.Builder report, String heading, Table table) {
        if (!table.rows().isEmpty()) {
            report.heading(2, heading).grid(table);
        }
    }

    private static String title(SideBySide ways) {
        String first = ways.alternatives().get(0).estimate().part().name();
        boolean onePart = ways.alternatives().stream()
                .allMatch(way -> way.estimate().part().name().equals(first));
        return onePart ? first + ", side by side" : "Side by side";
    }

    private static void addFacts(Report.Builder report, SideBySide ways) {
        List<String> names = ways.alternatives().stream().map(Alternative::name).toList();
        report.fact("ways", String.join(", ", names));
        report.fact("differences", "in % to " + names.get(0));
        report.fact("held equal", heldEqual(ways));
        for (Refusal refusal : ways.refusals()) {
            report.fact("cannot be", refusal.name() + ": " + refusal.reason());
        }
        for (Alternative way : ways.alternatives()) {
            way.check()
                    .filter(check -> !check.limits().isEmpty() && !check.limitsMet())
                    .ifPresent(check -> report.fact("limits missed", missed(way)));
        }
    }

    private static String heldEqual(SideBySide ways) {
        Basis basis = ways.options().basis();
        if (basis != Basis.SAME_REINFORCEMENT) {
            return basis.words() + ", by its " + ways.options().means().words();
        }
        return ways.isOneLayUp()
                ? basis.words() + "; nothing is changed but the way it is made"
                : "nothing; each is laid as it is stated";
    }

    /** What the lines of resin count, where a reader who adds them up would be out. */
    private static void addResinNote(Report.Builder report, SideBySide ways) {
        List<ResinQuantity> resins = ways.alternatives().stream()
                .flatMap(way -> way.estimate().quantities().resins().stream())
                .toList();
        List<String> notes = new ArrayList<>();
        if (resins.stream().anyMatch(resin -> resin.use().isCoating())) {
            notes.add(
                    "Resin in the part and to mix is told without coatings; what is wasted or given off counts theirs.");
        }
        if (resins.stream().anyMatch(resin -> resin.dose().agent().isHardener())) {
            notes.add("Resin in the part and wasted is told with its hardener, resin to mix without.");
        }
        if (!notes.isEmpty()) {
            report.paragraph(String.join(" ", notes));
        }
    }

    private static String missed(Alternative way) {
        List<String> texts = new ArrayList<>();
        for (LimitCheck limit : way.check().orElseThrow().limits()) {
            if (!limit.isMet()) {
                texts.add(CheckWords.limit(limit) + " of " + CheckWords.subject(limit.where()));
            }
        }
        return way.name() + ": " + String.join(", ", texts);
    }

    private static List<Row> rows(SideBySide ways, Subject.Kind kind) {
        return ways.rows().stream().filter(row -> row.subject().kind() == kind).toList();
    }
}
