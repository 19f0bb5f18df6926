package laminate.plan.infusion;

import static laminate.plan.infusion.Plans.WORKSHOP;
import static laminate.plan.infusion.Plans.all;
import static laminate.plan.infusion.Plans.given;
import static laminate.plan.infusion.Plans.infused;
import static laminate.plan.infusion.Plans.metre;
import static laminate.plan.infusion.Plans.preform;
import static laminate.plan.infusion.Plans.roving;
import static laminate.plan.infusion.Plans.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.Part;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.Preform;
import laminate.part.infusion.Segment;
import laminate.plan.infusion.ResinBalance.Place;
import laminate.process.Loss;
import laminate.process.Workshop;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.FlowSegment;
import laminate.process.flow.Hose;
import laminate.process.flow.RisingViscosity;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an infusion takes into account: areas, margins, the time of the mesh, the hose by its width. */
class InfusionDetailsTest {
    private static final double EXACT = 1e-12;
    private static final FlowMesh MESH = new FlowMesh(0.001, 3e-9, 0.85);
    private static final Preform UNDER_MESH = preform(1e-10).withPorosity(0.5).withThroughPermeability(1e-12);

    /** The case of 817.518 s at constant viscosity. */
    @Test
    void theMeshTooFillsLaterAsTheResinThickens() {
        InfusionPlan plan = Plans.with(metre(), UNDER_MESH).withMesh(MESH).withViscosity(Plans.rising(0.2, 2000));
        Fill fill = infused(plan, given(0.004)).fill();
        assertThat(fill.meshTime().orElseThrow()).isCloseTo(-2000 * Math.log(1 - 817.51814 / 2000), within(1e-3));
        assertThat(fill.throughTime().orElseThrow()).isCloseTo(-2000 * Math.log(1 - 8.4210526 / 2000), within(1e-6));
    }

    /** The lag there is 129 mm. */
    @ParameterizedTest
    @CsvSource({"0.128, false", "0.130, true"})
    void theTimeOfTheMeshIsThatOfAWayBeyondTheLag(double length, boolean known) {
        InfusionPlan plan = Plans.with(Plans.with(metre(), UNDER_MESH), InfusionPath.line(length))
                .withMesh(MESH);
        Infusion infusion = infused(plan.withViscosity(Plans.rising(0.2, 1e6)), given(0.004));
        assertThat(infusion.fill().meshTime().isPresent()).isEqualTo(known);
        assertThat(infusion.cautions().stream().anyMatch(each -> each.text().startsWith("The lag is longer")))
                .isNotEqualTo(known);
    }

    @Test
    void aBagThatGivesWayHasNoTimeOfTheMesh() {
        Preform soft = Plans.with(UNDER_MESH, new BedCompaction(0.07, OptionalDouble.empty()));
        Fill fill = infused(Plans.with(metre(), soft).withMesh(MESH), roving()).fill();
        assertThat(fill.meshTime()).isEmpty();
        assertThat(fill.lag()).isPresent();
    }

    @Test
    void theUsualLeastPressureIsTwoKilopascals() {
        double usual = soft(OptionalDouble.empty());
        assertThat(usual).isEqualTo(soft(OptionalDouble.of(2000)));
        assertThat(usual).isLessThan(soft(OptionalDouble.of(10000)));
    }

    private static double soft(OptionalDouble leastPressure) {
        Preform bed = Plans.with(preform(1e-10), new BedCompaction(0.07, leastPressure));
        return infused(Plans.with(metre(), bed), roving()).fill().time().orElseThrow();
    }

    /** A square metre over half a metre of flow is fed along two metres. */
    @Test
    void theHoseServesTheWidthOfTheFeed() {
        InfusionPlan plan = Plans.with(metre(), InfusionPath.line(0.5)).withLines(Plans.hose(0.008, 5));
        double section = 2 * 0.6 / 2560 / 0.5;
        double resistance = 128 * 5 / (Math.PI * Math.pow(0.008, 4)) * section;
        double delay = 0.5 * 0.2 / 95000 * resistance * 0.5;
        assertThat(infused(plan, roving()).hose().orElseThrow().delay()).isCloseTo(delay, within(1e-6 * delay));
    }

    @Test
    void theHoseServesTheMeshToo() {
        InfusionPlan plan = Plans.with(metre(), UNDER_MESH).withMesh(MESH).withLines(Plans.hose(0.008, 5));
        double thickness = 0.6 / 2560 / 0.5;
        double resistance = 128 * 5 / (Math.PI * Math.pow(0.008, 4)) * (0.001 + thickness);
        double porosity = (0.001 * 0.85 + thickness * 0.5) / (0.001 + thickness);
        double delay = porosity * 0.2 / 95000 * resistance;
        assertThat(infused(plan, roving()).hose().orElseThrow().delay()).isCloseTo(delay, within(1e-6 * delay));
    }

    @Test
    void aSkinLaidByHandIsNotFilled() {
        FlowFigures figures = infused(metre(), TestParts.hand(TestMaterials.mat(0.225)), roving())
                .figures();
        assertThat(figures.thickness().value()).isCloseTo(0.6 / 2560 / 0.5, within(EXACT));
        assertThat(figures.porosity().value()).isCloseTo(0.5, within(EXACT));
    }

    @Test
    void pliesGivenDirectlyAreNoAffairOfAPartWithInfusedLayers() {
        Part part = Part.of("hatch", List.of(zone("strip", 1, given(0.004)), zone("lid", 1, roving())));
        assertThat(all(WORKSHOP, part.withInfusion(metre())).infusions().get(0).zones())
                .containsExactly("lid");
    }

