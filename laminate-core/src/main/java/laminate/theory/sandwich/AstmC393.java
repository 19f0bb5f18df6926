package laminate.theory.sandwich;

import laminate.theory.Require;

/**
 * Stresses of a sandwich beam as ASTM C393-00 evaluates its tests (from memory), for equal faces, with h + c = 2 d.
 *
 * <p>Each names how a beam on two supports is loaded by the total force P.
 */
public enum AstmC393 {
    /** Three-point bending: face stress P L/(2 t (h + c) b). */
    MID_SPAN(2),
    /** Four-point bending, loads at the quarter points, L/2 apart: face stress P L/(4 t (h + c) b). */
    QUARTER_POINT(4),
    /** Four-point bending, loads at the third points, L/3 apart: face stress P L/(3 t (h + c) b). */
    THIRD_POINT(3);

    private final int divisor;

    AstmC393(int divisor) {
        this.divisor = divisor;
    }

    /**
     * Largest mean stress of a face.
     *
     * @param P total force (N)
     * @param L span (m)
     * @param b width (m)
     * @param t thickness of a face (m)
     * @param c thickness of the core (m)
     * @return the stress, tension in one face and compression in the other (Pa)
     * @throws IllegalArgumentException if P is not finite or another not positive
     */
    public double faceStress(double P, double L, double b, double t, double c) {
        double moment = Require.finite("force", P) * Require.positive("span", L) / divisor;
        return Require.finite("face stress", moment / (t * depths(t, c) * width(b)));
    }

    /**
     * Shear stress of the core between support and load, P/((h + c) b), whatever the loading.
     *
     * @param P total force (N)
     * @param b width (m)
     * @param t thickness of a face (m)
     * @param c thickness of the core (m)
     * @return the stress (Pa)
     * @throws IllegalArgumentException if P is not finite or another not positive
     */
    public static double coreShear(double P, double b, double t, double c) {
        return Require.finite("core shear stress", Require.finite("force", P) / (depths(t, c) * width(b)));
    }

    private static double width(double b) {
        return Require.positive("width", b);
    }

    /** h + c. */
    private static double depths(double t, double c) {
        return 2 * Require.positive("face thickness", t) + 2 * Require.positive("core thickness", c);
    }
}
