package laminate.theory;

/**
 * Strength of a random mat, the same in every direction of its plane; every figure is positive.
 *
 * <p>Shear must be above half the geometric mean of tension and compression: below, no closed quadratic surface in
 * plane stress passes through all three, and equal stress in both directions would never break the mat. The usual
 * figures of glass mat have about 0.6 of that mean.
 *
 * @param tension tensile strength (Pa)
 * @param compression compressive strength (Pa)
 * @param shear in-plane shear strength (Pa)
 */
public record MatStrength(double tension, double compression, double shear) implements Strength {
    /**
     * Checks the strengths.
     *
     * @param tension tensile strength (Pa)
     * @param compression compressive strength (Pa)
     * @param shear in-plane shear strength (Pa), above √(tension × compression)/2
     * @throws IllegalArgumentException if one is not positive and finite, or shear too low for the others
     */
    public MatStrength {
        Require.positive("tension", tension);
        Require.positive("compression", compression);
        Require.positive("shear", shear);
        double least = Math.sqrt(tension) * Math.sqrt(compression) / 2;
        if (!(shear > least)) {
            throw new IllegalArgumentException(
                    "in-plane shear strength of a mat must be above √(tension × compression)/2" + " = " + least
                            + " Pa, was " + shear);
        }
    }
}
