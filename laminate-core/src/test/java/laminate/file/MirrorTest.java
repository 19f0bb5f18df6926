package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MirrorTest {

    @TempDir
    private Path folder;

    private Job mirrored(String layers) {
        return new Bench(folder)
                .read(Bench.WITHOUT_ZONES + "zones: [{name: panel, area: 1 m², mirror: true, layers: [" + layers
                        + "]}]\n");
    }

    private static Laminate laminate(Job job) {
        return job.estimate().zones().get(0).laminate();
    }

    private static double scale(Laminate laminate) {
        return laminate.membrane().get(0, 0) * laminate.thickness();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "mat-300, biaxial-600, {core: pet-100, thickness: 15 mm}",
                "{reinforcement: biaxial-600, angle: 30}, {reinforcement: cloth-280, angle: 20}",
                "{reinforcement: biaxial-45-400, angle: 30}, mat-300, {core: pvc-80, thickness: 5 mm}",
                "{reinforcement: biaxial-45-400, angle: 10, turned: true}, roving-600",
                "biaxial-600-mat-225, {reinforcement: unidirectional-250, angle: 30}, {bulker: bulking-mat-3}",
                "{lamina: {E1: 40 GPa, E2: 9 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³}, thickness: 1 mm, angle: 30}"
            })
    void mirroredLaminateDoesNotCouple(String layers) {
        Laminate laminate = laminate(mirrored(layers));
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertThat(laminate.coupling().get(i, j)).isCloseTo(0, within(1e-12 * scale(laminate)));
            }
        }
    }

    /** No turning of the roll mirrors 0/+45/−45: its ±45 plies lie exchanged, and shear stays coupled a little. */
    @Test
    void turnedTriaxialMirrorsAllButItsSlantedPlies() {
        Matrix3 B = laminate(mirrored("triaxial-750")).coupling();
        double scale = scale(laminate(mirrored("triaxial-750")));
        assertThat(B.get(0, 0)).isCloseTo(0, within(1e-12 * scale));
        assertThat(B.get(0, 1)).isCloseTo(0, within(1e-12 * scale));
        assertThat(B.get(1, 1)).isCloseTo(0, within(1e-12 * scale));
        assertThat(B.get(2, 2)).isCloseTo(0, within(1e-12 * scale));
        assertThat(Math.abs(B.get(0, 2))).isBetween(1e-3 * scale, 0.1 * scale);
    }

    /** Plies without a direction have no angle to keep: turning them is all that there is to it. */
    @Test
    void reinforcementOfMatsOnlyIsTurnedAndNotSwung() {
        Bench bench = new Bench(folder);
        bench.put("own.yaml", """
                material: two-mats
                kind: reinforcement
                name: A light mat on a heavy one
                form: mat
                areal-weight: 525 g/m²
                plies: [{fibre: e-glass, areal-weight: 225 g/m²}, {fibre: e-glass, areal-weight: 300 g/m²}]
                """);
        Job job = bench.read(Bench.WITHOUT_ZONES + """
                materials: own.yaml
                zones: [{name: panel, area: 1 m², mirror: true, layers: [{reinforcement: two-mats, angle: 20}]}]
                """);
        assertThat(job.part().zones().get(0).layers())
                .map(layer -> (ReinforcementLayer) layer)
                .extracting(ReinforcementLayer::angle, ReinforcementLayer::turned)
                .containsExactly(tuple(20.0, false), tuple(20.0, true));
        Laminate laminate = laminate(job);
        assertThat(laminate.coupling().get(0, 0)).isCloseTo(0, within(1e-12 * scale(laminate)));
    }

    @Test
    void lastEntryStandsTwiceUnlessItIsACore() {
        assertThat(materials("mat-300, {core: pvc-80, thickness: 5 mm}"))
                .containsExactly("mat-300", "pvc-80", "mat-300");
        assertThat(materials("mat-300, cloth-280")).containsExactly("mat-300", "cloth-280", "cloth-280", "mat-300");
        assertThat(materials("{core: pvc-80, thickness: 5 mm}")).containsExactly("pvc-80");
    }

    private List<String> materials(String layers) {
        return mirrored(layers).part().zones().get(0).layers().stream()
                .map(Layer::material)
                .toList();
    }
}
