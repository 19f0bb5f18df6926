package laminate.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wright's curve of cumulative averages (Journal of the Aeronautical Sciences 3 (1936) 122–128; values worked by hand). */
class LearningCurveValidationTest {

    @ParameterizedTest
    @CsvSource({"1, 100, 100", "2, 80, 160", "4, 64, 256", "8, 51.2, 409.6", "16, 40.96, 655.36"})
    void everyDoublingLowersTheAverageToTheRate(int made, double average, double total) {
        LearningCurve curve = new LearningCurve(0.8, 16);
        double first = 100 / curve.averageOf(1);

        assertThat(curve.averageOf(made) * first).isCloseTo(average, within(1e-10));
        assertThat(curve.totalOf(made) * first).isCloseTo(total, within(1e-9));
    }

    @Test
    void theSlopeOfEightyPerCentIsThatOfTables() {
        assertThat(new LearningCurve(0.8, 1).slope()).isCloseTo(-0.321928, within(1e-6));
    }

    @Test
    void theWorkshopsTimesHoldWhereTheyWereTaken() {
        LearningCurve curve = new LearningCurve(0.85, 4);

        assertThat(curve.averageOf(1)).isCloseTo(1 / (0.85 * 0.85), within(1e-12));
        assertThat(curve.averageOf(4)).isEqualTo(1);
        assertThat(curve.averageOf(8)).isCloseTo(0.85, within(1e-12));
        assertThat(LearningCurve.NONE.totalOf(9)).isEqualTo(9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.6, 0.75, 0.9, 1})
    void moreOnesNeverTakeLess(double rate) {
        LearningCurve curve = new LearningCurve(rate, 12);
        for (int made = 1; made < 30; made++) {
            assertThat(curve.totalOf(made + 1)).isGreaterThan(curve.totalOf(made));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0, 1.01, Double.NaN})
    void aRateThatIsNoneIsRefused(double rate) {
        assertThatThrownBy(() -> new LearningCurve(rate, 1)).hasMessageContaining("learning rate");
    }
}
