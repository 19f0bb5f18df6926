package laminate.theory.panel;

/** Gauss–Legendre integration: n points integrate a polynomial of power 2n − 1 exactly. */
final class Gauss {
    private static final int MOST_STEPS = 100;
    private final double[] points;
    private final double[] weights;

    private Gauss(double[] points, double[] weights) {
        this.points = points;
        this.weights = weights;
    }

    /** The rule on an interval. */
    static Gauss on(double from, double to, int count) {
        double[] points = new double[count];
        double[] weights = new double[count];
        double half = (to - from) / 2;
        for (int i = 0; i < count; i++) {
            double[] root = root(i, count);
            points[i] = from + half * (1 + root[0]);
            weights[i] = half * 2 / ((1 - root[0] * root[0]) * root[1] * root[1]);
        }
        return new Gauss(points, weights);
    }

    /** Newton's method on Pn from the asymptotic place of its i-th root; the root and P'n there. */
    private static double[] root(int i, int n) {
        double x = -Math.cos(Math.PI * (i + 0.75) / (n + 0.5));
        double slope = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double before = 1;
            double p = x;
            for (int k = 2; k <= n; k++) {
                double next = ((2 * k - 1) * x * p - (k - 1) * before) / k;
                before = p;
                p = next;
            }
            slope = n * (before - x * p) / (1 - x * x);
            double move = p / slope;
            x -= move;
            if (Math.abs(move) < 1e-15) {
                break;
            }
        }
        return new double[] {x, slope};
    }

    int size() {
        return points.length;
    }

    double point(int k) {
        return points[k];
    }

    double weight(int k) {
        return weights[k];
    }
}
