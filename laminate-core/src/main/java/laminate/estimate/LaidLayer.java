package laminate.estimate;

import java.util.List;
import laminate.part.Layer;
import laminate.process.Process;
import laminate.process.Range;
import laminate.theory.Ply;
import laminate.theory.Worked;
import laminate.theory.WorkedMixture;

/**
 * A layer as it lies in the part; masses and thickness are per area of the layer itself, without laps.
 *
 * @param layer the layer as planned
 * @param thickness thickness with its scatter (m)
 * @param fibreMass dry reinforcement (kg/m²)
 * @param fibreVolume volume of fibre (m³/m²)
 * @param coreMass dry core or bulking mat (kg/m²)
 * @param resinMass resin in the layer, or taken up by the core, with its scatter (kg/m²)
 * @param bedMass paste in the bed of a core (kg/m²)
 * @param givenMass mass of a ply that is given directly (kg/m²)
 * @param voids void volume fraction of a reinforced layer
 * @param plies the plies that carry load, first towards the mould
 * @param strengths where the strength of each ply comes from, one for one
 */
public record LaidLayer(
        Layer layer,
        Range thickness,
        double fibreMass,
        double fibreVolume,
        double coreMass,
        Range resinMass,
        double bedMass,
        double givenMass,
        double voids,
        List<Ply> plies,
        List<StrengthOrigin> strengths) {

    /**
     * Copies the plies.
     *
     * @throws IllegalArgumentException if there is not one origin of strength for each ply
     */
    public LaidLayer {
        plies = List.copyOf(plies);
        strengths = List.copyOf(strengths);
        if (strengths.size() != plies.size()) {
            throw new IllegalArgumentException(
                    plies.size() + " plies cannot have " + strengths.size() + " origins of strength");
        }
    }

    /**
     * Everything in the layer.
     *
     * @return mass per area with its scatter (kg/m²)
     */
    public Range massPerArea() {
        return Range.exactly(fibreMass + coreMass + bedMass + givenMass).plus(resinMass);
    }

    /**
     * Whether the layer is reinforced, so that it has a fibre fraction.
     *
     * @return true if it holds fibre
     */
    public boolean isReinforced() {
        return fibreMass > 0;
    }

    /**
     * Whether the layer is laid by a process.
     *
     * @param process the process
     * @return true if it is; false also for a ply given directly, of which no process is known
     */
    public boolean isLaidBy(Process process) {
        return layer.isLaidBy(process);
    }

    /**
     * Fibre mass fraction, as a burn-off measures.
     *
     * @return ψ, 0 for a layer that is not reinforced
     */
    public double fibreMassFraction() {
        return isReinforced() ? fibreMass / (fibreMass + resinMass.planned()) : 0;
    }

    /**
     * Fibre volume fraction of the layer with its voids.
     *
     * @return V<sub>f</sub>, 0 for a layer that is not reinforced
     */
    public double fibreVolumeFraction() {
        return fibreVolume / thickness.planned();
    }

    /**
     * How resin, fibre content and thickness hang together, with the numbers of this layer. Each holds whichever of them was
     * stated: where it is the thickness, say, the fibre mass fraction follows from it.
     *
     * @return the formulas in the order that they build on each other, none for a layer that is not reinforced
     */
    public List<Worked> worked() {
        if (!isReinforced() || layer.laying().isEmpty()) {
            return List.of();
        }
        double fibreDensity = fibreMass / fibreVolume;
        double resinDensity = layer.laying().get().resin().densityCured();
        double psi = fibreMassFraction();
        return List.of(
                WorkedMixture.resinMass(fibreMass, psi),
                WorkedMixture.fibreVolumeFraction(psi, fibreDensity, resinDensity, voids),
                WorkedMixture.thickness(fibreMass, fibreVolumeFraction(), fibreDensity));
    }
}
