package laminate.plan.infusion;

import static laminate.plan.infusion.Plans.EPOXY;
import static laminate.plan.infusion.Plans.WORKSHOP;
import static laminate.plan.infusion.Plans.all;
import static laminate.plan.infusion.Plans.given;
import static laminate.plan.infusion.Plans.infused;
import static laminate.plan.infusion.Plans.metre;
import static laminate.plan.infusion.Plans.preform;
import static laminate.plan.infusion.Plans.roving;
import static laminate.plan.infusion.Plans.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Caution;
import laminate.material.Property;
import laminate.material.Status;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.LeakTest;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.part.infusion.ResinViscosity;
import laminate.part.infusion.Segment;
import laminate.part.infusion.StripTest;
import laminate.plan.infusion.GelMargin.Verdict;
import laminate.process.Dose;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.FrontPoint;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an infusion says, and where it has it from. */
class InfuserTest {
    private static final LayUp EPOXY_LAY_UP =
            new LayUp(Process.INFUSION, EPOXY, Dose.usual(EPOXY, TestMaterials.AMINE));

    /** Half a metre of 1e-10 m²: 22 min. */
    private static final InfusionPlan HALF = Plans.with(metre(), InfusionPath.line(0.5));

    @Test
    void everyFigureSaysWhereItComesFrom() {
        FlowFigures figures = infused(metre(), roving()).figures();
        assertThat(figures.laminate()).isEqualTo("lid");
        assertThat(figures.porosity().value()).isCloseTo(0.5, within(1e-12));
        assertThat(figures.porosity().status()).isEqualTo(Status.USER);
        assertThat(figures.thickness().value()).isCloseTo(0.6 / 2560 / 0.5, within(1e-12));
        assertThat(figures.viscosity())
                .isEqualTo(Plans.RESIN.figures().find(Property.VISCOSITY).get());
        assertThat(figures.density().value()).isEqualTo(1040);
        assertThat(figures.drivingPressure().status()).isEqualTo(Status.USER);
        assertThat(figures.permeability().status()).isEqualTo(Status.USER);
        assertThat(figures.isPermeabilityFromMemory()).isFalse();
    }

    @Test
    void fibreContentsOfTheTradeAreFromMemory() {
        ReinforcementLayer usual = ReinforcementLayer.of(TestMaterials.roving(0.6), Plans.LAY_UP);
        assertThat(infused(metre(), usual).figures().porosity().status()).isEqualTo(Status.MEMORY);
    }

    @Test
    void aStatedViscosityWinsOverThatOfTheResin() {
        FlowFigures figures = infused(metre().withViscosity(ResinViscosity.constant(0.1)), roving())
                .figures();
        assertThat(figures.viscosity().value()).isEqualTo(0.1);
        assertThat(figures.viscosity().status()).isEqualTo(Status.USER);
    }

    @ParameterizedTest
    @CsvSource({"0.500, true", "0.504, true", "0.496, true", "0.506, false", "0.45, false"})
    void aPorosityThatTheLayersContradictIsToldAndTheirsCounts(double stated, boolean agrees) {
        Infusion infusion = infused(Plans.with(metre(), preform(1e-10).withPorosity(stated)), roving());
        assertThat(infusion.figures().porosity().value()).isCloseTo(0.5, within(1e-12));
        assertThat(infusion.cautions().stream()
                        .anyMatch(each -> each.text().contains("infused layers have 50.0 % fibre by volume")))
                .isNotEqualTo(agrees);
    }

    @Test
    void pliesGivenDirectlyNeedAPorosityAndAViscosity() {
        assertThatThrownBy(() -> infused(metre(), given(0.004))).hasMessageContaining("add porosity:");
        InfusionPlan porous = Plans.with(metre(), preform(1e-10).withPorosity(0.5));
        assertThatThrownBy(() -> infused(porous, given(0.004))).hasMessageContaining("add viscosity:");
    }

    @Test
    void aPlanForLayersThatAreNotInfusedIsRefused() {
        ReinforcementLayer byHand = TestParts.hand(TestMaterials.roving(0.6));
        assertThatThrownBy(() -> infused(metre(), byHand))
                .hasMessageContaining("none of its layers is laid by infusion");
        Part part = Part.of("hatch", List.of(zone("lid", 1, byHand).withInfusion(metre())));
        assertThatThrownBy(() -> all(WORKSHOP, part)).hasMessageContaining("zone lid");
    }

