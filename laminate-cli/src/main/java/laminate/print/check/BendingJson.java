package laminate.print.check;

import java.util.List;
import laminate.check.BeamCheck;
import laminate.check.PanelCheck;
import laminate.check.PanelSpot;
import laminate.part.BeamPlan;
import laminate.part.PanelPlan;
import laminate.print.JsonWriter;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.Peak;
import laminate.theory.panel.Convergence;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.LargeDeflection;
import laminate.theory.panel.PanelPoint;

/** Panels and beams in JSON. */
final class BendingJson {
    private BendingJson() {}

    static void print(PanelCheck check, JsonWriter json) {
        PanelPlan plan = check.plan();
        PlyJson plies = new PlyJson(check.zone());
        json.object()
                .field("name", plan.name())
                .field("zone", plan.zone())
                .field("length_m", plan.length())
                .field("width_m", plan.width());
        Edges edges = plan.edges();
        json.key("edges").array();
        for (Edge edge : List.of(edges.xStart(), edges.xEnd(), edges.yStart(), edges.yEnd())) {
            json.text(CheckWords.edge(edge));
        }
        json.end();
        printDeflection(check, json);
        plies.reserves(check.reserves(), json);
        json.key("moments").array();
        check.spots().forEach((spot, point) -> print(spot, point, json));
        json.end().key("worst_point").object();
        json.field("x_m", check.worstPlace().x())
                .field("y_m", check.worstPlace().y());
        plies.points("plies", check.worst(), json);
        json.end().end();
    }

    private static void printDeflection(PanelCheck check, JsonWriter json) {
        json.field("deflection_m", check.bending().deflection())
                .field("bending_deflection_m", check.bending().bendingDeflection())
                .field("shear_deflection_m", check.bending().shearDeflection())
                .field("soft_edges_deflection_m", check.softEdgeDeflection())
                .field("governing_deflection_m", check.governingDeflection())
                .field(
                        "share_of_span",
                        Math.abs(check.governingDeflection()) / check.plan().span());
        check.large().ifPresent(large -> print(large, json));
        print(check.bending().response().convergence(), json);
    }

    /** What the last refinement changed, as shares. */
    private static void print(Convergence convergence, JsonWriter json) {
        json.key("convergence").object().key("reached").flag(convergence.reached());
        json.field("deflection", convergence.deflection())
                .field("moment", convergence.moment())
                .field("shear_force", convergence.shear())
                .end();
    }

    private static void print(LargeDeflection large, JsonWriter json) {
        json.field("large_deflection_m", large.deflection())
                .key("large_deflection_stable")
                .flag(large.isStable());
    }

    private static void print(PanelSpot spot, PanelPoint point, JsonWriter json) {
        json.object()
                .field("place", CheckWords.spot(spot))
                .field("x_m", point.x())
                .field("y_m", point.y())
                .field("deflection_m", point.deflection());
        PlyJson.vector("N_xy_N_m", point.resultants().force(), json);
        PlyJson.vector("M_xy_Nm_m", point.resultants().moment(), json);
        json.field("Qx_N_m", point.Qx()).field("Qy_N_m", point.Qy()).end();
    }

    static void print(BeamCheck check, JsonWriter json) {
        BeamPlan plan = check.plan();
        PlyJson plies = new PlyJson(check.zone());
        json.object()
                .field("name", plan.name())
                .field("zone", plan.zone())
                .field("along", plan.along().word())
                .field("span_m", plan.span())
                .field("width_m", plan.width())
                .field("deflection_m", check.deflection().total())
                .field("deflection_at_m", check.deflection().x())
                .field("bending_deflection_m", check.deflection().bending())
                .field("shear_deflection_m", check.deflection().shear())
                .field("share_of_span", Math.abs(check.deflection().total()) / plan.span());
        printForces(check.response(), json);
        plies.reserves(check.reserves(), json);
        json.key("worst_section").object().field("x_m", check.worstPlace());
        plies.points("plies", check.worst(), json);
        json.end().end();
    }

    private static void printForces(BeamResponse response, JsonWriter json) {
        Peak moment = response.largestMoment();
        Peak shear = response.largestShearForce();
        json.field("largest_moment_Nm", moment.value())
                .field("largest_moment_at_m", moment.x())
                .field("largest_shear_force_N", shear.value())
                .field("largest_shear_force_at_m", shear.x());
    }
}
