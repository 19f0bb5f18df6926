package laminate.print.compare;

import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import laminate.compare.SideBySide;
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

/** What a reader, a program and a spreadsheet are told of comparisons. */
class CompareTextTest {
    private static final SideBySide LID = TestComparisons.lid();

    @ParameterizedTest
    @MethodSource("laminate.print.Pages#all")
    void noLineIsWiderThanThePageOrCanSteerATerminal(int width, UnitSystem system) throws IOException {
        String text = text(system, width, TestComparisons.all());
        Pages.assertReadable(text, width);
    }

    @Test
    void figuresOfThePartStandFirstAndMoneyLast() throws IOException {
        assertThat(text(UnitSystem.SI, 120, List.of(LID)))
                .containsSubsequence(
                        "Lid, side by side",
                        "ways         hand lay-up, vacuum bag",
                        "cannot be    infusion: an open-celled core cannot be infused",
                        "One part",
                        "Zones",
                        "Panels",
                        "Why the bending stiffness differs",
                        "Cost of one part, and what the choice costs or saves",
                        "How many parts make it worth while",
                        "is cheaper",
                        "To mind")
                .doesNotContain("Beams", "Load cases", "What was changed");
    }

    @Test
    void whatWasChangedAndWhatHasNoPriceAreSaid() throws IOException {
        assertThat(text(UnitSystem.SI, 120, List.of(TestComparisons.asStiffAsPlywood())))
                .contains("held equal   same bending stiffness, by its reinforcement", "What was changed", "no price");
    }

    @Test
    void theKeysOfTheContractAreThere() throws IOException {
        Map<String, Object> all = json(LID);
        List<Map<String, Object>> ways = list(all, "alternatives");
        assertThat(ways).hasSize(2);
        assertThat(ways.get(0))
                .containsKeys("part", "mass_kg", "zones", "quantities", "hours", "cost", "cautions", "styrene_kg");
        assertThat(list(ways.get(0), "panels").get(0)).containsKeys("name", "deflection_m", "reserve_factors");
        assertThat(ways.get(0)).containsEntry("name", "hand lay-up").containsEntry("process", "hand lay-up");
        assertThat(list(all, "refused")).hasSize(1);
    }

    @Test
    void valuesStandInTheOrderOfTheAlternativesWithTheirDifferenceToTheFirst() throws IOException {
        Map<String, Object> mass = list(json(LID), "figures").stream()
                .filter(row ->
                        row.get("measure").equals("mass") && row.get("of").equals("part"))
                .findFirst()
                .orElseThrow();
        List<Map<String, Object>> values = list(mass, "values");
        double first = (double) values.get(0).get("value");
        double other = (double) values.get(1).get("value");
        assertThat(first)
                .isEqualTo(LID.alternatives().get(0).estimate().massEach().planned(), within(1e-12));
        assertThat((double) values.get(1).get("difference")).isEqualTo(other / first - 1, within(1e-12));
    }

    @Test
    void anAlternativeWithoutACostLeavesItsPlaceEmpty() throws IOException {
        Map<String, Object> all = json(TestComparisons.asStiffAsPlywood());
        assertThat(list(all, "alternatives")).hasSize(3);
        for (Map<String, Object> row : list(all, "costs")) {
            assertThat(list(row, "each")).hasSize(3);
        }
        for (Map<String, Object> point : list(all, "curve")) {
            assertThat(list(point, "costs")).hasSize(3);
        }
    }

    @ParameterizedTest
    @EnumSource(CompareCsv.Which.class)
    void everyRowHasOneFieldAHeadingAndNoTextStartsAFormula(CompareCsv.Which which) throws IOException {
        for (UnitSystem system : UnitSystem.values()) {
            for (SideBySide ways : TestComparisons.all()) {
                StringBuilder csv = new StringBuilder();
                new CompareCsv(which, system).print(List.of(ways), csv);
                List<List<String>> rows = StrictCsv.rows(csv.toString());
                assertThat(rows.get(0)).doesNotHaveDuplicates();
                assertThat(rows)
                        .allSatisfy(row -> assertThat(row)
                                .hasSameSizeAs(rows.get(0))
                                .noneMatch(field -> field.matches("(?s)[=+@\\t\\r].*|-[^0-9].*")));
            }
        }
    }

    @Test
    void oneComparisonMakesOneObject() {
        assertThatThrownBy(() -> new CompareJson().print(List.of(LID, LID), new StringBuilder()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not 2");
    }

    private static String text(UnitSystem system, int width, List<SideBySide> ways) throws IOException {
        StringBuilder text = new StringBuilder();
        new TextPrinter<>(new CompareReport(system)::of, width, Style.PLAIN).print(ways, text);
        return text.toString();
    }

    private static Map<String, Object> json(SideBySide ways) throws IOException {
        StringBuilder json = new StringBuilder();
        new CompareJson().print(List.of(ways), json);
        return StrictJson.object(json.toString());
    }
}
