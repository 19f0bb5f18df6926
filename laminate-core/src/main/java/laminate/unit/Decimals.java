package laminate.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Doubles as the decimals they were written as. */
final class Decimals {
    private static final int DIGITS = 15;
    private static final double LEAST_QUICK = 1e-6;
    private static final double MOST_QUICK = 1e14;

    /** Powers of ten that a double holds exactly. */
    private static final double[] POWERS_OF_TEN = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19,
        1e20, 1e21, 1e22
    };

    /** Every decimal of up to 15 digits survives the way into a double and back. */
    private static final MathContext FIFTEEN = new MathContext(DIGITS, RoundingMode.HALF_EVEN);

    private Decimals() {}

    /**
     * The decimal of at most 15 digits that reads as this double, or else the double's exact value.
     *
     * <p>{@link Double#toString(double)} would do much the same, but its digits differ between JDK 17 and 25.
     *
     * @param value any finite number
     * @return a decimal whose nearest double is the value
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    static BigDecimal of(double value) {
        if (!isEveryday(value)) {
            return slow(value);
        }
        int decimals = decimals(value);
        long digits = digits(value, decimals);
        return isWritten(value, digits, decimals) ? BigDecimal.valueOf(digits, decimals) : new BigDecimal(value);
    }

    /**
     * The double to 15 digits, of which the last may be one off: for a reader, who is shown fewer, and in a fraction of the
     * time that the exact value of a computed number takes.
     *
     * @param value any finite number
     * @return a decimal within 1.5 of the 15th digit
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    static BigDecimal near(double value) {
        if (!isEveryday(value)) {
            return slow(value);
        }
        int decimals = decimals(value);
        return BigDecimal.valueOf(digits(value, decimals), decimals);
    }

    /** Whether a double of everyday size reads as no decimal of up to 15 digits, as most computed numbers do. */
    static boolean isComputed(double value) {
        if (!isEveryday(value)) {
            return false;
        }
        int decimals = decimals(value);
        return !isWritten(value, digits(value, decimals), decimals);
    }

    private static boolean isEveryday(double value) {
        double size = Math.abs(value);
        return size >= LEAST_QUICK && size < MOST_QUICK;
    }

    /** How many decimals 15 digits reach to. */
    private static int decimals(double value) {
        double size = Math.abs(value);
        int decimals = DIGITS - 1;
        while (size * POWERS_OF_TEN[decimals] >= POWERS_OF_TEN[DIGITS]) {
            decimals--;
        }
        while (size * POWERS_OF_TEN[decimals] < POWERS_OF_TEN[DIGITS - 1]) {
            decimals++;
        }
        return decimals;
    }

    private static long digits(double value, int decimals) {
        return Math.round(value * POWERS_OF_TEN[decimals]);
    }

    /**
     * Whether digits and decimals are what was written. Digits and power of ten are whole numbers that a double holds
     * exactly, so that their quotient is the nearest double of the decimal (IEEE 754): if it is the value, the decimal is
     * found. If it is not, there is none: a decimal that reads as the value lies within 0.11 of the scaled value, and the
     * product is rounded by no more than another 0.11, so that it would have been found.
     */
    private static boolean isWritten(double value, long digits, int decimals) {
        return digits / POWERS_OF_TEN[decimals] == value;
    }

    private static BigDecimal slow(double value) {
        BigDecimal exact = new BigDecimal(requireFinite(value));
        BigDecimal written = exact.round(FIFTEEN);
        return written.doubleValue() == value ? written : exact;
    }

    static double requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a finite number is wanted, not " + value);
        }
        return value;
    }
}
