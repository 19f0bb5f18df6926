package laminate.process;

import laminate.material.Property;
import laminate.material.Resin;

/**
 * Styrene that leaves a resin while it is laid and cures.
 *
 * <p>Unified emission factors for open moulding of composites, 2004 (from memory), as a share of the resin applied,
 * with S the styrene's share of the liquid resin, valid for S from 0.33 to 0.50; below it is scaled in proportion to S:
 *
 * <pre>
 *   brushed or rolled   f = 0.286 S - 0.0529
 *   sprayed gelcoat     f = 1.036 S - 0.195
 * </pre>
 */
public final class Evaporation {
    private static final double LEAST_STYRENE = 0.33;

    private Evaporation() {}

    /**
     * Share of a brushed or rolled resin that evaporates.
     *
     * @param resin the resin
     * @return the share of the mass applied, 0 for a resin without styrene
     */
    public static double byHand(Resin resin) {
        return share(0.286, 0.0529, resin.styreneContent());
    }

    /**
     * Share of a sprayed gelcoat that evaporates.
     *
     * @param resin the gelcoat
     * @return the share of the mass applied, 0 for one without styrene
     */
    public static double bySpray(Resin resin) {
        return share(1.036, 0.195, resin.styreneContent());
    }

    /**
     * Share of a coating that leaves it as solvent: what is missing of its mass once it is cured,
     * f = 1 − ρ<sub>r</sub> (1 − s)/ρ<sub>l</sub>, with s the share of the wet volume that is lost.
     *
     * @param paint a paint
     * @return the share of the mass applied, 0 for one that states no shrinkage
     */
    public static double ofSolvent(Resin paint) {
        double shrinkage = paint.figures().valueOf(Property.SHRINKAGE).orElse(0);
        return shrinkage == 0 ? 0 : Math.max(0, 1 - paint.densityCured() * (1 - shrinkage) / paint.densityLiquid());
    }

    /** Below the range of the factors the straight line would fall below zero; styrene lost follows styrene held. */
    private static double share(double slope, double offset, double styrene) {
        double valid = Math.max(styrene, LEAST_STYRENE);
        return (slope * valid - offset) * styrene / valid;
    }
}
