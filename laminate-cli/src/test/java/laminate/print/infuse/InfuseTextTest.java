package laminate.print.infuse;

import static laminate.print.StrictJson.child;
import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import laminate.plan.infusion.PartInfusion;
import laminate.print.Pages;
import laminate.print.StrictCsv;
import laminate.print.StrictJson;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a reader, a program and a spreadsheet are told of infusions. */
class InfuseTextTest {

    @ParameterizedTest
    @MethodSource("laminate.print.Pages#all")
    void noLineIsWiderThanThePageOrCanSteerATerminal(int width, UnitSystem system) throws IOException {
        String text = text(system, width, TestInfusions.all());
        Pages.assertReadable(text, width);
    }

    @Test
    void whetherItFillsInTimeStandsFirst() throws IOException {
        assertThat(text(UnitSystem.SI, 120, List.of(TestInfusions.deck())))
                .containsSubsequence(
                        "in time: full after 22 min, within 35 min",
                        "full after     22.0 min; 15.7 min to 36.7 min",
                        "laminate lags  32.5 mm behind the flow mesh, which is full after 20.0 min",
                        "permeability       102 µm²",
                        "with flow mesh     1690 µm²",
                        "1 µm² is 1e-12 m²");
    }

    @Test
    void whatNeverFillsAndAPermeabilityFromMemorySaySo() throws IOException {
        assertThat(text(UnitSystem.SI, 120, List.of(TestInfusions.never())))
                .contains("never full: it gets too thick on the way", "\nfull after  never", "\ngels in     not known")
                .contains("The permeability is an order of magnitude from memory")
                .doesNotContain("feed reaches", "longer for it", "Buckets to draw from", "with flow mesh");
    }

    @Test
    void theKeysOfTheContractAreThere() throws IOException {
        Map<String, Object> part =
                list(json(List.of(TestInfusions.deck())), "parts").get(0);
        Map<String, Object> infusion = child(list(part, "zones").get(0), "infusion");
        assertThat(infusion)
                .containsEntry("fill_time_s", 1320.0)
                .containsEntry("gel_time_s", 4206.0)
                .containsEntry("effective_permeability_m2", 1.69e-9)
                .containsEntry("lag_m", 0.0325);
        assertThat((double) infusion.get("resin_in_lines_kg")).isEqualTo(0.123 + 0.496);
        assertThat(list(infusion, "front").get(1))
                .containsExactly(Map.entry("time_s", 330.0), Map.entry("position_m", 0.21));
        assertThat(part).doesNotContainKey("infusion");
    }

    @Test
    void theInfusionOfAPartStandsAtThePartAndLeavesOutWhatIsNotKnown() throws IOException {
        Map<String, Object> part =
                list(json(List.of(TestInfusions.never())), "parts").get(0);
        assertThat(child(part, "infusion"))
                .containsEntry("permeability_from_memory", true)
                .doesNotContainKeys("fill_time_s", "gel_time_s", "lag_m", "buckets", "hose");
        assertThat(list(part, "zones")).allMatch(zone -> !zone.containsKey("infusion"));
    }

    @ParameterizedTest
    @EnumSource(InfuseCsv.Which.class)
    void everyRowHasOneFieldAHeadingAndNoTextStartsAFormula(InfuseCsv.Which which) throws IOException {
        for (UnitSystem system : UnitSystem.values()) {
            StringBuilder csv = new StringBuilder();
            new InfuseCsv(which, system).print(TestInfusions.all(), csv);
            List<List<String>> rows = StrictCsv.rows(csv.toString());
            assertThat(rows.get(0)).doesNotHaveDuplicates().allMatch(heading -> heading.matches("[A-Za-z0-9_]+"));
            assertThat(rows)
                    .hasSizeGreaterThan(1)
                    .allSatisfy(row -> assertThat(row)
                            .hasSameSizeAs(rows.get(0))
                            .noneMatch(field -> field.matches("(?s)[=+@\\t\\r].*|-[^0-9].*")));
        }
    }

    private static String text(UnitSystem system, int width, List<PartInfusion> parts) throws IOException {
        StringBuilder text = new StringBuilder();
        new TextPrinter<>(new InfuseReport(system)::of, width, Style.PLAIN).print(parts, text);
        return text.toString();
    }

    private static Map<String, Object> json(List<PartInfusion> parts) throws IOException {
        StringBuilder json = new StringBuilder();
        new InfuseJson().print(parts, json);
        return StrictJson.object(json.toString());
    }
}
