package laminate.theory;

/**
 * Stiffnesses of one laminate as multiples of another's, direction by direction.
 *
 * @param x along x
 * @param y along y
 * @param xy in shear, or in twist
 */
public record StiffnessRatios(double x, double y, double xy) {
    /**
     * Checks the ratios.
     *
     * @param x along x
     * @param y along y
     * @param xy in shear, or in twist
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public StiffnessRatios {
        Require.positive("ratio along x", x);
        Require.positive("ratio along y", y);
        Require.positive("ratio in shear", xy);
    }

    /**
     * The smallest of the three, by which one laminate may stand for the other in every direction.
     *
     * @return the least ratio
     */
    public double least() {
        return Math.min(x, Math.min(y, xy));
    }
}
