package laminate.theory.beam;

import laminate.theory.Require;

/**
 * Deflection of a beam at one place, positive towards +z.
 *
 * @param x distance from the start of the beam (m)
 * @param bending part by bending (m)
 * @param shear part by shear; 0 where the section is taken as rigid in shear (m)
 */
public record Deflection(double x, double bending, double shear) {
    /**
     * Checks the numbers.
     *
     * @param x distance from the start of the beam (m)
     * @param bending part by bending (m)
     * @param shear part by shear (m)
     * @throws IllegalArgumentException if one is not finite
     */
    public Deflection {
        Require.finite("x", x);
        Require.finite("deflection by bending", bending);
        Require.finite("deflection by shear", shear);
        Require.finite("deflection", bending + shear);
    }

    /**
     * Both parts together.
     *
     * @return w (m)
     */
    public double total() {
        return bending + shear;
    }
}
