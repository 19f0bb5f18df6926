package laminate.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for a program: 15 significant digits as a JSON number (RFC 8259), the same on every JDK. */
public final class JsonNumbers {
    private static final int DIGITS = 15;
    private static final int LEAST_PLAIN_EXPONENT = -4;

    private JsonNumbers() {}

    /**
     * Formats a number with up to 15 significant digits and no trailing zeros.
     *
     * <p>Magnitudes from 1e-4 to below 1e15 are plain decimals, all others have an exponent, as "1.5e-7" and "2e15".
     * Zero of either sign is "0". {@link Double#toString(double)} is not used, because its digits differ between JDK 17
     * and 25.
     *
     * @param value any finite number
     * @return a JSON number that reads back within 15 digits, never as infinity
     * @throws IllegalArgumentException if the value is NaN or infinite
     */
    public static String format(double value) {
        BigDecimal exact = new BigDecimal(Decimals.requireFinite(value));
        if (exact.signum() == 0) {
            return "0";
        }
        BigDecimal rounded = round(exact).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < LEAST_PLAIN_EXPONENT || exponent >= DIGITS
                ? scientific(rounded, exponent)
                : rounded.toPlainString();
    }

    /** The largest doubles would round up to what reads as infinity; those are cut instead. */
    private static BigDecimal round(BigDecimal exact) {
        BigDecimal nearest = exact.round(new MathContext(DIGITS, RoundingMode.HALF_EVEN));
        return Double.isInfinite(nearest.doubleValue())
                ? exact.round(new MathContext(DIGITS, RoundingMode.DOWN))
                : nearest;
    }

    private static String scientific(BigDecimal value, int exponent) {
        return value.movePointLeft(exponent).toPlainString() + "e" + exponent;
    }
}
