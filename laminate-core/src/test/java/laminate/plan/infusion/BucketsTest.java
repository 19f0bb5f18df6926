package laminate.plan.infusion;

import static laminate.plan.infusion.Plans.LAY_UP;
import static laminate.plan.infusion.Plans.infused;
import static laminate.plan.infusion.Plans.metre;
import static laminate.plan.infusion.Plans.roving;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.plan.infusion.Buckets.Bucket;
import laminate.process.Mixing;
import laminate.process.ShopFloor;
import laminate.process.Workshop;
import laminate.process.cure.MassEffect;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.Hose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The mixes that the hose draws from. */
class BucketsTest {
    private static final double EXACT = 1e-9;

    @Test
    void theMixesHoldAllThatIsDrawn() {
        InfusionPlan plan = Plans.with(metre(), InfusionPath.line(0.3));
        PartInfusion part = Plans.all(
                Plans.WORKSHOP,
                Part.of("hatch", List.of(Plans.zone("lid", 1, roving(), roving())))
                        .withInfusion(plan));
        Buckets buckets = part.infusions().get(0).buckets().orElseThrow();
        double planned = part.balances().get(0).planned();
        assertThat(buckets.mass()).isCloseTo(planned, within(EXACT * planned));
    }

    /** All of 1 kg that is drawn at an even rate in an hour, with 42 min less 2 min to use 100 g of it in. */
    @Test
    void aMixLastsAsLongAsItsPot() {
        BucketPlan plan = new BucketPlan(LAY_UP, 3600, Mixing.USUAL);
        Buckets buckets = plan.of(time -> Math.min(1, time / 3600), 3600).orElseThrow();
        for (Bucket mix : buckets.mixes()) {
            double usable = 0.7 * 3600 * Math.pow(mix.mass() / 0.1, Math.log(0.7) / Math.log(10)) - 120;
            assertThat(mix.to() - mix.from()).isLessThanOrEqualTo(usable * (1 + 1e-6));
            assertThat(mix.mass()).isCloseTo((mix.to() - mix.from()) / 3600, within(1e-6));
        }
        assertThat(buckets.mixes()).hasSize(2);
        assertThat(buckets.mass()).isCloseTo(1, within(EXACT));
    }

    /** 1 kg gels in 70 % of an hour; 70 % of that less 2 min to mix are 1644 s. */
    @ParameterizedTest
    @CsvSource({"1640, 1", "1648, 2"})
    void aKilogramIsDrawnWithinTheUsableTimeOfItsPot(double seconds, int mixes) {
        BucketPlan plan = new BucketPlan(LAY_UP, 3600, Mixing.USUAL);
        Buckets buckets = plan.of(time -> Math.min(1, time / seconds), seconds).orElseThrow();
        assertThat(buckets.mixes()).hasSize(mixes);
    }

    @Test
    void aLargestMixOfTheWorkshopHolds() {
        Mixing usual = Mixing.USUAL;
        Mixing small = new Mixing(
                usual.usableShare(),
                usual.resinStep(),
                usual.agentStep(),
                usual.pumpStroke(),
                OptionalDouble.of(0.3),
                usual.mixingTime());
        Buckets buckets = new BucketPlan(LAY_UP, 3600, small).of(time -> 1, 600).orElseThrow();
        assertThat(buckets.largest()).isEqualTo(0.3);
        assertThat(buckets.mixes()).hasSize(4);
        assertThat(buckets.mixes()).allSatisfy(mix -> assertThat(mix.mass()).isCloseTo(0.25, within(EXACT)));
        Workshop workshop = Plans.WORKSHOP.withShopFloor(ShopFloor.USUAL.with(small));
        InfusionPlan plan = Plans.with(metre(), InfusionPath.line(0.3));
        assertThat(infused(workshop, plan, roving()).buckets().orElseThrow().largest())
                .isEqualTo(0.3);
    }

    @Test
    void resinThatIsGoneWhileItIsStirredMakesNoPlan() {
        assertThat(new BucketPlan(LAY_UP, 120, Mixing.USUAL).of(time -> Math.min(1, time / 3600), 3600))
                .isEmpty();
    }

    static Stream<Arguments> plans() {
        return IntStream.range(0, 60).mapToObj(i -> new Random(20260801 + i)).map(Arguments::any);
    }

    private record Arguments(InfusionPlan plan, Layer[] layers) {
        static Arguments any(Random random) {
            InfusionPlan plan = Plans.with(metre(), InfusionPath.line(0.05 + random.nextDouble()));
            plan = random.nextBoolean() ? plan : plan.withMesh(new FlowMesh(0.001, 3e-9, 0.85));
            Optional<Hose> spiral = Optional.of(new Hose(0.01, 0.1 + random.nextDouble()));
            plan = random.nextBoolean()
                    ? plan
                    : plan.withLines(new FeedLines(Optional.empty(), spiral, OptionalDouble.of(0.1)));
            Layer[] layers = new Layer[1 + random.nextInt(6)];
            Arrays.fill(layers, roving());
            return new Arguments(plan, layers);
        }
    }

    @ParameterizedTest
    @MethodSource("plans")
    void mixesFollowOneAnotherAndNoneIsTooLarge(Arguments any) {
        Infusion infusion = infused(any.plan(), any.layers());
        Buckets buckets = infusion.buckets().orElseThrow();
        double time = 0;
        for (Bucket mix : buckets.mixes()) {
            assertThat(mix.from()).isEqualTo(time);
            assertThat(mix.to()).isGreaterThanOrEqualTo(mix.from());
            assertThat(mix.mass()).isBetween(0.0, buckets.largest() * (1 + EXACT));
            time = mix.to();
        }
        assertThat(time).isLessThanOrEqualTo(infusion.fill().time().orElseThrow() * (1 + EXACT));
        assertThat(buckets.largest()).isEqualTo(MassEffect.STYRENIC.largestMass());
    }
}
