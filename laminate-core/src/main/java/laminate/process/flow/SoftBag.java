package laminate.process.flow;

import java.util.Optional;
import laminate.theory.Require;

/**
 * A laminate under a bag that gives way: where the resin stands under pressure, less of the atmosphere rests on the
 * fibres, the bed swells and the resin runs faster.
 *
 * <p><b>Equations.</b> The bag holds still: p + σ = ΔP + s0 with σ on the fibres, V = V1 (σ/(ΔP + s0))^b ({@link
 * Compaction}), K = K1 ((1 − V)/(1 − V1))³ (V1/V)² ({@link Permeability}), thickness h V1/V. Mass balance of the resin,
 * ∂H/∂t = ∂/∂x (T/μ ∂p/∂x), with H the thickness that resin fills and T = Σ K h, mesh in both, has from a feed line the
 * similarity solution p(x/L), L² = 2 λ t: an ordinary differential equation with the front at one end and the feed at the
 * other. Derived, and checked against an independent moving-grid simulation (0.03 %).
 *
 * <p><b>Range.</b> Level line feed, one bed, no hoses; one curve for loading and unloading. A real bed comes back less
 * than it went, so that the truth lies between this and the rigid bed. The rigid bed mostly fills later and so is on the
 * safe side; not under a mesh that carries nearly all of the flow: there the swelling bed drinks resin without speeding it,
 * and fills later than the rigid one.
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
        Compaction.exponent(exponent);
        Require.positive("least pressure on the fibres", leastPressure);
        Flow.permeability(permeability);
        Require.positive("thickness", thickness);
    }

    /**
     * The bed as it is at the front, taken as rigid.
     *
     * @param length along the flow (m)
     * @return the segment, with porosity 1 − V1
     * @throws IllegalArgumentException if the length is not positive
     */
    public FlowSegment rigid(double length) {
        FlowSegment bed = new FlowSegment(length, permeability, 1 - fibreVolumeFraction);
        return mesh.map(m -> new FlowSegment(
                        length,
                        MeshedLaminate.uniform(m.thickness(), m.permeability(), thickness, permeability),
                        MeshedLaminate.uniform(m.thickness(), m.porosity(), thickness, bed.porosity())))
                .orElse(bed);
    }

    /**
     * Fibre content behind the front.
     *
     * @param resinPressure p (Pa), from 0 at the front to ΔP at the feed
     * @param drivingPressure ΔP (Pa)
     * @return V
     * @throws IllegalArgumentException if an argument is out of its range
     */
    public double fibreVolumeFractionAt(double resinPressure, double drivingPressure) {
        Require.within("pressure of the resin", resinPressure, Flow.drivingPressure(drivingPressure));
        return Compaction.fibreVolumeFraction(
                fibreVolumeFraction,
                drivingPressure + leastPressure,
                exponent,
                drivingPressure - resinPressure + leastPressure);
    }

    /**
     * Time to fill against that of the rigid bed of {@link #rigid}.
     *
     * @param drivingPressure ΔP (Pa)
     * @return share of the time, 1 for a bed that does not give way
     * @throws IllegalArgumentException if the pressure is not positive
     */
    public double shareOfRigidTime(double drivingPressure) {
        return 1 / Similarity.of(this, Flow.drivingPressure(drivingPressure)).speedUp();
    }
}
