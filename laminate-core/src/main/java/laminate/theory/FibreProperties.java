package laminate.theory;

import java.util.Objects;
import java.util.Optional;

/**
 * Elastic constants of a fibre, transversely isotropic at most.
 *
 * @param E1 modulus along the fibre (Pa)
 * @param E2 modulus across (Pa)
 * @param G12 shear modulus along the fibre (Pa)
 * @param nu12 major Poisson ratio
 * @param expansion α along and across (1/K), if known
 */
public record FibreProperties(double E1, double E2, double G12, double nu12, Optional<Expansion> expansion) {
    /**
     * Checks the constants as those of a {@link Lamina}.
     *
     * @param E1 modulus along the fibre (Pa)
     * @param E2 modulus across (Pa)
     * @param G12 shear modulus along the fibre (Pa)
     * @param nu12 major Poisson ratio
     * @param expansion α along and across (1/K), if known
     * @throws IllegalArgumentException if they cannot be
     */
    public FibreProperties {
        Lamina.of(E1, E2, G12, nu12);
        Objects.requireNonNull(expansion, "expansion");
    }

    /**
     * A fibre by its elastic constants.
     *
     * @param E1 modulus along the fibre (Pa)
     * @param E2 modulus across (Pa)
     * @param G12 shear modulus along the fibre (Pa)
     * @param nu12 major Poisson ratio
     * @return the fibre; expansion unknown
     * @throws IllegalArgumentException if they cannot be
     */
    public static FibreProperties of(double E1, double E2, double G12, double nu12) {
        return new FibreProperties(E1, E2, G12, nu12, Optional.empty());
    }

    /**
     * A fibre that is the same in all directions, as glass is.
     *
     * @param E modulus (Pa)
     * @param nu Poisson ratio
     * @return the fibre; expansion unknown
     * @throws IllegalArgumentException if they cannot be
     */
    public static FibreProperties isotropic(double E, double nu) {
        return of(E, E, Lamina.isotropicShearModulus(E, nu), nu);
    }

    /**
     * This fibre with thermal expansion.
     *
     * @param alpha1 along the fibre (1/K)
     * @param alpha2 across (1/K)
     * @return the copy
     */
    public FibreProperties withExpansion(double alpha1, double alpha2) {
        return new FibreProperties(E1, E2, G12, nu12, Optional.of(new Expansion(alpha1, alpha2)));
    }
}
