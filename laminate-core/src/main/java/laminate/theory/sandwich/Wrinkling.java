package laminate.theory.sandwich;

import laminate.theory.Require;

/**
 * Short-wave buckling of a compressed face on its core, σ = k (Ef Ec Gc)^(1/3).
 *
 * <p>For a flat face bonded to a core that is thick against the wave, at least twice {@link #decayDepth} between two
 * compressed faces. Ef is the modulus of the face in compression along the stress, taken as uniaxial; Ec the modulus of
 * the core through its thickness; Gc its shear modulus in the plane of stress and thickness. Waviness from making is
 * what separates the design value from theory.
 */
public enum Wrinkling {
    /** For design: k = 0.5, as in ISO 12215-5:2008 (coefficient from memory) and common practice. */
    DESIGN(0.5),

    /** Theory for a perfectly flat face: k = 0.91 (Hoff and Mautner 1945, from memory; 3/36^(1/3) = 0.9086). */
    THEORY(0.91);

    private final double coefficient;

    Wrinkling(double coefficient) {
        this.coefficient = coefficient;
    }

    /**
     * The coefficient k.
     *
     * @return k, a pure number
     */
    public double coefficient() {
        return coefficient;
    }

    /**
     * The compressive stress at which the face wrinkles.
     *
     * @param Ef modulus of the face along the stress (Pa)
     * @param Ec modulus of the core through the thickness (Pa)
     * @param Gc shear modulus of the core (Pa)
     * @return critical stress (Pa)
     * @throws IllegalArgumentException if a modulus is not positive
     */
    public double stress(double Ef, double Ec, double Gc) {
        return coefficient
                * Math.cbrt(Require.positive("face modulus", Ef))
                * Math.cbrt(Require.positive("core modulus", Ec))
                * Math.cbrt(Require.positive("core shear modulus", Gc));
    }

    /**
     * How deep the wave reaches into the core, 0.91 t (Ef Ec/Gc²)^(1/3) (Hoff and Mautner 1945, from memory). A core
     * thinner than twice this couples both faces, and the formula leaves its range.
     *
     * @param t thickness of the face (m)
     * @param Ef modulus of the face along the stress (Pa)
     * @param Ec modulus of the core through the thickness (Pa)
     * @param Gc shear modulus of the core (Pa)
     * @return the depth (m)
     * @throws IllegalArgumentException if an argument is not positive
     */
    public static double decayDepth(double t, double Ef, double Ec, double Gc) {
        return Require.finite("depth", Require.positive("face thickness", t) * THEORY.stress(Ef, Ec, Gc) / Gc);
    }
}
