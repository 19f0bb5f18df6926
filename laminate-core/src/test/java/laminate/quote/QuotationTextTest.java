package laminate.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuotationTextTest {

    private static QuotationText validFor(double seconds) {
        return new QuotationText(List.of(), List.of(), List.of(), List.of(), OptionalDouble.of(seconds));
    }

    @Test
    void aDayBegunIsNotAWholeOne() {
        assertThat(validFor(86_400).validDays()).isEqualTo(1);
        assertThat(validFor(2.9 * 86_400).validDays()).isEqualTo(2);
        assertThat(QuotationText.NONE.validDays()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 86_399, Double.NaN, Double.POSITIVE_INFINITY})
    void anOfferHoldsForADayOrMore(double seconds) {
        assertThatThrownBy(() -> validFor(seconds))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(Double.toString(seconds));
    }
}
