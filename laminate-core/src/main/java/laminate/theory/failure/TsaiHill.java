package laminate.theory.failure;

import java.util.ArrayList;
import java.util.List;
import laminate.theory.PlyStrength;
import laminate.theory.Vector3;

/**
 * Tsai–Hill: one quadratic surface, with the strengths of tension or compression by the sign of each stress (Azzi and
 * Tsai 1965; the choice by sign as in Kaw 2006, ch. 2).
 */
public final class TsaiHill {
    private TsaiHill() {}

    /**
     * The failure index f = (σ1/X)² − σ1σ2/X² + (σ2/Y)² + (τ12/S)², X by the sign of σ1 also in the cross term, Y by
     * the sign of σ2. Failure at 1; quadratic in the stress, so that f = 0.25 has a reserve factor of 2. For plies with
     * one fibre direction or two; gives no mode of its own.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index
     */
    public static double index(Vector3 stress, PlyStrength strength) {
        return PlyCriterion.index(forms(strength), stress);
    }

    static List<IndexForm> forms(PlyStrength s) {
        List<IndexForm> quadrants = new ArrayList<>();
        for (int sign1 : new int[] {1, -1}) {
            for (int sign2 : new int[] {1, -1}) {
                double X = sign1 > 0 ? s.Xt() : s.Xc();
                double Y = sign2 > 0 ? s.Yt() : s.Yc();
                double xx = 1 / (X * X);
                Mode mode = sign1 > 0 ? Mode.TENSION_1 : Mode.COMPRESSION_1;
                quadrants.add(IndexForm.quadratic(mode, 0, 0, xx, -xx, 1 / (Y * Y), 1 / (s.S() * s.S()))
                        .where(sign1, sign2));
            }
        }
        return quadrants;
    }
}
