package laminate.unit;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * A conversion factor kept exact as a quotient of two decimals, since a factor such as lbf/in² has no finite decimal.
 *
 * <p>The constants are the defined values; every other factor is computed from them where it is used, so that it can be
 * traced. The factor of a unit is SI units per one of that unit.
 *
 * @param over numerator, positive
 * @param under denominator, positive
 */
record ExactFactor(BigDecimal over, BigDecimal under) {
    /** A coherent SI unit itself. */
    static final ExactFactor ONE = of("1");

    /** SI prefix giga; BIPM, The International System of Units, 9th edition, 2019, table 7. */
    static final ExactFactor GIGA = of("1e9");
    /** SI prefix mega; same source. */
    static final ExactFactor MEGA = of("1e6");
    /** SI prefix kilo; same source. */
    static final ExactFactor KILO = of("1e3");
    /** SI prefix centi; same source. */
    static final ExactFactor CENTI = of("1e-2");
    /** SI prefix milli; same source. */
    static final ExactFactor MILLI = of("1e-3");
    /** SI prefix micro; same source. */
    static final ExactFactor MICRO = of("1e-6");

    /** Gram (kg). */
    static final ExactFactor GRAM = MILLI;
    /** Litre (m³): one cubic decimetre; BIPM, same brochure, table 8. */
    static final ExactFactor LITRE = of("1e-3");
    /** Minute (s); BIPM, same brochure, table 8. */
    static final ExactFactor MINUTE = of("60");
    /** Hour (s); BIPM, same brochure, table 8. */
    static final ExactFactor HOUR = of("60").times(MINUTE);
    /** Day (s); BIPM, same brochure, table 8. */
    static final ExactFactor DAY = of("24").times(HOUR);
    /** Bar (Pa); NIST SP 811 (2008), appendix B. */
    static final ExactFactor BAR = of("1e5");

    /** International yard (m); yard and pound agreement, 1959. */
    static final ExactFactor YARD = of("0.9144");
    /** International foot (m): a third of a yard. */
    static final ExactFactor FOOT = YARD.per(of("3"));
    /** International inch (m): a twelfth of a foot, 0.0254 m. */
    static final ExactFactor INCH = FOOT.per(of("12"));
    /** Avoirdupois pound (kg); yard and pound agreement, 1959. */
    static final ExactFactor POUND = of("0.45359237");
    /** Avoirdupois ounce (kg): a sixteenth of a pound. */
    static final ExactFactor OUNCE = POUND.per(of("16"));
    /** Standard gravity (m/s²); 3rd General Conference on Weights and Measures, 1901. */
    static final ExactFactor STANDARD_GRAVITY = of("9.80665");
    /** Pound-force (N): the weight of a pound under standard gravity. */
    static final ExactFactor POUND_FORCE = POUND.times(STANDARD_GRAVITY);
    /** Pound-force per square inch (Pa). */
    static final ExactFactor PSI = POUND_FORCE.per(INCH).per(INCH);
    /** US liquid gallon (m³): 231 cubic inches; NIST SP 811 (2008), appendix B. */
    static final ExactFactor US_GALLON = of("231").times(INCH).times(INCH).times(INCH);
    /** US fluid ounce (m³): 1/128 of a US gallon; NIST SP 811 (2008), appendix B. */
    static final ExactFactor US_FLUID_OUNCE = US_GALLON.per(of("128"));
    /** Size of a degree Fahrenheit (K): five ninths of a kelvin; NIST SP 811 (2008), appendix B. */
    static final ExactFactor FAHRENHEIT = of("5").per(of("9"));

    static ExactFactor of(String decimal) {
        return new ExactFactor(new BigDecimal(decimal), BigDecimal.ONE);
    }

    ExactFactor times(ExactFactor other) {
        return new ExactFactor(over.multiply(other.over), under.multiply(other.under));
    }

    ExactFactor per(ExactFactor other) {
        return new ExactFactor(over.multiply(other.under), under.multiply(other.over));
    }

    /** The value times this factor, to 34 digits, far beyond what a double holds. */
    BigDecimal multiply(BigDecimal value) {
        BigDecimal product = value.multiply(over);
        // Most factors are whole decimals, and a division takes longer than all else in reading a quantity.
        return under.equals(BigDecimal.ONE) ? product : product.divide(under, MathContext.DECIMAL128);
    }

    /** The value divided by this factor, to 34 digits. */
    BigDecimal divide(BigDecimal value) {
        BigDecimal product = value.multiply(under);
        return over.unscaledValue().equals(BigInteger.ONE)
                ? product.scaleByPowerOfTen(over.scale())
                : product.divide(over, MathContext.DECIMAL128);
    }

    /** Whether {@link #divide(double)} rounds but once: for whole numbers and powers of ten, as all factors of SI are. */
    boolean isRoundedOnce() {
        return under.equals(BigDecimal.ONE)
                && (over.scale() <= 0 || over.unscaledValue().equals(BigInteger.ONE));
    }

    /** The value divided by this factor, in double arithmetic. */
    double divide(double value) {
        return over.scale() > 0
                ? value * under.scaleByPowerOfTen(over.scale()).doubleValue()
                : value / over.doubleValue();
    }
}
