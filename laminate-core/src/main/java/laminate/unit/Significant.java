package laminate.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers for a reader: plain decimals with as many figures as mean something. */
public final class Significant {
    private static final int MOST_DIGITS = 15;
    /** With no more figures than these, what is beyond 15 digits of a number is nothing but its binary tail. */
    private static final int FEW_DIGITS = 12;

    private Significant() {}

    /**
     * Formats a number to significant figures, without an exponent, trailing zeros kept.
     *
     * <p>Half is rounded away from zero, and decided on the decimal that was written rather than on the double's binary
     * tail: 2.675 to three figures is 2.68, and so is a 2.675 that was computed, to a few units of its 15th digit. With three
     * figures 1234.5 gives "1230", 2.5 gives "2.50", 0.00012 gives "0.000120"; zero of either sign gives "0".
     *
     * @param value any finite number
     * @param digits how many figures, 1 to 15
     * @return the number as a plain decimal
     * @throws IllegalArgumentException if the value is NaN or infinite, or the digits are out of range
     */
    public static String format(double value, int digits) {
        if (digits < 1 || digits > MOST_DIGITS) {
            throw new IllegalArgumentException("1 to 15 significant figures can be had, not " + digits);
        }
        BigDecimal decimal = digits <= FEW_DIGITS ? Decimals.near(value) : Decimals.of(value);
        if (decimal.signum() == 0) {
            return "0";
        }
        BigDecimal rounded = decimal.round(new MathContext(digits, RoundingMode.HALF_UP));
        int decimals = Math.max(0, rounded.scale() + digits - rounded.precision());
        return rounded.setScale(decimals).toPlainString();
    }
}
