package laminate.process.flow;

import java.util.function.DoubleUnaryOperator;

/**
 * Integral of a function that is smooth but for a place to the left and one to the right, such as the middle of a disc or
 * the height at which the pressure is used up: Gauss–Legendre over panels that shrink towards them. With a panel no longer
 * than its distance from such a place, ten points are good to 1e-15. Neither end is ever asked for.
 */
final class Integral {
    /** Points and weights on −1 to 1, positive half. */
    private static final double[] POINTS = {
        0.1488743389816312, 0.4333953941292472, 0.6794095682990244, 0.8650633666889845, 0.9739065285171717
    };

    private static final double[] WEIGHTS = {
        0.2955242247147529, 0.2692667193099964, 0.2190863625159820, 0.1494513491505806, 0.0666713443086881
    };

    /** What is left before a place that is itself the end, as a share of the way; the function there goes as x ln x. */
    private static final double REST = 1e-9;

    private Integral() {}

    /**
     * Integral over an interval.
     *
     * @param f the function
     * @param from start
     * @param to end, not before the start
     * @param left where it is not smooth, before the start
     * @param right where it is not smooth, at the end or behind
     */
    static double of(DoubleUnaryOperator f, double from, double to, double left, double right) {
        double least = (to - from) * REST;
        double sum = 0;
        double x = from;
        while (x < to) {
            double panel = Math.max(least, Math.min(x - left, (right - x) / 2));
            double next = to - x <= panel + least ? to : x + panel;
            sum += panel(f, x, next);
            x = next;
        }
        return sum;
    }

    private static double panel(DoubleUnaryOperator f, double from, double to) {
        double middle = (from + to) / 2;
        double half = (to - from) / 2;
        double sum = 0;
        for (int i = 0; i < POINTS.length; i++) {
            double d = half * POINTS[i];
            sum += WEIGHTS[i] * (f.applyAsDouble(middle - d) + f.applyAsDouble(middle + d));
        }
        return half * sum;
    }
}
