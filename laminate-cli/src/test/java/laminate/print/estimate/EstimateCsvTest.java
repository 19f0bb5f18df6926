package laminate.print.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.print.StrictCsv;
import laminate.print.TestParts;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class EstimateCsvTest {

    @ParameterizedTest
    @EnumSource(EstimateCsv.Which.class)
    void everyRowHasOneFieldAHeading(EstimateCsv.Which which) {
        for (UnitSystem system : UnitSystem.values()) {
            List<List<String>> rows = StrictCsv.rows(print(which, system, TestParts.all()));
            assertThat(rows.get(0)).doesNotHaveDuplicates();
            assertThat(rows)
                    .hasSizeGreaterThan(1)
                    .allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
        }
    }

    @ParameterizedTest
    @EnumSource(EstimateCsv.Which.class)
    void noTextStartsAFormula(EstimateCsv.Which which) {
        for (List<String> row : StrictCsv.rows(print(which, UnitSystem.SI, List.of(TestParts.hostileNames())))) {
            assertThat(row).noneMatch(field -> field.matches("[=+@\t\r].*|-[^0-9].*"));
        }
    }

    @Test
    void namesComeBackBehindTheirApostrophe() {
        PartEstimate hostile = TestParts.hostileNames();
        List<String> row = StrictCsv.rows(print(EstimateCsv.Which.LAYERS, UnitSystem.SI, List.of(hostile)))
                .get(1);
        assertThat(row.get(0)).isEqualTo("'" + hostile.part().name());
        assertThat(row.get(1)).isEqualTo("'" + hostile.zones().get(0).zone().name());
    }

    @Test
    void theLayersSumToTheMassPerArea() {
        PartEstimate lid = TestParts.lockerLid();
        List<List<String>> rows = StrictCsv.rows(print(EstimateCsv.Which.LAYERS, UnitSystem.SI, List.of(lid)));
        for (ZoneEstimate zone : lid.zones()) {
            double grams = rows.stream()
                    .filter(row -> row.get(1).equals(zone.zone().name()))
                    .flatMap(row -> row.subList(8, 13).stream())
                    .filter(field -> !field.isEmpty())
                    .mapToDouble(Double::parseDouble)
                    .sum();
            assertThat(grams).isCloseTo(zone.massPerArea().planned() * 1000, within(1e-9));
        }
    }

    @Test
    void whatHasNoPriceIsListedWithoutCost() {
        List<List<String>> rows = StrictCsv.rows(
                print(EstimateCsv.Which.COST, UnitSystem.SI, List.of(TestParts.lockerLidMissingPrices())));
        assertThat(rows).contains(List.of("Bow locker lid", "no price", "labour", "", "", "", "", "", "GBP"));
    }

    private static String print(EstimateCsv.Which which, UnitSystem system, List<PartEstimate> estimates) {
        StringBuilder csv = new StringBuilder();
        try {
            new EstimateCsv(which, system).print(estimates, csv);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return csv.toString();
    }
}
