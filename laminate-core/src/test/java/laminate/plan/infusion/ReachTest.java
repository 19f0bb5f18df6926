package laminate.plan.infusion;

import static laminate.plan.infusion.Plans.infused;
import static laminate.plan.infusion.Plans.metre;
import static laminate.plan.infusion.Plans.preform;
import static laminate.plan.infusion.Plans.roving;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.Preform;
import laminate.part.infusion.ResinViscosity;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.FrontPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How far the resin gets, and the rules that a filling keeps whatever the plan. */
class ReachTest {
    private static final double CLOSE = 1e-6;

    /** √(1800/5263) m, twice that between lines; √0.6 of it with six tenths of the permeability. */
    @Test
    void feedLinesLieTwiceTheReachApart() {
        Reach reach = infused(metre(), roving()).reach().orElseThrow();
        double length = Math.sqrt(1800 / 5263.1579);
        assertThat(reach.within()).isCloseTo(1800, within(CLOSE));
        assertThat(reach.greatest()).isCloseTo(length, within(CLOSE));
        assertThat(reach.spacing()).isCloseTo(2 * length, within(CLOSE));
        assertThat(reach.sureSpacing()).isCloseTo(2 * length * Math.sqrt(0.6), within(CLOSE));
    }

    @Test
    void portsLieOnAGridWhoseCornersAreReached() {
        Infusion infusion = infused(Plans.with(metre(), InfusionPath.centre(0.01, 0.3)), roving());
        Reach reach = infusion.reach().orElseThrow();
        assertThat(reach.spacing()).isCloseTo(Math.sqrt(2) * (0.01 + reach.greatest()), within(CLOSE));
    }

    @Test
    void aRimIsSolvedForAtTheSameShape() {
        InfusionPlan plan = Plans.with(metre(), InfusionPath.rim(0.5, 0.5));
        Reach reach = infused(plan, roving()).reach().orElseThrow();
        double radius = Math.sqrt(1800 / (0.5 * 0.2 / (4 * 1e-10 * 95000)));
        assertThat(reach.greatest()).isCloseTo(radius, within(CLOSE));
        assertThat(reach.spacing()).isCloseTo(2 * radius, within(CLOSE));
    }

    static Stream<InfusionPlan> plans() {
        return IntStream.range(0, 60).mapToObj(i -> plan(new Random(20260701 + i)));
    }

    private static InfusionPlan plan(Random random) {
        Preform bed = preform(Math.pow(10, -11 + 3 * random.nextDouble()));
        FeedKind feed = FeedKind.values()[random.nextInt(3)];
        double length = 0.1 + random.nextDouble();
        if (feed == FeedKind.CENTRE && random.nextBoolean()) {
            bed = Plans.withAcross(bed, Math.pow(10, -11 + 3 * random.nextDouble()));
            length += 1;
        }
        if (random.nextInt(3) == 0) {
            bed = Plans.with(bed, new BedCompaction(0.02 + 0.2 * random.nextDouble(), OptionalDouble.empty()));
        }
        double radius = feed == FeedKind.RIM ? length * (1 + random.nextDouble()) : 0.005 + 0.02 * random.nextDouble();
        InfusionPath path = new InfusionPath(
                feed,
                length,
                feed == FeedKind.LINE ? OptionalDouble.empty() : OptionalDouble.of(radius),
                bed.crossPermeability().isPresent() || random.nextBoolean() ? 0 : (random.nextDouble() - 0.5) * length);
        InfusionPlan plan = InfusionPlan.of(path, 50000 + 45000 * random.nextDouble(), bed)
                .withViscosity(
                        random.nextBoolean()
                                ? ResinViscosity.constant(0.1 + 0.3 * random.nextDouble())
                                : Plans.rising(0.1, 500 + 5000 * random.nextDouble()));
        plan = random.nextBoolean() ? plan : plan.withMesh(new FlowMesh(0.001, 3e-9, 0.85));
        return random.nextBoolean() ? plan : plan.withLines(Plans.hose(0.008 + 0.004 * random.nextDouble(), 2));
    }

