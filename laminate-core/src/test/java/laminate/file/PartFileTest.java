package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.FibreContent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands in a part file: zones, layers in all the ways they are written, coatings, items, measurements. */
class PartFileTest {

    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench(folder);
    }

    private static Job house() {
        return PartFile.read(Bench.resource("house/locker-lid.yaml"), Bench.STOCK);
    }

    private static List<String> materials(Zone zone) {
        return zone.layers().stream().map(Layer::material).toList();
    }

    @Test
    void everythingInTheExampleIsRead() {
        Job job = house();
        Part part = job.part();
        assertThat(part.name()).isEqualTo("Bow locker lid");
        assertThat(part.zones())
                .extracting(Zone::name)
                .containsExactly("lid", "seat patch", "balanced panel", "textbook strip");
        Zone lid = part.zones().get(0);
        assertThat(lid.area()).isEqualTo(0.62);
        assertThat(lid.trim()).contains(new Trim(3.4, 0.04));
        assertThat(materials(lid))
                .containsExactly("mat-300", "biaxial-600", "biaxial-600", "mat-300", "mat-450", "pvc-80", "mat-450");
        assertThat(lid.layers())
                .extracting(Layer::stage)
                .containsExactly("", "", "", "outer skin", "outer skin", "", "");
        assertThat(lid.contents()).isEqualTo(ContentSet.TRADE);
        assertThat(((ReinforcementLayer) lid.layers().get(6)).content()).contains(FibreContent.ofMassFraction(0.32));
        assertThat(part.items()).singleElement().satisfies(hinge -> {
            assertThat(hinge.count()).isEqualTo(2);
            assertThat(hinge.mass()).isEqualTo(0.12);
            assertThat(hinge.price().orElseThrow()).hasToString("9.00 GBP");
        });
        assertThat(part.measured().mass()).hasValue(4.2);
        assertThat(part.measured().thickness()).containsExactly(0.0031, 0.0033);
    }

    @Test
    void coreHasItsFinishAndBed() {
        CoreLayer core = (CoreLayer) house().part().zones().get(0).layers().get(5);
        assertThat(core.thickness()).isEqualTo(0.01);
        assertThat(core.finish()).isEqualTo(CoreFinish.of(CoreFinish.Kind.GROOVED));
        assertThat(core.bed().orElseThrow().paste().id()).isEqualTo("bonding-paste");
        assertThat(core.bed().orElseThrow().thickness()).isEqualTo(0.001);
        Job own = bench().layers(
                        "{core: pvc-80, thickness: 20 mm, angle: 90,"
                                + " grooves: {width: 3 mm, depth: 4 mm, pitch: 30 mm, faces: 1, ways: 2}}, {core: pet-100, thickness: 5 mm}");
        CoreLayer grooved = (CoreLayer) own.part().zones().get(0).layers().get(0);
        assertThat(grooved.finish().grooves().orElseThrow().ways()).isEqualTo(2);
        assertThat(grooved.angle()).isEqualTo(90);
        assertThat(((CoreLayer) own.part().zones().get(0).layers().get(1)).finish())
                .isEqualTo(CoreFinish.PLAIN);
    }

    @Test
    void scheduleIsLaidOutWithItsRepeats() {
        assertThat(materials(house().part().zones().get(1)))
                .containsExactly("mat-300", "mat-450", "roving-600", "mat-450", "roving-600", "mat-450", "roving-600");
        Job twice = bench().read(Bench.WITHOUT_ZONES + """
                schedules:
                  inner: [{reinforcement: mat-300, times: 2}]
                  outer: [{schedule: inner}, cloth-280]
                zones:
                  - name: lid
                    area: 1 m²
                    layers: [{schedule: outer, times: 2}, {bulker: bulking-mat-3, times: 2}, {schedule: inner}]
                """);
        assertThat(materials(twice.part().zones().get(0)))
                .containsExactly(
                        "mat-300",
                        "mat-300",
                        "cloth-280",
                        "mat-300",
                        "mat-300",
                        "cloth-280",
                        "bulking-mat-3",
                        "bulking-mat-3",
                        "mat-300",
                        "mat-300");
    }

    @Test
    void laminaIsReadWithAllItsConstants() {
        Zone strip = house().part().zones().get(3);
        LaminaLayer ply = (LaminaLayer) strip.layers().get(0);
        assertThat(ply.lamina().E1()).isEqualTo(181e9);
        assertThat(ply.density()).isEqualTo(1600);
        assertThat(ply.angle()).isEqualTo(30);
        Job full = bench().read("""
                part: Strip without process or resin
                zones:
                  - name: strip
                    area: 1 m²
                    layers:
                      - lamina: {E1: 40 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³, G13: 4 GPa, G23: 3 GPa,
                                 alpha1: 7e-6 1/K, alpha2: 25e-6 1/K, beta1: 0, beta2: 0.4}
                        thickness: 0.5 mm
                        angle: -45°
                        times: 3
                """);
        assertThat(full.part().zones().get(0).layers()).hasSize(3).allSatisfy(layer -> {
            LaminaLayer read = (LaminaLayer) layer;
            assertThat(read.angle()).isEqualTo(-45);
            assertThat(read.lamina().transverseShear().orElseThrow().G23()).isEqualTo(3e9);
            assertThat(read.lamina().thermalExpansion().orElseThrow().across()).isEqualTo(25e-6);
            assertThat(read.lamina().moistureExpansion().orElseThrow().across()).isEqualTo(0.4);
        });
    }
}
