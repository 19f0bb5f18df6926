package laminate.plan;

import static laminate.plan.PlanParts.HAND;
import static laminate.plan.PlanParts.gelcoat;
import static laminate.plan.PlanParts.layer;
import static laminate.plan.PlanParts.workshop;
import static laminate.plan.PlanParts.zone;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.mat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.WorkingDay;
import laminate.process.Workshop;
import laminate.testing.TestMaterials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The clock of a plan, and the windows within which stages bond. */
class PlanClockTest {
    private static final double HOUR = 3600;
    private static final WorkingDay SHORT = new WorkingDay(LocalTime.of(9, 0), 4 * HOUR);

    @Test
    void workIsDoneWithinTheDay() {
        ShopClock clock = new ShopClock(SHORT);

        assertThat(clock.take(0, 3 * HOUR)).as("at the opening").isEqualTo(9 * HOUR);
        assertThat(clock.take(0, 1 * HOUR)).as("up to the closing").isEqualTo(12 * HOUR);
        assertThat(clock.take(0, 1 * HOUR)).as("next morning").isEqualTo(33 * HOUR);
        assertThat(clock.take(36 * HOUR, 2 * HOUR))
                .as("ready too late for the second day")
                .isEqualTo(57 * HOUR);
        assertThat(clock.take(0, 6 * HOUR)).as("longer than a day").isEqualTo(81 * HOUR);
        assertThat(clock.take(0, HOUR)).as("after that has run on").isEqualTo(105 * HOUR);
    }

    /** A shift from 22:00 to 02:00 passes midnight. */
    @Test
    void aShiftMayPassMidnight() {
        ShopClock clock = new ShopClock(new WorkingDay(LocalTime.of(22, 0), 4 * HOUR));

        assertThat(clock.take(0, 3 * HOUR)).isEqualTo(22 * HOUR);
        assertThat(clock.take(0, HOUR)).isEqualTo(25 * HOUR);
        assertThat(clock.take(0, HOUR)).isEqualTo(46 * HOUR);
        assertThat(clock.morningAfter(25 * HOUR)).isEqualTo(46 * HOUR);
    }

