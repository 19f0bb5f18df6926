package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountTest {
    @ParameterizedTest
    @CsvSource({
        "25 kg, 25, KG",
        "500 g, 0.5, KG",
        "2.88 m², 2.88, M2",
        "50 m, 50, M",
        "5 l, 5, LITRE",
        "250 ml, 0.25, LITRE",
        "100 pieces, 100, PIECE",
        "1 piece, 1, PIECE",
        // Exact: 1 lb = 0.45359237 kg, 1 yd² = 0.83612736 m², 1 US gal = 3.785411784 l.
        "1 lb, 0.45359237, KG",
        "100 yd2, 83.612736, M2",
        "1 US gal, 3.785411784, LITRE",
    })
    void isReadInTheMeasureByWhichMaterialsAreKept(String text, String value, PriceBasis measure) {
        Amount read = Amount.parse(text);
        assertThat(read.measure()).isEqualTo(measure);
        assertThat(read.value()).isEqualByComparingTo(value);
    }

    @ParameterizedTest
    @CsvSource({"25 kg", "0.5 l", "100 pieces", "1 piece", "2.88 m²"})
    void isPrintedAsItIsRead(String text) {
        assertThat(Amount.parse(text)).hasToString(text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "25 | \"25\" has no unit; write it like 25 kg, 10 m², 50 m, 5 l or 100 pieces",
                "-1 kg | \"-1 kg\" is below zero",
                "3 MPa | \"3 MPa\" is no amount",
                "kg | \"kg\" does not begin with a number",
            })
    void whatIsNoAmountIsRefused(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Amount.parse(text))
                .withMessageStartingWith(message);
    }

    @ParameterizedTest
    @CsvSource({"1, HOUR", "1, ROLL", "-1, KG", "1, POUND"})
    void isOfAMeasureAndNotNegative(String value, PriceBasis measure) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Amount(new BigDecimal(value), measure))
                .withMessageStartingWith("an amount is");
    }
}
