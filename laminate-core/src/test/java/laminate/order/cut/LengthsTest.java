package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LengthsTest {

    @Test
    void eachLengthLiesWhereItLeavesLeast() {
        assertThat(Lengths.lay(List.of(2.0, 6.0, 3.0), List.of(10.0, 6.5, 3.0))).contains(List.of(0, 1, 2));
        assertThat(Lengths.lay(List.of(4.0, 3.0), List.of(Double.POSITIVE_INFINITY, 4.0)))
                .contains(List.of(1, 0));
        assertThat(Lengths.lay(List.of(), List.of())).contains(List.of());
    }

    /** By hand: best fit lays both fours on one roll, and 3 four times on 2 and 10; 4, 3 and 3 fit on each. */
    @Test
    void allWaysAreTriedWhereTheBestFitFails() {
        List<Double> wanted = List.of(4.0, 4.0, 3.0, 3.0, 3.0, 3.0);
        assertThat(Lengths.lay(wanted, List.of(10.0, 10.0))).isPresent();
    }

    @Test
    void nothingLiesOverTheEndOfARoll() {
        assertThat(Lengths.lay(List.of(3.0, 3.0, 3.0), List.of(5.0, 5.0))).isEmpty();
        assertThat(Lengths.lay(List.of(3.0), List.of())).isEmpty();
        assertThat(Lengths.lay(List.of(0.1, 0.1, 0.1), List.of(0.3))).isPresent();
    }

    @Test
    void whatIsNoLengthIsRefused() {
        for (double no : new double[] {0, -1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Lengths.lay(List.of(1.0, no), List.of(5.0)))
                    .withMessageContaining(Double.toString(no));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Lengths.lay(List.of(1.0), List.of(5.0, no)))
                    .withMessageContaining(Double.toString(no));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Lengths.lay(List.of(Double.POSITIVE_INFINITY), List.of(5.0)));
    }

    /** Rolls that were cut up at random can be put together again, and what is laid fits. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whatWasCutUpFits(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 50; round++) {
            List<Double> rolls = new ArrayList<>();
            List<Double> wanted = new ArrayList<>();
            for (int roll = 0; roll < 1 + random.nextInt(3); roll++) {
                double length = 0;
                for (int part = 0; part < 1 + random.nextInt(4); part++) {
                    double some = 1 + random.nextInt(50) / 10.0;
                    wanted.add(some);
                    length += some;
                }
                rolls.add(length);
            }
            Collections.shuffle(wanted, random);
            List<Integer> places = Lengths.lay(wanted, rolls).orElseThrow();
            for (int i = 0; i < rolls.size(); i++) {
                double taken = 0;
                for (int item = 0; item < wanted.size(); item++) {
                    taken += places.get(item) == i ? wanted.get(item) : 0;
                }
                assertThat(taken).isLessThanOrEqualTo(rolls.get(i) * (1 + 1e-8));
            }
        }
    }
}
