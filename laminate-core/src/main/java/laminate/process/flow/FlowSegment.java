package laminate.process.flow;

import laminate.theory.Require;

/**
 * A stretch of the way of the resin that is the same throughout.
 *
 * @param length along the flow (m)
 * @param permeability K along the flow (m²), of laminate and mesh together where there is mesh
 * @param porosity φ, the share of the volume that resin fills; likewise
 */
public record FlowSegment(double length, double permeability, double porosity) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if length or permeability is not positive, or the porosity not above 0 and below
     *     or at 1
     */
    public FlowSegment {
        Require.positive("length of the segment", length);
        Require.positive("permeability", permeability);
        Flow.porosity(porosity);
    }

    /**
     * The same bed over another length.
     *
     * @param other length (m)
     * @return the segment
     */
    public FlowSegment withLength(double other) {
        return new FlowSegment(other, permeability, porosity);
    }
}
