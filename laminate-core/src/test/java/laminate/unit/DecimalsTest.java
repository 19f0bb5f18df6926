package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {
    private static final long SEED = 20261125;

    @Test
    void findsTheDecimalThatWasWritten() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200_000; i++) {
            BigDecimal written = BigDecimal.valueOf(random.nextLong(1_000_000_000_000_000L), random.nextInt(26));
            double value = (random.nextBoolean() ? written : written.negate()).doubleValue();
            assertThat(Decimals.of(value).abs()).isEqualByComparingTo(written);
        }
    }

    @Test
    void takesAnyOtherDoubleExactlyAsItIs() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200_000; i++) {
            double value = random.nextDouble() * Math.pow(10, random.nextInt(-12, 20));
            assertThat(Decimals.of(value)).isEqualByComparingTo(byDefinition(value));
        }
    }

    @Test
    void tellsWhatWasComputedFromWhatWasWritten() {
        Random random = new Random(SEED);
        for (int i = 0; i < 100_000; i++) {
            double value = random.nextDouble(0.1, 1) * Math.pow(10, random.nextInt(-5, 14));
            assertThat(Decimals.isComputed(value)).isEqualTo(Decimals.of(value).precision() > 15);
        }
        assertThat(Decimals.isComputed(0.1 + 0.2)).isTrue();
        assertThat(Decimals.isComputed(0.3)).isFalse();
        assertThat(Decimals.isComputed(0)).isFalse();
    }

    @Test
    void comesNearInFifteenDigits() {
        Random random = new Random(SEED);
        for (int i = 0; i < 100_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 20));
            BigDecimal near = Decimals.near(value);
            BigDecimal lastDigit = BigDecimal.ONE.movePointRight(near.precision() - near.scale() - 15);
            assertThat(near.subtract(new BigDecimal(value)).abs())
                    .isLessThanOrEqualTo(lastDigit.multiply(new BigDecimal("1.5")));
        }
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                1e-6,
                0.1,
                1,
                10,
                999999999999999.0,
                1e14,
                1e15,
                9007199254740993.0,
                2.675,
                1.0 / 3,
                99999999999999.9,
                0.1 + 0.2,
                1e-323,
                1.7976931348623157e308
            })
    void keepsToItsDefinitionAtTheEdges(double value) {
        assertThat(Decimals.of(value)).isEqualByComparingTo(byDefinition(value));
        assertThat(Decimals.of(-value)).isEqualByComparingTo(byDefinition(-value));
    }

    private static BigDecimal byDefinition(double value) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal written = exact.round(new MathContext(15, RoundingMode.HALF_EVEN));
        return written.doubleValue() == value ? written : exact;
    }
}
