package laminate.theory;

/**
 * Strengths of E-glass and polyester as functions of the glass content by mass ψ, in the manner of ISO 12215-5:2008,
 * Annex C.
 *
 * <p>In MPa:
 *
 * <pre>
 *                     tension               compression   in-plane shear     ψ
 *   mat               200 ψ + 25            150 ψ + 72    80 ψ + 38      0.25 to 0.36
 *   mat and roving    1278 ψ² - 510 ψ + 123 150 ψ + 72    80 ψ + 38      0.25 to 0.58
 *   woven roving      400 ψ - 10            150 ψ + 72    80 ψ + 38      0.36 to 0.58
 * </pre>
 *
 * Straight plies, of stitched and unidirectional reinforcements, break at strains, ψ 0.38 to 0.66: along 2.7 % in
 * tension and 1.8 % in compression, across 0.42 % and 1.55 %, in shear 1.8 %.
 *
 * <p>The coefficients are those of classification rules for marine laminates, from memory; that the standard prints the
 * same is not verified. They are design minima rather than means. The ranges are those of the standard's own nominal
 * glass contents (from memory); outside of them a content is refused.
 */
public final class GlassContentStrengths {

    /** Strains at which a straight ply breaks; class rules, from memory. */
    public static final StrainLimits STRAIGHT_STRAINS = new StrainLimits(0.027, 0.018, 0.0042, 0.0155, 0.018);

    private static final double MPA = 1e6;

    private GlassContentStrengths() {}

    /**
     * Strength of chopped strand mat.
     *
     * @param psi glass content by mass, 0.25 to 0.36
     * @return the strength
     * @throws IllegalArgumentException if the content is outside the range
     */
    public static MatStrength mat(double psi) {
        within("mat", psi, 0.25, 0.36);
        return new MatStrength((200 * psi + 25) * MPA, compression(psi), shear(psi));
    }

    /**
     * Strength of a laminate of mat and woven roving in turn, taken as a whole.
     *
     * @param psi glass content by mass of the whole, 0.25 to 0.58
     * @return the strength along warp and weft
     * @throws IllegalArgumentException if the content is outside the range
     */
    public static PlyStrength matAndRoving(double psi) {
        within("mat and roving", psi, 0.25, 0.58);
        return alike((1278 * psi * psi - 510 * psi + 123) * MPA, psi);
    }

    /**
     * Strength of balanced woven roving.
     *
     * @param psi glass content by mass, 0.36 to 0.58
     * @return the strength along warp and weft
     * @throws IllegalArgumentException if the content is outside the range
     */
    public static PlyStrength wovenRoving(double psi) {
        within("woven roving", psi, 0.36, 0.58);
        return alike((400 * psi - 10) * MPA, psi);
    }

    /**
     * Strength of a straight ply, of a unidirectional or multiaxial reinforcement: breaking strain times modulus.
     *
     * @param psi glass content by mass, 0.38 to 0.66
     * @param ply its moduli at that content
     * @return the strength with its strain limits
     * @throws IllegalArgumentException if the content is outside the range
     */
    public static PlyStrength straight(double psi, Lamina ply) {
        within("straight plies", psi, 0.38, 0.66);
        StrainLimits strains = STRAIGHT_STRAINS;
        return PlyStrength.of(
                        strains.e1t() * ply.E1(),
                        strains.e1c() * ply.E1(),
                        strains.e2t() * ply.E2(),
                        strains.e2c() * ply.E2(),
                        strains.g12() * ply.G12())
                .withStrainLimits(strains);
    }

    private static PlyStrength alike(double tension, double psi) {
        return PlyStrength.of(tension, compression(psi), tension, compression(psi), shear(psi));
    }

    private static double compression(double psi) {
        return (150 * psi + 72) * MPA;
    }

    private static double shear(double psi) {
        return (80 * psi + 38) * MPA;
    }

    /** The last digit of a content that was made of masses must not refuse the ends of the range. */
    private static void within(String what, double psi, double from, double to) {
        if (!(psi >= from - 1e-9 && psi <= to + 1e-9)) {
            throw new IllegalArgumentException("the formulas for the strength of " + what
                    + " hold for a glass content of " + from + " to " + to + " by mass, was " + psi);
        }
    }
}
