package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The instances C1 to C7 of E. Hopper, B. C. H. Turton, An empirical investigation of meta-heuristic and heuristic
 * algorithms for a 2D packing problem, European Journal of Operational Research 128 (2001) 34-57, whose optimum is known
 * because the pieces were cut out of a rectangle. No method is known that reaches it for all; a mean gap of 5 % is asked
 * for here.
 */
class StripPackingValidationTest {
    private static final double MEAN_GAP = 0.05;
    private static final double SECONDS = 1;

    @ParameterizedTest
    @EnumSource
    void theInstancesFillTheirStrip(Turn turn) {
        List<StripInstance> all = StripInstance.all(turn);
        assertThat(all).hasSize(14);
        for (StripInstance instance : all) {
            assertThat(instance.pieces().stream().mapToDouble(Piece::area).sum())
                    .as(instance.name())
                    .isEqualTo(instance.width() * instance.optimum());
        }
    }

    @Test
    void theMeanGapWithQuarterTurnsIsWithinFivePercentAtASecondOfOneCoreEach() {
        double sum = 0;
        for (StripInstance instance : StripInstance.all(Turn.QUARTER)) {
            long before = processorTime();
            RollPlan plan = RollPlanner.of(instance.width()).plan(instance.pieces());
            assertThat((processorTime() - before) * 1e-9).as(instance.name()).isLessThan(SECONDS);
            assertThat(plan.lowerBound()).isCloseTo(instance.optimum(), within(1e-9 * instance.optimum()));
            sum += gap(instance, plan);
        }
        assertThat(sum / StripInstance.all(Turn.QUARTER).size()).isBetween(0.0, MEAN_GAP);
    }

    /** The optimum of the instances is not one of straight cuts; how little these cost is shown all the same. */
    @ParameterizedTest
    @CsvSource({"NONE, FREE", "NONE, ACROSS", "QUARTER, ACROSS"})
    void halfTheEffortIsEnoughForOtherWaysOfCutting(Turn turn, Cuts cuts) {
        double mean = StripInstance.all(turn).stream()
                .mapToDouble(instance -> gap(
                        instance,
                        RollPlanner.of(instance.width())
                                .withCuts(cuts)
                                .withSteps(RollPlanner.STEPS / 2)
                                .plan(instance.pieces())))
                .average()
                .orElseThrow();
        assertThat(mean).isBetween(0.0, MEAN_GAP);
    }

    private static double gap(StripInstance instance, RollPlan plan) {
        Soundness.check(plan, instance.pieces());
        return plan.length() / instance.optimum() - 1;
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
