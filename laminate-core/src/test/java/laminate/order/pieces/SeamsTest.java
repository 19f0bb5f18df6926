package laminate.order.pieces;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeamsTest {
    private static final double LAP = 0.05;
    private static final double STAGGER = 0.1;

    private static List<double[]> strips(double roll, double width, int turn) {
        return new Seams(roll, LAP, STAGGER).strips(width, turn);
    }

    /** By hand, off a roll of 1.25 m with laps of 50 mm. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1",
        "1.25, 1",
        "1.26, 2",
        "2.45, 2",
        "2.451, 3",
        "3.65, 3",
        "6.05, 5",
    })
    void theFewestStripsAreLaid(double width, int count) {
        assertThat(strips(1.25, width, 0)).hasSize(count);
    }

    /** By hand: 1.5 m off 1.27 m. The first strip may be 0.28 to 1.27 m wide, and is laid at thirds of that. */
    @Test
    void seamsOfLayersThatFollowEachOtherLieApart() {
        double room = 0.99;
        for (int turn = 0; turn < 8; turn++) {
            double first = 0.28 + room * new double[] {0, 2, 1, 3}[turn % 4] / 3;
            List<double[]> strips = strips(1.27, 1.5, turn);
            assertThat(strips).hasSize(2);
            assertThat(strips.get(0)[1]).isCloseTo(first, within(1e-12));
            assertThat(strips.get(1)[0]).isCloseTo(first - LAP, within(1e-12));
        }
    }

    /** Whatever the width: all of it is covered, no strip is wider than the roll, strips lap, neighbours' seams do not meet. */
    @Test
    void stripsCoverTheWidthAndLap() {
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            double roll = 0.4 + random.nextDouble();
            double width = random.nextInt(5) == 0
                    ? roll + (1 + random.nextInt(4)) * (roll - LAP)
                    : 0.1 + 6 * random.nextDouble();
            int turn = random.nextInt(6);
            List<double[]> strips = strips(roll, width, turn);
            checkCover(strips, roll, width);
            if (strips.size() > 1) {
                assertThat(nearestSeams(strips, strips(roll, width, turn + 1)))
                        .as("%s off %s", width, roll)
                        .isGreaterThanOrEqualTo(0.09);
            }
        }
    }

    private static void checkCover(List<double[]> strips, double roll, double width) {
        assertThat(strips.get(0)[0]).isZero();
        assertThat(strips.get(strips.size() - 1)[1]).isEqualTo(width);
        double to = strips.get(0)[1];
        for (double[] strip : strips) {
            assertThat(strip[1] - strip[0]).isPositive().isLessThanOrEqualTo(roll * (1 + 1e-9));
            if (strip != strips.get(0)) {
                assertThat(to - strip[0]).isCloseTo(LAP, within(1e-9));
                to = strip[1];
            }
        }
        int fewest = width <= roll ? 1 : (int) Math.ceil((width - LAP) / (roll - LAP) - 1e-9);
        assertThat(strips.size()).isBetween(fewest, fewest + 1);
    }

    private static double nearestSeams(List<double[]> one, List<double[]> other) {
        double nearest = Double.POSITIVE_INFINITY;
        for (double[] strip : one.subList(0, one.size() - 1)) {
            for (double[] beside : other.subList(0, other.size() - 1)) {
                nearest = Math.min(nearest, Math.abs(strip[1] - beside[1]));
            }
        }
        return nearest;
    }

    @Test
    void aTapeNoWiderThanItsLapsCoversItsOwnWidthAlone() {
        assertThat(strips(0.1, 0.1, 0)).hasSize(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> strips(0.1, 0.11, 0))
                .withMessageContaining("a wider roll is wanted");
    }
}
