package laminate.theory.failure;

import java.util.List;
import laminate.theory.Lamina;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import laminate.theory.Vector3;

/**
 * Maximum strain: each mechanical strain of the ply against its own limit (Jones 1999, ch. 2). Mechanical strain is
 * what goes with stress, ε1 = (σ1 − ν12 σ2)/E1, ε2 = (σ2 − ν21 σ1)/E2, γ12 = τ12/G12; free expansion is no part of it.
 */
public final class MaximumStrain {
    private MaximumStrain() {}

    /**
     * The limits of a ply: its own where known, otherwise strength over modulus.
     *
     * @param strength strength of the ply
     * @param lamina its moduli
     * @return the limits
     */
    public static StrainLimits limits(PlyStrength strength, Lamina lamina) {
        return strength.strainLimits().orElseGet(() -> StrainLimits.linear(strength, lamina));
    }

    /**
     * The failure index: the largest of the strains over their limits. Failure at 1. With limits of strength over
     * modulus the ply is taken as linear up to failure, which in shear it is not.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param lamina moduli of the ply
     * @param limits strains at failure
     * @return the index, at least 0
     */
    public static double index(Vector3 stress, Lamina lamina, StrainLimits limits) {
        return PlyCriterion.index(forms(lamina, limits), stress);
    }

    static List<IndexForm> forms(Lamina m, StrainLimits e) {
        double s11 = 1 / m.E1();
        double s12 = -m.nu12() / m.E1();
        double s22 = 1 / m.E2();
        double s66 = 1 / m.G12();
        return List.of(
                IndexForm.linear(Mode.TENSION_1, s11 / e.e1t(), s12 / e.e1t(), 0),
                IndexForm.linear(Mode.COMPRESSION_1, -s11 / e.e1c(), -s12 / e.e1c(), 0),
                IndexForm.linear(Mode.TENSION_2, s12 / e.e2t(), s22 / e.e2t(), 0),
                IndexForm.linear(Mode.COMPRESSION_2, -s12 / e.e2c(), -s22 / e.e2c(), 0),
                IndexForm.linear(Mode.SHEAR_12, 0, 0, s66 / e.g12()),
                IndexForm.linear(Mode.SHEAR_12, 0, 0, -s66 / e.g12()));
    }
}
