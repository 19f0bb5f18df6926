package laminate.theory.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The polynomials and their integration. */
class ShapesTest {
    private static final Shapes SHAPES = new Shapes(2.5, 9, true);

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 12, 40})
    void gaussIntegratesPowersUpToTwiceItsPoints(int count) {
        Gauss gauss = Gauss.on(1, 3, count);
        for (int power = 0; power < 2 * count; power++) {
            double sum = 0;
            for (int k = 0; k < gauss.size(); k++) {
                sum += gauss.weight(k) * Math.pow(gauss.point(k) / 3, power);
            }
            double exact = (3 - Math.pow(1.0 / 3, power)) / (power + 1);
            assertThat(sum).isCloseTo(exact, offset(1e-12));
        }
    }

    @Test
    void straightFunctionsVanishAtBothEnds() {
        for (int k = 2; k <= 9; k++) {
            assertThat(SHAPES.at(0)[0][SHAPES.bubble(k)]).isCloseTo(0, offset(1e-14));
            assertThat(SHAPES.at(2.5)[0][SHAPES.bubble(k)]).isCloseTo(0, offset(1e-14));
        }
        assertThat(SHAPES.at(0)[0][Shapes.AT_START]).isEqualTo(1);
        assertThat(SHAPES.at(2.5)[0][Shapes.AT_START]).isEqualTo(0);
    }

    @Test
    void smoothFunctionsVanishWithTheirSlopes() {
        for (int k = 4; k <= 9; k++) {
            for (double end : new double[] {0, 2.5}) {
                assertThat(SHAPES.at(end)[0][SHAPES.smoothBubble(k)]).isCloseTo(0, offset(1e-14));
                assertThat(SHAPES.at(end)[1][SHAPES.smoothBubble(k)]).isCloseTo(0, offset(1e-14));
            }
        }
    }

    /** Value and slope (by ξ) at start and end of the cubics. */
    @Test
    void cubicsHaveTheirEndValues() {
        checkEnds(Shapes.SMOOTH_VALUE_START, 1, 0, 0, 0);
        checkEnds(Shapes.SMOOTH_VALUE_END, 0, 0, 1, 0);
        checkEnds(Shapes.SMOOTH_SLOPE_START, 0, 1, 0, 0);
        checkEnds(Shapes.SMOOTH_SLOPE_END, 0, 0, 0, 1);
        checkEnds(Shapes.SMOOTH_ONE, 1, 0, 1, 0);
        checkEnds(Shapes.SMOOTH_SLOPE_EVEN, 0, -1, 0, 1);
    }

    private static void checkEnds(int cubic, double... expected) {
        int f = SHAPES.smooth(cubic);
        double[][] start = SHAPES.at(0);
        double[][] end = SHAPES.at(2.5);
        double[] ends = {start[0][f], start[1][f] * 1.25, end[0][f], end[1][f] * 1.25};
        assertThat(ends).containsExactly(expected, offset(1e-14));
    }

    @Test
    void derivativesAreThoseOfTheFunctions() {
        double step = 1e-5;
        double[][] middle = SHAPES.at(0.8);
        double[][] before = SHAPES.at(0.8 - step);
        double[][] after = SHAPES.at(0.8 + step);
        for (int d = 0; d < 2; d++) {
            for (int f = 0; f < middle[0].length; f++) {
                double slope = (after[d][f] - before[d][f]) / (2 * step);
                assertThat(middle[d + 1][f]).as("function %s", f).isCloseTo(slope, offset(1e-6));
            }
        }
    }

    /** What the envelope relies on: of powers further apart than REACH no strain couples. Parity is as said. */
    @Test
    void powersFarApartDoNotCouple() {
        double[][][][] products = SHAPES.products();
        int count = products[0][0].length;
        for (int i = 0; i < count; i++) {
            assertThat(SHAPES.at(0.8)[0][i])
                    .isCloseTo(sign(i) * SHAPES.at(1.7)[0][i], offset(isOneSided(i) ? 10 : 1e-13));
            for (int j = 0; j < count; j++) {
                boolean far = Math.abs(SHAPES.rank(i) - SHAPES.rank(j)) > Shapes.REACH;
                int derivatives = Math.min(i, j) < SHAPES.smooth(0) ? 2 : 3;
                for (int d = 0; far && d < derivatives; d++) {
                    assertThat(products[d][d][i][j]).as("%s %s", i, j).isZero();
                }
            }
        }
    }

    /** Or states that the load does not call up would be solved for: exactly zero, not nearly. */
    @Test
    void evenLoadDoesNoWorkOnOddFunctions() {
        double[] even = SHAPES.integrals(Ramp.even(0, 2.5));
        double[] middle = SHAPES.integrals(Ramp.even(1, 1.5));
        for (int k = 3; k <= 9; k += 2) {
            assertThat(even[SHAPES.bubble(k)]).isZero();
            assertThat(middle[SHAPES.bubble(k)]).isZero();
        }
        assertThat(middle[SHAPES.bubble(4)]).isNotZero();
    }

    private static int sign(int function) {
        return SHAPES.parity(function) == 1 ? -1 : 1;
    }

    private static boolean isOneSided(int f) {
        int smooth = f - SHAPES.smooth(0);
        return f == Shapes.AT_START
                || f == Shapes.AT_END
                || smooth >= Shapes.SMOOTH_VALUE_START && smooth <= Shapes.SMOOTH_SLOPE_END;
    }

    @Test
    void envelopeSolvesAsAFullMatrixWould() {
        double[][] rows = {{4}, {1, 5}, {2, 6}, {1, 0, 3, 9}};
        int[] first = {0, 0, 1, 0};
        double[] x = {1, -2, 3, 0.5};
        double[][] full = {{4, 1, 0, 1}, {1, 5, 2, 0}, {0, 2, 6, 3}, {1, 0, 3, 9}};
        double[] right = new double[4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                right[i] += full[i][j] * x[j];
            }
        }
        assertThat(new Envelope(rows, first).solve(right)).containsExactly(x, offset(1e-14));
    }
}
