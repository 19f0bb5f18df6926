package laminate.theory.panel;

import laminate.theory.Require;

/**
 * How far a solution has settled: the largest change of each kind at the points watched (centre, quarter points and
 * clamped edges), between the last two orders of the polynomials, as a share of the largest value of that kind. The
 * error left is as a rule smaller than the change.
 *
 * <p>Moments and shear forces are not watched on other edges, along which first-order theory has a layer about as wide
 * as the panel is thick that settles late, nor in corners, where it can have no finite value.
 *
 * @param order power of the polynomials along the shorter side
 * @param reached whether deflection and moments came within their tolerance
 * @param deflection change of the deflection
 * @param moment change of the moments M, and of the forces N counted as N h/6, which stress the panel alike
 * @param shear change of the shear forces
 */
public record Convergence(int order, boolean reached, double deflection, double moment, double shear) {
    /** Deflection may change by this share in the last step. */
    public static final double DEFLECTION_TOLERANCE = 2e-4;
    /** Moments may change by this share in the last step. */
    public static final double MOMENT_TOLERANCE = 5e-3;

    /**
     * Checks the numbers.
     *
     * @param order power of the polynomials along the shorter side
     * @param reached whether deflection and moments came within their tolerance
     * @param deflection change of the deflection
     * @param moment change of the moments M, and of the forces N counted as N h/6, which stress the panel alike
     * @param shear change of the shear forces
     * @throws IllegalArgumentException if a change is not finite
     */
    public Convergence {
        Require.finite("change of the deflection", deflection);
        Require.finite("change of the moments", moment);
        Require.finite("change of the shear forces", shear);
    }
}
