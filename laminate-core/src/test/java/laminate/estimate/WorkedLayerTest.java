package laminate.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import laminate.part.Part;
import laminate.process.Workshop;
import laminate.theory.Worked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is shown on the board comes to the figures of the estimate. */
class WorkedLayerTest {

    static Stream<Part> parts() {
        return RandomParts.take(40);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theFormulasComeToTheFiguresOfTheLayer(Part part) {
        for (ZoneEstimate zone : new Estimator(Workshop.USUAL).estimate(part).zones()) {
            for (LaidLayer layer : zone.layers()) {
                List<Worked> worked = layer.worked();
                assertThat(worked.isEmpty()).isEqualTo(!layer.isReinforced());
                if (layer.isReinforced()) {
                    assertResult(worked.get(0), "resin", layer.resinMass().planned());
                    assertResult(worked.get(1), "fibre volume fraction", layer.fibreVolumeFraction());
                    assertResult(worked.get(2), "thickness", layer.thickness().planned());
                }
            }
        }
    }

    private static void assertResult(Worked worked, String name, double expected) {
        assertThat(worked.name()).isEqualTo(name);
        assertThat(worked.result().value()).isCloseTo(expected, within(1e-12 * expected));
    }

    @Test
    void thereAreReinforcedLayersAndOthersAmongThem() {
        List<LaidLayer> layers = parts().flatMap(part -> new Estimator(Workshop.USUAL).estimate(part).zones().stream())
                .flatMap(zone -> zone.layers().stream())
                .toList();
        assertThat(layers)
                .anyMatch(layer -> !layer.worked().isEmpty())
                .anyMatch(layer -> layer.worked().isEmpty());
    }
}
