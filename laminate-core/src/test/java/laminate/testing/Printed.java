package laminate.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A figure as it stands in print, such as {@code "-2.714 MPa"} or {@code "0.5525e-11"}, with what its digits allow.
 *
 * @param value the figure in SI units
 * @param halfDigit half a unit of its last digit, in SI units
 */
public record Printed(double value, double halfDigit) {
    private static final Pattern FORM = Pattern.compile("(-?\\d+(?:\\.(\\d+))?)(?:e(-?\\d+))?(?: ([GM]Pa))?.*");
    private static final Map<String, Double> UNITS = Map.of("GPa", 1e9, "MPa", 1e6);

    /** Reads the figure at the start of a text. */
    public static Printed parse(String text) {
        Matcher m = FORM.matcher(text.strip());
        if (!m.matches()) {
            throw new IllegalArgumentException("no printed figure: " + text);
        }
        int decimals = m.group(2) == null ? 0 : m.group(2).length();
        int exponent = m.group(3) == null ? 0 : Integer.parseInt(m.group(3));
        double unit = m.group(4) == null ? 1 : UNITS.get(m.group(4));
        double value = Double.parseDouble(m.group(1) + "e" + exponent) * unit;
        return new Printed(value, 0.5 * Math.pow(10, exponent - decimals) * unit);
    }

    /** Half a digit, or more where the source is known to be rounder than its digits. */
    public void check(String what, double actual, double relativeTolerance) {
        double allowed = Math.max(halfDigit * (1 + 1e-9), relativeTolerance * Math.abs(value));
        assertThat(Math.abs(actual - value))
                .as("%s: %s against the printed or remembered %s", what, actual, value)
                .isLessThanOrEqualTo(allowed);
    }
}
