package laminate.print.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import laminate.print.StrictCsv;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CheckCsvTest {
    private static final List<CheckedPart> PARTS = TestChecks.all();

    @ParameterizedTest
    @EnumSource(CheckCsv.Which.class)
    void everyRowHasOneFieldAHeadingAndNoTextStartsAFormula(CheckCsv.Which which) {
        for (UnitSystem system : UnitSystem.values()) {
            List<List<String>> rows = StrictCsv.rows(print(which, system, PARTS));
            assertThat(rows.get(0)).doesNotHaveDuplicates().allMatch(heading -> heading.matches("[A-Za-z0-9_]+"));
            assertThat(rows)
                    .hasSizeGreaterThan(1)
                    .allSatisfy(
                            row -> assertThat(row).hasSameSizeAs(rows.get(0)).noneMatch(CheckCsvTest::startsFormula));
        }
    }

    private static boolean startsFormula(String field) {
        return field.matches("(?s)[=+@\\t\\r].*|-[^0-9].*");
    }

    @Test
    void thePliesOfEveryLoadCasePanelAndBeamAreThere() {
        List<List<String>> rows =
                StrictCsv.rows(print(CheckCsv.Which.PLIES, UnitSystem.SI, List.of(TestChecks.sideTank())));
        // Two load cases and a panel of two plies, two panels and a beam of five.
        assertThat(rows).hasSize(1 + 3 * (3 * 2 + 3 * 5));
        assertThat(rows.get(0)).contains("stress_1_MPa", "strain_xy_percent", "reserve_factor_tsai_wu");
        assertThat(rows.get(1)).startsWith("Side tank", "load case", "pull", "strip", "1", "lamina", "0");
    }

    @Test
    void anotherUnitIsAnotherNumberOfTheSameLength() {
        double mm = deflection(UnitSystem.SI);
        double inches = deflection(UnitSystem.US);
        assertThat(mm).isCloseTo(inches * 25.4, within(1e-9));
        assertThat(mm / 1000).isCloseTo(PARTS.get(0).check().panels().get(0).governingDeflection(), within(1e-12));
    }

    private static double deflection(UnitSystem system) {
        List<List<String>> rows = StrictCsv.rows(print(CheckCsv.Which.PANELS, system, PARTS));
        String unit = system == UnitSystem.SI ? "mm" : "in";
        return Double.parseDouble(rows.get(1).get(rows.get(0).indexOf("governing_deflection_" + unit)));
    }

    @Test
    void withoutSurfacesThereIsNothingToPlot() {
        assertThat(print(CheckCsv.Which.SURFACE, UnitSystem.SI, List.of(TestChecks.notJudged())))
                .isEmpty();
    }

    private static String print(CheckCsv.Which which, UnitSystem system, List<CheckedPart> parts) {
        StringBuilder csv = new StringBuilder();
        try {
            new CheckCsv(which, system).print(parts, csv);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return csv.toString();
    }
}
