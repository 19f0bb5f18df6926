package laminate.unit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Doubles as the decimals they were written as. */
final class Decimals {
    /** Every decimal of up to 15 digits survives the way into a double and back. */
    private static final MathContext FIFTEEN = new MathContext(15, RoundingMode.HALF_EVEN);

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
