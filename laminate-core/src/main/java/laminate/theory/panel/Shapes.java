package laminate.theory.panel;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The functions of one coordinate from 0 to a length that deflections and rotations are built of, with their products
 * integrated exactly.
 *
 * <p>With P the Legendre polynomials of ξ = 2 x/length − 1, the straight family is 1, ξ, (1 − ξ)/2, (1 + ξ)/2 and, for
 * k from 2 up, (P_k − P_k−2)/√(2 (2k − 1)), which vanish at both ends (integrated Legendre polynomials, B. Szabó and
 * I. Babuška, 1991, from memory). The smooth family, for slopes that must be continuous, is the cubics with one unit
 * value or slope at one end and P integrated twice, which vanish at both ends together with their slopes.
 */
final class Shapes implements Line {
    /** Cubics that are even: ends' values alike, ends' slopes opposite; and odd: values opposite, slopes alike. */
    static final int SMOOTH_ONE = 0;

    static final int SMOOTH_VALUE_ODD = 1;
    static final int SMOOTH_SLOPE_EVEN = 2;
    static final int SMOOTH_SLOPE_ODD = 3;
    /** Cubics with the value or slope at one end. */
    static final int SMOOTH_VALUE_START = 4;

    static final int SMOOTH_VALUE_END = 5;
    static final int SMOOTH_SLOPE_START = 6;
    static final int SMOOTH_SLOPE_END = 7;
    /** Functions whose powers are further apart have products that integrate to zero. */
    static final int REACH = 4;

    private static final int DERIVATIVES = 3;
    private static final double ROUNDING = 1e-13;

    private final double length;
    private final int order;
    private final int smoothAt;
    private final double[][] legendre;
    private final int count;

    /**
     * Functions up to an order.
     *
     * @param length length (m)
     * @param order highest power
     * @param smooth whether the smooth family is wanted too
     */
    Shapes(double length, int order, boolean smooth) {
        this.length = length;
        this.order = order;
        smoothAt = 4 + order - 1;
        count = smooth ? smoothAt + 8 + Math.max(0, order - 3) : smoothAt;
        legendre = coefficients();
    }

    @Override
    public int order() {
        return order;
    }

    @Override
    public double length() {
        return length;
    }

    @Override
    public int[] inner() {
        return IntStream.rangeClosed(2, order).map(this::bubble).toArray();
    }

    @Override
    public boolean mayCouple(int left, int right) {
        return Math.abs(rank(left) - rank(right)) <= REACH;
    }

    @Override
    public List<Gauss> rules(int points) {
        return List.of(Gauss.on(0, length, points));
    }

    /** Place in the list of the straight function of power k ≥ 2 that vanishes at both ends. */
    int bubble(int k) {
        return 2 + k;
    }

    /** Place in the list of one of the smooth cubics. */
    int smooth(int which) {
        return smoothAt + which;
    }

    /** Place in the list of the smooth function of power k ≥ 4 that vanishes at both ends with its slope. */
    int smoothBubble(int k) {
        return smoothAt + 8 + k - 4;
    }

    @Override
    public int parity(int function) {
        if (function < 4) {
            return function == LINEAR ? 1 : 0;
        }
        if (function < smoothAt) {
            return function % 2;
        }
        int smooth = function - smoothAt;
        if (smooth < 8) {
            return smooth == SMOOTH_VALUE_ODD || smooth == SMOOTH_SLOPE_ODD ? 1 : 0;
        }
        return smooth % 2;
    }

    /** The power of a function; see {@link #REACH}. */
    @Override
    public int rank(int function) {
        if (function < 4) {
            return Math.min(function, 1);
        }
        if (function < smoothAt) {
            return function - 2;
        }
        return Math.max(3, function - smoothAt - 4);
    }

    /** Every function as a sum of Legendre polynomials. */
    private double[][] coefficients() {
        double[][] c = new double[count][order + 4];
        c[ONE][0] = 1;
        c[LINEAR][1] = 1;
        c[AT_START][0] = 0.5;
        c[AT_START][1] = -0.5;
        c[AT_END][0] = 0.5;
        c[AT_END][1] = 0.5;
        for (int k = 2; k <= order; k++) {
            double scale = 1 / Math.sqrt(2 * (2 * k - 1));
            c[bubble(k)][k] = scale;
            c[bubble(k)][k - 2] = -scale;
        }
        if (count > smoothAt) {
            smooth(c);
        }
        return c;
    }

    private void smooth(double[][] c) {
        cubics(c);
        for (int k = 4; k <= order; k++) {
            double scale = Math.sqrt((2 * k - 3) / 2.0) / (2 * k - 3);
            c[smoothBubble(k)][k] = scale / (2 * k - 1);
            c[smoothBubble(k)][k - 2] = -scale * (1.0 / (2 * k - 1) + 1.0 / (2 * k - 5));
            c[smoothBubble(k)][k - 4] = scale / (2 * k - 5);
        }
    }

