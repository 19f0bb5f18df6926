package laminate.part.infusion;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The dry layers as the resin finds them.
 *
 * @param porosity φ = 1 − V<sub>f</sub> (1), empty for that of the layers; where these tell their fibre content it is theirs
 *     that counts, as they may be laid by another process or schedule than was thought of here
 * @param permeability K along the flow, empty only where every segment has its own
 * @param crossPermeability K across the flow of a centre feed (m²), empty where it is the same
 * @param throughPermeability K through the thickness (m²), which decides how far the laminate lags behind the mesh
 * @param compaction how the layers yield, empty where they are taken as rigid
 * @param segments stretches of the way in the order of the flow; empty where all is alike
 */
public record Preform(
        OptionalDouble porosity,
        Optional<PermeabilitySource> permeability,
        OptionalDouble crossPermeability,
        OptionalDouble throughPermeability,
        Optional<BedCompaction> compaction,
        List<Segment> segments) {

    /**
     * Checks the preform.
     *
     * @throws IllegalArgumentException if a permeability is not above zero, the porosity not between 0 and 1, or nothing
     *     says how permeable all of it is
     */
    public Preform {
        Objects.requireNonNull(permeability, "permeability");
        Objects.requireNonNull(compaction, "compaction");
        Checks.fraction("porosity", porosity);
        Checks.positive("permeability across", crossPermeability, "m²");
        Checks.positive("permeability through the thickness", throughPermeability, "m²");
        segments = List.copyOf(segments);
        boolean told = !segments.isEmpty();
        for (Segment segment : segments) {
            told &= segment.permeability().isPresent();
        }
        if (permeability.isEmpty() && !told) {
            throw new IllegalArgumentException(
                    "a preform needs a permeability, or one for each of its " + segments.size() + " segments");
        }
    }

    /**
     * Layers that are rigid and alike everywhere, with the porosity that they have by themselves.
     *
     * @param permeability K along the flow
     * @return the preform
     */
    public static Preform of(PermeabilitySource permeability) {
        return new Preform(
                OptionalDouble.empty(),
                Optional.of(permeability),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                List.of());
    }

    /**
     * This preform with its porosity stated.
     *
     * @param stated φ (1)
     * @return the preform
     * @throws IllegalArgumentException if it is not between 0 and 1
     */
    public Preform withPorosity(double stated) {
        return new Preform(
                OptionalDouble.of(stated), permeability, crossPermeability, throughPermeability, compaction, segments);
    }

    /**
     * This preform with its permeability through the thickness.
     *
     * @param squareMetres K (m²)
     * @return the preform
     * @throws IllegalArgumentException if it is not above zero
     */
    public Preform withThroughPermeability(double squareMetres) {
        return new Preform(
                porosity, permeability, crossPermeability, OptionalDouble.of(squareMetres), compaction, segments);
    }
}
