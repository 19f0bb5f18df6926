package laminate.theory;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Elastic constants of a cured resin, isotropic.
 *
 * @param E modulus (Pa)
 * @param nu Poisson ratio
 * @param alpha thermal expansion (1/K), if known
 */
public record MatrixProperties(double E, double nu, OptionalDouble alpha) {
    /**
     * Checks the constants.
     *
     * @param E modulus (Pa)
     * @param nu Poisson ratio
     * @param alpha thermal expansion (1/K), if known
     * @throws IllegalArgumentException if they cannot be
     */
    public MatrixProperties {
        Lamina.isotropicShearModulus(E, nu);
        if (Objects.requireNonNull(alpha, "alpha").isPresent()) {
            Require.finite("alpha", alpha.getAsDouble());
        }
    }

    /**
     * A matrix by its elastic constants.
     *
     * @param E modulus (Pa)
     * @param nu Poisson ratio
     * @return the matrix; expansion unknown
     * @throws IllegalArgumentException if they cannot be
     */
    public static MatrixProperties of(double E, double nu) {
        return new MatrixProperties(E, nu, OptionalDouble.empty());
    }

    /**
     * This matrix with thermal expansion.
     *
     * @param alpha coefficient (1/K)
     * @return the copy
     */
    public MatrixProperties withExpansion(double alpha) {
        return new MatrixProperties(E, nu, OptionalDouble.of(alpha));
    }

    /**
     * The shear modulus G = E / (2 (1 + ν)).
     *
     * @return G (Pa)
     */
    public double G() {
        return Lamina.isotropicShearModulus(E, nu);
    }

    /**
     * This matrix with voids in it: E' = E (1 − Vv/(1 − Vf)), G alike, ν and α as before.
     *
     * <p>The voids Vv, a share of the whole, are spread through all that is not fibre, so that E1 = Ef Vf + Em Vm with
     * Vm = 1 − Vf − Vv. Common practice, no source; meant for a few per cent of voids.
     *
     * @param Vf fibre volume fraction of the whole
     * @param Vv void fraction of the whole
     * @return the porous matrix that fills 1 − Vf
     * @throws IllegalArgumentException if the fractions are negative or leave no room for matrix
     */
    public MatrixProperties withVoids(double Vf, double Vv) {
        if (!(Vf >= 0 && Vv >= 0 && Vf + Vv < 1)) {
            throw new IllegalArgumentException(
                    "fibre and void fractions must not be negative and leave room for matrix," + " were Vf = " + Vf
                            + ", Vv = " + Vv);
        }
        return new MatrixProperties(E * (1 - Vv / (1 - Vf)), nu, alpha);
    }
}