    /** In powers: 1, (3ξ − ξ³)/2, (ξ² − 1)/2, (ξ³ − ξ)/2 and their half sums and differences. */
    private void cubics(double[][] c) {
        c[smooth(SMOOTH_ONE)][0] = 1;
        c[smooth(SMOOTH_VALUE_ODD)][1] = 1.2;
        c[smooth(SMOOTH_VALUE_ODD)][3] = -0.2;
        c[smooth(SMOOTH_SLOPE_EVEN)][0] = -1.0 / 3;
        c[smooth(SMOOTH_SLOPE_EVEN)][2] = 1.0 / 3;
        c[smooth(SMOOTH_SLOPE_ODD)][1] = -0.2;
        c[smooth(SMOOTH_SLOPE_ODD)][3] = 0.2;
        for (int n = 0; n < 4; n++) {
            c[smooth(SMOOTH_VALUE_START)][n] = (c[smooth(SMOOTH_ONE)][n] - c[smooth(SMOOTH_VALUE_ODD)][n]) / 2;
            c[smooth(SMOOTH_VALUE_END)][n] = (c[smooth(SMOOTH_ONE)][n] + c[smooth(SMOOTH_VALUE_ODD)][n]) / 2;
            c[smooth(SMOOTH_SLOPE_START)][n] = (c[smooth(SMOOTH_SLOPE_ODD)][n] - c[smooth(SMOOTH_SLOPE_EVEN)][n]) / 2;
            c[smooth(SMOOTH_SLOPE_END)][n] = (c[smooth(SMOOTH_SLOPE_ODD)][n] + c[smooth(SMOOTH_SLOPE_EVEN)][n]) / 2;
        }
    }

    @Override
    public double[][] at(double x) {
        double[][] p = legendreAt(2 * x / length - 1, order + 4);
        double[][] values = new double[DERIVATIVES][count];
        double scale = 1;
        for (int d = 0; d < DERIVATIVES; d++) {
            for (int f = 0; f < count; f++) {
                values[d][f] = scale * sum(legendre[f], p[d]);
            }
            scale *= 2 / length;
        }
        return values;
    }

    private static double sum(double[] coefficients, double[] polynomials) {
        double sum = 0;
        for (int n = 0; n < coefficients.length; n++) {
            sum += coefficients[n] * polynomials[n];
        }
        return sum;
    }

    /** P, P' and P'' by ξ for n below a number; P'n+1 = P'n−1 + (2n + 1) Pn and so on. */
    private static double[][] legendreAt(double xi, int below) {
        double[][] p = new double[DERIVATIVES][below];
        p[0][0] = 1;
        p[0][1] = xi;
        p[1][1] = 1;
        for (int n = 1; n < below - 1; n++) {
            p[0][n + 1] = ((2 * n + 1) * xi * p[0][n] - n * p[0][n - 1]) / (n + 1);
            p[1][n + 1] = p[1][n - 1] + (2 * n + 1) * p[0][n];
            p[2][n + 1] = p[2][n - 1] + (2 * n + 1) * p[1][n];
        }
        return p;
    }

    @Override
    public double[][][][] products() {
        Gauss gauss = Gauss.on(0, length, order + 1);
        double[][][][] integrals = new double[DERIVATIVES][DERIVATIVES][count][count];
        for (int k = 0; k < gauss.size(); k++) {
            double[][] values = at(gauss.point(k));
            for (int d = 0; d < DERIVATIVES; d++) {
                for (int e = 0; e < DERIVATIVES; e++) {
                    addProducts(integrals[d][e], values[d], values[e], gauss.weight(k));
                }
            }
        }
        clean(integrals);
        return integrals;
    }

    private void clean(double[][][][] integrals) {
        for (int d = 0; d < DERIVATIVES; d++) {
            for (int e = 0; e < DERIVATIVES; e++) {
                for (int i = 0; i < count; i++) {
                    for (int j = 0; j < count; j++) {
                        double scale = Math.sqrt(integrals[d][d][i][i] * integrals[e][e][j][j]);
                        if (Math.abs(integrals[d][e][i][j]) < ROUNDING * scale) {
                            integrals[d][e][i][j] = 0;
                        }
                    }
                }
            }
        }
    }

    private static void addProducts(double[][] sums, double[] left, double[] right, double weight) {
        for (int i = 0; i < left.length; i++) {
            double scaled = weight * left[i];
            for (int j = 0; j < right.length; j++) {
                sums[i][j] += scaled * right[j];
            }
        }
    }

    @Override
    public double[] integrals(Ramp ramp) {
        Gauss gauss = Gauss.on(ramp.from(), ramp.to(), order / 2 + 2);
        double[] sums = new double[count];
        for (int k = 0; k < gauss.size(); k++) {
            double[] values = at(gauss.point(k))[0];
            double weight = gauss.weight(k) * ramp.at(gauss.point(k));
            for (int f = 0; f < count; f++) {
                sums[f] += weight * values[f];
            }
        }
        double rounding = ROUNDING * Arrays.stream(sums).map(Math::abs).max().orElse(0);
        return Arrays.stream(sums).map(x -> Math.abs(x) < rounding ? 0 : x).toArray();
    }
}
