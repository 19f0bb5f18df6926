package laminate.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import laminate.check.BeamCheck;
import laminate.check.CheckOptions;
import laminate.part.BeamPlan;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.Deflection;
import laminate.theory.beam.PointLoad;

/** A beam or strip: deflection, moment and shear force, reserve factors, and the plies where they are nearest to failure. */
final class BeamSection {
    private final Measures measures;
    private final boolean plies;
    private final CheckOptions options;

    BeamSection(Measures measures, boolean plies, CheckOptions options) {
        this.measures = measures;
        this.plies = plies;
        this.options = options;
    }

    void addTo(Report.Builder report, BeamCheck check) {
        BeamPlan plan = check.plan();
        report.heading(2, "Beam " + plan.name());
        report.fact(
                "beam",
                "zone " + plan.zone() + ", span " + length(plan.span()) + " along "
                        + plan.along().word() + ", " + length(plan.width()) + " wide, "
                        + plan.supports().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        report.fact("load", load(plan));
        addDeflection(report, check);
        addForces(report, plan, check.response());
        report.grid(new ReserveTable(measures, PlyNames.of(check.zone())).of(check.reserves(), 1));
        PlySection.addTo(
                report,
                " at " + length(check.worstPlace()),
                check.worst(),
                new PlyTables(measures, check.zone(), options.criterion()),
                plies,
                false);
    }

    private String length(double metres) {
        return metres == 0 ? "0" : Measures.text(metres, measures.length());
    }

    private String load(BeamPlan plan) {
        List<String> loads = new ArrayList<>();
        for (PointLoad load : plan.load().points()) {
            loads.add(Measures.text(load.force(), measures.force()) + " at " + length(load.position()) + over(plan));
        }
        if (plan.load().uniform() != 0) {
            loads.add(Measures.text(plan.load().uniform(), measures.forcePerLength()) + " all along");
        }
        return String.join(", ", loads);
    }

    private String over(BeamPlan plan) {
        return plan.bearingLength().isPresent()
                ? " over " + length(plan.bearingLength().getAsDouble())
                : "";
    }

    private void addDeflection(Report.Builder report, BeamCheck check) {
        Deflection found = check.deflection();
        double w = Math.abs(found.total());
        if (w == 0) {
            report.fact("deflection", "none");
            return;
        }
        report.fact(
                "deflection",
                length(w) + " at " + length(found.x()) + ", 1/"
                        + Measures.number(check.plan().span() / w) + " of the span");
        report.fact(
                "of which",
                "bending " + length(Math.abs(found.bending())) + ", shear " + length(Math.abs(found.shear())) + " ("
                        + Measures.percent(found.shear() / found.total()) + " %)");
    }

    /** Per width, as a laminate carries them. */
    private void addForces(Report.Builder report, BeamPlan plan, BeamResponse response) {
        report.fact(
                "largest moment",
                Measures.text(response.largestMoment().value() / plan.width(), measures.momentPerLength()) + " at "
                        + length(response.largestMoment().x()));
        report.fact(
                "largest shear",
                Measures.text(response.largestShearForce().value() / plan.width(), measures.forcePerLength()) + " at "
                        + length(response.largestShearForce().x()));
    }
}
