package laminate.print.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import laminate.check.BeamCheck;
import laminate.part.BeamPlan;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.Deflection;
import laminate.theory.beam.PointLoad;

/** A beam or strip: deflection, moment and shear force, reserve factors, and the plies where they are nearest to failure. */
final class BeamSection {
    private final Measures measures;
    private final PlySection plies;

    BeamSection(Measures measures, PlySection plies) {
        this.measures = measures;
        this.plies = plies;
    }

    void addTo(Report.Builder report, BeamCheck check) {
        BeamPlan plan = check.plan();
        report.heading(2, "Beam " + plan.name());
        report.fact(
                "beam",
                "zone " + plan.zone() + ", span " + measures.size(plan.span()) + " along "
                        + plan.along().word() + ", " + measures.size(plan.width()) + " wide, "
                        + plan.supports().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        report.fact("load", load(plan));
        addDeflection(report, check);
        addForces(report, plan, check.response());
        report.grid(new ReserveTable(measures, PlyNames.of(check.zone())).of(check.reserves(), 1));
        plies.addTo(report, " at " + measures.size(check.worstPlace()), check.zone(), check.worst(), false);
    }

    private String load(BeamPlan plan) {
        List<String> loads = new ArrayList<>();
        for (PointLoad load : plan.load().points()) {
            loads.add(Measures.text(load.force(), measures.force()) + " at " + measures.size(load.position())
                    + over(plan));
        }
        if (plan.load().uniform() != 0) {
            loads.add(Measures.text(plan.load().uniform(), measures.forcePerLength()) + " all along");
        }
        return String.join(", ", loads);
    }

    private String over(BeamPlan plan) {
        return plan.bearingLength().isPresent()
                ? " over " + measures.size(plan.bearingLength().getAsDouble())
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
                measures.size(w) + " at " + measures.size(found.x()) + ", 1/"
                        + Measures.number(check.plan().span() / w) + " of the span");
        report.fact("of which", measures.parts(found.bending(), found.shear(), found.total()));
    }

    /** Per width, as a laminate carries them. */
    private void addForces(Report.Builder report, BeamPlan plan, BeamResponse response) {
        report.fact(
                "largest moment",
                Measures.text(response.largestMoment().value() / plan.width(), measures.momentPerLength()) + " at "
                        + measures.size(response.largestMoment().x()));
        report.fact(
                "largest shear",
                Measures.text(response.largestShearForce().value() / plan.width(), measures.forcePerLength()) + " at "
                        + measures.size(response.largestShearForce().x()));
    }
}
