package laminate.theory.failure;

import java.util.OptionalDouble;
import laminate.theory.Require;
import laminate.theory.Vector3;

/**
 * One branch of a criterion in plane stress: f = l1 σ1 + l2 σ2 + l6 τ12 + q11 σ1² + q12 σ1σ2 + q22 σ2² + q66 τ12²,
 * failure at 1, which counts while σ1 and σ2 have the given signs (0: either).
 */
record IndexForm(
        Mode mode,
        int sign1,
        int sign2,
        double l1,
        double l2,
        double l6,
        double q11,
        double q12,
        double q22,
        double q66) {

    static IndexForm linear(Mode mode, double l1, double l2, double l6) {
        return new IndexForm(mode, 0, 0, l1, l2, l6, 0, 0, 0, 0);
    }

    /** A quadratic form with linear terms in σ1, σ2, for any signs. */
    static IndexForm quadratic(Mode mode, double l1, double l2, double q11, double q12, double q22, double q66) {
        return new IndexForm(mode, 0, 0, l1, l2, 0, q11, q12, q22, q66);
    }

    IndexForm where(int signOf1, int signOf2) {
        return new IndexForm(mode, signOf1, signOf2, l1, l2, l6, q11, q12, q22, q66);
    }

    boolean counts(Vector3 s) {
        return sign1 * s.x() >= 0 && sign2 * s.y() >= 0;
    }

    double at(Vector3 s) {
        return Require.finite("failure index", linear(s) + bilinear(s, s));
    }

    private double linear(Vector3 s) {
        return l1 * s.x() + l2 * s.y() + l6 * s.xy();
    }

    private double bilinear(Vector3 s, Vector3 t) {
        return q11 * s.x() * t.x()
                + q12 * (s.x() * t.y() + s.y() * t.x()) / 2
                + q22 * s.y() * t.y()
                + q66 * s.xy() * t.xy();
    }

    /** First R ≥ 0 at which the branch counts and is at least 1, along constant + R growing. */
    OptionalDouble firstReached(Vector3 constant, Vector3 growing) {
        double from =
                Math.max(0, Math.max(start(sign1, constant.x(), growing.x()), start(sign2, constant.y(), growing.y())));
        double to = Math.min(end(sign1, constant.x(), growing.x()), end(sign2, constant.y(), growing.y()));
        if (from > to || Double.isInfinite(from)) {
            return OptionalDouble.empty();
        }
        return along(constant, growing).firstReached(from, to);
    }

    private Quadratic along(Vector3 constant, Vector3 growing) {
        return new Quadratic(
                bilinear(growing, growing), linear(growing) + 2 * bilinear(constant, growing), at(constant));
    }

    /** From which R on sign × (s + R t) ≥ 0: −∞ if always up to {@link #end}, +∞ if never. */
    private static double start(int sign, double s, double t) {
        double slope = sign * t;
        if (slope > 0) {
            return -s / t;
        }
        return slope == 0 && sign * s < 0 ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
    }

    /** Up to which R sign × (s + R t) ≥ 0. */
    private static double end(int sign, double s, double t) {
        return sign * t < 0 ? -s / t : Double.POSITIVE_INFINITY;
    }
}
