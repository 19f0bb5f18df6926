package laminate.print.estimate;

import java.util.List;
import java.util.OptionalDouble;
import laminate.estimate.Caution;
import laminate.estimate.Comparison;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.print.Cautions;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/** Tells an estimate as a document, free of any format. */
public final class EstimateReport {
    private final Measures measures;
    private final boolean matrices;

    /**
     * How estimates are told.
     *
     * @param system the reader's units
     * @param matrices whether A, B and D are told too
     */
    public EstimateReport(UnitSystem system, boolean matrices) {
        this.measures = new Measures(system);
        this.matrices = matrices;
    }

    /**
     * Tells an estimate.
     *
     * @param estimate the estimate
     * @return the document
     */
    public Report of(PartEstimate estimate) {
        Report.Builder report = new Report.Builder();
        new SummarySection(measures).addTo(report, estimate);
        ZoneSection zones = new ZoneSection(measures, matrices);
        for (ZoneEstimate zone : estimate.zones()) {
            zones.addTo(report, zone);
        }
        new QuantitySection(measures).addTo(report, estimate);
        new CostSection(measures).addTo(report, estimate);
        addComparisons(report, estimate.comparisons());
        OptionalDouble weighed = estimate.part().measured().mass();
        if (weighed.isPresent()) {
            addContent(report, estimate, weighed.getAsDouble());
        }
        Cautions.addTo(report, "To mind in this schedule", Caution.Kind.SCHEDULE, estimate.cautions());
        Cautions.addTo(report, "Safety", Caution.Kind.SAFETY, estimate.cautions());
        return report.build();
    }

    private void addComparisons(Report.Builder report, List<Comparison> comparisons) {
        if (comparisons.isEmpty()) {
            return;
        }
        Table.Builder table = new Table.Builder(
                Column.words("what"),
                Column.numbers("planned", ""),
                Column.numbers("tolerance", ""),
                Column.numbers("measured", ""),
                Column.numbers("difference", ""),
                Column.words("verdict"));
        for (Comparison comparison : comparisons) {
            Unit unit = comparison.isMass() ? measures.mass() : measures.length();
            String sign = comparison.difference() > 0 ? "+" : "";
            table.row(
                    comparison.what(),
                    Measures.text(comparison.planned().planned(), unit),
                    Measures.bounds(comparison.planned(), unit),
                    Measures.text(comparison.measured(), unit),
                    sign + Measures.text(comparison.difference(), unit),
                    comparison.isInside() ? "inside" : "outside");
        }
        report.heading(2, "Measured").grid(table.build());
    }

    private static void addContent(Report.Builder report, PartEstimate estimate, double weighed) {
        estimate.fibreMassFractionAt(weighed)
                .ifPresent(
                        content -> report.paragraph("If resin makes the whole difference in mass, the fibre content is "
                                + Measures.percent(content) + " % by mass, not "
                                + Measures.percent(estimate.fibreMassFraction()) + " %."));
    }
}
