package laminate.print.check;

import laminate.check.LoadCaseCheck;
import laminate.estimate.ZoneEstimate;
import laminate.print.JsonWriter;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateResponse;
import laminate.theory.failure.FailureStep;
import laminate.theory.failure.FailureSurface;
import laminate.theory.failure.PlyReserve;
import laminate.theory.failure.ProgressiveFailure;
import laminate.theory.failure.SurfacePoint;

/** A load case in JSON: load, mid-plane, plies, reserve factors, steps to the last ply, failure surface. */
final class LoadCaseJson {
    private LoadCaseJson() {}

    static void print(ZoneEstimate zone, LoadCaseCheck check, JsonWriter json) {
        PlyJson plies = new PlyJson(zone);
        json.object().field("name", check.loadCase().name());
        printLoad(check.loadCase().load(), json);
        printMidplane(check.laminate().response(), json);
        plies.points("plies", check.laminate(), json);
        plies.reserves(check.reserves(), json);
        printSteps(check.progressive(), plies, json);
        check.surface().ifPresent(surface -> printSurface(surface, plies, json));
        json.end();
    }

    private static void printLoad(LaminateLoad load, JsonWriter json) {
        json.key("load").object();
        load.given().forEach((term, value) -> json.field(TermKeys.of(term), value));
        field("Qx_N_m", load.Qx(), json);
        field("Qy_N_m", load.Qy(), json);
        field("temperature_change_K", load.temperatureChange(), json);
        field("moisture", load.moisture(), json);
        json.end();
    }

    private static void field(String key, double value, JsonWriter json) {
        if (value != 0) {
            json.field(key, value);
        }
    }

    private static void printMidplane(LaminateResponse response, JsonWriter json) {
        json.key("midplane").object();
        PlyJson.vector("strain_xy", response.deformation().strain(), json);
        PlyJson.vector("curvature_xy_1_m", response.deformation().curvature(), json);
        PlyJson.vector("N_xy_N_m", response.resultants().force(), json);
        PlyJson.vector("M_xy_Nm_m", response.resultants().moment(), json);
        json.end();
    }

    private static void printSteps(ProgressiveFailure failure, PlyJson plies, JsonWriter json) {
        json.key("failure_steps").array();
        for (FailureStep step : failure.steps()) {
            json.object().field("load_factor", step.loadFactor()).key("failed").array();
            for (PlyReserve failed : step.failed()) {
                json.object();
                plies.failure(failed, json);
                json.end();
            }
            json.end().end();
        }
        json.end();
    }

    private static void printSurface(FailureSurface surface, PlyJson plies, JsonWriter json) {
        String x = TermKeys.of(surface.xTerm());
        String y = TermKeys.of(surface.yTerm());
        json.key("failure_surface").object();
        json.field("x", x).field("y", y).key("points").array();
        for (SurfacePoint point : surface.points()) {
            json.object().field(x, point.x()).field(y, point.y());
            plies.failure(point.failure(), json);
            json.end();
        }
        json.end().end();
    }
}
