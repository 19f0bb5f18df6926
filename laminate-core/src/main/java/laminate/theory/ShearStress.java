package laminate.theory;

/**
 * Shear stress across the thickness, on the faces normal to x and y (or 1 and 2 in the axes of a ply).
 *
 * @param xz τxz, or τ13 (Pa)
 * @param yz τyz, or τ23 (Pa)
 */
public record ShearStress(double xz, double yz) {
    /** No stress. */
    public static final ShearStress ZERO = new ShearStress(0, 0);

    /**
     * Checks the stresses.
     *
     * @param xz τxz, or τ13 (Pa)
     * @param yz τyz, or τ23 (Pa)
     * @throws IllegalArgumentException if one is not finite
     */
    public ShearStress {
        Require.finite("xz shear stress", xz);
        Require.finite("yz shear stress", yz);
    }

    /**
     * The sum with another stress.
     *
     * @param other the stress to add
     * @return the sum
     */
    public ShearStress plus(ShearStress other) {
        return new ShearStress(xz + other.xz, yz + other.yz);
    }

    /**
     * A multiple of this stress.
     *
     * @param factor the factor
     * @return both parts times the factor
     */
    public ShearStress times(double factor) {
        return new ShearStress(factor * xz, factor * yz);
    }
}
