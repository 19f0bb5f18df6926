package laminate.estimate;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Process;
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
                for (FibrePly ply : layer.reinforcement().plies()) {
                    addKnockDown(ply.form().architecture(), applied);
                }
            }
        }
        return applied;
    }

    private void addKnockDown(Form.Architecture lying, Map<Form.Architecture, Figure> applied) {
        Optional<Figure> factor = stiffness.knockDown(lying);
        if (factor.isPresent()) {
            applied.put(lying, factor.get());
        }
    }

    /**
     * Thickness of layers and cores, without coatings.
     *
     * @return thickness with its scatter (m)
     */
    public Range thickness() {
        Range sum = Range.ZERO;
        for (LaidLayer layer : layers) {
            sum = sum.plus(layer.thickness());
        }
        return sum;
    }

    /**
     * Thickness with coatings, as callipers read it.
     *
     * @return thickness with its scatter (m)
     */
    public Range thicknessWithCoatings() {
        Range sum = thickness();
        for (LaidCoating coating : coatings) {
            sum = sum.plus(coating.thickness());
        }
        return sum;
    }

    /**
     * Mass per area of everything.
     *
     * @return mass with its scatter (kg/m²)
     */
    public Range massPerArea() {
        Range sum = Range.ZERO;
        for (LaidLayer layer : layers) {
            sum = sum.plus(layer.massPerArea());
        }
        for (LaidCoating coating : coatings) {
            sum = sum.plus(coating.massPerArea());
        }
        return sum;
    }

    /**
     * Dry reinforcement.
     *
     * @return mass per area (kg/m²)
     */
    public double fibrePerArea() {
        double sum = 0;
        for (LaidLayer layer : layers) {
            sum += layer.fibreMass();
        }
        return sum;
    }

    /**
     * Resin in the reinforced layers.
     *
     * @return mass per area with its scatter (kg/m²)
     */
    Range resinOfReinforcedLayers() {
        Range sum = Range.ZERO;
        for (LaidLayer layer : layers) {
            sum = layer.isReinforced() ? sum.plus(layer.resinMass()) : sum;
        }
        return sum;
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
        double fibre = 0;
        for (LaidLayer layer : layers) {
            fibre += layer.fibreVolume();
        }
        double thickness = reinforcedThickness();
        return thickness == 0 ? 0 : fibre / thickness;
    }

    /**
     * Fibre volume fraction of the reinforced layers that are laid by a process, with their voids. One less this is the
     * porosity that the resin of an infusion finds.
     *
     * @param process the process
     * @return V<sub>f</sub>, empty where none of the reinforced layers is laid so
     */
    public OptionalDouble fibreVolumeFraction(Process process) {
        double fibre = 0;
        double thickness = 0;
        for (LaidLayer laid : layers) {
            if (laid.isReinforced() && laid.isLaidBy(process)) {
                fibre += laid.fibreVolume();
                thickness += laid.thickness().planned();
            }
        }
        return thickness == 0 ? OptionalDouble.empty() : OptionalDouble.of(fibre / thickness);
    }

    /**
     * Void volume fraction of the reinforced layers.
     *
     * @return V<sub>v</sub>, 0 where no layer is reinforced
     */
    public double voidFraction() {
        double voids = 0;
        for (LaidLayer layer : layers) {
            voids += layer.voids() * layer.thickness().planned();
        }
        double thickness = reinforcedThickness();
        return thickness == 0 ? 0 : voids / thickness;
    }

    /**
     * Thickness of the reinforced layers.
     *
     * @return thickness (m)
     */
    double reinforcedThickness() {
        double sum = 0;
        for (LaidLayer layer : layers) {
            sum += layer.isReinforced() ? layer.thickness().planned() : 0;
        }
        return sum;
    }
}
