package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import laminate.material.Bulker;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Property;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.Loss;
import laminate.process.Workshop;

/** Sums what must be bought: reinforcement, bulker and core by area and mass, then resins and agents by mass and volume. */
final class MaterialLedger {
    private final Workshop workshop;
    private final Map<String, Sheet> sheets = new LinkedHashMap<>();

    MaterialLedger(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * Adds a layer.
     *
     * @param layer the layer as planned
     * @param laid the layer as it lies
     * @param area area that ends in the part, laps included (m²)
     * @param margin area that is trimmed off (m²)
     */
    void add(Layer layer, LaidLayer laid, double area, double margin) {
        Material material;
        Loss cause;
        if (layer instanceof ReinforcementLayer reinforcement) {
            material = reinforcement.reinforcement();
            cause = Loss.REINFORCEMENT;
        } else if (layer instanceof BulkerLayer bulker) {
            material = bulker.bulker();
            cause = Loss.REINFORCEMENT;
        } else if (layer instanceof CoreLayer core) {
            material = core.core();
            cause = Loss.CORE;
        } else {
            return;
        }
        double waste = workshop.loss(layer.laying().orElseThrow().process(), cause).value();
        // Sheets of one core in two thicknesses are bought, and priced by area, apart.
        String key = layer instanceof CoreLayer core ? core.core().id() + "@" + core.thickness() : material.id();
        sheets.computeIfAbsent(key, unused -> new Sheet(material))
                .add((laid.fibreMass() + laid.coreMass()), area, (area + margin) * (1 + waste));
    }

    List<MaterialQuantity> quantities(List<ResinQuantity> resins) {
        List<MaterialQuantity> all = new ArrayList<>();
        sheets.values().forEach(sheet -> all.add(sheet.quantity()));
        Map<String, Liquid> liquids = new LinkedHashMap<>();
        for (ResinQuantity resin : resins) {
            double matrixFromAgent = resin.dose().shareOfMatrix() * resin.inPart();
            liquid(liquids, resin.resin(), resin.resin().densityLiquid())
                    .add(resin.inPart() - matrixFromAgent, resin.toMix());
            liquid(liquids, resin.dose().agent(), resin.dose().agent().density())
                    .add(matrixFromAgent, resin.agent());
        }
        liquids.values().forEach(liquid -> all.add(liquid.quantity()));
        return all;
    }

    private static Liquid liquid(Map<String, Liquid> liquids, Material material, double density) {
        return liquids.computeIfAbsent(material.id(), unused -> new Liquid(material, density));
    }

    /** What is bought by area. */
    private static final class Sheet {
        private final Material material;
        private double inPart;
        private double mass;
        private double area;

        Sheet(Material material) {
            this.material = material;
        }

        void add(double perArea, double areaInPart, double areaToBuy) {
            inPart += perArea * areaInPart;
            mass += perArea * areaToBuy;
            area += areaToBuy;
        }

        MaterialQuantity quantity() {
            OptionalDouble width = material.figures().valueOf(Property.ROLL_WIDTH);
            OptionalDouble length =
                    width.isPresent() ? OptionalDouble.of(area / width.getAsDouble()) : OptionalDouble.empty();
            return new MaterialQuantity(
                    material.id(),
                    material instanceof Bulker ? "bulking mat" : material.kind().word(),
                    inPart,
                    OptionalDouble.of(mass),
                    OptionalDouble.of(area),
                    length,
                    width,
                    OptionalDouble.empty(),
                    OptionalDouble.empty());
        }
    }

    /** What is bought by mass or volume. */
    private static final class Liquid {
        private final Material material;
        private final double density;
        private double inPart;
        private double mass;

        Liquid(Material material, double density) {
            this.material = material;
            this.density = density;
        }

        void add(double massInPart, double massToBuy) {
            inPart += massInPart;
            mass += massToBuy;
        }

        MaterialQuantity quantity() {
            return new MaterialQuantity(
                    material.id(),
                    material.kind() == MaterialKind.RESIN ? resinKind() : material.kind().word(),
                    inPart,
                    OptionalDouble.of(mass),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.of(mass / density),
                    OptionalDouble.empty());
        }

        private String resinKind() {
            laminate.material.Resin resin = (laminate.material.Resin) material;
            return resin.use().isLaminating() ? "resin" : resin.use().word();
        }
    }
}