    @Test
    void oneInfusionTakesOneResin() {
        Part part = Part.of("hatch", List.of(zone("lid", 1, roving()), zone("rim", 1, roving(EPOXY_LAY_UP))));
        assertThatThrownBy(() -> all(WORKSHOP, part.withInfusion(metre())))
                .hasMessageContaining("epoxy-infusion and vinylester");
    }

    @Test
    void nothingPlannedIsNothingInfused() {
        PartInfusion infusion = all(WORKSHOP, Part.of("hatch", List.of(zone("lid", 1, roving()))));
        assertThat(infusion.infusions()).isEmpty();
        assertThat(infusion.cautions()).isEmpty();
    }

    @Test
    void aZoneWithItsOwnPlanIsNotThePartsAffair() {
        InfusionPlan narrow = Plans.with(metre(), InfusionPath.line(0.2));
        Part part = Part.of(
                        "hatch",
                        List.of(
                                zone("lid", 1, roving()),
                                zone("rim", 0.1, roving()).withInfusion(narrow)))
                .withInfusion(metre());
        PartInfusion infusion = all(WORKSHOP, part);
        assertThat(infusion.ofPart().orElseThrow().zones()).containsExactly("lid");
        assertThat(infusion.ofZone("rim").orElseThrow().fill().time().orElseThrow())
                .isCloseTo(0.04 * 5263.1579, within(1e-4));
        assertThat(infusion.ofZone("lid")).isEmpty();
    }

