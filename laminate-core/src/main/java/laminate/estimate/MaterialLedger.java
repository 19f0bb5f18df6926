package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Material;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.Loss;
import laminate.process.Workshop;

/** Sums what must be bought: reinforcement, bulker and core by area and mass, then resins and agents by mass and volume. */
final class MaterialLedger {

    private final Workshop workshop;
    /** By id and thickness: sheets of one core in two thicknesses are bought, and priced by area, apart. */
    private final Map<String, MaterialQuantity> sheets = new LinkedHashMap<>();

    MaterialLedger(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * Adds a layer; one that is given by its ply properties is not bought.
     *
     * @param laid the layer as it lies
     * @param area area that ends in the part, laps included (m²)
     * @param margin area that is trimmed off (m²)
     */
    void add(LaidLayer laid, double area, double margin) {
        Layer layer = laid.layer();
        if (layer instanceof ReinforcementLayer reinforcement) {
            add(laid, reinforcement.reinforcement(), 0, Loss.REINFORCEMENT, area, margin);
        } else if (layer instanceof BulkerLayer bulker) {
            add(laid, bulker.bulker(), 0, Loss.REINFORCEMENT, area, margin);
        } else if (layer instanceof CoreLayer core) {
            add(laid, core.core(), core.thickness(), Loss.CORE, area, margin);
        }
    }

    private void add(LaidLayer laid, Material material, double thickness, Loss cause, double area, double margin) {
        double waste = workshop.loss(laid.layer().laying().orElseThrow().process(), cause)
                .value();
        double perArea = laid.fibreMass() + laid.coreMass();
        double bought = (area + margin) * (1 + waste);
        add(
                material.id() + " " + thickness,
                sheet(material, thickness, perArea * area, perArea * bought, bought),
                sheets);
    }

    /** All materials to buy: sheets as they were added, then each resin with its agent. */
    List<MaterialQuantity> quantities(List<ResinQuantity> resins) {
        Map<String, MaterialQuantity> liquids = new LinkedHashMap<>();
        for (ResinQuantity mixed : resins) {
            Resin resin = mixed.resin();
            Agent agent = mixed.dose().agent();
            double ofAgent = mixed.dose().shareOfMatrix() * mixed.inPart();
            MaterialQuantity base =
                    liquid(resin, kind(resin), mixed.inPart() - ofAgent, mixed.toMix(), resin.densityLiquid());
            add(resin.id(), base, liquids);
            MaterialQuantity cure = liquid(agent, agent.kind().word(), ofAgent, mixed.agent(), agent.density());
            add(agent.id(), cure, liquids);
        }
        List<MaterialQuantity> all = new ArrayList<>(sheets.values());
        all.addAll(liquids.values());
        return all;
    }

    private static void add(String key, MaterialQuantity quantity, Map<String, MaterialQuantity> all) {
        MaterialQuantity known = all.get(key);
        all.put(key, known == null ? quantity : known.plus(quantity));
    }

    private static String kind(Resin resin) {
        return resin.use().isLaminating() ? resin.kind().word() : resin.use().word();
    }

    private static MaterialQuantity sheet(
            Material material, double thickness, double inPart, double mass, double area) {
        OptionalDouble width = material.figures().valueOf(Property.ROLL_WIDTH);
        OptionalDouble length =
                width.isPresent() ? OptionalDouble.of(area / width.getAsDouble()) : OptionalDouble.empty();
        return new MaterialQuantity(
                material.id(),
                material instanceof Bulker ? "bulking mat" : material.kind().word(),
                thickness > 0 ? OptionalDouble.of(thickness) : OptionalDouble.empty(),
                inPart,
                OptionalDouble.of(mass),
                OptionalDouble.of(area),
                length,
                width,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static MaterialQuantity liquid(Material material, String kind, double inPart, double mass, double density) {
        return new MaterialQuantity(
                material.id(),
                kind,
                OptionalDouble.empty(),
                inPart,
                OptionalDouble.of(mass),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(mass / density),
                OptionalDouble.empty());
    }
}
