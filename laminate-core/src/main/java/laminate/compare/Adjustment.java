package laminate.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import laminate.theory.Require;

/**
 * How one zone was changed until it was as stiff or as heavy as the first.
 *
 * @param zone the zone
 * @param basis what was made equal
 * @param means what was changed
 * @param factor by what all of it is multiplied for exact equality
 * @param ratioAsGiven stiffness or mass per area before the change, by that of the first
 * @param ratioAsLaid the same with whole layers as they are laid: what remains as difference is this less 1
 * @param exactThickness thickness of the laminate at the exact factor (m)
 * @param exactMassPerArea mass per area with coatings at the exact factor (kg/m²)
 * @param layers what was laid and what is laid now, in the order laid; by {@link Means#CORE} the cores alone
 */
public record Adjustment(
        String zone,
        Basis basis,
        Means means,
        double factor,
        double ratioAsGiven,
        double ratioAsLaid,
        double exactThickness,
        double exactMassPerArea,
        List<ChangedLayer> layers) {
    /**
     * One layer of the schedule, changed.
     *
     * @param material the id of its material
     * @param number its place in the schedule as given, counted from 1
     * @param exact how many of it would be laid at the exact factor: the factor of its areal weight or thickness
     * @param times how many of it are laid: a whole number, but of a sheet or a core by thickness
     * @param thickness what a sheet or core is now (m), empty for layers that are counted
     */
    public record ChangedLayer(String material, int number, double exact, double times, OptionalDouble thickness) {
        /**
         * Checks the layer.
         *
         * @param material the id of its material
         * @param number its place in the schedule as given
         * @param exact how many of it would be laid at the exact factor
         * @param times how many of it are laid
         * @param thickness what a sheet or core is now (m)
         * @throws IllegalArgumentException if a number cannot be
         */
        public ChangedLayer {
            Objects.requireNonNull(material, "material");
            Objects.requireNonNull(thickness, "thickness");
            Require.positive("layers at the exact factor", exact);
            if (number < 1 || !(times >= 0) || Double.isInfinite(times)) {
                throw new IllegalArgumentException("layer " + number + " cannot be laid " + times + " times");
            }
        }
    }

    /**
     * The layers of one material in the zone.
     *
     * @param material the id of the material
     * @param given how many were laid
     * @param exact how many would be laid at the exact factor
     * @param laid how many are laid
     */
    public record LayerCount(String material, int given, double exact, int laid) {
        private static LayerCount of(String material, List<ChangedLayer> layers) {
            return new LayerCount(
                    material,
                    layers.size(),
                    layers.stream().mapToDouble(ChangedLayer::exact).sum(),
                    (int) layers.stream().mapToDouble(ChangedLayer::times).sum());
        }
    }

    /**
     * Checks the change.
     *
     * @param zone the zone
     * @param basis what was made equal
     * @param means what was changed
     * @param factor by what all of it is multiplied for exact equality
     * @param ratioAsGiven stiffness or mass per area before the change, by that of the first
     * @param ratioAsLaid the same with whole layers as they are laid
     * @param exactThickness thickness of the laminate at the exact factor (m)
     * @param exactMassPerArea mass per area with coatings at the exact factor (kg/m²)
     * @param layers what was laid and what is laid now
     * @throws IllegalArgumentException if a number is not positive and finite
     */
    public Adjustment {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(means, "means");
        Require.positive("factor", factor);
        Require.positive("ratio as given", ratioAsGiven);
        Require.positive("ratio as laid", ratioAsLaid);
        Require.positive("thickness", exactThickness);
        Require.positive("mass per area", exactMassPerArea);
        layers = List.copyOf(layers);
    }

    /**
     * What was laid and what is laid now of each material that is counted in layers.
     *
     * @return one for each material, in the order first laid
     */
    public List<LayerCount> counts() {
        Map<String, List<ChangedLayer>> byMaterial = layers.stream()
                .filter(layer -> layer.thickness().isEmpty())
                .collect(Collectors.groupingBy(ChangedLayer::material, LinkedHashMap::new, Collectors.toList()));
        return byMaterial.entrySet().stream()
                .map(material -> LayerCount.of(material.getKey(), material.getValue()))
                .toList();
    }

    /**
     * What remains as difference to the first once whole layers are laid.
     *
     * @return a share: 0.04 for 4 % stiffer or heavier than the first
     */
    public double remaining() {
        return ratioAsLaid - 1;
    }
}
