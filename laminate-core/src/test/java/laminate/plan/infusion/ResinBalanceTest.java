package laminate.plan.infusion;

import static laminate.plan.infusion.Plans.WORKSHOP;
import static laminate.plan.infusion.Plans.all;
import static laminate.plan.infusion.Plans.infused;
import static laminate.plan.infusion.Plans.metre;
import static laminate.plan.infusion.Plans.roving;
import static laminate.plan.infusion.Plans.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ResinUse;
import laminate.material.Figure;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPlan;
import laminate.plan.infusion.ResinBalance.Place;
import laminate.plan.infusion.ResinBalance.Share;
import laminate.process.CoreFinish;
import laminate.process.Grooves;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.Hose;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the resin of an infusion goes: nothing is lost, nothing counted twice. */
class ResinBalanceTest {
    private static final double EXACT = 1e-12;

    /** The hose, mesh and pot of the reference cases: 10 mm by 3 m, 1 mm at 80 %, at 1100 kg/m³. */
    private static final FeedLines LINES =
            new FeedLines(Optional.of(new Hose(0.010, 3)), Optional.of(new Hose(0.012, 2)), OptionalDouble.of(0.25));

    private static final FlowMesh MESH = new FlowMesh(0.001, 3e-9, 0.80);

    @Test
    void linesAndMeshAreFullAtTheDensityOfTheLiquid() {
        HeldResin held =
                infused(metre().withLines(LINES).withMesh(MESH), roving()).held();
        double density = Plans.RESIN.densityLiquid();
        assertThat(held.hose().value()).isCloseTo(0.259181 * density / 1100, within(1e-6));
        assertThat(held.spiral().value()).isCloseTo(density * Math.PI / 4 * 0.012 * 0.012 * 2, within(EXACT));
        assertThat(held.lines()).isEqualTo(held.hose().value() + held.spiral().value());
        assertThat(held.mesh().value()).isCloseTo(0.88 * density / 1100, within(1e-9));
        assertThat(held.catchPot().value()).isEqualTo(0.25);
        assertThat(held.lost())
                .isCloseTo(
                        held.lines()
                                + held.mesh().value()
                                + 0.25
                                + held.bucket().value(),
                        within(EXACT));
    }

    @Test
    void whereThePlanIsSilentTheLossesOfTheWorkshopSpeak() {
        HeldResin held = infused(metre(), roving()).held();
        assertThat(held.lines())
                .isEqualTo(WORKSHOP.loss(Process.INFUSION, Loss.LINES).value());
        assertThat(held.hose().source()).contains("losses of the workshop");
        assertThat(held.mesh().value()).isZero();
        assertThat(held.mesh().source()).contains("no flow mesh");
    }

    /** 2 by 2 mm at 20 mm, a grid: 0.418 kg/m² at 1100 kg/m³, in the part and nowhere else. */
    @Test
    void groovesAreInThePartAndCountedThere() {
        CoreLayer core = new CoreLayer(
                TestMaterials.PVC,
                0.015,
                0,
                CoreFinish.grooved(new Grooves(0.002, 0.002, 0.020, 1, 2)),
                Plans.LAY_UP,
                Optional.empty(),
                "");
        PartInfusion infusion = all(
                WORKSHOP,
                Part.of("hatch", List.of(zone("lid", 1, roving(), core, roving())))
                        .withInfusion(metre()));
        double grooves = 0.418 * Plans.RESIN.densityCured() / 1100;
        assertThat(infusion.infusions().get(0).held().grooves()).isCloseTo(grooves, within(1e-9));
        ResinBalance balance = infusion.balances().get(0);
        ResinQuantity resin = infusion.estimate().quantities().resins().get(0);
        assertThat(balance.at(Place.CORE_OPENINGS).planned()).isCloseTo(grooves, within(1e-9));
        assertThat(balance.at(Place.LAMINATE).planned()
                        + balance.at(Place.CORE_OPENINGS).planned())
                .isCloseTo(resin.inPart(), within(EXACT));
    }