    @Test
    void aTimeOnTheClock() {
        ClockTime time = ClockTime.at(33 * HOUR + 61.4);

        assertThat(time).isEqualTo(new ClockTime(2, LocalTime.of(9, 1, 1)));
        assertThat(time.seconds()).isEqualTo(33 * HOUR + 61);
        assertThat(time).isGreaterThan(ClockTime.at(32 * HOUR));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ClockTime(0, LocalTime.NOON))
                .withMessageContaining("not 0");
    }

    /** A seam is taped by hand, in a zone of its own, once the bag is off the zone beside it; by hand it need not wait. */
    @ParameterizedTest
    @CsvSource({"HAND_LAY_UP, false", "VACUUM_BAG, true", "INFUSION, true"})
    void nothingIsLaidBesideABagUntilItIsOff(Process process, boolean waits) {
        LayUp lies = PlanParts.layUp(process, PlanParts.POLYESTER, 0.01);
        Zone hull = zone("hull", 1, List.of(), layer(biaxial(0.6), lies, "structure"));
        Zone seam = zone("seam", 0.1, List.of(), layer(mat(0.45), HAND, "seam"));
        List<Stage> stages = plan(workshop(20, 2), hull, seam).stages();
        Stage structure = stages.get(0);
        assertThat(stages).hasSize(2);
        assertThat(structure.gelled().orElseThrow()).isGreaterThan(structure.end());
        assertThat(stages.get(1).start()).isEqualTo(waits ? structure.gelled().orElseThrow() : structure.end());
    }

    /**
     * Gelcoat of 1 m² at 1.8 % and 20 °C: 6 min by brush and 2 min of mixing; the film gels in 800 s. Layers follow an hour
     * after that.
     */
    @Test
    void layersFollowAnHourAfterTheGelcoatHasGelled() {
        List<Stage> stages = plan(workshop(20, 2), gelcoated(1)).stages();

        double work = 0.1 * HOUR / 2;
        double gelled = 8 * HOUR + 120 + 800;
        assertThat(stages.get(0).start()).isEqualTo(ClockTime.at(8 * HOUR));
        assertThat(stages.get(0).end()).isEqualTo(ClockTime.at(8 * HOUR + 120 + work));
        assertThat(stages.get(0).gelled()).contains(ClockTime.at(gelled));
        assertThat(stages.get(1).start()).isEqualTo(ClockTime.at(gelled + HOUR));
        assertThat(stages.get(1).bond().orElseThrow().verdict()).isEqualTo(Bond.Verdict.KEPT);
        assertThat(stages.get(1).bond().orElseThrow().gap())
                .isCloseTo(gelled + HOUR - (8 * HOUR + 120 + work), within(1e-6));
    }

    /** A stage that is parted for its thickness waits three hours, as test plates do. */
    @Test
    void partsOfAThickLaminateAreThreeHoursApart() {
        List<Stage> stages =
                plan(workshop(20, 1), zone("z", 0.2, List.of(), mats(7))).stages();

        assertThat(stages).hasSize(2);
        assertThat(stages.get(1).start().seconds() - stages.get(0).end().seconds())
                .isCloseTo(3 * HOUR, within(1.0));
    }

    /** Days of two hours: the second coat on the next morning is still within 24 h, a third day is not. */
    @Test
    void theBondIsToldWhereTheClockLetsItSlip() {
        Workshop slow = workshop(20, 1);
        Workshop hours = slow.withShopFloor(slow.shopFloor().with(new WorkingDay(LocalTime.of(8, 0), HOUR)));

        List<Stage> stages = plan(
                        hours,
                        zone("a", 4, List.of(gelcoat(1)), layer(mat(0.45), HAND, "first")),
                        zone("b", 4, List.of(), layer(mat(0.45), HAND, "before")),
                        zone("c", 4, List.of(gelcoat(1)), layer(mat(0.45), HAND, "last")))
                .stages();

        Stage last = stages.get(stages.size() - 1);
        assertThat(last.name()).isEqualTo("last");
        assertThat(last.bond().orElseThrow().verdict()).isEqualTo(Bond.Verdict.PREPARE);
        assertThat(last.bond().orElseThrow().gap()).isGreaterThan(24 * HOUR);
        assertThat(JobSheet.of(plan(hours, gelcoated(1)))
                        .pages()
                        .get(0)
                        .steps()
                        .get(0)
                        .action())
                .isEqualTo(JobSheet.Action.MIX);
    }

    /** Of the zones that a stage is laid on the worst decides, whichever comes first. */
    @Test
    void theWorstOfItsZonesIsTheBondOfAStage() {
        Resin wax = TestMaterials.waxed(PlanParts.POLYESTER);
        Layer waxed = layer(mat(0.3), PlanParts.layUp(Process.HAND_LAY_UP, wax, 0.02), "waxed");
        Zone one = zone("one", 0.2, List.of(), waxed, layer(mat(0.3), HAND, "over"));
        Zone other = zone("other", 0.2, List.of(), layer(mat(0.3), HAND, "plain"), layer(mat(0.3), HAND, "over"));

        for (MixPlan plan : List.of(plan(workshop(20, 1), one, other), plan(workshop(20, 1), other, one))) {
            Bond bond = plan.stages().get(2).bond().orElseThrow();
            assertThat(bond.verdict()).isEqualTo(Bond.Verdict.PREPARE);
            assertThat(bond.onto()).isEqualTo(wax.id());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "polyester, 23 , KEPT",
        "polyester, 25 , LATE",
        "polyester, 121, PREPARE",
        "gelcoat  , 23 , KEPT",
        "gelcoat  , 25 , PREPARE",
        "epoxy    , 11 , KEPT",
        "epoxy    , 13 , LATE",
        "epoxy    , 25 , PREPARE",
        "waxed    , 1  , PREPARE",
    })
    void windowsOfBonding(String name, double hours, Bond.Verdict verdict) {
        Resin under = under(name);

        Bond bond = BondWindow.of(under, TestMaterials.POLYESTER).judge(under, hours * HOUR);

        assertThat(bond.verdict()).isEqualTo(verdict);
        assertThat(bond.onto()).isEqualTo(under.id());
        assertThat(bond.gap()).isEqualTo(hours * HOUR);
        assertThat(bond.most().isEmpty()).isEqualTo(name.equals("waxed"));
        assertThat(bond.text()).contains(under.id());
        assertThat(bond.source()).isNotBlank();
    }

    /** Only what was read in print says so: five days, and wax. */
    @Test
    void theWindowThatDecidesGivesTheSource() {
        Resin polyester = TestMaterials.POLYESTER;
        BondWindow window = BondWindow.of(polyester, polyester);

        assertThat(window.judge(polyester, HOUR).status()).isEqualTo(Status.MEMORY);
        assertThat(window.judge(polyester, 200 * HOUR).status()).isEqualTo(Status.PRINTED);
        assertThat(window.judge(polyester, 200 * HOUR).source()).contains("up to 5 days");
    }

    @Test
    void paintWantsAnAbradedSurface() {
        Resin polyester = TestMaterials.POLYESTER;

        Bond bond = BondWindow.of(polyester, TestMaterials.PAINT).judge(polyester, HOUR);

        assertThat(bond.verdict()).isEqualTo(Bond.Verdict.PREPARE);
        assertThat(BondWindow.of(TestMaterials.PAINT, TestMaterials.PAINT)
                        .judge(TestMaterials.PAINT, HOUR)
                        .verdict())
                .as("a second coat of paint")
                .isEqualTo(Bond.Verdict.KEPT);
    }

    private static Resin under(String name) {
        return switch (name) {
            case "gelcoat" -> TestMaterials.GELCOAT;
            case "epoxy" -> TestMaterials.EPOXY;
            case "waxed" -> TestMaterials.waxed(TestMaterials.POLYESTER);
            default -> TestMaterials.POLYESTER;
        };
    }

    private static Zone gelcoated(double area) {
        return zone("z", area, List.of(gelcoat(1)), layer(mat(0.45), HAND, ""));
    }

    private static Layer[] mats(int count) {
        return Collections.nCopies(count, layer(mat(0.45), HAND, "")).toArray(Layer[]::new);
    }

    private static MixPlan plan(Workshop workshop, Zone... zones) {
        return PlanParts.plan(Part.of("p", List.of(zones)), workshop);
    }
}
