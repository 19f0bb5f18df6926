package laminate.print.compare;

import java.io.IOException;
import java.util.List;
import laminate.check.Subject;
import laminate.compare.Adjustment;
import laminate.compare.Adjustment.ChangedLayer;
import laminate.compare.Alternative;
import laminate.compare.Refusal;
import laminate.compare.Row;
import laminate.compare.SideBySide;
import laminate.compare.StiffnessSplit;
import laminate.print.JsonWriter;
import laminate.print.Printer;
import laminate.print.check.CheckJson;
import laminate.print.estimate.EstimateJson;

/**
 * Prints comparisons as one JSON object: {@code alternatives[]}, each with the keys of an estimate and those of what it
 * carries, and the figures, costs and curves side by side, values in the order of the alternatives. SI numbers with the
 * unit in the key or beside it, 15 significant digits, keys in a fixed order. What is not known or does not apply is left
 * out; in a list by alternatives it is an empty object, so that places keep their meaning. There is never a null.
 *
 * <p>Differences are shares of the first alternative: 0.12 for 12 % more. Money is text.
 */
public final class CompareJson implements Printer<SideBySide> {

    /** A printer. */
    public CompareJson() {}

    @Override
    public void print(List<SideBySide> comparisons, Appendable out) throws IOException {
        if (comparisons.size() != 1) {
            throw new IllegalArgumentException("one comparison makes one object, not " + comparisons.size());
        }
        JsonWriter.write(out, json -> print(comparisons.get(0), json));
    }

    private static void print(SideBySide ways, JsonWriter json) {
        json.object()
                .field("held_equal", ways.options().basis().words())
                .field("by", ways.options().means().words())
                .field("reference", ways.alternatives().get(0).name());
        json.key("alternatives").array();
        ways.alternatives().forEach(way -> print(way, json));
        json.end().key("refused").array();
        for (Refusal refusal : ways.refusals()) {
            json.object()
                    .field("name", refusal.name())
                    .field("reason", refusal.reason())
                    .end();
        }
        json.end().key("figures").array();
        ways.rows().forEach(row -> print(row, json));
        json.end().key("stiffness_ratios").array();
        ways.splits().forEach(split -> print(split, json));
        json.end();
        CurveJson.print(ways, json);
        json.key("remarks").array();
        ways.remarks().forEach(json::text);
        json.end().end();
    }

    private static void print(Alternative way, JsonWriter json) {
        json.object().field("name", way.name());
        EstimateJson.printFields(way.estimate(), json);
        json.field("styrene_kg", way.styrene());
        if (way.check().isPresent()) {
            json.key("limits_met").flag(way.check().get().limitsMet());
            CheckJson.printBending(way.check().get(), json);
        } else {
            json.key("panels").array().end().key("beams").array().end();
        }
        json.key("adjustments").array();
        way.adjustments().forEach(change -> print(change, json));
        json.end();
        way.curve().ifPresent(curve -> CurveJson.print(curve, json));
        json.end();
    }

    private static void print(Adjustment change, JsonWriter json) {
        json.object()
                .field("zone", change.zone())
                .field("held_equal", change.basis().words())
                .field("by", change.means().words())
                .field("factor", change.factor())
                .field("ratio_as_given", change.ratioAsGiven())
                .field("ratio_as_laid", change.ratioAsLaid())
                .field("exact_thickness_m", change.exactThickness())
                .field("exact_mass_per_area_kg_m2", change.exactMassPerArea());
        json.key("layers").array();
        for (ChangedLayer layer : change.layers()) {
            json.object()
                    .field("material", layer.material())
                    .field("layer", layer.number())
                    .field("exact", layer.exact())
                    .field("times", layer.times())
                    .field("thickness_m", layer.thickness())
                    .end();
        }
        json.end().end();
    }

    private static void print(Row row, JsonWriter json) {
        json.object()
                .field("of", row.subject().kind().word())
                .field("name", row.subject().name());
        if (row.subject().kind() != Subject.Kind.PART) {
            json.field("zone", row.subject().zone());
        }
        json.field("measure", row.measure().words())
                .field("unit", row.measure().symbol())
                .key("values")
                .array();
        for (int i = 0; i < row.values().size(); i++) {
            json.object()
                    .field("value", row.values().get(i))
                    .field("difference", row.difference(i))
                    .end();
        }
        json.end().end();
    }

    private static void print(StiffnessSplit split, JsonWriter json) {
        json.object()
                .field("alternative", split.alternative())
                .field("zone", split.zone())
                .field("thickness", split.thickness())
                .field("thickness_cubed", split.thicknessCubed())
                .field("modulus", split.modulus())
                .field("stiffness", split.stiffness())
                .end();
    }
}