    @Test
    void aPartFillsEveryZoneAsOftenAsItHasIt() {
        InfusionPlan plan = metre().withMesh(MESH);
        double one = 1040 * 0.001 * 0.85 * (0.5 + 2 * 0.04);
        PartInfusion whole = all(
                WORKSHOP, Part.of("hatch", List.of(trimmed(Optional.empty()))).withInfusion(plan));
        assertThat(whole.infusions().get(0).count()).isEqualTo(1);
        assertThat(whole.infusions().get(0).held().mesh().value()).isCloseTo(3 * one, within(EXACT));
        PartInfusion each = all(WORKSHOP, Part.of("hatch", List.of(trimmed(Optional.of(plan)))));
        assertThat(each.infusions().get(0).count()).isEqualTo(3);
        assertThat(each.infusions().get(0).held().mesh().value()).isCloseTo(one, within(EXACT));
        for (PartInfusion either : List.of(whole, each)) {
            assertThat(either.balances().get(0).at(Place.MESH).planned()).isCloseTo(3 * one, within(EXACT));
        }
    }

    /** Half a square metre with a margin of 2 m by 40 mm, three times. */
    private static Zone trimmed(Optional<InfusionPlan> plan) {
        Zone plain = zone("lid", 0.5, roving());
        Zone zone = new Zone(
                "lid",
                0.5,
                3,
                List.of(),
                plain.layers(),
                Optional.of(new Trim(2, 0.04)),
                plain.contents(),
                plain.measured());
        return plan.map(zone::withInfusion).orElse(zone);
    }

    /** Laps and margins count in the pot as in the estimate; the mixes hold all that the plan mixes. */
    @Test
    void whatThePlanDoesNotStateIsAsInTheEstimate() {
        Workshop workshop = TestParts.withLoss(0.04, Loss.LAPS, Loss.RESIN).withTemperature(293.15);
        Part part = Part.of("hatch", List.of(trimmed(Optional.empty())))
                .withInfusion(Plans.with(metre(), InfusionPath.line(0.3)).withMesh(MESH));
        PartInfusion infusion = all(workshop, part);
        ResinBalance balance = infusion.balances().get(0);
        ResinBalance.Share pot = balance.at(Place.CATCH_POT);
        assertThat(pot.planned()).isCloseTo(pot.estimated(), within(EXACT));
        assertThat(infusion.infusions().get(0).buckets().orElseThrow().mass())
                .isCloseTo(balance.planned(), within(1e-9 * balance.planned()));
    }

    @Test
    void aSpiralWithoutAHoseLeavesTheHoseEmpty() {
        FeedLines spiral = new FeedLines(Optional.empty(), Optional.of(new Hose(0.01, 1)), OptionalDouble.empty());
        HeldResin held = infused(metre().withLines(spiral), roving()).held();
        assertThat(held.hose().value()).isZero();
        assertThat(held.lines()).isCloseTo(1040 * Math.PI / 4 * 1e-4, within(EXACT));
    }

    /** A ring grows by its area; a stretch of 80 % porosity takes more than one of 50 %. */
    @Test
    void theHoseDrawsWhatTheFrontHasWetted() {
        InfusionPath centre = InfusionPath.centre(0.02, 0.3);
        assertThat(wetted(Plans.with(metre(), centre)))
                .isCloseTo((0.17 * 0.17 - 4e-4) / (0.32 * 0.32 - 4e-4), within(1e-9));
        InfusionPath rim = InfusionPath.rim(0.4, 0.3);
        assertThat(wetted(Plans.with(metre(), rim))).isCloseTo((0.16 - 0.25 * 0.25) / (0.16 - 0.01), within(1e-9));
        Preform bed = Plans.with(
                preform(1e-10),
                new Segment(0.2, OptionalDouble.empty(), OptionalDouble.of(0.8)),
                new Segment(0.8, OptionalDouble.empty(), OptionalDouble.of(0.5)));
        assertThat(wetted(Plans.with(metre(), bed))).isCloseTo((0.16 + 0.15) / (0.16 + 0.4), within(1e-9));
    }

    /** Share of the bed that is drawn with the front half way. */
    private static double wetted(InfusionPlan plan) {
        List<FlowSegment> way = plan.preform().segments().isEmpty()
                ? List.of(new FlowSegment(plan.path().flowLength(), 1e-10, 0.5))
                : plan.preform().segments().stream()
                        .map(each -> new FlowSegment(
                                each.length(), 1e-10, each.porosity().orElseThrow()))
                        .toList();
        FlowFigures figures = infused(plan, roving()).figures();
        FlowBed bed = new FlowBed(
                way, OptionalDouble.empty(), 0.001, Optional.empty(), figures.permeability(), figures.porosity());
        FlowModel model = new FlowModel(plan, bed, RisingViscosity.constant(0.2), 1040, 1);
        var filling = model.filling(1);
        double half = filling.timeAt(filling.length() / 2).orElseThrow();
        Drawn drawn = new Drawn(model, filling, 0.25, 2, 0.5);
        assertThat(drawn.applyAsDouble(0)).isCloseTo(0.25, within(1e-9));
        assertThat(drawn.applyAsDouble(filling.fillTime().orElseThrow())).isEqualTo(2.75);
        return (drawn.applyAsDouble(half) - 0.25) / 2;
    }
}