    @Test
    void anInfusedZoneThatNothingPlansIsTold() {
        Part part = Part.of("hatch", List.of(zone("lid", 1, roving()).withInfusion(metre()), zone("rim", 1, roving())));
        assertThat(all(WORKSHOP, part).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).startsWith("zone rim is laid by infusion"));
    }

    @Test
    void aPartFillsWhenItsLastZoneDoes() {
        ReinforcementLayer loose =
                ReinforcementLayer.of(TestMaterials.roving(0.6), Plans.LAY_UP).with(FibreContent.ofVolumeFraction(0.4));
        Part part = Part.of("hatch", List.of(zone("lid", 1, roving()), zone("rim", 1, loose)));
        PermeabilitySource measured = new PermeabilitySource.Given(1e-10, OptionalDouble.of(0.5));
        Infusion infusion = all(WORKSHOP, part.withInfusion(Plans.with(metre(), Preform.of(measured))))
                .infusions()
                .get(0);
        assertThat(infusion.figures().laminate()).isEqualTo("lid");
        assertThat(infusion.zones()).containsExactly("lid", "rim");
        assertThat(infusion.fill().time().orElseThrow()).isCloseTo(5263.1579, within(1e-4));
    }

    @Test
    void theBandIsThatOfThePermeability() {
        Fill fill = infused(metre(), roving()).fill();
        double time = fill.time().orElseThrow();
        assertThat(fill.quickest().orElseThrow()).isCloseTo(time / 1.4, within(1e-9 * time));
        assertThat(fill.slowest().orElseThrow()).isCloseTo(time / 0.6, within(1e-9 * time));
    }

    @Test
    void aPermeabilityFromMemorySaysSoEverywhere() {
        InfusionPlan plan = Plans.with(metre(), Preform.of(new PermeabilitySource.Typical()));
        Infusion infusion = infused(plan, roving());
        assertThat(infusion.figures().permeability().status()).isEqualTo(Status.MEMORY);
        assertThat(infusion.figures().permeability().source()).contains("from memory");
        assertThat(infusion.figures().isPermeabilityFromMemory()).isTrue();
        assertThat(infusion.cautions())
                .extracting(Caution::text)
                .anySatisfy(text -> assertThat(text).contains("from memory").contains("strip-test: {length"));
        double time = infusion.fill().time().orElseThrow();
        assertThat(infusion.fill().slowest().orElseThrow()).isCloseTo(3 * time, within(1e-9 * time));
        assertThat(infusion.fill().quickest().orElseThrow()).isCloseTo(time / 3, within(1e-9 * time));
    }

    @Test
    void theTypicalValueIsThatOfTheFormScaledToTheLayer() {
        InfusionPlan plan = Plans.with(metre(), Preform.of(new PermeabilitySource.Typical()));
        double scaled = 1.7e-10 * Math.pow(0.5 / 0.525, 3) * Math.pow(0.475 / 0.5, 2);
        assertThat(infused(plan, roving()).figures().permeability().value()).isCloseTo(scaled, within(1e-6 * scaled));
        ReinforcementLayer mat =
                ReinforcementLayer.of(TestMaterials.mat(0.45), Plans.LAY_UP).with(FibreContent.ofVolumeFraction(0.28));
        assertThat(infused(plan, mat).figures().permeability().value()).isCloseTo(1e-9, within(1e-15));
        double ofMat = 0.45 / 2560 / 0.28;
        double ofRoving = 0.6 / 2560 / 0.5;
        double together = (1e-9 * ofMat + scaled * ofRoving) / (ofMat + ofRoving);
        assertThat(infused(plan, mat, roving()).figures().permeability().value())
                .isCloseTo(together, within(1e-6 * together));
    }

    @Test
    void whereMemoryHasNothingAStripTestIsAskedFor() {
        InfusionPlan plan = Plans.with(metre(), Preform.of(new PermeabilitySource.Typical()));
        ReinforcementLayer straight = ReinforcementLayer.of(TestMaterials.unidirectional(0.3), Plans.LAY_UP);
        assertThatThrownBy(() -> infused(plan, straight))
                .hasMessageContaining("no typical permeability of unidirectional")
                .hasMessageContaining("strip-test: {length: 300 mm, time: 474 s}");
    }

    @Test
    void aStripTestTakesWhatItDoesNotStateFromTheInfusion() {
        Infusion own = infused(Plans.with(metre(), strip(StripTest.of(0.3, 474))), roving());
        assertThat(own.figures().permeability().value()).isCloseTo(9.9933378e-11, within(1e-17));
        assertThat(own.figures().permeability().source()).contains("strip test").contains("300 mm in 474 s");
        StripTest oil =
                new StripTest(0.3, 474, OptionalDouble.of(0.1), OptionalDouble.of(47500), OptionalDouble.of(0.55));
        double measured = 0.55 * 0.1 * 0.09 / (2 * 47500 * 474);
        double scaled = measured * Math.pow(0.5 / 0.55, 3) * Math.pow(0.45 / 0.5, 2);
        assertThat(infused(Plans.with(metre(), strip(oil)), roving())
                        .figures()
                        .permeability()
                        .value())
                .isCloseTo(scaled, within(1e-9 * scaled));
    }

    private static Preform strip(StripTest test) {
        return Preform.of(new PermeabilitySource.Tested(test));
    }

    /** Half a metre at 1e-9 m² and 80 %, then half at 1e-10 m² and 50 %: 1789 s. */
    @Test
    void segmentsFillOneAfterTheOther() {
        Preform bed = Plans.with(
                preform(1e-10),
                new Segment(0.5, OptionalDouble.of(1e-9), OptionalDouble.of(0.8)),
                new Segment(0.5, OptionalDouble.empty(), OptionalDouble.empty()));
        Infusion infusion = infused(Plans.with(metre(), bed), roving());
        assertThat(infusion.fill().time().orElseThrow()).isCloseTo(1789.47, within(0.01));
        assertThat(infusion.figures().effectivePermeability()).isCloseTo(1 / (0.5 / 1e-9 + 0.5 / 1e-10), within(1e-18));
        assertThat(infusion.figures().effectivePorosity()).isCloseTo(0.65, within(1e-12));
        assertThat(infusion.figures().permeability().source()).contains("2 segments");
    }

    @Test
    void theFrontRunsFromFeedToVent() {
        List<FrontPoint> front = infused(metre(), roving()).fill().front();
        assertThat(front).hasSize(11);
        assertThat(front.get(0)).isEqualTo(new FrontPoint(0, 0));
        assertThat(front.get(5).position()).isCloseTo(Math.sqrt(0.5), within(1e-9));
        assertThat(front.get(10).position()).isEqualTo(1);
        assertThat(front.get(10).time()).isCloseTo(5263.1579, within(1e-4));
    }

    @Test
    void whereItNeverFillsTheFrontIsToldAsFarAsItGets() {
        InfusionPlan plan = metre().withViscosity(Plans.rising(0.2, 1800));
        Infusion infusion = infused(plan, roving());
        double greatest = Math.sqrt(1800 / 5263.1579);
        assertThat(infusion.fill().time()).isEmpty();
        assertThat(infusion.gel().verdict()).isEqualTo(Verdict.NEVER_FULL);
        assertThat(infusion.fill().front()).hasSize(6);
        assertThat(infusion.fill().front())
                .allSatisfy(point -> assertThat(point.position()).isLessThan(greatest));
        assertThat(infusion.buckets()).isEmpty();
        assertThat(infusion.hose()).isEmpty();
    }

    @Test
    void resinThatCannotClimbNeverFills() {
        InfusionPath tooHigh = new InfusionPath(FeedKind.LINE, 12, OptionalDouble.empty(), 12);
        assertThat(infused(Plans.with(metre(), tooHigh), roving()).fill().time())
                .isEmpty();
    }

    @Test
    void theGelTimeIsThatOfResinTemperatureAndDose() {
        GelMargin gel = infused(metre(), roving()).gel();
        assertThat(gel.gelTime().orElseThrow().value()).isCloseTo(3600, within(1e-6));
        assertThat(gel.gelTime().orElseThrow().source())
                .contains("1.50 % at 20.0 °C")
                .contains("cup test");
        assertThat(gel.usableTime().orElseThrow()).isCloseTo(1800, within(1e-6));
        Workshop warm = WORKSHOP.withTemperature(298.15);
        assertThat(infused(warm, metre(), roving())
                        .gel()
                        .gelTime()
                        .orElseThrow()
                        .value())
                .isCloseTo(2400, within(1e-6));
    }

    @Test
    void anAssumedTemperatureIsTold() {
        GelMargin gel = infused(Workshop.USUAL, metre(), roving()).gel();
        assertThat(gel.gelTime().orElseThrow().value()).isCloseTo(3600, within(1e-6));
        assertThat(gel.gelTime().orElseThrow().source()).contains("temperature assumed");
    }

    @Test
    void outsideItsPointsTheGelTimeIsNotJudged() {
        Infusion cold = infused(WORKSHOP.withTemperature(278.15), metre(), roving());
        assertThat(cold.gel().verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(cold.gel().reason())
                .endsWith(
                        "the gel time of vinylester with mekp is not known outside 15.0 °C to 25.0 °C; here are 1.50 % at 5.00 °C");
        assertThat(cold.fill().time()).as("the flow needs no gel time").isPresent();
        assertThat(cold.reach()).isEmpty();
        assertThat(cold.buckets()).isEmpty();
        LayUp timeless = TestParts.INFUSED;
        assertThat(infused(metre(), roving(timeless)).gel().reason()).contains("no gel time of vinylester with mekp");
    }

    /** An epoxy thickens from the start, by its gel time; styrenic resins stay near flat until close to gel. */
    @Test
    void whereTheGelTimeIsNotKnownHowItThickensIsNotEither() {
        assertThat(thickens(infused(WORKSHOP.withTemperature(278.15), metre(), roving(EPOXY_LAY_UP))))
                .isTrue();
        assertThat(thickens(infused(WORKSHOP, metre(), roving(EPOXY_LAY_UP)))).isFalse();
        assertThat(thickens(infused(WORKSHOP.withTemperature(278.15), metre(), roving())))
                .isFalse();
    }

    private static boolean thickens(Infusion infusion) {
        return infusion.cautions().stream()
                .anyMatch(caution -> caution.text().startsWith("How soon the resin thickens is not known"));
    }

    /** Half a metre takes 1316 s, 2193 s at the lower end of the scatter, of 3600 s to gel. */
    @ParameterizedTest
    @CsvSource({"0.30, TOO_LATE", "0.366, DOUBTFUL", "0.60, DOUBTFUL", "0.61, IN_TIME", "1, IN_TIME"})
    void theVerdictWeighsFillTimeAndScatterAgainstTheUsableTime(double share, Verdict verdict) {
        GelMargin gel = infused(Plans.withMargin(HALF, share), roving()).gel();
        assertThat(gel.verdict()).isEqualTo(verdict);
        assertThat(gel.isInTime()).isEqualTo(verdict != Verdict.TOO_LATE);
        assertThat(gel.usableShare().status()).isEqualTo(Status.USER);
    }

    @Test
    void halfOfTheGelTimeIsTheUsualMargin() {
        GelMargin gel = infused(HALF, roving()).gel();
        assertThat(gel.usableShare().value()).isEqualTo(0.5);
        assertThat(gel.usableShare().status()).isEqualTo(Status.MEMORY);
        assertThat(gel.verdict()).isEqualTo(Verdict.DOUBTFUL);
        assertThat(gel.reason()).startsWith("full after 21.9 min, within 30.0 min, which is 50.0 % of the gel time");
    }

    @Test
    void epoxyThickensFromTheStartAndStyrenicResinDoesNot() {
        assertThat(infused(metre(), roving()).figures().viscosityTime()).isEmpty();
        FlowFigures figures = infused(metre(), roving(EPOXY_LAY_UP)).figures();
        assertThat(figures.viscosityTime().orElseThrow().value()).isCloseTo(3600 / Math.log(1000), within(1e-6));
        assertThat(figures.viscosityTime().orElseThrow().status()).isEqualTo(Status.MEMORY);
        InfusionPlan stated = HALF.withViscosity(Plans.rising(0.2, 7200));
        Infusion infusion = infused(stated, roving(EPOXY_LAY_UP));
        assertThat(infusion.figures().viscosityTime().orElseThrow().status()).isEqualTo(Status.USER);
        assertThat(infusion.fill().time().orElseThrow())
                .isCloseTo(-7200 * Math.log(1 - 1315.7895 / 7200), within(1e-3));
    }

    @Test
    void theTestOfTheBagIsThePlansOrTheUsual() {
        assertThat(infused(metre(), roving()).leak()).isEqualTo(LeakLimit.USUAL);
        assertThat(LeakLimit.USUAL.rate()).isCloseTo(1000.0 / 600, within(1e-12));
        InfusionPlan plan = metre();
        InfusionPlan stated = new InfusionPlan(
                plan.path(),
                plan.drivingPressure(),
                plan.viscosity(),
                plan.preform(),
                plan.mesh(),
                plan.lines(),
                plan.margin(),
                Optional.of(new LeakTest(500, 300)));
        LeakLimit leak = infused(stated, roving()).leak();
        assertThat(leak.drop()).isEqualTo(500);
        assertThat(leak.time()).isEqualTo(300);
        assertThat(leak.status()).isEqualTo(Status.USER);
    }

    @Test
    void aMeshWithoutPermeabilityThroughTheThicknessHasNoKnownLag() {
        Infusion infusion = infused(metre().withMesh(new FlowMesh(0.001, 3e-9, 0.8)), roving());
        assertThat(infusion.fill().lag()).isEmpty();
        assertThat(infusion.fill().meshTime()).isEmpty();
        assertThat(infusion.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("add through-permeability:"));
    }

    @Test
    void compactionThatIsLeftOutIsTold() {
        Preform soft = Plans.with(preform(1e-10), new BedCompaction(0.07, OptionalDouble.empty()));
        InfusionPlan level = Plans.with(metre(), soft);
        assertThat(infused(level, roving()).fill().time().orElseThrow()).isLessThan(4000);
        assertThat(infused(level, roving()).cautions()).noneSatisfy(InfuserTest::tellsOfRigid);
        Infusion centre = infused(Plans.with(level, InfusionPath.centre(0.01, 0.49)), roving());
        assertThat(centre.fill().time().orElseThrow()).isCloseTo(4489.7671, within(1e-4));
        assertThat(centre.cautions()).anySatisfy(InfuserTest::tellsOfRigid);
    }

    private static void tellsOfRigid(Caution caution) {
        assertThat(caution.text()).contains("taken as rigid");
    }

    @Test
    void listedViscosityInAColdWorkshopIsTold() {
        assertThat(infused(metre(), roving()).cautions()).noneSatisfy(InfuserTest::tellsOfTemperature);
        Infusion cold = infused(WORKSHOP.withTemperature(288.15), metre(), roving());
        assertThat(cold.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("at 15.0 °C"));
    }

    private static void tellsOfTemperature(Caution caution) {
        assertThat(caution.text()).contains("each K colder");
    }
}
