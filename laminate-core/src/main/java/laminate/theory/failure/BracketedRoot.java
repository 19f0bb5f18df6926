package laminate.theory.failure;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** The load factor at which a convex failure index passes 1, by bracketing and false position (Illinois variant). */
final class BracketedRoot {
    private static final double PRECISION = 1e-14;
    /** More than enough to halve any bracket down to the precision. */
    private static final int MOST_STEPS = 200;

    private BracketedRoot() {}

    /**
     * The first factor at which the index is at least 1.
     *
     * @param index convex in the factor: it passes 1 once at most, if it starts below
     * @return the factor; 0 if it starts at 1 or above, empty if it never gets there
     */
    static OptionalDouble firstReached(DoubleUnaryOperator index) {
        if (!(index.applyAsDouble(0) < 1)) {
            return OptionalDouble.of(0);
        }
        double high = 1;
        while (index.applyAsDouble(high) < 1) {
            high *= 16;
            if (high > 1e300) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(between(index, high));
    }

    private static double between(DoubleUnaryOperator index, double top) {
        double low = 0;
        double high = top;
        double below = index.applyAsDouble(low) - 1;
        double above = index.applyAsDouble(high) - 1;
        for (int i = 0; i < MOST_STEPS && high - low > PRECISION * high; i++) {
            double x = i % 3 == 2 ? (low + high) / 2 : (low * above - high * below) / (above - below);
            double y = index.applyAsDouble(x) - 1;
            if (y < 0) {
                low = x;
                below = y;
                above /= 2;
            } else {
                high = x;
                above = y;
                below /= 2;
            }
        }
        return high;
    }
}
