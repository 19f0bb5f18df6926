package laminate.theory;

/**
 * Moduli of the homogeneous sheet that answers like a laminate (or a turned lamina) to stress along x, y or in shear.
 *
 * @param Ex modulus along x (Pa)
 * @param Ey modulus along y (Pa)
 * @param Gxy shear modulus (Pa)
 * @param nuxy major Poisson ratio, −εy/εx under stress along x
 */
public record EngineeringConstants(double Ex, double Ey, double Gxy, double nuxy) {
    /**
     * Checks the constants.
     *
     * @param Ex modulus along x (Pa)
     * @param Ey modulus along y (Pa)
     * @param Gxy shear modulus (Pa)
     * @param nuxy major Poisson ratio, −εy/εx under stress along x
     * @throws IllegalArgumentException if a modulus is not positive or the Poisson ratio not finite
     */
    public EngineeringConstants {
        Require.positive("Ex", Ex);
        Require.positive("Ey", Ey);
        Require.positive("Gxy", Gxy);
        Require.finite("nuxy", nuxy);
    }

    /**
     * The constants of a compliance: Ex = 1/S11, Ey = 1/S22, Gxy = 1/S66, νxy = −S12/S11 (Jones 1999, ch. 2).
     *
     * @param compliance S of the homogeneous sheet (1/Pa), symmetric
     * @return the constants
     * @throws IllegalArgumentException if a diagonal entry is not positive
     */
    public static EngineeringConstants of(Matrix3 compliance) {
        return new EngineeringConstants(
                1 / compliance.m11(), 1 / compliance.m22(), 1 / compliance.m66(), -compliance.m12() / compliance.m11());
    }

    /**
     * The minor Poisson ratio νyx = νxy Ey/Ex.
     *
     * @return −εx/εy under stress along y
     */
    public double nuyx() {
        return nuxy * Ey / Ex;
    }
}
