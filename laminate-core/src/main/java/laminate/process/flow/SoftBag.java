package laminate.process.flow;

import java.util.Optional;
import laminate.theory.Require;

/**
 * A laminate under a bag that gives way: where the resin stands under pressure, less of the atmosphere rests on the
 * fibres, the bed swells and the resin runs faster.
 *
 * @param fibreVolumeFraction V1 under the full driving pressure, as at the front
 * @param exponent b of {@link Compaction}; 0 is a rigid bed
 * @param leastPressure s0, what rests on the fibres even at the feed (Pa); keeps the bed there from swelling without
 *     bound
 * @param permeability K1 along the flow at V1 (m²); at other fibre contents by Kozeny and Carman
 * @param thickness h at V1 (m); counts only against that of the mesh
 * @param mesh flow mesh on top, which does not give way
 */
public record SoftBag(
        double fibreVolumeFraction,
        double exponent,
        double leastPressure,
        double permeability,
        double thickness,
        Optional<FlowMesh> mesh) {

    /** What rests on the fibres at the feed where nothing is known (Pa); an assumption without a source. */
    public static final double USUAL_LEAST_PRESSURE = 2000;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if one is out of its range
     */
    public SoftBag {
        Flow.fibreFraction(fibreVolumeFraction);
        Require.positive("least pressure on the fibres", leastPressure);
        Flow.permeability(permeability);
        Require.positive("thickness", thickness);
    }
}
