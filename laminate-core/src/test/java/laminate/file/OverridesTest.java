package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import laminate.part.Layer;
import laminate.part.Zone;
import laminate.process.LayUp;
import laminate.process.Workshop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Resin, schedules, temperature and crew that are asked for instead of what the part file states. */
class OverridesTest {

    private static final String ONE_ZONE = "zones: [{name: lid, area: 1 m², layers: [mat-300]}]\n";
    private static final String SCHEDULES = Bench.WITHOUT_ZONES + """
            schedules: {shell: [mat-300, mat-450], light: [mat-300, {schedule: core}], core: [mat-225]}
            alternatives: {shell: light}
            zones: [{name: lid, area: 1 m², layers: [{schedule: shell}, {schedule: core}]}]
            """;

    @TempDir
    private Path folder;

    private Job read(String text, Overrides overrides) {
        return new Bench(folder).read(text, overrides);
    }

    private List<LayUp> layUps(String text, String resin) {
        return read(text, Overrides.NONE.withResin(resin)).part().zones().stream()
                .flatMap(zone -> zone.layers().stream())
                .map(layer -> layer.laying().orElseThrow())
                .toList();
    }

    private static List<String> materials(Job job) {
        Zone zone = job.part().zones().get(0);
        return zone.layers().stream().map(Layer::material).toList();
    }

    @Test
    void aResinTakesThePlaceOfThePartsOwnAndOfNoOther() {
        List<LayUp> layUps = layUps(Bench.WITHOUT_ZONES + """
                zones:
                  - {name: a, area: 1 m², layers: [mat-300, {reinforcement: mat-300, resin: polyester-iso}]}
                  - {name: b, area: 1 m², resin: polyester-iso, layers: [mat-300]}
                """, "vinylester");
        assertThat(layUps)
                .extracting(layUp -> layUp.resin().id())
                .containsExactly("vinylester", "polyester-iso", "polyester-iso");
    }

    @Test
    void aResinTakesThePlaceOfTheOutermostOneThatIsStated() {
        String text = """
                part: Lid
                process: hand lay-up
                zones:
                  - name: a
                    area: 1 m²
                    resin: polyester-ortho
                    layers: [mat-300, {reinforcement: mat-300, resin: polyester-iso}]
                """;
        assertThat(layUps(text, "vinylester"))
                .extracting(layUp -> layUp.resin().id())
                .containsExactly("vinylester", "polyester-iso");
        assertThat(layUps("part: Lid\nprocess: hand lay-up\n" + ONE_ZONE, "vinylester"))
                .extracting(layUp -> layUp.resin().id())
                .containsExactly("vinylester");
    }

    /** The dose of the file is for the file's resin: it serves another where it cures it, else that takes its own. */
    @Test
    void aResinTakesTheDoseThatIsStatedWhereThatCuresIt() {
        String text = Bench.WITHOUT_ZONES + "catalyst: {id: mekp, amount: 1.6 %}\n" + ONE_ZONE;
        LayUp vinylester = layUps(text, "vinylester").get(0);
        assertThat(vinylester.dose().agent().id()).isEqualTo("mekp");
        assertThat(vinylester.dose().ratio()).isEqualTo(0.016);

        LayUp epoxy = layUps(text, "epoxy-laminating").get(0);
        assertThat(epoxy.dose().agent().id())
                .isEqualTo(epoxy.resin().defaultCure().agent());
        assertThat(epoxy.dose().ratio())
                .isEqualTo(epoxy.resin().defaultCure().amount().value());
    }

    /** 2.5 % is in the range of the polyester, and above the 2 % that a vinylester takes at most. */
    @Test
    void aDoseOutsideTheRangeOfTheResinGivesWayToItsUsualOne() {
        String text = Bench.WITHOUT_ZONES + "catalyst: {id: mekp-slow, amount: 2.5 %}\n" + ONE_ZONE;
        assertThat(layUps(text, "polyester-ortho").get(0).dose().ratio()).isEqualTo(0.025);
        LayUp infused = layUps(text, "vinylester-infusion").get(0);
        assertThat(infused.dose().agent().id())
                .isEqualTo(infused.resin().defaultCure().agent());
        assertThat(infused.dose().ratio())
                .isEqualTo(infused.resin().defaultCure().amount().value());
    }

    @Test
    void anUnknownResinIsComplainedOfAsWhatWasAskedFor() {
        assertThat(new Bench(folder)
                        .complaints(() -> read(Bench.WITHOUT_ZONES + ONE_ZONE, Overrides.NONE.withResin("vinylestr"))))
                .containsExactly("part.yaml:1:1: resin asked for: 'vinylestr' is not known; did you mean vinylester? a"
                        + " laminating or infusion resin of the library or of a material file is wanted");
    }

    @Test
    void layersOfAnotherScheduleAreLaidInThePlaceOfOne() {
        assertThat(materials(read(SCHEDULES, Overrides.NONE))).containsExactly("mat-300", "mat-450", "mat-225");
        assertThat(materials(read(SCHEDULES, Overrides.NONE.withSchedules(Map.of("shell", "light")))))
                .containsExactly("mat-300", "mat-225", "mat-225");
    }

    @Test
    void aScheduleMayHoldTheOneInWhosePlaceItLies() {
        String text = SCHEDULES.replace("light: [mat-300, {schedule: core}]", "light: [{schedule: shell}, mat-225]");
        assertThat(materials(read(text, Overrides.NONE.withSchedules(Map.of("shell", "light")))))
                .containsExactly("mat-300", "mat-450", "mat-225", "mat-225");
    }

    @Test
    void alternativesAreToldWithTheJob() {
        assertThat(read(SCHEDULES, Overrides.NONE).alternatives())
                .containsExactly(Map.entry("shell", List.of("light")));
        assertThat(read(Bench.WITHOUT_ZONES + ONE_ZONE, Overrides.NONE).alternatives())
                .isEmpty();
    }

    @Test
    void unknownSchedulesAreComplainedOfAsWhatWasAskedFor() {
        assertThat(new Bench(folder)
                        .complaints(() -> read(SCHEDULES, Overrides.NONE.withSchedules(Map.of("shell", "lihgt")))))
                .containsExactly("part.yaml:1:1: schedules asked for: 'lihgt' is no schedule of this part; did you mean"
                        + " light? accepted: shell, light, core");
    }

    @Test
    void temperatureAndCrewTakeThePlaceOfTheWorkshopsOwn() {
        String text = Bench.WITHOUT_ZONES + "workshop: {temperature: 18 °C, labour: {crew: 2}}\n" + ONE_ZONE;
        Workshop own = read(text, Overrides.NONE).workshop();
        Workshop asked =
                read(text, Overrides.NONE.withTemperature(298.15).withCrew(3)).workshop();
        assertThat(own.temperature()).hasValue(291.15);
        assertThat(own.shopFloor().crew()).isEqualTo(2);
        assertThat(asked.temperature()).hasValue(298.15);
        assertThat(asked.shopFloor().crew()).isEqualTo(3);
    }

    @Test
    void impossibleValuesAreRefused() {
        assertThatThrownBy(() -> Overrides.NONE.withTemperature(-1)).hasMessageContaining("above 0 K, not -1.0");
        assertThatThrownBy(() -> Overrides.NONE.withTemperature(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> Overrides.NONE.withCrew(0)).hasMessageContaining("1 to 100, not 0");
    }
}
