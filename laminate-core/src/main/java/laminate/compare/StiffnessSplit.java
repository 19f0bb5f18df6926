package laminate.compare;

import laminate.theory.Require;

/**
 * Why one zone is stiffer in bending than that of the first: EI = E t³/12 per width, so the ratio is one of thickness cubed
 * times one of modulus. A process that presses out resin gains modulus and loses thickness, and thickness counts three
 * times.
 *
 * @param alternative the name of the alternative
 * @param zone the zone
 * @param thickness thickness of the laminate by that of the first
 * @param modulus bending modulus 12/(d t³) by that of the first
 */
public record StiffnessSplit(String alternative, String zone, double thickness, double modulus) {
    /**
     * Checks the ratios.
     *
     * @param alternative the name of the alternative
     * @param zone the zone
     * @param thickness thickness of the laminate by that of the first
     * @param modulus bending modulus by that of the first
     * @throws IllegalArgumentException if a ratio is not positive and finite
     */
    public StiffnessSplit {
        Require.positive("ratio of thickness", thickness);
        Require.positive("ratio of modulus", modulus);
    }

    /**
     * What thickness does to bending stiffness.
     *
     * @return the ratio of thickness cubed
     */
    public double thicknessCubed() {
        return thickness * thickness * thickness;
    }

    /**
     * Bending stiffness per width by that of the first.
     *
     * @return both effects together
     */
    public double stiffness() {
        return thicknessCubed() * modulus;
    }
}
