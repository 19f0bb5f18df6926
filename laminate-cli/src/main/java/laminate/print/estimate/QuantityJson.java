package laminate.print.estimate;

import java.util.List;
import laminate.estimate.LayerCut;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PartEstimate;
import laminate.estimate.Quantities;
import laminate.estimate.ResinQuantity;
import laminate.print.JsonWriter;

/** The quantities of all mouldings in JSON. */
final class QuantityJson {
    private static final double MILLILITRES = 1e6;

    private QuantityJson() {}

    static void print(PartEstimate estimate, JsonWriter json) {
        Quantities quantities = estimate.quantities();
        json.key("quantities").object();
        printMasses(quantities, json);
        json.key("resins").array();
        quantities.resins().forEach(resin -> print(resin, json));
        json.end();
        printMaterials("materials", quantities.materials(), json);
        printMaterials("consumables", estimate.consumables(), json);
        json.key("cuts").array();
        quantities.cuts().forEach(cut -> print(cut, json));
        json.end().end();
    }

    private static void printMasses(Quantities quantities, JsonWriter json) {
        json.field("fibre_kg", quantities.fibre())
                .field("core_kg", quantities.core())
                .field("given_kg", quantities.given())
                .field("coating_kg", quantities.coating())
                .field("items_kg", quantities.items())
                .field("resin_in_part_kg", quantities.resinInPart())
                .field("laps_kg", quantities.laps())
                .field("trimmed_kg", quantities.trimmed())
                .field("resin_to_mix_kg", quantities.resinToMix())
                .field("catalyst_kg", quantities.agent())
                .field("catalyst_ml", quantities.agentVolume() * MILLILITRES);
    }

    private static void print(ResinQuantity resin, JsonWriter json) {
        json.object()
                .field("resin", resin.resin().id())
                .field("use", resin.use().use())
                .field("process", resin.use().process().word())
                .key("coating")
                .flag(resin.use().isCoating())
                .field("in_part_kg", resin.inPart())
                .field("lost_kg", resin.lost())
                .field("lost_trimmed_kg", resin.loss().trimmed())
                .field("lost_pots_kg", resin.loss().pots())
                .field("lost_bag_kg", resin.loss().bag())
                .field("lost_lines_kg", resin.loss().lines())
                .field("evaporated_kg", resin.evaporated())
                .field("to_mix_kg", resin.toMix())
                .field("agent", resin.dose().agent().id())
                .field("agent_percent", resin.dose().ratio() * 100)
                .field("agent_kg", resin.agent())
                .field("agent_ml", resin.agentVolume() * MILLILITRES)
                .end();
    }

    private static void printMaterials(String key, List<MaterialQuantity> materials, JsonWriter json) {
        json.key(key).array();
        for (MaterialQuantity material : materials) {
            json.object()
                    .field("material", material.material())
                    .field("kind", material.kind())
                    .field("area_m2", material.area())
                    .field("length_m", material.length())
                    .field("roll_width_m", material.rollWidth());
            if (material.inPart() > 0) {
                json.field("in_part_kg", material.inPart());
            }
            json.field("to_buy_kg", material.mass())
                    .field("volume_m3", material.volume())
                    .field("pieces", material.pieces())
                    .end();
        }
        json.end();
    }

    private static void print(LayerCut cut, JsonWriter json) {
        json.object()
                .field("zone", cut.zone())
                .field("layer", cut.number())
                .field("material", cut.material())
                .field("area_m2", cut.area())
                .field("dry_kg", cut.mass())
                .field("resin_kg", cut.resin())
                .end();
    }
}
