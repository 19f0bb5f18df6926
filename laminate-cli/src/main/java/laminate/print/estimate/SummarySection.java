package laminate.print.estimate;

import java.util.List;
import laminate.estimate.Cost;
import laminate.estimate.PartEstimate;
import laminate.estimate.Quantities;
import laminate.estimate.ResinQuantity;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.process.Range;

/** The totals of a part, as asked first. */
final class SummarySection {
    private final Measures measures;

    SummarySection(Measures measures) {
        this.measures = measures;
    }

    void addTo(Report.Builder report, PartEstimate estimate) {
        report.heading(1, estimate.part().name());
        String processes = EstimateWords.processes(estimate);
        if (!processes.isEmpty()) {
            report.fact("process", processes);
        }
        addMass(report, estimate);
        addThickness(report, estimate);
        addContent(report, estimate);
        addResin(report, estimate.quantities());
        if (!estimate.operations().isEmpty()) {
            report.fact("working time", EstimateWords.hours(estimate.time()) + " h");
        }
        estimate.cost().ifPresent(cost -> addCost(report, cost));
        if (estimate.mass().least() < estimate.mass().most()) {
            report.paragraph("In brackets: how far the process may stray.");
        }
    }

    private void addMass(Report.Builder report, PartEstimate estimate) {
        int count = estimate.part().count();
        if (count > 1) {
            report.fact("mouldings", Integer.toString(count));
        }
        report.fact(count > 1 ? "mass of one" : "mass", Measures.text(estimate.massEach(), measures.mass()));
        if (count > 1) {
            report.fact("mass of all", Measures.text(estimate.mass(), measures.mass()));
        }
        report.fact(
                count > 1 ? "all, as pulled" : "as pulled",
                Measures.text(estimate.massAsPulled(), measures.mass()) + " before trimming"
                        + (estimate.part().items().isEmpty() ? "" : ", without bought-in items"));
    }

    private void addThickness(Report.Builder report, PartEstimate estimate) {
        Range bare = estimate.meanThickness();
        double coated = estimate.meanThicknessWithCoatings().planned();
        String mean = estimate.zones().size() > 1 ? "mean thickness" : "thickness";
        report.fact(
                mean,
                Measures.text(bare, measures.length())
                        + (coated > bare.planned()
                                ? "; with coatings " + Measures.text(coated, measures.length())
                                : ""));
        report.fact(
                estimate.part().count() > 1 ? "area of one" : "area", Measures.text(estimate.area(), measures.area()));
    }

    private static void addContent(Report.Builder report, PartEstimate estimate) {
        if (estimate.fibreMassFraction() > 0) {
            report.fact(
                    "fibre content",
                    EstimateWords.content(estimate.fibreMassFraction(), estimate.fibreVolumeFraction()));
            report.fact("voids", Measures.percent(estimate.voidFraction()) + " % by volume");
        }
    }

    private void addResin(Report.Builder report, Quantities quantities) {
        List<ResinQuantity> laminating = quantities.resins().stream()
                .filter(resin -> !resin.use().isCoating())
                .toList();
        if (laminating.isEmpty()) {
            return;
        }
        report.fact("resin to mix", Measures.text(quantities.resinToMix(), measures.mass()) + ", coatings not counted");
        report.fact(
                EstimateWords.agents(laminating),
                Measures.text(quantities.agent(), measures.smallMass()) + ", "
                        + Measures.text(quantities.agentVolume(), measures.smallVolume()));
    }

    private static void addCost(Report.Builder report, Cost cost) {
        if (cost.total().isPresent()) {
            report.fact("cost", cost.total().get().toString());
        } else {
            report.fact(
                    "known cost",
                    cost.knownTotal() + ", without what has no price: " + String.join(", ", cost.missing()));
        }
    }
}
