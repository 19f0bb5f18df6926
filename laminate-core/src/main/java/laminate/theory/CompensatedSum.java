package laminate.theory;

import java.util.function.IntToDoubleFunction;

/**
 * Sums that keep what rounding would drop (A. Neumaier, ZAMM 54 (1974) 39), so that terms which cancel in the
 * mathematics cancel to 0.0: A16 of a balanced laminate, B of a symmetric one.
 */
final class CompensatedSum {
    private double sum;
    private double lost;

    static double of(int count, IntToDoubleFunction term) {
        CompensatedSum sum = new CompensatedSum();
        for (int i = 0; i < count; i++) {
            sum.add(term.applyAsDouble(i));
        }
        return sum.value();
    }

    void add(double x) {
        double next = sum + x;
        lost += Math.abs(sum) >= Math.abs(x) ? (sum - next) + x : (x - next) + sum;
        sum = next;
    }

    double value() {
        return sum + lost;
    }
}
