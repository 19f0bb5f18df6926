package laminate.process;

import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import laminate.testing.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Resin in the openings of tubes, meshes and cores against worked cases and counted geometry. */
class ResinUptakeValidationTest {
    private static final Map<String, ToDoubleFunction<Map<String, Object>>> SOLUTIONS = Map.of(
            "resin-tube m_kg", in -> ResinUptake.tube(n(in, "rho"), n(in, "d"), n(in, "L")),
            "resin-mesh m_kg_m2", in -> ResinUptake.mesh(n(in, "rho"), n(in, "t"), n(in, "eps")),
            "resin-grooves m_kg_m2", in -> ResinUptake.grooves(n(in, "rho"), grooves(in, 2)),
            "resin-grooves one_way_kg_m2", in -> ResinUptake.grooves(n(in, "rho"), grooves(in, 1)),
            "resin-foam-face m_kg_m2", in -> ResinUptake.foamFace(n(in, "rho"), n(in, "eps"), n(in, "d")));

    static Stream<Arguments> expectedNumbers() {
        return maps(Json.resource("/reference/uptake-cases.json").get("cases")).stream()
                .flatMap(c -> map(c.get("expected")).entrySet().stream()
                        .map(e -> Arguments.of(c.get("id") + " " + e.getKey(), e.getValue(), c)));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(String name, double expected, Map<String, Object> given) {
        double actual = SOLUTIONS.get(name).applyAsDouble(map(given.get("inputs")));
        assertThat(actual).isCloseTo(expected, within((Double) given.get("rel_tol") * expected));
    }

    @Test
    void everyCaseIsThere() {
        assertThat(expectedNumbers().map(a -> a.get()[0])).containsExactlyInAnyOrderElementsOf(SOLUTIONS.keySet());
    }

    /**
     * Trade, from memory: 2 × 2 mm grooves at 20 mm hold about 230 g/m² of a face; 2 mm holes on a 50 mm grid in 15 mm
     * about 21 g/m². The first is at a cured density of 1150 kg/m³.
     */
    @ParameterizedTest
    @CsvSource({"1150, 0.230, 0.001", "1100, 0.220, 0.001"})
    void groovesHoldWhatTheTradeSays(double density, double face, double rounding) {
        assertThat(ResinUptake.grooves(density, Grooves.USUAL)).isCloseTo(face, within(rounding));
    }

    @Test
    void holesHoldWhatTheTradeSays() {
        assertThat(ResinUptake.perforations(1120, 0.002, 0.050, 0.015)).isCloseTo(0.021, within(0.0005));
    }

    /** The openings of a grid counted at random points: the crossings must not be counted twice. */
    @Test
    void aGridHoldsTheShareOfPointsThatLieInAGroove() {
        Grooves grid = new Grooves(0.004, 0.003, 0.020, 1, 2);
        Random random = new Random(20260115);
        int points = 400_000;
        int inGroove = 0;
        for (int i = 0; i < points; i++) {
            boolean along = random.nextDouble() < 0.004 / 0.020;
            boolean across = random.nextDouble() < 0.004 / 0.020;
            inGroove += along || across ? 1 : 0;
        }
        double counted = 1000.0 * inGroove / points * 0.003;
        // Four standard deviations of the count.
        assertThat(ResinUptake.grooves(1000, grid))
                .isCloseTo(counted, within(4 * 3.0 * Math.sqrt(0.36 * 0.64 / points)));
    }

    private static Grooves grooves(Map<String, Object> in, int ways) {
        return new Grooves(n(in, "w"), n(in, "d"), n(in, "s"), 1, ways);
    }

    private static double n(Map<String, Object> in, String name) {
        return (Double) in.get(name);
    }

    /** What stays in hoses and mesh for a usual infusion comes from the same geometry. */
    @Test
    void usualLossesOfAnInfusionAreThoseOfTheGeometry() {
        assertThat(List.of(
                        Loss.usual(Process.INFUSION).get(Loss.LINES).value(),
                        Loss.usual(Process.INFUSION).get(Loss.MESH).value()))
                .satisfies(losses -> {
                    assertThat(losses.get(0)).isCloseTo(0.25918139, within(1e-8));
                    assertThat(losses.get(1)).isCloseTo(0.88, within(1e-12));
                });
    }
}
