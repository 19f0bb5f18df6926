package laminate.print.mix;

import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import laminate.plan.MixPlan;
import laminate.print.StrictCsv;
import laminate.print.StrictJson;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** JSON and CSV of plans, read back by strict parsers. */
class MixDataTest {

    @Test
    void theKeysOfTheContractAreThere() throws IOException {
        Map<String, Object> stage =
                list(json(List.of(TestPlans.lid())), "stages").get(1);
        Map<String, Object> mix = list(stage, "mixes").get(0);
        assertThat(mix)
                .containsEntry("material", "polyester-ortho")
                .containsEntry("resin_kg", 1.265)
                .containsEntry("catalyst_kg", 0.019)
                .containsEntry("gel_time_s", 1200.0)
                .containsEntry("usable_time_s", 720.0)
                .containsKey("catalyst_ml");
        assertThat((double) mix.get("catalyst_ml")).isBetween(16.0, 16.5);
        assertThat(stage)
                .containsEntry("part", "Bow locker lid")
                .containsEntry("stage", 2.0)
                .containsEntry("start", "09:00:00")
                .containsEntry("gelled", "09:44:59");
    }

    @Test
    void stagesOfAllPartsFollowEachOther() throws IOException {
        Map<String, Object> all = json(TestPlans.all());
        assertThat(list(all, "parts")).hasSize(3);
        assertThat(list(all, "stages")).hasSize(5);
    }

    @Test
    void whatIsNotKnownIsLeftOutAndWhatDoesNotFitSaysSo() throws IOException {
        Map<String, Object> stage =
                list(json(List.of(TestPlans.keel())), "stages").get(0);
        Map<String, Object> unknown = list(stage, "mixes").get(1);
        assertThat(unknown).containsEntry("material", "epoxy").doesNotContainKeys("gel_time_s", "usable_time_s");
        Map<String, Object> unfit = list(stage, "resins").get(2);
        assertThat(unfit).containsEntry("fits", false).containsKey("problem");
        assertThat(list(unfit, "suggestions"))
                .containsExactly(Map.of("agent_percent", 1.0, "mixes", 4.0), Map.of("crew", 3.0, "mixes", 1.0));
        assertThat(list(json(List.of(TestPlans.keel())), "parts").get(0)).containsEntry("fits", false);
    }

    @ParameterizedTest
    @EnumSource(MixCsv.Which.class)
    void everyRowHasOneFieldAHeadingAndNoTextStartsAFormula(MixCsv.Which which) throws IOException {
        for (UnitSystem system : UnitSystem.values()) {
            List<List<String>> rows = rows(which, system);
            assertThat(rows.get(0)).doesNotHaveDuplicates().allMatch(heading -> heading.matches("[A-Za-z0-9_]+"));
            assertThat(rows)
                    .hasSizeGreaterThan(1)
                    .allSatisfy(row -> assertThat(row)
                            .hasSameSizeAs(rows.get(0))
                            .noneMatch(field -> field.matches("(?s)[=+@\\t\\r].*|-[^0-9].*")));
        }
    }

    @Test
    void theWallTableHasAColumnATemperatureAndABlankBeyondWhatIsKnown() throws IOException {
        List<List<String>> rows = rows(MixCsv.Which.DOSES, UnitSystem.SI);
        assertThat(rows.get(0)).endsWith("gel_time_min_at_15_C", "gel_time_min_at_20_C");
        assertThat(rows.get(1)).containsExactly("polyester-ortho", "mekp", "1", "10", "8.55", "52.5", "31");
        assertThat(rows.get(2)).endsWith("37", "");
        // The same resin of another part stands once.
        assertThat(rows).hasSize(3);
    }

    private static List<List<String>> rows(MixCsv.Which which, UnitSystem system) throws IOException {
        StringBuilder csv = new StringBuilder();
        new MixCsv(which, system).print(TestPlans.all(), csv);
        return StrictCsv.rows(csv.toString());
    }

    private static Map<String, Object> json(List<MixPlan> plans) throws IOException {
        StringBuilder json = new StringBuilder();
        new MixJson().print(plans, json);
        return StrictJson.object(json.toString());
    }
}