    @Test
    void aPlanThatDiffersFromTheLossesSaysWhatToWriteForThemToAgree() {
        Part part = Part.of("hatch", List.of(zone("lid", 2, roving(), roving())))
                .withInfusion(metre().withLines(LINES).withMesh(MESH));
        PartInfusion first = all(WORKSHOP, part);
        assertThat(first.balances().get(0).remarks())
                .anySatisfy(text -> assertThat(text)
                        .startsWith(
                                "hoses and spiral tube: 0.480 kg by the plan, 0.259 kg by the losses of the workshop")
                        .endsWith("the estimate agrees with loss: {infusion: {lines: 0.480 kg}}"))
                .noneSatisfy(text -> assertThat(text).startsWith("flow mesh:"))
                .anySatisfy(text -> assertThat(text).startsWith("catch pot:").contains("resin: "));
        HeldResin held = first.infusions().get(0).held();
        Workshop agreeing = WORKSHOP.withLosses(Map.of(
                Process.INFUSION,
                Map.of(
                        Loss.LINES, Figure.stated(held.lines()),
                        Loss.MESH, Figure.stated(held.mesh().value() / 2),
                        Loss.RESIN,
                                Figure.stated(0.25
                                        / first.balances()
                                                .get(0)
                                                .at(Place.LAMINATE)
                                                .planned()))));
        ResinBalance agreed = all(agreeing, part).balances().get(0);
        assertThat(agreed.remarks()).isEmpty();
        assertThat(agreed.planned()).isCloseTo(agreed.estimated(), within(1e-9));
    }

    @Test
    void aPlanWithoutMeshSaysThatTheLossesCountOne() {
        PartInfusion bare = all(
                WORKSHOP, Part.of("hatch", List.of(zone("lid", 2, roving()))).withInfusion(metre()));
        assertThat(bare.balances().get(0).remarks())
                .singleElement()
                .asString()
                .startsWith("flow mesh: 0 kg by the plan, 1.76 kg by the losses")
                .endsWith("{mesh: 0 g/m²}}");
    }

    @Test
    void aResinThatNoPlanCoversStaysAsTheEstimateHasIt() {
        Part part = Part.of(
                "hatch",
                List.of(zone("lid", 1, roving()).withInfusion(metre()), zone("rim", 1, roving(TestParts.INFUSED))));
        ResinBalance other = all(WORKSHOP, part).balances().get(1);
        assertThat(other.shares())
                .allSatisfy(share -> assertThat(share.planned()).isEqualTo(share.estimated()));
        assertThat(other.at(Place.LINES).planned()).isPositive();
        assertThat(other.remarks()).isEmpty();
    }

    /** Stages of one infusion share its lines: they count to the first, and the others have none. */
    @Test
    void stagesFilledTogetherHaveOneSetOfLines() {
        Zone second = zone("rim", 1, TestParts.staged(TestMaterials.roving(0.6), Plans.LAY_UP, "bulk"));
        Part part = Part.of("hatch", List.of(zone("lid", 1, roving()), second));
        PartInfusion infusion = all(WORKSHOP, part.withInfusion(metre().withLines(LINES)));
        assertThat(infusion.balances()).hasSize(2);
        double lines = infusion.infusions().get(0).held().lines();
        assertThat(infusion.balances().get(0).at(Place.LINES).planned()).isCloseTo(lines, within(EXACT));
        assertThat(infusion.balances().get(1).at(Place.LINES).planned()).isZero();
        assertThat(infusion.balances().get(1).at(Place.CATCH_POT).planned()).isZero();
    }

    static Stream<Part> parts() {
        return IntStream.range(0, 200).mapToObj(i -> part(new Random(20260401 + i)));
    }

