package laminate.plan.infusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import laminate.estimate.Estimator;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.infusion.InfusionPath;
import laminate.plan.Inflow;
import laminate.plan.Mix;
import laminate.plan.Stage;
import laminate.process.Process;
import laminate.testing.TestParts;
import org.junit.jupiter.api.Test;

/** One moulding has one time to infuse, whoever tells it. */
class MouldingPlanTest {

    private static MouldingPlan plan(Part part) {
        return MouldingPlan.of(new Estimator(Plans.WORKSHOP).estimate(part), Plans.WORKSHOP);
    }

    private static Part plate(Layer... layers) {
        return Part.of("plate", List.of(Plans.zone("plate", 6, layers)));
    }

    @Test
    void theStageTakesTheTimeOfItsInfusion() {
        MouldingPlan plan = plan(plate(Plans.roving(), Plans.roving()).withInfusion(Plans.metre()));

        Infusion infusion = plan.infusion().orElseThrow().infusions().get(0);
        Stage stage = plan.mixes().stages().get(0);
        double time = infusion.fill().time().orElseThrow();
        assertThat(stage.infusing().orElseThrow().time()).isEqualTo(time);
        assertThat(stage.drawn().orElseThrow().workTime()).isEqualTo(time);
        assertThat(plan.infusionsOf(stage)).containsExactly(infusion);
        assertThat(plan.jobSheet().pages()).hasSize(1);
    }

    /** Of n equal mixes the first i are drawn empty when the i-th of n shares of the resin is drawn. */
    @Test
    void mixesAreDrawnAsTheInfusionDrawsThem() {
        MouldingPlan plan = plan(plate(Plans.roving(), Plans.roving(), Plans.roving())
                .withInfusion(Plans.with(Plans.metre(), InfusionPath.line(0.8))));

        List<Double> times =
                plan.infusion().orElseThrow().infusions().get(0).inflow().times();
        List<Mix> mixes = plan.mixes().stages().get(0).mixes();
        assertThat(times.size() % mixes.size()).isZero();
        assertThat(mixes).hasSizeGreaterThan(2);
        double time = 0;
        for (int i = 0; i < mixes.size(); i++) {
            time += mixes.get(i).workTime();
            assertThat(time).isCloseTo(times.get((i + 1) * times.size() / mixes.size() - 1), within(1e-9 * time));
        }
    }

    /** The buckets of an infusion are drawn empty when their share of its resin is drawn: two ways to the same times. */
    @Test
    void bucketsAreDrawnWhenTheirShareIs() {
        Infusion infusion = plan(plate(Plans.roving(), Plans.roving(), Plans.roving(), Plans.roving())
                        .withInfusion(Plans.metre()))
                .infusion()
                .orElseThrow()
                .infusions()
                .get(0);

        List<Double> times = infusion.inflow().times();
        List<Buckets.Bucket> buckets = infusion.buckets().orElseThrow().mixes();
        assertThat(buckets).hasSizeGreaterThan(2);
        double total = infusion.buckets().orElseThrow().mass();
        double drawn = 0;
        for (Buckets.Bucket bucket : buckets.subList(0, buckets.size() - 1)) {
            drawn += bucket.mass();
            int shares = (int) Math.floor(times.size() * drawn / total);
            assertThat(bucket.to()).isBetween(times.get(shares - 1), times.get(shares));
        }
        assertThat(buckets.get(buckets.size() - 1).to()).isCloseTo(times.get(times.size() - 1), within(1e-9));
    }

    /** Every share of the resin has been drawn once the flow says so. */
    @Test
    void sharesAreDrawnInTurn() {
        Inflow inflow = Plans.infused(Plans.metre(), Plans.roving()).inflow();

        assertThat(inflow.times()).hasSize(60).isSorted();
        assertThat(inflow.zones()).containsExactly("lid");
        assertThat(inflow.count()).isEqualTo(1);
    }

    @Test
    void aPartLaidByHandNeedsNoPlanOfItsInfusion() {
        Layer byHand = Plans.roving(TestParts.layUp(Process.HAND_LAY_UP, Plans.RESIN));
        MouldingPlan plan = plan(plate(byHand).withInfusion(Plans.metre()));

        assertThat(plan.infusion()).isEmpty();
        assertThat(plan.infusionsOf(plan.mixes().stages().get(0))).isEmpty();
        assertThat(plan.mixes().stages().get(0).infusing()).isEmpty();
    }
}
