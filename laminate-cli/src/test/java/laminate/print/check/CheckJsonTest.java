package laminate.print.check;

import static laminate.print.StrictJson.child;
import static laminate.print.StrictJson.list;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import laminate.check.LoadCaseCheck;
import laminate.check.PanelCheck;
import laminate.check.PointCheck;
import laminate.print.StrictJson;
import laminate.theory.failure.Criterion;
import laminate.theory.failure.ReserveFactor;
import org.junit.jupiter.api.Test;

/** The JSON of checks against its contract, read back by a strict parser. */
class CheckJsonTest {
    private static final CheckedPart CHECKED = TestChecks.sideTank();
    private static final Map<String, Object> TANK = part(CHECKED);

    @Test
    void theKeysOfTheContractStandInItsOrder() {
        assertInOrder(TANK, "part", "criterion", "limits_met", "zones", "panels", "beams", "limits", "cautions");
        Map<String, Object> loadCase = first(first(TANK, "zones"), "load_cases");
        assertInOrder(first(TANK, "zones"), "name", "load_cases");
        assertInOrder(loadCase, "name", "midplane", "plies", "reserve_factors");
        assertInOrder(
                first(loadCase, "plies"),
                "ply",
                "at",
                "z_m",
                "strain_xy",
                "stress_xy_Pa",
                "stress_12_Pa",
                "reserve_factors");
        assertInOrder(
                first(TANK, "panels"),
                "name",
                "deflection_m",
                "bending_deflection_m",
                "shear_deflection_m",
                "reserve_factors");
        assertInOrder(first(TANK, "limits"), "of", "name", "limit", "asked_kg", "found_kg", "verdict", "remedies");
    }

    @Test
    void everyPlyHasThreePointsFromTheMouldFaceInwards() {
        List<Map<String, Object>> plies = list(first(first(TANK, "zones"), "load_cases"), "plies");
        assertThat(plies).extracting(ply -> ply.get("ply")).containsExactly(1.0, 1.0, 1.0, 2.0, 2.0, 2.0);
        assertThat(plies)
                .extracting(ply -> ply.get("at"))
                .startsWith("mould-face side", "middle", "inner side", "mould-face side");
        assertThat(plies)
                .extracting(ply -> (Double) ply.get("z_m"))
                .isSorted()
                .first()
                .isEqualTo(-0.0005);
    }

    @Test
    void aPointSaysWhatTheLibraryFound() {
        LoadCaseCheck pull = CHECKED.check().zones().get(0).loadCases().get(0);
        List<Map<String, Object>> plies = list(first(first(TANK, "zones"), "load_cases"), "plies");
        for (int i = 0; i < plies.size(); i++) {
            PointCheck point = pull.laminate().points().get(i);
            assertThat(numbers(plies.get(i).get("stress_12_Pa")))
                    .containsExactly(
                            new double[] {
                                point.point().plyStress().x(),
                                point.point().plyStress().y(),
                                point.point().plyStress().xy()
                            },
                            within(1e-6));
            Map<String, Object> factors = child(plies.get(i), "reserve_factors");
            assertThat(factors).hasSameSizeAs(point.reserves());
            for (Map.Entry<Criterion, ReserveFactor> factor : point.reserves().entrySet()) {
                assertThat((Double) factors.get(factor.getKey().jsonName()))
                        .isCloseTo(factor.getValue().value(), within(1e-9));
            }
        }
        assertThat(child(plies.get(0), "reserve_factors"))
                .containsKeys("max_stress", "max_strain", "tsai_hill", "tsai_wu", "hashin");
    }

    @Test
    void deflectionIsThatOfBendingAndShear() {
        for (Map<String, Object> panel : list(TANK, "panels")) {
            double sum = (Double) panel.get("bending_deflection_m") + (Double) panel.get("shear_deflection_m");
            assertThat((Double) panel.get("deflection_m")).isCloseTo(sum, within(1e-12));
        }
        PanelCheck lid = CHECKED.check().panels().get(0);
        assertThat((Double) first(TANK, "panels").get("deflection_m"))
                .isCloseTo(lid.bending().deflection(), within(1e-12));
        assertThat(child(first(TANK, "panels"), "reserve_factors"))
                .containsKeys("core_shear", "first_ply", "wrinkling", "last_ply");
        assertThat(child(list(TANK, "panels").get(2), "reserve_factors")).containsKeys("buckling", "shear_crimping");
    }

    @Test
    void theFailureSurfaceHasItsRays() {
        Map<String, Object> surface = child(first(first(TANK, "zones"), "load_cases"), "failure_surface");
        assertThat(surface).containsEntry("x", "Nx_N_m").containsEntry("y", "Ny_N_m");
        assertThat(list(surface, "points"))
                .hasSize(8)
                .allSatisfy(point -> assertThat(point).containsKeys("Nx_N_m", "Ny_N_m", "ply", "criterion", "mode"));
    }

    @Test
    void whatIsMissedSaysByWhatItIsMended() {
        Map<String, Object> mass = first(TANK, "limits");
        assertThat(mass)
                .containsEntry("verdict", "not met")
                .containsEntry("asked_kg", 0.7)
                .doesNotContainKey("zone");
        assertThat(first(mass, "remedies")).containsEntry("change", "mass").containsEntry("to_kg", 0.7);
        assertThat(TANK).containsEntry("limits_met", false);
    }

    @Test
    void whatIsNeverReachedOrNotKnownIsLeftOut() throws IOException {
        String text = print(TestChecks.all());
        assertThat(text).doesNotContain("null", "NaN", "Infinity", "e308");
        Map<String, Object> patch = part(TestChecks.notJudged());
        Map<String, Object> limit = first(patch, "limits");
        assertThat(limit).containsEntry("verdict", "not judged").doesNotContainKeys("found", "margin");
        assertThat(list(first(patch, "zones"), "not_judged")).hasSize(2);
        assertThat(patch).doesNotContainKey("comparisons");
        assertThat(first(first(patch, "zones"), "load_cases")).doesNotContainKey("failure_surface");
    }

    @Test
    void aComparisonGivesRatios() {
        Map<String, Object> compared = first(TANK, "comparisons");
        assertThat(compared)
                .containsEntry("reference", "strip")
                .containsEntry("zone", "lid")
                .containsEntry("thickness_ratio", 11.0)
                .doesNotContainKey("material_cost_ratio");
    }

    private static Map<String, Object> part(CheckedPart checked) {
        try {
            return first(StrictJson.object(print(List.of(checked))), "parts");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String print(List<CheckedPart> parts) throws IOException {
        StringBuilder json = new StringBuilder();
        new CheckJson().print(parts, json);
        return json.toString();
    }

    private static void assertInOrder(Map<String, Object> object, String... keys) {
        assertThat(new ArrayList<>(object.keySet())).containsSubsequence(keys);
    }

    private static Map<String, Object> first(Map<String, Object> object, String key) {
        return list(object, key).get(0);
    }

    @SuppressWarnings("unchecked")
    private static double[] numbers(Object list) {
        return ((List<Double>) list).stream().mapToDouble(Double::doubleValue).toArray();
    }
}
