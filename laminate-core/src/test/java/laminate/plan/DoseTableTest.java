package laminate.plan;

import static laminate.plan.PlanParts.HAND;
import static laminate.plan.PlanParts.HAND_EPOXY;
import static laminate.plan.PlanParts.kelvin;
import static laminate.plan.PlanParts.layer;
import static laminate.plan.PlanParts.workshop;
import static laminate.plan.PlanParts.zone;
import static laminate.testing.TestMaterials.mat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Part;
import laminate.process.Process;
import laminate.process.cure.GelTimes;
import org.junit.jupiter.api.Test;

/** The table of dose against temperature. */
class DoseTableTest {

    @Test
    void theStatedPointsAreRowsAndColumns() {
        DoseTable table = table(PlanParts.POLYESTER);

        assertThat(table.resin()).isEqualTo("polyester-ortho");
        assertThat(table.agent()).isEqualTo("mekp");
        assertThat(table.temperatures()).containsExactly(kelvin(10), kelvin(20), kelvin(30));
        assertThat(table.rows()).extracting(DoseTable.Row::dose).containsExactly(0.01, 0.02, 0.04);
        assertThat(minutes(table.rows().get(1).gelTimes())).containsExactly(40.0, 20.0, 10.0);
        assertThat(table.rows().get(1).volumePerMass()).isCloseTo(0.02 / 1170, within(1e-15));
        assertThat(table.source()).isEqualTo("test");
        assertThat(table.status()).isEqualTo(Status.MEMORY);
    }

    /** A cell between points is read between them; one outside stays empty. */
    @Test
    void cellsThatThePointsDoNotReachAreEmpty() {
        Resin ragged = PlanParts.withPoints(
                PlanParts.POLYESTER,
                PlanParts.POLYESTER.gelPoints().stream()
                        .filter(point -> point.amount() != 0.02 || point.temperature() != kelvin(30))
                        .filter(point -> point.amount() != 0.04 || point.temperature() == kelvin(20))
                        .toList());

        DoseTable table = table(ragged);

        assertThat(table.rows().get(1).gelTimes().get(2)).isEmpty();
        assertThat(table.rows().get(2).gelTimes().get(0)).isEmpty();
        assertThat(table.rows().get(2).gelTimes().get(1)).hasValueCloseTo(600.0, within(1e-6));
    }

    /**
     * 20 min of work and 2 min of mixing within 70 % of the gel time want 31.4 min: at 20 °C, where 1 % gives 40 min, in
     * inverse proportion 1.273 %.
     */
    @Test
    void theDoseForAWantedWorkingTime() {
        DoseTable table = table(PlanParts.POLYESTER);
        DoseTable.Wanted row = table.wanted().stream()
                .filter(wanted -> wanted.workingTime() == 1200)
                .findFirst()
                .orElseThrow();

        assertThat(row.doses().get(1)).hasValueCloseTo(0.01 * 40 * 0.7 / 22, within(1e-9));
    }

    /** Each dose lies in the resin's range and gives the working time; 3 % is the most that the resin takes. */
    @Test
    void everyWantedDoseGivesItsTimeWithinTheResinsRange() {
        DoseTable table = table(PlanParts.POLYESTER);
        GelTimes times = GelTimes.of(PlanParts.POLYESTER, "mekp");
        int given = 0;
        for (DoseTable.Wanted row : table.wanted()) {
            for (int i = 0; i < row.doses().size(); i++) {
                OptionalDouble dose = row.doses().get(i);
                if (dose.isPresent()) {
                    given++;
                    assertThat(dose.getAsDouble()).isBetween(0.01 - 1e-12, 0.03 + 1e-12);
                    double gel = times.at(table.temperatures().get(i), dose.getAsDouble())
                            .seconds();
                    assertThat(0.7 * gel - 120).isCloseTo(row.workingTime(), within(1e-6 * gel));
                }
            }
        }
        assertThat(given).isGreaterThan(5);
    }

    /** The ratio of a two-part resin is fixed: no dose is offered for a time. */
    @Test
    void aHardenerHasNoWantedDoses() {
        MixPlan plan = PlanParts.plan(
                Part.of("p", List.of(zone("z", 1, List.of(), layer(mat(0.45), HAND_EPOXY, "")))), workshop(20, 1));

        assertThat(plan.doses()).hasSize(1);
        assertThat(plan.doses().get(0).rows()).hasSize(1);
        assertThat(plan.doses().get(0).wanted()).isEmpty();
    }

    @Test
    void oneTableForEachResinAndAgentThatHasGelTimes() {
        MixPlan plan = PlanParts.plan(
                Part.of(
                        "p",
                        List.of(zone(
                                "z",
                                1,
                                List.of(PlanParts.gelcoat(2)),
                                layer(mat(0.45), HAND, "a"),
                                layer(mat(0.45), HAND, "b"),
                                layer(
                                        mat(0.45),
                                        PlanParts.layUp(
                                                Process.HAND_LAY_UP, laminate.testing.TestMaterials.VINYLESTER, 0.015),
                                        "c")))),
                workshop(20, 1));

        assertThat(plan.doses()).extracting(DoseTable::resin).containsExactly("gelcoat-iso", "polyester-ortho");
    }

    private static DoseTable table(Resin resin) {
        return PlanParts.plan(
                        Part.of(
                                "p",
                                List.of(zone(
                                        "z",
                                        1,
                                        List.of(),
                                        layer(mat(0.45), PlanParts.layUp(Process.HAND_LAY_UP, resin, 0.02), "")))),
                        workshop(20, 1))
                .doses()
                .get(0);
    }

    private static List<Double> minutes(List<OptionalDouble> times) {
        return times.stream()
                .map(time -> Math.rint(time.orElse(0) / 60 * 1e6) / 1e6)
                .toList();
    }
}
