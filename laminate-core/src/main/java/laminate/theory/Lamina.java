package laminate.theory;

import java.util.Objects;
import java.util.Optional;

/**
 * A homogeneous orthotropic sheet in plane stress: what one ply is made of, in its own axes.
 *
 * <p>Direction 1 is along the fibre (or the warp), 2 across it in the plane, 3 through the thickness. What is not
 * known stays absent and is never taken for zero: a laminate with a ply of unknown expansion has no expansion.
 *
 * @param E1 modulus along direction 1 (Pa)
 * @param E2 modulus along direction 2 (Pa)
 * @param G12 in-plane shear modulus (Pa)
 * @param nu12 major Poisson ratio: −ε2/ε1 under stress along 1
 * @param transverseShear shear moduli across the thickness, if known
 * @param thermalExpansion α1, α2 (1/K), if known
 * @param moistureExpansion β1, β2 (strain per unit moisture content), if known
 * @param strength the stresses at which it fails, if known
 */
public record Lamina(
        double E1,
        double E2,
        double G12,
        double nu12,
        Optional<TransverseShear> transverseShear,
        Optional<Expansion> thermalExpansion,
        Optional<Expansion> moistureExpansion,
        Optional<Strength> strength) {

    /**
     * Checks that the strain energy is positive: positive moduli and |ν12| &lt; √(E1/E2) (Jones 1999, ch. 2).
     *
     * @param E1 modulus along direction 1 (Pa)
     * @param E2 modulus along direction 2 (Pa)
     * @param G12 in-plane shear modulus (Pa)
     * @param nu12 major Poisson ratio: −ε2/ε1 under stress along 1
     * @param transverseShear shear moduli across the thickness, if known
     * @param thermalExpansion α1, α2 (1/K), if known
     * @param moistureExpansion β1, β2 (strain per unit moisture content), if known
     * @param strength the stresses at which it fails, if known
     * @throws IllegalArgumentException if it cannot be
     */
    public Lamina {
        Require.positive("E1", E1);
        Require.positive("E2", E2);
        Require.positive("G12", G12);
        double bound = Math.sqrt(E1 / E2);
        if (!(Math.abs(nu12) < bound)) {
            throw new IllegalArgumentException(
                    "nu12 must lie between −√(E1/E2) and √(E1/E2) = " + bound + ", was " + nu12);
        }
        Objects.requireNonNull(transverseShear, "transverseShear");
        Objects.requireNonNull(thermalExpansion, "thermalExpansion");
        Objects.requireNonNull(moistureExpansion, "moistureExpansion");
        Objects.requireNonNull(strength, "strength");
    }

    /**
     * A lamina by its four in-plane constants.
     *
     * @param E1 modulus along direction 1 (Pa)
     * @param E2 modulus along direction 2 (Pa)
     * @param G12 in-plane shear modulus (Pa)
     * @param nu12 major Poisson ratio
     * @return the lamina; expansion, transverse shear and strength unknown
     * @throws IllegalArgumentException if the constants cannot be
     */
    public static Lamina of(double E1, double E2, double G12, double nu12) {
        return new Lamina(E1, E2, G12, nu12, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /**
     * A material that is the same in every direction: G = E / (2 (1 + ν)), also across the thickness.
     *
     * @param E modulus (Pa)
     * @param nu Poisson ratio, above −1 and up to 0.5
     * @return the lamina; expansion unknown
     * @throws IllegalArgumentException if the constants cannot be
     */
    public static Lamina isotropic(double E, double nu) {
        double shear = isotropicShearModulus(E, nu);
        return of(E, E, shear, nu).withTransverseShear(shear, shear);
    }

    /**
     * Shear modulus of an isotropic material, G = E / (2 (1 + ν)). Textbook.
     *
     * @param E modulus (Pa)
     * @param nu Poisson ratio, above −1 and up to 0.5
     * @return the shear modulus (Pa)
     * @throws IllegalArgumentException if the constants cannot be
     */
    public static double isotropicShearModulus(double E, double nu) {
        Require.positive("E", E);
        if (!(nu > -1 && nu <= 0.5)) {
            throw new IllegalArgumentException("nu must lie above −1 and up to 0.5, was " + nu);
        }
        return E / (2 * (1 + nu));
    }

    /**
     * The lamina that has a given stiffness; the inverse of {@link #reducedStiffness()}.
     *
     * <p>E1 = Q11 − Q12²/Q22, E2 = Q22 − Q12²/Q11, ν12 = Q12/Q22, G12 = Q66.
     *
     * @param q stiffness in its own axes: Q16 = Q26 = 0
     * @return the lamina; expansion and transverse shear unknown
     * @throws IllegalArgumentException if q has shear coupling or is not a stiffness
     */
    public static Lamina from(ReducedStiffness q) {
        if (q.Q16() != 0 || q.Q26() != 0) {
            throw new IllegalArgumentException("a lamina in its own axes has Q16 = Q26 = 0, was " + q);
        }
        double squared = q.Q12() * q.Q12();
        return of(q.Q11() - squared / q.Q22(), q.Q22() - squared / q.Q11(), q.Q66(), q.Q12() / q.Q22());
    }

    /**
     * This lamina with shear moduli across the thickness.
     *
     * @param G13 modulus in the 1-3 plane (Pa)
     * @param G23 modulus in the 2-3 plane (Pa)
     * @return the copy
     */
    public Lamina withTransverseShear(double G13, double G23) {
        return with(Optional.of(new TransverseShear(G13, G23)), thermalExpansion, moistureExpansion);
    }

    /**
     * This lamina with thermal expansion.
     *
     * @param alpha1 along direction 1 (1/K)
     * @param alpha2 along direction 2 (1/K)
     * @return the copy
     */
    public Lamina withExpansion(double alpha1, double alpha2) {
        return with(transverseShear, Optional.of(new Expansion(alpha1, alpha2)), moistureExpansion);
    }

    /**
     * This lamina with moisture expansion.
     *
     * @param beta1 strain along direction 1 per unit moisture content (m/m per kg/kg)
     * @param beta2 strain along direction 2 per unit moisture content (m/m per kg/kg)
     * @return the copy
     */
    public Lamina withMoistureExpansion(double beta1, double beta2) {
        return with(transverseShear, thermalExpansion, Optional.of(new Expansion(beta1, beta2)));
    }

    /**
     * This lamina with its strength.
     *
     * @param strength the stresses at which it fails
     * @return the copy
     */
    public Lamina withStrength(Strength strength) {
        return new Lamina(
                E1, E2, G12, nu12, transverseShear, thermalExpansion, moistureExpansion, Optional.of(strength));
    }

    /**
     * Whether it is the material of a core.
     *
     * @return true if its strength is that of a core
     */
    public boolean isCore() {
        return strength.orElse(null) instanceof CoreStrength;
    }

    /** The same in-plane constants and strength with other optional parts. */
    Lamina with(Optional<TransverseShear> shear, Optional<Expansion> thermal, Optional<Expansion> moisture) {
        return new Lamina(E1, E2, G12, nu12, shear, thermal, moisture, strength);
    }

    /**
     * This lamina with every modulus multiplied by a knock-down; Poisson ratio, expansion and strength stay.
     *
     * @param knockDown factor on E1, E2, G12, G13, G23, positive
     * @return the copy
     * @throws IllegalArgumentException if the factor is not positive and finite
     */
    public Lamina scaledBy(double knockDown) {
        double k = Require.positive("knock-down", knockDown);
        Lamina scaled = new Lamina(
                k * E1, k * E2, k * G12, nu12, Optional.empty(), thermalExpansion, moistureExpansion, strength);
        return transverseShear.isPresent() ? scaled.withTransverseShear(k * G13(), k * G23()) : scaled;
    }

    /**
     * Shear modulus in the 1-3 plane; G12 where it is not known, see {@link #transverseShearAssumed()}.
     *
     * @return G13 (Pa)
     */
    public double G13() {
        return transverseShear.isPresent() ? transverseShear.get().G13() : G12;
    }

    /**
     * Shear modulus in the 2-3 plane; G12 where it is not known, see {@link #transverseShearAssumed()}.
     *
     * @return G23 (Pa)
     */
    public double G23() {
        return transverseShear.isPresent() ? transverseShear.get().G23() : G12;
    }

    /**
     * Whether G13 and G23 are only taken as G12, which a result must then say.
     *
     * @return true if they were not given
     */
    public boolean transverseShearAssumed() {
        return transverseShear.isEmpty();
    }

    /**
     * The minor Poisson ratio ν21 = ν12 E2/E1 (reciprocity, Jones 1999, ch. 2).
     *
     * @return ν21
     */
    public double nu21() {
        return nu12 * E2 / E1;
    }

    /**
     * Plane-stress stiffness in the axes of the lamina (Jones 1999, ch. 2; Kaw 2006, ch. 2).
     *
     * <p>Q11 = E1/(1 − ν12 ν21), Q22 = E2/(1 − ν12 ν21), Q12 = ν12 Q22, Q66 = G12, Q16 = Q26 = 0.
     *
     * @return the stiffness (Pa)
     */
    public ReducedStiffness reducedStiffness() {
        double free = 1 - nu12 * nu21();
        double q22 = E2 / free;
        return new ReducedStiffness(E1 / free, nu12 * q22, q22, 0, 0, G12);
    }
}
