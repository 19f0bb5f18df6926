package laminate.theory.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Beams against the closed forms of handbooks (Timoshenko and Gere 1972, appendix, from memory). */
class BeamValidationTest {
    private static final double L = 0.7;
    private static final double P = 350;
    private static final double Q = 1200;
    private static final double EI = 480;
    private static final double S = 30_000;
    private static final double ROUNDING = 1e-12;
    private static final BeamSection SECTION = BeamSection.of(EI, S);

    private static BeamResponse response(Supports supports, BeamLoad load) {
        return new Beam(SECTION, L, supports).under(load);
    }

    private static void agree(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(ROUNDING * Math.abs(expected)));
    }

    /** Supports, load, place of the largest deflection, its bending part, its shear part, largest moment, largest V. */
    static Stream<Arguments> handbook() {
        double third = L / 3;
        BeamLoad thirdPoint = BeamLoad.fourPoint(P, L, third);
        return Stream.of(
                Arguments.of(Supports.SIMPLY_SUPPORTED, BeamLoad.threePoint(P, L), new double[] {
                    L / 2, P * L * L * L / (48 * EI), P * L / (4 * S), P * L / 4, P / 2
                }),
                Arguments.of(Supports.SIMPLY_SUPPORTED, thirdPoint, new double[] {
                    L / 2, 23 * P * L * L * L / (1296 * EI), P * L / (6 * S), P * L / 6, P / 2
                }),
                Arguments.of(Supports.SIMPLY_SUPPORTED, BeamLoad.uniform(Q), new double[] {
                    L / 2, 5 * Q * L * L * L * L / (384 * EI), Q * L * L / (8 * S), Q * L * L / 8, Q * L / 2
                }),
                Arguments.of(Supports.CANTILEVER, BeamLoad.at(P, L), new double[] {
                    L, P * L * L * L / (3 * EI), P * L / S, -P * L, P
                }),
                Arguments.of(Supports.CANTILEVER, BeamLoad.uniform(Q), new double[] {
                    L, Q * L * L * L * L / (8 * EI), Q * L * L / (2 * S), -Q * L * L / 2, Q * L
                }),
                Arguments.of(Supports.CLAMPED, BeamLoad.uniform(Q), new double[] {
                    L / 2, Q * L * L * L * L / (384 * EI), Q * L * L / (8 * S), -Q * L * L / 12, Q * L / 2
                }),
                Arguments.of(Supports.CLAMPED, BeamLoad.threePoint(P, L), new double[] {
                    L / 2, P * L * L * L / (192 * EI), P * L / (4 * S), -P * L / 8, P / 2
                }));
    }

    @ParameterizedTest
    @MethodSource("handbook")
    void deflectionMomentAndShear(Supports supports, BeamLoad load, double[] expected) {
        BeamResponse response = response(supports, load);
        Deflection largest = response.largestDeflection();
        assertThat(largest.x()).isCloseTo(expected[0], within(1e-6 * L));
        agree(largest.bending(), expected[1]);
        agree(largest.shear(), expected[2]);
        agree(largest.total(), expected[1] + expected[2]);
        agree(response.largestMoment().value(), expected[3]);
        agree(response.largestShearForce().value(), expected[4]);
    }

    /** Four-point bending with any load spacing: w = P a (3 L² − 4 a²)/(48 EI), shear P a/(2 S), a = (L − s)/2. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.25, 1 / 3.0, 0.5, 0.8})
    void fourPointBendingAtAnySpacing(double share) {
        BeamResponse response = response(Supports.SIMPLY_SUPPORTED, BeamLoad.fourPoint(P, L, share * L));
        double a = (1 - share) * L / 2;
        Deflection middle = response.deflectionAt(L / 2);
        agree(middle.bending(), P * a * (3 * L * L - 4 * a * a) / (48 * EI));
        agree(middle.shear(), P * a / (2 * S));
        agree(response.momentAt(L / 2), P * a / 2);
    }

    /** A force off the middle: the largest bending deflection is P b (L² − b²)^1.5/(9√3 L EI) at x = √((L² − b²)/3). */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.2, 0.3})
    void largestDeflectionUnderAForceOffTheMiddle(double b) {
        Beam beam = new Beam(BeamSection.rigidInShear(EI), L, Supports.SIMPLY_SUPPORTED);
        Deflection largest = beam.under(BeamLoad.at(P, L - b)).largestDeflection();
        double rest = L * L - b * b;
        assertThat(largest.x()).isCloseTo(Math.sqrt(rest / 3), within(1e-9));
        agree(largest.bending(), P * b * Math.pow(rest, 1.5) / (9 * Math.sqrt(3) * L * EI));
        assertThat(largest.shear()).isZero();
    }

    /** Clamped, force at a: M(0) = −P a b²/L², V(0) = P b² (3 a + b)/L³, where shear is rigid. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.35, 0.5})
    void clampedUnderAForceOffTheMiddle(double a) {
        Beam beam = new Beam(BeamSection.rigidInShear(EI), L, Supports.CLAMPED);
        BeamResponse response = beam.under(BeamLoad.at(P, a));
        double b = L - a;
        agree(response.momentAt(0), -P * a * b * b / (L * L));
        agree(response.startReaction(), P * b * b * (3 * a + b) / (L * L * L));
        agree(response.endReaction(), P * a * a * (3 * b + a) / (L * L * L));
    }

    /** A clamped beam that only shears carries a force like a string: V(0) = P b/L. */
    @Test
    void clampedBeamThatOnlyShears() {
        Beam beam = new Beam(BeamSection.of(1e9, 1), L, Supports.CLAMPED);
        double a = 0.2;
        assertThat(beam.under(BeamLoad.at(P, a)).startReaction()).isCloseTo(P * (L - a) / L, within(1e-6 * P));
    }
}
