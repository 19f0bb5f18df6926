package laminate.plan;

import static laminate.plan.PlanParts.INFUSED;
import static laminate.plan.PlanParts.layer;
import static laminate.plan.PlanParts.zone;
import static laminate.testing.TestMaterials.biaxial;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.part.Part;
import laminate.process.Workshop;
import org.junit.jupiter.api.Test;

/** A plan of mixes goes by the flow of its infusions where it is handed over. */
class InflowTest {
    private static final Workshop TWENTY = PlanParts.workshop(20, 2);

    /** Drawn with the square root of time, as a straight front runs: full after 1600 s. */
    private static Inflow slowing(int count, String... zones) {
        List<Double> times = new ArrayList<>();
        for (int share = 1; share <= 100; share++) {
            times.add(1600 * Math.pow(share / 100.0, 2));
        }
        return new Inflow(List.of(zones), count, times);
    }

    private static Stage stage(Part part, Inflow... inflows) {
        PartEstimate estimate = new Estimator(TWENTY).estimate(part);
        List<Stage> stages =
                new MixPlanner(TWENTY).plan(estimate, List.of(inflows)).stages();
        return stages.get(stages.size() - 1);
    }

    private static Part plate(double area) {
        return Part.of("p", List.of(zone("plate", area, List.of(), layer(biaxial(0.6), INFUSED, ""))));
    }

    @Test
    void theFlowTellsTheTimeAndNotTheLabour() {
        Stage stage = stage(plate(4), slowing(1, "plate"));

        InfusingTime infusing = stage.infusing().orElseThrow();
        assertThat(infusing.planned()).isEqualTo(1600);
        assertThat(infusing.byLabour()).isZero();
        assertThat(infusing.plannedZones()).containsExactly("plate");
        assertThat(stage.drawn().orElseThrow().workTime()).isEqualTo(1600);
        assertThat(stage.wetTime())
                .as("the first mix is stirred, then it is drawn in")
                .isEqualTo(120 + 1600.0);
    }

    @Test
    void withoutAPlanTheLabourTellsIt() {
        InfusingTime infusing = stage(plate(4)).infusing().orElseThrow();

        assertThat(infusing.planned()).isZero();
        assertThat(infusing.byLabour()).isCloseTo(3600, within(1e-9));
        assertThat(infusing.time()).isCloseTo(3600, within(1e-9));
    }

    /** Mix i of n is drawn from 1600 ((i − 1)/n)² s to 1600 (i/n)² s. */
    @Test
    void aMixLastsAsLongAsItsShareIsDrawn() {
        List<Mix> mixes = stage(plate(12), slowing(1, "plate")).mixes();

        int n = mixes.size();
        assertThat(n).isGreaterThan(2);
        for (int i = 0; i < n; i++) {
            double expected = 1600 * (Math.pow((i + 1.0) / n, 2) - Math.pow((double) i / n, 2));
            assertThat(mixes.get(i).workTime()).isCloseTo(expected, within(0.2));
        }
        assertThat(mixes.stream().mapToDouble(Mix::workTime).sum()).isCloseTo(1600, within(1e-9));
    }

    /** Evenly drawn, three mixes would each be used up in time; the last of them is drawn too long. */
    @Test
    void theMixThatLastsLongestHasToFit() {
        for (Mix mix : stage(plate(12), slowing(1, "plate")).mixes()) {
            assertThat(mix.workTime()).isLessThanOrEqualTo(mix.usableTime().orElseThrow());
        }
        Inflow late = new Inflow(List.of("plate"), 1, List.of(1.0, 2.0, 3.0, 3000.0));
        StageResin drawn = stage(plate(4), late).drawn().orElseThrow();
        assertThat(drawn.mixes().size())
                .as("the last quarter alone takes 2997 s")
                .isGreaterThan(stage(plate(4), new Inflow(List.of("plate"), 1, List.of(3000.0)))
                        .mixes()
                        .size());
    }

    /** Half of the resin in 60 s, where a mix is stirred for 120 s: those of the first half have to be ready. */
    @Test
    void whatIsDrawnSoonerThanItIsStirredHasToBeReady() {
        Stage quick = stage(plate(12), new Inflow(List.of("plate"), 1, List.of(60.0, 3600.0)));
        Stage slow = stage(plate(12), new Inflow(List.of("plate"), 1, List.of(1800.0, 3600.0)));

        int half = (quick.mixes().size() + 1) / 2;
        assertThat(quick.cautions())
                .anySatisfy(caution -> assertThat(caution.text())
                        .contains("stirred in 2.0 min: have " + half + " ready before the feed is opened"));
        assertThat(slow.cautions()).noneMatch(caution -> caution.text().contains("before the feed is opened"));
    }

    @Test
    void infusionsOfOneKindFollowEachOther() {
        assertThat(stage(plate(4), slowing(3, "plate")).infusing().orElseThrow().planned())
                .isEqualTo(4800);
    }

    @Test
    void whatNoPlanFillsTakesItsShareOfTheLabour() {
        Part part = Part.of(
                "p",
                List.of(
                        zone("plate", 3, List.of(), layer(biaxial(0.6), INFUSED, "")),
                        zone("rim", 1, List.of(), layer(biaxial(0.6), INFUSED, ""))));

        InfusingTime infusing = stage(part, slowing(1, "plate")).infusing().orElseThrow();

        assertThat(infusing.planned()).isEqualTo(1600);
        assertThat(infusing.byLabour()).isCloseTo(900, within(1e-9));
        assertThat(infusing.plannedZones()).containsExactly("plate");
    }

    @Test
    void whatNeverFillsIsToldAndTakesTheLabour() {
        Stage stage = stage(plate(4), new Inflow(List.of("plate"), 1, List.of()));

        assertThat(stage.infusing().orElseThrow().neverFull()).containsExactly("plate");
        assertThat(stage.infusing().orElseThrow().byLabour()).isCloseTo(3600, within(1e-9));
        assertThat(stage.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).startsWith("The resin never fills plate"));
    }

    @Test
    void aTimeThatRunsBackIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Inflow(List.of("plate"), 1, List.of(2.0, 1.0)))
                .withMessageContaining("[2.0, 1.0]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Inflow(List.of("plate"), 1, List.of(Double.POSITIVE_INFINITY)))
                .withMessageContaining("Infinity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Inflow(List.of(), 1, List.of(1.0)))
                .withMessageContaining("[]");
    }
}