    private static Part part(Random random) {
        List<Zone> zones = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(4); i++) {
            zones.add(anyZone(random, "zone " + i));
        }
        Part part = TestParts.times(1 + random.nextInt(3), Part.of("part", zones));
        return random.nextBoolean()
                        || zones.stream().allMatch(zone -> zone.infusion().isEmpty())
                ? part.withInfusion(plan(random))
                : part;
    }

    private static Zone anyZone(Random random, String name) {
        List<Layer> layers = new ArrayList<>(List.of(roving()));
        if (random.nextBoolean()) {
            layers.add(new CoreLayer(
                    TestMaterials.PVC,
                    0.01,
                    0,
                    CoreFinish.of(CoreFinish.Kind.values()[random.nextInt(4)]),
                    Plans.LAY_UP,
                    Optional.empty(),
                    random.nextBoolean() ? "bulk" : ""));
        }
        if (random.nextInt(3) == 0) {
            layers.add(TestParts.staged(TestMaterials.roving(0.6), Plans.LAY_UP, "bulk"));
        }
        Zone plain = zone(name, 0.1 + random.nextDouble(), layers.toArray(Layer[]::new));
        Zone zone = new Zone(
                name,
                plain.area(),
                1 + random.nextInt(3),
                random.nextBoolean() ? List.of(TestParts.gelcoat(0.0005)) : List.of(),
                layers,
                random.nextBoolean() ? Optional.empty() : Optional.of(new Trim(2, 0.04)),
                plain.contents(),
                plain.measured());
        return random.nextBoolean() ? zone : zone.withInfusion(plan(random));
    }

    private static InfusionPlan plan(Random random) {
        InfusionPlan plan = random.nextBoolean() ? metre() : metre().withLines(LINES);
        return random.nextBoolean() ? plan : plan.withMesh(MESH);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theSharesOfTheEstimateSumToWhatItMixes(Part part) {
        Workshop workshop = TestParts.withLoss(0.04, Loss.LAPS).withTemperature(293.15);
        PartEstimate estimate = new Estimator(workshop).estimate(part);
        PartInfusion infusion = new Infuser(workshop).infuse(estimate);
        double count = part.count();
        assertThat(infusion.balances()).isNotEmpty();
        for (ResinBalance balance : infusion.balances()) {
            ResinQuantity resin = quantity(estimate, balance.use());
            double mixed = resin.mixed() / count;
            assertThat(balance.estimated()).isCloseTo(mixed, within(EXACT * mixed));
            assertThat(balance.shares()).allSatisfy(share -> {
                assertThat(share.estimated()).isGreaterThanOrEqualTo(-EXACT * mixed);
                assertThat(share.planned()).isGreaterThanOrEqualTo(-EXACT * mixed);
            });
            assertThat(balance.shares()).extracting(Share::place).containsExactly(Place.values());
        }
    }

    /** What the plans leave in lines, mesh, bucket and pot is theirs alone and once. */
    @ParameterizedTest
    @MethodSource("parts")
    void thePlannedSharesAreThoseOfTheInfusionsAndOfWhatNoPlanCovers(Part part) {
        PartInfusion infusion = all(WORKSHOP, part);
        boolean covered = infusion.infusions().stream()
                        .flatMap(each -> each.zones().stream())
                        .distinct()
                        .count()
                == part.zones().size();
        boolean oneStage = part.zones().stream()
                .allMatch(zone ->
                        zone.layers().stream().allMatch(layer -> layer.stage().isEmpty()));
        if (covered && oneStage) {
            double held = infusion.infusions().stream()
                    .mapToDouble(each -> each.held().lost() * each.count())
                    .sum();
            ResinBalance balance = infusion.balances().get(0);
            double planned = Stream.of(Place.MESH, Place.LINES, Place.BUCKET, Place.CATCH_POT)
                    .mapToDouble(place -> balance.at(place).planned())
                    .sum();
            assertThat(planned).isCloseTo(held, within(EXACT * held));
        }
    }

    private static ResinQuantity quantity(PartEstimate estimate, ResinUse use) {
        return estimate.quantities().resins().stream()
                .filter(resin -> resin.use().equals(use))
                .findFirst()
                .orElseThrow();
    }
}