    /** A flow as long as the reach takes the usable time. */
    @ParameterizedTest
    @MethodSource("plans")
    void whatIsReachedIsFullAtTheTime(InfusionPlan plan) {
        Infusion infusion = infused(plan, roving());
        Reach reach = infusion.reach().orElseThrow();
        assertThat(reach.sureSpacing()).isLessThanOrEqualTo(reach.spacing());
        double scale = reach.greatest() / plan.path().flowLength();
        boolean grows = plan.path().feed() == FeedKind.RIM;
        InfusionPath reached = new InfusionPath(
                plan.path().feed(),
                reach.greatest(),
                radius(plan, grows ? scale : 1),
                plan.path().rise() * scale);
        if (reach.greatest() > 1e-3 && plan.lines().hose().isEmpty()) {
            double time =
                    infused(Plans.with(plan, reached), roving()).fill().time().orElse(Double.POSITIVE_INFINITY);
            assertThat(Math.min(time, 1e9)).isCloseTo(reach.within(), within(1e-4 * reach.within()));
        }
    }

    private static OptionalDouble radius(InfusionPlan plan, double scale) {
        OptionalDouble radius = plan.path().feedRadius();
        return radius.isPresent() ? OptionalDouble.of(radius.getAsDouble() * scale) : radius;
    }

    @ParameterizedTest
    @MethodSource("plans")
    void theFrontNeverTurnsBack(InfusionPlan plan) {
        Fill fill = infused(plan, roving()).fill();
        FrontPoint before = new FrontPoint(0, 0);
        for (FrontPoint point : fill.front()) {
            assertThat(point.time()).isGreaterThanOrEqualTo(before.time());
            assertThat(point.position())
                    .isBetween(before.position(), plan.path().flowLength() * (1 + 1e-9));
            before = point;
        }
        if (fill.time().isPresent()) {
            assertThat(before.position()).isEqualTo(plan.path().flowLength());
            assertThat(fill.quickest().orElseThrow()).isLessThan(fill.time().getAsDouble());
            assertThat(fill.slowest().orElse(Double.MAX_VALUE))
                    .isGreaterThan(fill.time().getAsDouble());
        }
    }

    /** Twice the pressure and half the viscosity are the same when nothing rises. */
    @ParameterizedTest
    @MethodSource("plans")
    void pressureAndViscosityCountAsTheirQuotient(InfusionPlan plan) {
        if (plan.path().rise() != 0 || plan.preform().compaction().isPresent()) {
            return;
        }
        double viscosity = plan.viscosity().atStart().orElseThrow();
        InfusionPlan twice = new InfusionPlan(
                plan.path(),
                plan.drivingPressure() / 2,
                new ResinViscosity(
                        OptionalDouble.of(viscosity / 2), plan.viscosity().riseTime()),
                plan.preform(),
                plan.mesh(),
                plan.lines(),
                plan.margin(),
                plan.leak());
        OptionalDouble time = infused(plan, roving()).fill().time();
        OptionalDouble other = infused(twice, roving()).fill().time();
        assertThat(other.isPresent()).isEqualTo(time.isPresent());
        assertThat(other.orElse(0)).isCloseTo(time.orElse(0), within(1e-9 * time.orElse(1)));
    }

    /** Without mesh the porosity and permeability in effect are those of the laminate. */
    @ParameterizedTest
    @MethodSource("plans")
    void aMeshOnlyEverHelps(InfusionPlan plan) {
        FlowFigures figures = infused(plan, roving()).figures();
        if (plan.mesh().isEmpty()) {
            assertThat(figures.effectivePermeability())
                    .isEqualTo(figures.permeability().value());
            assertThat(figures.effectivePorosity()).isEqualTo(figures.porosity().value());
        } else if (figures.permeability().value() < 3e-9) {
            assertThat(figures.effectivePermeability())
                    .isBetween(figures.permeability().value(), 3e-9);
        }
    }

    @Test
    void aLongThinHoseTakesItsShare() {
        InfusionPlan plan = metre().withLines(Plans.hose(0.008, 5));
        Infusion infusion = infused(plan, roving());
        HoseLoss hose = infusion.hose().orElseThrow();
        double without = 5263.1579;
        assertThat(infusion.fill().time().orElseThrow()).isCloseTo(without + hose.delay(), within(1e-3));
        double section = 0.6 / 2560 / 0.5;
        double inHose = 128 * 5 / (Math.PI * Math.pow(0.008, 4)) * section;
        double inBed = 0.5 / 1e-10;
        assertThat(hose.pressure()).isCloseTo(95000 * inHose / (inHose + inBed), within(1e-3));
        assertThat(hose.flow()).isCloseTo(section * 95000 / (0.2 * (inHose + inBed)), within(1e-12));
        assertThat(hose.delay()).isCloseTo(0.5 * 0.2 / 95000 * inHose, within(1e-3));
    }
}
