package laminate.print.mix;

import java.io.IOException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import laminate.plan.Bond;
import laminate.plan.ClockTime;
import laminate.plan.FreshAir;
import laminate.plan.InfusingTime;
import laminate.plan.Mix;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageLayer;
import laminate.plan.StageResin;
import laminate.plan.Suggestion;
import laminate.print.Cautions;
import laminate.print.JsonWriter;
import laminate.print.Printer;

/**
 * Prints plans of stages and mixes as one JSON object: {@code parts[]} has what holds for a whole plan, {@code stages[]}
 * the stages of all plans in order, each with the name of its part, its {@code resins[]} with the need, and its {@code
 * mixes[]}. SI numbers with the unit in the key, 15 significant digits, keys in a fixed order. What is not known or does
 * not apply is left out; there is never a null.
 *
 * <p>A plan is of one moulding. A time of day stands as {@code HH:mm:ss} beside the day of the plan, counted from 1.
 */
public final class MixJson implements Printer<MixPlan> {
    private static final double MILLILITRES = 1e6;

    /** A printer. */
    public MixJson() {}

    @Override
    public void print(List<MixPlan> plans, Appendable out) throws IOException {
        JsonWriter.write(out, json -> {
            json.object().key("parts").array();
            for (MixPlan plan : plans) {
                print(plan, json);
            }
            json.end().key("stages").array();
            for (MixPlan plan : plans) {
                plan.stages().forEach(stage -> print(plan.part(), stage, json));
            }
            json.end().end();
        });
    }

    private static void print(MixPlan plan, JsonWriter json) {
        json.object()
                .field("part", plan.part())
                .field("mouldings", plan.mouldings())
                .field("temperature_K", plan.temperature())
                .key("temperature_assumed")
                .flag(plan.temperatureAssumed())
                .field("crew", plan.crew())
                .key("fits")
                .flag(plan.fits());
        plan.freshAir().ifPresent(air -> print(air, json));
        json.key("dose_tables").array();
        plan.doses().forEach(table -> DoseJson.print(table, json));
        json.end();
        Cautions.print(plan.cautions(), json);
        json.end();
    }

    private static void print(FreshAir air, JsonWriter json) {
        json.key("fresh_air")
                .object()
                .field("stage", air.stage())
                .field("styrene_kg", air.styrene())
                .field("time_s", air.time())
                .field("limit_kg_m3", air.limit())
                .field("flow_m3_s", air.flow())
                .field("source", air.source())
                .field("status", air.status().word())
                .end();
    }

    private static void print(String part, Stage stage, JsonWriter json) {
        json.object()
                .field("part", part)
                .field("stage", stage.number())
                .field("name", stage.name())
                .field("kind", MixWords.word(stage.kind()))
                .field("process", stage.process().word())
                .field("thickness_m", stage.thickness())
                .field("dry_time_s", stage.dryTime())
                .field("wet_time_s", stage.wetTime())
                .field("bag_time_s", stage.bagTime());
        stage.infusing().ifPresent(infusing -> print(infusing, json));
        print("start", stage.start(), json);
        print("end", stage.end(), json);
        stage.gelled().ifPresent(time -> print("gelled", time, json));
        stage.bond().ifPresent(bond -> print(bond, json));
        json.key("layers").array();
        stage.layers().forEach(layer -> print(layer, json));
        json.end().key("resins").array();
        stage.resins().forEach(resin -> print(resin, json));
        json.end().key("mixes").array();
        for (StageResin resin : stage.resins()) {
            resin.mixes().forEach(mix -> print(resin.use(), mix, json));
        }
        json.end();
        Cautions.print(stage.cautions(), json);
        json.end();
    }

    private static void print(InfusingTime infusing, JsonWriter json) {
        json.key("infusing")
                .object()
                .field("time_s", infusing.time())
                .field("by_flow_s", infusing.planned())
                .field("by_labour_s", infusing.byLabour());
        print("by_flow_zones", infusing.plannedZones(), json);
        print("never_full_zones", infusing.neverFull(), json);
        json.end();
    }

    private static void print(String key, List<String> zones, JsonWriter json) {
        json.key(key).array();
        zones.forEach(json::text);
        json.end();
    }

    private static void print(String key, ClockTime time, JsonWriter json) {
        json.field(key + "_day", time.day())
                .field(key, time.time().truncatedTo(ChronoUnit.SECONDS).format(MixWords.SECONDS));
    }

    private static void print(Bond bond, JsonWriter json) {
        json.key("laid_onto")
                .object()
                .field("resin", bond.onto())
                .field("gap_s", bond.gap())
                .field("verdict", MixWords.word(bond.verdict()))
                .field("ideal_s", bond.ideal())
                .field("most_s", bond.most())
                .field("text", bond.text())
                .field("source", bond.source())
                .field("status", bond.status().word())
                .end();
    }

    private static void print(StageLayer layer, JsonWriter json) {
        json.object()
                .field("zone", layer.zone())
                .field("layer", layer.number())
                .field("material", layer.material())
                .field("pieces", layer.pieces())
                .field("angle_deg", layer.angle())
                .key("turned")
                .flag(layer.turned())
                .field("area_m2", layer.area())
                .field("lap_share", layer.lapShare())
                .field("thickness_m", layer.thickness())
                .field("resin_kg", layer.resin())
                .end();
    }

    private static void print(StageResin resin, JsonWriter json) {
        json.object()
                .field("use", resin.use())
                .field("resin", resin.resin().id())
                .field("agent", resin.dose().agent().id())
                .field("agent_percent", resin.dose().ratio() * 100)
                .field("need_kg", resin.need());
        if (resin.fits()) {
            json.field("mixed_kg", resin.mixed())
                    .field("surplus_kg", resin.surplus())
                    .field("agent_kg", resin.agent());
        }
        json.field("work_time_s", resin.workTime())
                .field("gel_time_s", resin.gelTime())
                .field("gel_time_source", resin.gelTimeSource());
        resin.gelTimeStatus().ifPresent(status -> json.field("gel_time_status", status.word()));
        json.key("fits").flag(resin.fits());
        resin.problem().ifPresent(problem -> json.field("problem", problem));
        if (!resin.suggestions().isEmpty()) {
            json.key("suggestions").array();
            resin.suggestions().forEach(suggestion -> print(suggestion, json));
            json.end();
        }
        json.end();
    }

    private static void print(Suggestion suggestion, JsonWriter json) {
        json.object();
        suggestion.dose().ifPresent(dose -> json.field("agent_percent", dose * 100));
        suggestion.crew().ifPresent(crew -> json.field("crew", crew));
        json.field("mixes", suggestion.mixes()).end();
    }

    private static void print(String use, Mix mix, JsonWriter json) {
        json.object()
                .field("mix", mix.number())
                .field("use", use)
                .field("material", mix.material())
                .field("agent", mix.agent())
                .field("needed_kg", mix.needed())
                .field("resin_kg", mix.resin())
                .field("resin_ml", mix.resinVolume() * MILLILITRES)
                .field("catalyst_kg", mix.catalyst())
                .field("catalyst_ml", mix.catalystVolume() * MILLILITRES);
        mix.strokes().ifPresent(strokes -> json.field("pump_strokes", strokes));
        json.field("surplus_kg", mix.surplus())
                .field("gel_time_s", mix.gelTime())
                .field("usable_time_s", mix.usableTime())
                .field("work_time_s", mix.workTime())
                .end();
    }
}
