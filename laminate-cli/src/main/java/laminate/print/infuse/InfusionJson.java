package laminate.print.infuse;

import java.util.Optional;
import laminate.material.Figure;
import laminate.plan.infusion.Buckets;
import laminate.plan.infusion.Fill;
import laminate.plan.infusion.FlowFigures;
import laminate.plan.infusion.GelMargin;
import laminate.plan.infusion.HeldResin;
import laminate.plan.infusion.HoseLoss;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.LeakLimit;
import laminate.plan.infusion.Reach;
import laminate.print.Cautions;
import laminate.print.JsonWriter;
import laminate.process.flow.FrontPoint;

/** One infusion in JSON. */
final class InfusionJson {
    private InfusionJson() {}

    static void print(Infusion infusion, JsonWriter json) {
        json.key("infusion").object();
        json.key("zones").array();
        infusion.zones().forEach(json::text);
        json.end()
                .field("count", infusion.count())
                .field("feed", infusion.plan().path().feed().word())
                .field("flow_length_m", infusion.plan().path().flowLength());
        print(infusion.fill(), json);
        print(infusion.gel(), json);
        print(infusion.figures(), json);
        infusion.reach().ifPresent(reach -> print(reach, json));
        print(infusion.held(), json);
        infusion.hose().ifPresent(hose -> print(hose, json));
        print(infusion.leak(), json);
        infusion.buckets().ifPresent(buckets -> print(buckets, json));
        Cautions.print(infusion.cautions(), json);
        json.end();
    }

    private static void print(Fill fill, JsonWriter json) {
        json.field("fill_time_s", fill.time())
                .field("fill_time_least_s", fill.quickest())
                .field("fill_time_most_s", fill.slowest())
                .field("lag_m", fill.lag())
                .field("mesh_fill_time_s", fill.meshTime())
                .field("through_time_s", fill.throughTime());
        json.key("front").array();
        for (FrontPoint point : fill.front()) {
            json.object()
                    .field("time_s", point.time())
                    .field("position_m", point.position())
                    .end();
        }
        json.end();
    }

    private static void print(GelMargin gel, JsonWriter json) {
        gel.gelTime()
                .ifPresent(time -> json.field("gel_time_s", time.value())
                        .field("gel_time_source", time.source())
                        .field("gel_time_status", time.status().word()));
        json.field("usable_share", gel.usableShare().value())
                .field("usable_time_s", gel.usableTime())
                .field("verdict", gel.verdict().word())
                .field("reason", gel.reason());
    }

    private static void print(FlowFigures figures, JsonWriter json) {
        json.field("effective_permeability_m2", figures.effectivePermeability())
                .field("effective_porosity", figures.effectivePorosity())
                .key("permeability_from_memory")
                .flag(figures.isPermeabilityFromMemory())
                .field("permeability_factor", figures.permeabilityFactor())
                .field("laminate", figures.laminate());
        json.key("figures").array();
        print("driving_pressure_Pa", figures.drivingPressure(), json);
        print("viscosity_Pas", figures.viscosity(), json);
        print("viscosity_time_s", figures.viscosityTime(), json);
        print("density_kg_m3", figures.density(), json);
        print("thickness_m", figures.thickness(), json);
        print("porosity", figures.porosity(), json);
        print("permeability_m2", figures.permeability(), json);
        json.end();
    }

    private static void print(String key, Optional<Figure> figure, JsonWriter json) {
        figure.ifPresent(known -> print(key, known, json));
    }

    private static void print(String key, Figure figure, JsonWriter json) {
        json.object()
                .field(key, figure.value())
                .field("source", figure.source())
                .field("status", figure.status().word())
                .end();
    }

    private static void print(Reach reach, JsonWriter json) {
        json.field("greatest_flow_length_m", reach.greatest())
                .field("feed_spacing_m", reach.spacing())
                .field("sure_feed_spacing_m", reach.sureSpacing());
    }

    private static void print(HeldResin held, JsonWriter json) {
        json.field("resin_in_lines_kg", held.lines())
                .field("resin_in_hose_kg", held.hose().value())
                .field("resin_in_spiral_kg", held.spiral().value())
                .field("resin_in_mesh_kg", held.mesh().value())
                .field("resin_in_catch_pot_kg", held.catchPot().value())
                .field("resin_left_in_bucket_kg", held.bucket().value())
                .field("resin_in_grooves_kg", held.grooves())
                .field("resin_thrown_away_kg", held.lost());
    }

    private static void print(HoseLoss hose, JsonWriter json) {
        json.key("hose")
                .object()
                .field("flow_m3_s", hose.flow())
                .field("pressure_loss_Pa", hose.pressure())
                .field("delay_s", hose.delay())
                .end();
    }

    private static void print(LeakLimit leak, JsonWriter json) {
        json.key("drop_test")
                .object()
                .field("drop_Pa", leak.drop())
                .field("time_s", leak.time())
                .field("rate_Pa_s", leak.rate())
                .field("source", leak.source())
                .field("status", leak.status().word())
                .end();
    }

    private static void print(Buckets buckets, JsonWriter json) {
        json.field("largest_bucket_kg", buckets.largest()).key("buckets").array();
        for (Buckets.Bucket bucket : buckets.mixes()) {
            json.object()
                    .field("from_s", bucket.from())
                    .field("to_s", bucket.to())
                    .field("resin_kg", bucket.mass())
                    .end();
        }
        json.end();
    }
}
