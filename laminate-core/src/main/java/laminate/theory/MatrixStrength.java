package laminate.theory;

/**
 * Strength of a cured resin, without fibres and voids.
 *
 * @param tension tensile strength (Pa)
 * @param compression compressive strength (Pa)
 * @param elongation strain at which it breaks in tension
 */
public record MatrixStrength(double tension, double compression, double elongation) {
    /**
     * Checks the strengths.
     *
     * @param tension tensile strength (Pa)
     * @param compression compressive strength (Pa)
     * @param elongation strain at which it breaks in tension
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public MatrixStrength {
        Require.positive("matrix tensile strength", tension);
        Require.positive("matrix compressive strength", compression);
        Require.positive("matrix elongation", elongation);
    }

    /**
     * The shear strength by {@link StrengthFormulas#paraboloidShear}.
     *
     * @return shear strength (Pa)
     */
    public double shear() {
        return StrengthFormulas.paraboloidShear(tension, compression);
    }

    /** This strength times a factor; voids leave the elongation. */
    MatrixStrength scaledBy(double factor) {
        return new MatrixStrength(tension * factor, compression * factor, elongation);
    }
}
