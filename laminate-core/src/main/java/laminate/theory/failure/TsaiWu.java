package laminate.theory.failure;

import java.util.List;
import laminate.theory.PlyStrength;
import laminate.theory.Vector3;

/** Tsai–Wu: one quadratic surface with linear terms that tell tension from compression (Tsai and Wu 1971). */
public final class TsaiWu {
    private TsaiWu() {}

    /**
     * The failure index with the usual interaction F12 = −½ √(F11 F22).
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index, see {@link #index(Vector3, PlyStrength, double)}
     */
    public static double index(Vector3 stress, PlyStrength strength) {
        return index(stress, strength, interaction(strength));
    }

    /**
     * The failure index f = F1 σ1 + F2 σ2 + F11 σ1² + F22 σ2² + F66 τ12² + 2 F12 σ1σ2 with F1 = 1/Xt − 1/Xc,
     * F2 = 1/Yt − 1/Yc, F11 = 1/(Xt Xc), F22 = 1/(Yt Yc), F66 = 1/S². Failure at 1. Optimistic where both stresses are
     * compressive; gives no mode of its own.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @param F12 interaction (1/Pa²), between ∓√(F11 F22) for the surface to be closed
     * @return the index; may be negative
     */
    public static double index(Vector3 stress, PlyStrength strength, double F12) {
        return form(strength, F12).at(stress);
    }

    /**
     * The usual interaction, F12 = −½ √(F11 F22) (Tsai and Hahn 1980): the generalised von Mises form.
     *
     * @param strength strength of the ply (Pa)
     * @return F12 (1/Pa²)
     */
    public static double interaction(PlyStrength strength) {
        return -0.5 / Math.sqrt(strength.Xt() * strength.Xc()) / Math.sqrt(strength.Yt() * strength.Yc());
    }

    static List<IndexForm> forms(PlyStrength s) {
        return List.of(form(s, interaction(s)));
    }

    private static IndexForm form(PlyStrength s, double F12) {
        return IndexForm.quadratic(
                Mode.SHEAR_12,
                1 / s.Xt() - 1 / s.Xc(),
                1 / s.Yt() - 1 / s.Yc(),
                1 / (s.Xt() * s.Xc()),
                2 * F12,
                1 / (s.Yt() * s.Yc()),
                1 / (s.S() * s.S()));
    }
}
