package laminate.process;

/**
 * How scatter of what goes in shows in what comes out, as coefficients of variation (standard deviation over mean).
 *
 * <p>First-order propagation for quantities that scatter independently, standard; good to a few per cent of the result
 * for coefficients up to about 10 %.
 */
public final class Scatter {
    private Scatter() {}

    /**
     * Scatter of a layer's thickness t = w/(ρ<sub>f</sub> V<sub>f</sub>): √(CV<sub>w</sub>² + CV<sub>V</sub>²).
     *
     * @param arealMass coefficient of variation of w
     * @param volumeFraction coefficient of variation of V<sub>f</sub>
     * @return coefficient of variation of t
     * @throws IllegalArgumentException if one is below zero or not finite
     */
    public static double ofThickness(double arealMass, double volumeFraction) {
        return Math.hypot(check(arealMass), check(volumeFraction));
    }

    /**
     * Scatter of a mean over plies: CV/√n, for what differs from ply to ply only. What the hand or the batch brings is
     * the same in each ply and does not average out.
     *
     * @param variation coefficient of variation from ply to ply
     * @param plies how many, 1 or more
     * @return coefficient of variation of their mean
     * @throws IllegalArgumentException if the coefficient is below zero or not finite, or there is no ply
     */
    public static double ofMean(double variation, int plies) {
        if (plies < 1) {
            throw new IllegalArgumentException("a mean needs a ply, not " + plies);
        }
        return check(variation) / Math.sqrt(plies);
    }

    private static double check(double variation) {
        if (!(variation >= 0) || Double.isInfinite(variation)) {
            throw new IllegalArgumentException("a coefficient of variation is not below zero, not " + variation);
        }
        return variation;
    }
}
