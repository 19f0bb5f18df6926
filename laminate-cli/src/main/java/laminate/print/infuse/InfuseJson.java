package laminate.print.infuse;

import java.io.IOException;
import java.util.List;
import laminate.estimate.ZoneEstimate;
import laminate.plan.infusion.PartInfusion;
import laminate.plan.infusion.ResinBalance;
import laminate.plan.infusion.ResinBalance.Share;
import laminate.print.Cautions;
import laminate.print.JsonWriter;
import laminate.print.Printer;

/**
 * Prints infusions as one JSON object with a list of parts: {@code infusion} stands at the part that plans one, and at each
 * zone that does. SI numbers with the unit in the key, 15 significant digits, keys in a fixed order. What is not known,
 * never reached or does not apply is left out; there is never a null.
 */
public final class InfuseJson implements Printer<PartInfusion> {

    /** A printer. */
    public InfuseJson() {}

    @Override
    public void print(List<PartInfusion> parts, Appendable out) throws IOException {
        JsonWriter.write(out, json -> {
            json.object().key("parts").array();
            parts.forEach(part -> print(part, json));
            json.end().end();
        });
    }

    private static void print(PartInfusion part, JsonWriter json) {
        json.object().field("part", part.estimate().part().name());
        part.ofPart().ifPresent(infusion -> InfusionJson.print(infusion, json));
        json.key("zones").array();
        for (ZoneEstimate zone : part.estimate().zones()) {
            String name = zone.zone().name();
            json.object().field("name", name);
            part.ofZone(name).ifPresent(infusion -> InfusionJson.print(infusion, json));
            json.end();
        }
        json.end().key("resin_balances").array();
        part.balances().forEach(balance -> print(balance, json));
        json.end();
        Cautions.print(part.cautions(), json);
        json.end();
    }

    private static void print(ResinBalance balance, JsonWriter json) {
        json.object()
                .field("resin", balance.use().resin().id())
                .field("use", balance.use().use())
                .field("estimated_kg", balance.estimated())
                .field("planned_kg", balance.planned());
        json.key("places").array();
        for (Share share : balance.shares()) {
            json.object()
                    .field("place", share.place().word())
                    .field("estimated_kg", share.estimated())
                    .field("planned_kg", share.planned())
                    .end();
        }
        json.end().key("remarks").array();
        balance.remarks().forEach(json::text);
        json.end().end();
    }
}
