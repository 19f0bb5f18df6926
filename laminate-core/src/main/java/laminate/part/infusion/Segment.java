package laminate.part.infusion;

import java.util.OptionalDouble;

/**
 * A stretch of the way with a permeability or porosity of its own, as where a patch lies.
 *
 * @param length along the flow (m)
 * @param permeability K along the flow (m²), empty for that of the rest
 * @param porosity φ (1), empty for that of the rest
 */
public record Segment(double length, OptionalDouble permeability, OptionalDouble porosity) {

    /**
     * Checks the segment.
     *
     * @throws IllegalArgumentException if a value is not above zero, or the porosity not below one
     */
    public Segment {
        Checks.positive("length of a segment", length, "m");
        Checks.positive("permeability of a segment", permeability, "m²");
        Checks.fraction("porosity of a segment", porosity);
    }
}
