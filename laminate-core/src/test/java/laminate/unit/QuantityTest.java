package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
    private static final long SEED = 20260116;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "450 g/m²",
                "450g/m²",
                "  450   g/m2  ",
                "450\u00A0g/m^2",
                "450\u2009g/m²",
                "4.5e2 g/m²",
                "+450 g/m²"
            })
    void spaceAndSpellingMakeNoDifference(String text) {
        assertThat(Quantity.parse(text, Dimension.AREAL_MASS)).isEqualTo(0.45);
        assertThat(Quantity.parse(text)).isEqualTo(new Quantity(450, Unit.GRAM_PER_SQUARE_METRE));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource({
        "5.3e-6 1/K, EXPANSION, 5.3e-6",
        "5.3 1e-6/K, EXPANSION, 5.3e-6",
        "30%, FRACTION, 0.3",
        "45, ANGLE, 45",
        "-45, ANGLE, -45",
        "+45, ANGLE, 45",
        "45 deg, ANGLE, 45",
        "45°, ANGLE, 45",
        "-273.15 °C, TEMPERATURE, 0",
        "0 K, TEMPERATURE, 0",
        "-20 °C, TEMPERATURE_DIFFERENCE, -20",
        "1E3 mm, LENGTH, 1",
        "0.5mm, LENGTH, 0.0005",
        "0 mm, LENGTH, 0",
        "128 US  fl   oz, VOLUME, 0.003785411784",
    })
    void readsWhatIsWritten(String text, Dimension dimension, double si) {
        assertThat(Quantity.parse(text, dimension)).isEqualTo(si);
    }

    @Test
    void minusZeroIsZero() {
        double zero = Quantity.parse("-0.0 mm", Dimension.LENGTH);

        assertThat(Double.doubleToRawLongBits(zero)).isZero();
    }

    /** Whatever 15 digits can hold is printed and read without loss. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void printsAndReadsBack(Unit unit) {
        Random random = new Random(SEED + unit.ordinal());
        for (int i = 0; i < 100; i++) {
            double value = Double.parseDouble(random.nextInt(1_000_000_000) + "e" + (random.nextInt(20) - 14));
            Quantity quantity = new Quantity(value, unit);

            assertThat(Quantity.parse(quantity.toString()).value()).isEqualTo(value);
            assertThat(Quantity.parse(quantity.toString(), unit.dimension())).isEqualTo(quantity.si());
        }
    }

    @Test
    void showsAnSiValueInAUnit() {
        assertThat(Quantity.ofSi(0.0031, Unit.MILLIMETRE)).hasToString("3.1 mm");
        assertThat(Quantity.ofSi(293.15, Unit.CELSIUS)).hasToString("20 °C");
        assertThat(Quantity.ofSi(293.15, Unit.FAHRENHEITS)).hasToString("68 °F");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void isNeverInfinite(double value) {
        assertThatThrownBy(() -> new Quantity(value, Unit.METRE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(value + " m is beyond what can be computed with; write a smaller number");
    }

    @Test
    void needsAUnit() {
        assertThatThrownBy(() -> new Quantity(3, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a quantity needs a unit; 3.0 has none");
    }

    @Test
    void refusesWhatIsBelowAbsoluteZero() {
        assertThatThrownBy(() -> Quantity.ofSi(-0.001, Unit.KELVIN))
                .hasMessage("-0.001 K is below absolute zero, which is -273.15 °C");
    }
}
