package laminate.theory.failure;

import java.util.List;
import laminate.theory.PlyStrength;
import laminate.theory.Vector3;

/** Maximum stress: each stress of the ply against its own strength, without interaction (Jones 1999, ch. 2). */
public final class MaximumStress {
    private MaximumStress() {}

    /**
     * The failure index: the largest of σ1/Xt, −σ1/Xc, σ2/Yt, −σ2/Yc, |τ12|/S. Failure at 1; its inverse is the reserve
     * factor where there is no residual stress. Unsafe by up to about a third where stresses of like size meet.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index, at least 0
     */
    public static double index(Vector3 stress, PlyStrength strength) {
        return PlyCriterion.index(forms(strength), stress);
    }

    static List<IndexForm> forms(PlyStrength s) {
        return List.of(
                IndexForm.linear(Mode.TENSION_1, 1 / s.Xt(), 0, 0),
                IndexForm.linear(Mode.COMPRESSION_1, -1 / s.Xc(), 0, 0),
                IndexForm.linear(Mode.TENSION_2, 0, 1 / s.Yt(), 0),
                IndexForm.linear(Mode.COMPRESSION_2, 0, -1 / s.Yc(), 0),
                IndexForm.linear(Mode.SHEAR_12, 0, 0, 1 / s.S()),
                IndexForm.linear(Mode.SHEAR_12, 0, 0, -1 / s.S()));
    }
}
