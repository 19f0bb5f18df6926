package laminate.theory;

/**
 * Shear moduli across the thickness.
 *
 * @param G13 modulus in the plane of direction 1 and the thickness (Pa)
 * @param G23 modulus in the plane of direction 2 and the thickness (Pa)
 */
public record TransverseShear(double G13, double G23) {
    /**
     * Checks the moduli.
     *
     * @param G13 modulus in the plane of direction 1 and the thickness (Pa)
     * @param G23 modulus in the plane of direction 2 and the thickness (Pa)
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public TransverseShear {
        Require.positive("G13", G13);
        Require.positive("G23", G23);
    }
}
