package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SignificantTest {
    @ParameterizedTest(name = "{0} to {1} figures is {2}")
    @CsvSource({
        "1234.5, 3, 1230",
        "1234.5, 4, 1235",
        "1234.5, 5, 1234.5",
        "1234.5, 6, 1234.50",
        "1234.5, 1, 1000",
        "2.5, 3, 2.50",
        "450, 3, 450",
        "0.45, 3, 0.450",
        "0.00012, 3, 0.000120",
        "1.234e-9, 3, 0.00000000123",
        "9.999, 3, 10.0",
        "99.95, 3, 100",
        "999.5, 3, 1000",
        "0.09996, 3, 0.100",
        "2.675, 3, 2.68",
        "1.005, 3, 1.01",
        "-2.675, 3, -2.68",
        "-0.5, 1, -0.5",
        "1e15, 3, 1000000000000000",
        "1.5e22, 3, 15000000000000000000000",
        "123456789.123456, 15, 123456789.123456",
        "0.1, 15, 0.100000000000000",
        "0, 3, 0",
        "-0.0, 3, 0",
    })
    void roundsAsAReaderWould(double value, int digits, String expected) {
        assertThat(Significant.format(value, digits)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 15})
    void isNeverFurtherOffThanHalfALastFigureAndNeverHasAnExponent(int digits) {
        Random random = new Random(7 * digits);
        for (int i = 0; i < 2000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
            String text = Significant.format(value, digits);

            assertThat(text).matches("-?(0|[1-9][0-9]*)(\\.[0-9]+)?");
            assertThat(figures(text)).as(text).isGreaterThanOrEqualTo(digits);
            double lastFigure = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - digits + 1);
            assertThat(new BigDecimal(text).doubleValue())
                    .isCloseTo(value, within(0.5000001 * lastFigure + Math.ulp(value)));
        }
    }

    /** Digits from the first that is not 0. */
    private static int figures(String text) {
        return text.replace(".", "").replaceFirst("^-?0*", "").length();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesWhatIsNoNumber(double value) {
        assertThatThrownBy(() -> Significant.format(value, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a finite number is wanted, not " + value);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 16})
    void refusesFiguresThatADoubleDoesNotHave(int digits) {
        assertThatThrownBy(() -> Significant.format(1, digits))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("1 to 15 significant figures can be had, not " + digits);
    }
}
