package laminate.estimate;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Range;
import laminate.process.StiffnessBasis;
import laminate.theory.Laminate;

/**
 * A zone as it lies in the part.
 *
 * @param zone the zone as planned
 * @param coatings its coatings, in the order of the zone
 * @param layers its layers, mould face first
 * @param laminate the plies of all layers, without coatings
 * @param stiffness how the moduli of the plies were reckoned
 */
public record ZoneEstimate(
        Zone zone, List<LaidCoating> coatings, List<LaidLayer> layers, Laminate laminate, StiffnessBasis stiffness) {

    /** Copies the lists. */
    public ZoneEstimate {
        coatings = List.copyOf(coatings);
        layers = List.copyOf(layers);
    }

    /**
     * What is left of the moduli of theory in plies of this zone. Measured plies are as they were measured.
     *
     * @return the knock-downs that apply, by how the fibres lie
     */
    public Map<Form.Architecture, Figure> knockDowns() {
        Map<Form.Architecture, Figure> applied = new EnumMap<>(Form.Architecture.class);
        for (LaidLayer laid : layers) {
            if (laid.layer() instanceof ReinforcementLayer layer
                    && layer.reinforcement().measured().isEmpty()) {
                layer.reinforcement().plies().stream()
                        .map(ply -> ply.form().architecture())
                        .forEach(lying -> stiffness.knockDown(lying).ifPresent(factor -> applied.put(lying, factor)));
            }
        }
        return applied;
    }

    /**
     * Thickness of layers and cores, without coatings.
     *
     * @return thickness with its scatter (m)
     */
    public Range thickness() {
        return layers.stream().map(LaidLayer::thickness).reduce(Range.ZERO, Range::plus);
    }

    /**
     * Thickness with coatings, as callipers read it.
     *
     * @return thickness with its scatter (m)
     */
    public Range thicknessWithCoatings() {
        return coatings.stream().map(LaidCoating::thickness).reduce(thickness(), Range::plus);
    }

    /**
     * Mass per area of everything.
     *
     * @return mass with its scatter (kg/m²)
     */
    public Range massPerArea() {
        Range layered = layers.stream().map(LaidLayer::massPerArea).reduce(Range.ZERO, Range::plus);
        return coatings.stream().map(LaidCoating::massPerArea).reduce(layered, Range::plus);
    }

    /**
     * Dry reinforcement.
     *
     * @return mass per area (kg/m²)
     */
    public double fibrePerArea() {
        return sum(LaidLayer::fibreMass);
    }

    /**
     * Resin in the reinforced layers.
     *
     * @return mass per area with its scatter (kg/m²)
     */
    Range resinOfReinforcedLayers() {
        return layers.stream()
                .filter(LaidLayer::isReinforced)
                .map(LaidLayer::resinMass)
                .reduce(Range.ZERO, Range::plus);
    }

    /**
     * Fibre mass fraction of the reinforced layers, as a burn-off measures.
     *
     * @return ψ, 0 where no layer is reinforced
     */
    public double fibreMassFraction() {
        double fibre = fibrePerArea();
        return fibre == 0 ? 0 : fibre / (fibre + resinOfReinforcedLayers().planned());
    }

    /**
     * Fibre volume fraction of the reinforced layers with their voids.
     *
     * @return V<sub>f</sub>, 0 where no layer is reinforced
     */
    public double fibreVolumeFraction() {
        double thickness = reinforcedThickness();
        return thickness == 0 ? 0 : sum(LaidLayer::fibreVolume) / thickness;
    }

    /**
     * Void volume fraction of the reinforced layers.
     *
     * @return V<sub>v</sub>, 0 where no layer is reinforced
     */
    public double voidFraction() {
        double thickness = reinforcedThickness();
        return thickness == 0
                ? 0
                : sum(layer -> layer.voids() * layer.thickness().planned()) / thickness;
    }

    /**
     * Thickness of the reinforced layers.
     *
     * @return thickness (m)
     */
    double reinforcedThickness() {
        return sum(layer -> layer.isReinforced() ? layer.thickness().planned() : 0);
    }

    private double sum(ToDoubleFunction<LaidLayer> of) {
        return layers.stream().mapToDouble(of).sum();
    }
}
