package laminate.process;

import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import laminate.process.flow.Permeability;
import laminate.testing.Json;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Scatter and what voids cost, against worked cases and drawn samples. */
class ScatterValidationTest {
    private static final Map<String, ToDoubleFunction<Map<String, Object>>> SOLUTIONS = Map.of(
            "cv-K-from-Vf sens", in -> Permeability.sensitivity(n(in, "V")),
            "cv-K-from-Vf cv_K", in -> Permeability.variation(n(in, "V"), n(in, "cv_V")),
            "cv-thickness cv_h", in -> Scatter.ofThickness(n(in, "cv_w"), n(in, "cv_V")),
            "ilss-voids ratio", in -> VoidLoss.interlaminarShear(n(in, "Vv_pct") / 100));

    static Stream<Arguments> expectedNumbers() {
        return maps(Json.resource("/reference/cure-cases.json").get("cases")).stream()
                .filter(c -> ((String) c.get("id")).matches("cv-.*|ilss-voids"))
                .flatMap(c -> map(c.get("expected")).entrySet().stream()
                        .map(e -> Arguments.of(c.get("id") + " " + e.getKey(), e.getValue(), c)));
    }

    /** The formulas are exact; the wider tolerance of a case is that of the samples it was checked with. */
    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(String name, double expected, Map<String, Object> given) {
        double actual = SOLUTIONS.get(name).applyAsDouble(map(given.get("inputs")));
        assertThat(actual).isCloseTo(expected, within(1e-9));
    }

    @Test
    void everyCaseIsThere() {
        assertThat(expectedNumbers().map(a -> a.get()[0])).containsExactlyInAnyOrderElementsOf(SOLUTIONS.keySet());
    }

    /** 200 000 normal draws of fibre content and areal weight through t = w/(ρ V) and K ~ (1 − V)³/V². */
    @Test
    void agreesWithDrawnSamples() {
        Random random = new Random(20260115);
        int draws = 200_000;
        double[] thickness = new double[draws];
        double[] permeability = new double[draws];
        for (int i = 0; i < draws; i++) {
            double v = 0.5 * (1 + 0.04 * random.nextGaussian());
            thickness[i] = (1 + 0.03 * random.nextGaussian()) / v;
            permeability[i] = Math.pow(1 - v, 3) / (v * v);
        }
        assertThat(Scatter.ofThickness(0.03, 0.04)).isCloseTo(variation(thickness), within(0.02 * 0.05));
        assertThat(Permeability.variation(0.5, 0.04)).isCloseTo(variation(permeability), within(0.02 * 0.2));
    }

    /** About ten times the scatter of fibre content comes out as scatter of permeability: arXiv 1601.02681. */
    @Test
    void permeabilityScattersManyTimesAsMuchAsFibreContent() {
        assertThat(Permeability.variation(0.6, 0.04)).isCloseTo(0.26, within(1e-12));
        assertThat(Permeability.variation(0.73, 0.04) / 0.04).isCloseTo(10, within(0.2));
    }

    @Test
    void aMeanOfPliesScattersLess() {
        assertThat(Scatter.ofMean(0.06, 9)).isCloseTo(0.02, within(1e-15));
        assertThat(Scatter.ofMean(0.06, 1)).isEqualTo(0.06);
    }

    static Stream<ThrowingCallable> nonsense() {
        return Stream.of(
                () -> Scatter.ofThickness(-0.1, 0.1),
                () -> Scatter.ofThickness(0.1, Double.NaN),
                () -> Permeability.sensitivity(0),
                () -> Permeability.sensitivity(1),
                () -> Permeability.variation(0.5, Double.POSITIVE_INFINITY),
                () -> Scatter.ofMean(0.1, 0),
                () -> VoidLoss.interlaminarShear(-0.01),
                () -> VoidLoss.interlaminarShear(0.041),
                () -> VoidLoss.interlaminarShear(Double.NaN));
    }

    @ParameterizedTest
    @MethodSource("nonsense")
    void refusesNonsense(ThrowingCallable call) {
        assertThatThrownBy(call).isInstanceOf(IllegalArgumentException.class);
    }

    private static double variation(double[] sample) {
        double mean = 0;
        for (double value : sample) {
            mean += value / sample.length;
        }
        double squares = 0;
        for (double value : sample) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (sample.length - 1)) / mean;
    }

    private static double n(Map<String, Object> in, String name) {
        return (Double) in.get(name);
    }
}
