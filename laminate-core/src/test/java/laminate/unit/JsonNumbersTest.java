package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class JsonNumbersTest {
    /** The number of RFC 8259, section 6. */
    private static final Pattern JSON_NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "-1.5, -1.5",
        "100, 100",
        "0.1, 0.1",
        "0.30000000000000004, 0.3",
        "0.3333333333333333, 0.333333333333333",
        "0.6666666666666666, 0.666666666666667",
        "181e9, 181000000000",
        "0.0001, 0.0001",
        "0.00012345, 0.00012345",
        "0.00009999, 9.999e-5",
        "5.3e-6, 5.3e-6",
        "-2e-9, -2e-9",
        "999999999999999, 999999999999999",
        "1e15, 1e15",
        "1.5e15, 1.5e15",
        "9999999999999999, 1e16",
        "999999999999999.9, 1e15",
        "0.000099999999999999999, 0.0001",
        "1e23, 1e23",
        "2e-3, 0.002",
        "4.9e-324, 4.94065645841247e-324",
        "1.7976931348623157e308, 1.79769313486231e308",
        "-1.7976931348623157e308, -1.79769313486231e308",
    })
    void isTheShortestOfFifteenDigits(double value, String expected) {
        assertThat(JsonNumbers.format(value)).isEqualTo(expected);
    }

    /** Any finite bit pattern: valid JSON, within half of the fifteenth digit, the same when written again. */
    @Test
    void everyDoubleIsWrittenAsJsonAndReadsBack() {
        Random random = new Random(8259);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = JsonNumbers.format(value);
                double back = Double.parseDouble(text);

                assertThat(text).matches(JSON_NUMBER);
                assertThat(back).isCloseTo(value, within(5e-15 * Math.abs(value) + Double.MIN_VALUE));
                assertThat(JsonNumbers.format(back)).isEqualTo(text);
            }
        }
    }

    /** What was written with up to 15 digits comes back bit for bit. */
    @Test
    void decimalsOfFifteenDigitsSurvive() {
        Random random = new Random(8260);
        for (int i = 0; i < 20_000; i++) {
            double value =
                    Double.parseDouble(random.nextLong(1_000_000_000_000_000L) + "e" + (random.nextInt(60) - 40));

            assertThat(Double.parseDouble(JsonNumbers.format(value))).isEqualTo(value);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatJsonCannotHold(double value) {
        assertThatThrownBy(() -> JsonNumbers.format(value))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a finite number is wanted, not " + value);
    }
}
