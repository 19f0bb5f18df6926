package laminate.theory.failure;

import java.util.List;
import laminate.theory.PlyStrength;
import laminate.theory.Vector3;

/**
 * Hashin's criteria of 1980 in plane stress: fibre and matrix judged apart, tension and compression by the sign of the
 * stress, failure of a mode at 1. For plies with one fibre direction; for a woven ply "matrix" is its weft.
 */
public final class Hashin {
    private Hashin() {}

    /**
     * Fibre tension, for σ1 ≥ 0: (σ1/Xt)² + (τ12/S)². The shear is kept, as in the paper; under shear with little
     * other stress the mode so named is a matter of convention.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index
     */
    public static double fibreTension(Vector3 stress, PlyStrength strength) {
        return fibreTension(strength).at(stress);
    }

    /**
     * Fibre compression, for σ1 ≤ 0: (σ1/Xc)².
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index
     */
    public static double fibreCompression(Vector3 stress, PlyStrength strength) {
        return fibreCompression(strength).at(stress);
    }

    /**
     * Matrix tension, for σ2 ≥ 0: (σ2/Yt)² + (τ12/S)².
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index
     */
    public static double matrixTension(Vector3 stress, PlyStrength strength) {
        return matrixTension(strength).at(stress);
    }

    /**
     * Matrix compression, for σ2 ≤ 0: (σ2/(2 S23))² + [(Yc/(2 S23))² − 1] σ2/Yc + (τ12/S)².
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index
     */
    public static double matrixCompression(Vector3 stress, PlyStrength strength) {
        return matrixCompression(strength).at(stress);
    }

    /**
     * Shear strength across the fibres: as known, otherwise Yc/2, for which the linear term of matrix compression
     * vanishes.
     *
     * @param strength strength of the ply (Pa)
     * @return S23 (Pa)
     */
    public static double transverseShearStrength(PlyStrength strength) {
        return strength.S23().orElse(strength.Yc() / 2);
    }

    /**
     * The largest index of the modes that the signs of the stress call up.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the ply (Pa)
     * @return the index; failure at 1
     */
    public static double index(Vector3 stress, PlyStrength strength) {
        return PlyCriterion.index(forms(strength), stress);
    }

    /** Matrix first: shear alone reaches fibre tension at the same load, yet cracks the matrix and breaks no fibre. */
    static List<IndexForm> forms(PlyStrength s) {
        return List.of(matrixTension(s), matrixCompression(s), fibreTension(s), fibreCompression(s));
    }

    private static IndexForm fibreTension(PlyStrength s) {
        return IndexForm.quadratic(Mode.FIBRE_TENSION, 0, 0, 1 / (s.Xt() * s.Xt()), 0, 0, shear(s))
                .where(1, 0);
    }

    private static IndexForm fibreCompression(PlyStrength s) {
        return IndexForm.quadratic(Mode.FIBRE_COMPRESSION, 0, 0, 1 / (s.Xc() * s.Xc()), 0, 0, 0)
                .where(-1, 0);
    }

    private static IndexForm matrixTension(PlyStrength s) {
        return IndexForm.quadratic(Mode.MATRIX_TENSION, 0, 0, 0, 0, 1 / (s.Yt() * s.Yt()), shear(s))
                .where(0, 1);
    }

    private static IndexForm matrixCompression(PlyStrength s) {
        double twice = 2 * transverseShearStrength(s);
        double linear = (s.Yc() / twice * (s.Yc() / twice) - 1) / s.Yc();
        return IndexForm.quadratic(Mode.MATRIX_COMPRESSION, 0, linear, 0, 0, 1 / (twice * twice), shear(s))
                .where(0, -1);
    }

    private static double shear(PlyStrength s) {
        return 1 / (s.S() * s.S());
    }
}
