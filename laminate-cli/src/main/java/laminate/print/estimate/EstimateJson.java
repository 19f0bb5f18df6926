package laminate.print.estimate;

import java.io.IOException;
import java.util.List;
import laminate.estimate.Comparison;
import laminate.estimate.OperationTime;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.print.Cautions;
import laminate.print.JsonWriter;
import laminate.print.Printer;
import laminate.process.Range;

/**
 * Prints estimates as one JSON object with a list of parts: SI numbers with the unit in the key, 15 significant digits,
 * keys in a fixed order. What is not known or does not apply is left out; there is never a null.
 *
 * <p>Masses, quantities, hours and cost are of all mouldings; {@code mass_each_kg}, zones, area and thickness are of
 * one. Laminate thickness is without coatings. {@code resin_kg_m2} of a layer holds the paste of its bed, which {@code
 * bed_kg_m2} tells apart. A head of the cost is the sum of its known lines, and is left out while none of it is known.
 */
public final class EstimateJson implements Printer<PartEstimate> {

    /** A printer. */
    public EstimateJson() {}

    @Override
    public void print(List<PartEstimate> estimates, Appendable out) throws IOException {
        JsonWriter.write(out, json -> {
            json.object().key("parts").array();
            for (PartEstimate estimate : estimates) {
                json.object();
                printFields(estimate, json);
                json.end();
            }
            json.end().end();
        });
    }

    /**
     * Writes the fields of an estimate, for results that hold an estimate and more.
     *
     * @param estimate the estimate
     * @param json takes them; an object is open
     */
    public static void printFields(PartEstimate estimate, JsonWriter json) {
        json.field("part", estimate.part().name())
                .field("count", estimate.part().count());
        String processes = EstimateWords.processes(estimate);
        if (!processes.isEmpty()) {
            json.field("process", processes);
        }
        printTotals(estimate, json);
        json.key("zones").array();
        for (ZoneEstimate zone : estimate.zones()) {
            ZoneJson.print(zone, json);
        }
        json.end();
        QuantityJson.print(estimate, json);
        printHours(estimate, json);
        estimate.cost().ifPresent(cost -> CostJson.print(estimate, cost, json));
        Cautions.print(estimate.cautions(), json);
        printComparisons(estimate.comparisons(), json);
        estimate.part()
                .measured()
                .mass()
                .ifPresent(mass -> json.field("measured_fibre_mass_fraction", estimate.fibreMassFractionAt(mass)));
    }

    private static void printTotals(PartEstimate estimate, JsonWriter json) {
        printRange("mass", "kg", estimate.mass(), json);
        printRange("mass_each", "kg", estimate.massEach(), json);
        json.field("mass_as_pulled_kg", estimate.massAsPulled()).field("area_m2", estimate.area());
        printRange("thickness", "m", estimate.meanThickness(), json);
        printRange("thickness_with_coatings", "m", estimate.meanThicknessWithCoatings(), json);
        if (estimate.fibreMassFraction() > 0) {
            json.field("fibre_mass_fraction", estimate.fibreMassFraction())
                    .field("fibre_volume_fraction", estimate.fibreVolumeFraction())
                    .field("void_fraction", estimate.voidFraction());
        }
    }

    /** A planned value as {@code name_unit}, its bounds as {@code name_least_unit} and {@code name_most_unit}. */
    static void printRange(String name, String unit, Range range, JsonWriter json) {
        json.field(name + "_" + unit, range.planned());
        if (range.least() != range.most()) {
            json.field(name + "_least_" + unit, range.least()).field(name + "_most_" + unit, range.most());
        }
    }

    private static void printHours(PartEstimate estimate, JsonWriter json) {
        if (estimate.operations().isEmpty()) {
            return;
        }
        json.field("hours", estimate.time() / 3600).key("operations").array();
        for (OperationTime time : estimate.operations()) {
            json.object().field("operation", time.operation().name());
            String key = switch (time.operation().basis()) {
                case AREA, LAYER_AREA -> "area_m2";
                case EDGE -> "edge_m";
                case STAGE -> "stages";
                case ITEM -> "items";
                case MOULDING -> "mouldings";
            };
            json.field(key, time.amount()).field("hours", time.time() / 3600).end();
        }
        json.end();
    }

    private static void printComparisons(List<Comparison> comparisons, JsonWriter json) {
        if (comparisons.isEmpty()) {
            return;
        }
        json.key("measured").array();
        for (Comparison comparison : comparisons) {
            String unit = comparison.isMass() ? "kg" : "m";
            json.object().field("what", comparison.what());
            printRange("planned", unit, comparison.planned(), json);
            json.field("measured_" + unit, comparison.measured())
                    .field("difference_" + unit, comparison.difference())
                    .key("inside")
                    .flag(comparison.isInside())
                    .end();
        }
        json.end();
    }
}
