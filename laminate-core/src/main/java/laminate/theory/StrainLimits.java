package laminate.theory;

/**
 * The strains at which a ply fails, all positive.
 *
 * @param e1t tension along direction 1
 * @param e1c compression along direction 1
 * @param e2t tension along direction 2
 * @param e2c compression along direction 2
 * @param g12 in-plane shear, engineering strain
 */
public record StrainLimits(double e1t, double e1c, double e2t, double e2c, double g12) {
    /**
     * Checks the limits.
     *
     * @param e1t tension along direction 1
     * @param e1c compression along direction 1
     * @param e2t tension along direction 2
     * @param e2c compression along direction 2
     * @param g12 in-plane shear, engineering strain
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public StrainLimits {
        Require.positive("e1t", e1t);
        Require.positive("e1c", e1c);
        Require.positive("e2t", e2t);
        Require.positive("e2c", e2c);
        Require.positive("g12", g12);
    }

    /**
     * Limits of a ply that is linear up to failure: strength over modulus.
     *
     * @param strength its strength
     * @param lamina its moduli
     * @return Xt/E1, Xc/E1, Yt/E2, Yc/E2, S/G12
     */
    public static StrainLimits linear(PlyStrength strength, Lamina lamina) {
        return new StrainLimits(
                strength.Xt() / lamina.E1(),
                strength.Xc() / lamina.E1(),
                strength.Yt() / lamina.E2(),
                strength.Yc() / lamina.E2(),
                strength.S() / lamina.G12());
    }
}
