package laminate.plan;

import static laminate.plan.PlanParts.BAG;
import static laminate.plan.PlanParts.HAND;
import static laminate.plan.PlanParts.INFUSED;
import static laminate.plan.PlanParts.core;
import static laminate.plan.PlanParts.gelcoat;
import static laminate.plan.PlanParts.layer;
import static laminate.plan.PlanParts.plan;
import static laminate.plan.PlanParts.workshop;
import static laminate.plan.PlanParts.zone;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.part.Coating;
import laminate.part.Film;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Measured;
import laminate.part.Part;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import laminate.theory.Lamina;
import org.junit.jupiter.api.Test;

/** Stages of a part: what they are, in which order, and what each takes. */
class MixPlannerTest {
    private static final Workshop TWENTY = workshop(20, 1);

    /** Six layers of mat 450 are 6.5 mm, of a resin that bears 6.0 mm: five and one. */
    @Test
    void aStageIsNoThickerThanItsResinBears() {
        MixPlan plan = plan(Part.of("p", List.of(zone("z", 1, List.of(), mats(6)))), TWENTY);

        assertThat(names(plan)).containsExactly("laminate, 1 of 2", "laminate, 2 of 2");
        assertThat(plan.stages().get(0).layers()).hasSize(5);
        assertThat(plan.stages().get(0).thickness()).isLessThanOrEqualTo(0.006);
        assertThat(plan.stages().get(1).layers()).extracting(StageLayer::number).containsExactly(6);
    }

    @Test
    void coatsLayersAndCoresOfAZoneFollowEachOther() {
        Coating flowcoat =
                new Coating(TestMaterials.FLOWCOAT, new Dose(MEKP, 0.02), new Film(Film.Basis.AREAL_WEIGHT, 0.4), 1);
        MixPlan plan = plan(
                Part.of(
                        "p",
                        List.of(zone(
                                "z",
                                1,
                                List.of(flowcoat, gelcoat(2)),
                                layer(mat(0.3), HAND, "skin"),
                                layer(mat(0.45), HAND, ""),
                                core(HAND, true),
                                layer(mat(0.45), HAND, "")))),
                TWENTY);

        assertThat(names(plan))
                .containsExactly(
                        "gelcoat",
                        "gelcoat, coat 2",
                        "skin",
                        "laminate, 1 of 2",
                        "core",
                        "laminate, 2 of 2",
                        "flowcoat");
        assertThat(plan.stages())
                .extracting(Stage::kind)
                .containsExactly(
                        Stage.Kind.MOULD_COAT,
                        Stage.Kind.MOULD_COAT,
                        Stage.Kind.LAMINATE,
                        Stage.Kind.LAMINATE,
                        Stage.Kind.CORE,
                        Stage.Kind.LAMINATE,
                        Stage.Kind.INNER_COAT);
        assertThat(plan.stages().get(4).resins())
                .extracting(resin -> resin.resin().id())
                .as("paste first, then what the core takes up")
                .containsExactly("bonding-paste", "polyester-ortho");
    }

    /** The gelcoat of a zone that is laid by hand and of one that is infused is one pot. */
    @Test
    void zonesShareTheStagesThatAreTheSame() {
        MixPlan plan = plan(
                Part.of(
                        "p",
                        List.of(
                                zone("hull", 2, List.of(gelcoat(1)), layer(mat(0.3), HAND, "skin"), core(HAND, false)),
                                zone("lid", 1, List.of(gelcoat(2)), layer(biaxial(0.6), INFUSED, "")),
                                zone("deck", 1, List.of(gelcoat(1)), layer(mat(0.45), HAND, ""), core(HAND, false)))),
                TWENTY);

        assertThat(names(plan))
                .as("what some zones take comes as late as their own order allows, coats before all layers")
                .containsExactly("gelcoat", "gelcoat, coat 2", "skin", "laminate", "core", "infusion");
        assertThat(plan.stages().get(0).layers()).extracting(StageLayer::zone).containsExactly("hull", "lid", "deck");
        assertThat(plan.stages().get(0).resins()).hasSize(1);
        assertThat(plan.stages().get(4).layers()).extracting(StageLayer::zone).containsExactly("hull", "deck");
    }

    @Test
    void whatIsInfusedTogetherIsOneStageHoweverThick() {
        List<Layer> layers = new ArrayList<>(Collections.nCopies(8, layer(biaxial(0.6), INFUSED, "")));
        layers.add(4, core(INFUSED, false));
        MixPlan plan = plan(Part.of("p", List.of(zone("z", 1, List.of(), layers.toArray(Layer[]::new)))), TWENTY);

        assertThat(plan.stages()).hasSize(1);
        Stage stage = plan.stages().get(0);
        assertThat(stage.kind()).isEqualTo(Stage.Kind.INFUSION);
        assertThat(stage.layers()).hasSize(9);
        // Dry fabric 0.12 h/m² on 8 m², core 0.30 h/m² and bag 0.75 h/m² on 1 m²; infusing 1 h.
        assertThat(stage.dryTime()).isCloseTo((8 * 0.12 + 0.30 + 0.75) * 3600, within(1e-6));
        assertThat(stage.resins().get(0).workTime()).isCloseTo(3600, within(1e-6));
    }

    /**
     * By hand, 1 m² of one mat 450 at 0.22 h/m²: 792 s for one person, and polyester at 2 % and 20 °C gels in 1200 s.
     *
     * <pre>
     *   resin in the part   0.45 · 0.70/0.30 = 1.05 kg     left in pots 8 %: 0.084 kg
     *   styrene             f = 0.286 · 0.42 − 0.0529 = 0.06722, 1.05 f/(1 − f) = 0.0757 kg
     *   to mix              1.2097 kg
     *   1 mix               792 s against 0.7 · 1200 · (1.234/0.1)^−0.1549 − 120 = 449 s
     *   2 mixes             396 s against 0.7 · 1200 · (0.622/0.1)^−0.1549 − 120 = 513 s
     *   each                604.8 g, weighed as 605 g with 12.1 g or 10.34 ml
     * </pre>
     */
    @Test
    void aMatOfOneSquareMetreByHand() {
        MixPlan plan = plan(Part.of("p", List.of(zone("z", 1, List.of(), mats(1)))), TWENTY);

        StageResin resin = plan.stages().get(0).resins().get(0);
        assertThat(resin.need()).isCloseTo(1.2097, within(1e-4));
        assertThat(resin.workTime()).isCloseTo(792, within(1e-9));
        assertThat(resin.mixes()).hasSize(2);
        Mix mix = resin.mixes().get(0);
        assertThat(mix.resin()).isCloseTo(0.605, within(1e-12));
        assertThat(mix.catalyst()).isCloseTo(0.0121, within(1e-12));
        assertThat(mix.catalystVolume()).isCloseTo(10.342e-6, within(1e-9));
        assertThat(mix.usableTime()).hasValueCloseTo(513.0, within(1.0));
        assertThat(plan.stages().get(0).wetTime()).isCloseTo(792 + 2 * 120, within(1e-9));
        assertThat(plan.fits()).isTrue();
    }

    /** Styrene of that mat, 0.0757 kg, over the 1032 s of mixing and laying and until the last mix of 396 s gels. */
    @Test
    void freshAirDilutesTheStyreneOfTheStageThatAsksForMost() {
        FreshAir air = plan(Part.of("p", List.of(zone("z", 1, List.of(), mats(1)))), TWENTY)
                .freshAir()
                .orElseThrow();

        double time = 1032 - 396 + 1200;
        assertThat(air.stage()).isEqualTo(1);
        assertThat(air.styrene()).isCloseTo(0.0757, within(1e-4));
        assertThat(air.time()).isCloseTo(time, within(0.5));
        assertThat(air.limit()).isCloseTo(426e-6, within(1e-12));
        assertThat(air.flow()).isCloseTo(0.0757 / (time * 426e-6), within(2e-4));
    }

    /** Of several stages the one with the greatest flow counts, and one that cannot be mixed gives nothing off. */
    @Test
    void theGreatestFlowDecides() {
        MixPlan plan = plan(
                Part.of(
                        "p",
                        List.of(zone(
                                "z",
                                1,
                                List.of(),
                                layer(mat(0.1), HAND, "light"),
                                layer(mat(0.45), HAND, "heavy"),
                                layer(mat(0.1), HAND, "light again")))),
                TWENTY);
        MixPlan cold = plan(Part.of("p", List.of(zone("z", 1, List.of(), mats(1)))), workshop(5, 1));

        assertThat(plan.freshAir().orElseThrow().stage()).isEqualTo(2);
        assertThat(cold.freshAir()).isEmpty();
    }

    @Test
    void epoxyGivesOffNoStyrene() {
        Part part = Part.of("p", List.of(zone("z", 1, List.of(), layer(mat(0.45), PlanParts.HAND_EPOXY, ""))));

        assertThat(plan(part, TWENTY).freshAir()).isEmpty();
    }

    @Test
    void thePlanIsOfOneMoulding() {
        Part one = Part.of("p", List.of(zone("z", 1, List.of(gelcoat(1)), mats(7))));
        MixPlan single = plan(one, TWENTY);
        MixPlan repeated = plan(TestParts.times(5, one), TWENTY);

        assertThat(repeated.mouldings()).isEqualTo(5);
        assertThat(repeated.stages()).hasSameSizeAs(single.stages());
        for (int i = 0; i < single.stages().size(); i++) {
            StageResin here = single.stages().get(i).resins().get(0);
            StageResin there = repeated.stages().get(i).resins().get(0);
            assertThat(there.need()).isCloseTo(here.need(), within(1e-12));
            assertThat(there.mixes()).hasSameSizeAs(here.mixes());
        }
    }

    @Test
    void withoutATemperatureTheAssumptionIsTold() {
        Part part = Part.of("p", List.of(zone("z", 1, List.of(), mats(1))));
        MixPlan assumed = plan(part, Workshop.USUAL);

        assertThat(assumed.temperatureAssumed()).isTrue();
        assertThat(assumed.temperature()).isEqualTo(293.15);
        assertThat(assumed.cautions())
                .extracting(caution -> caution.text())
                .first()
                .asString()
                .contains("20 °C");
        assertThat(assumed.stages()).isEqualTo(plan(part, TWENTY).stages());
        assertThat(plan(part, TWENTY).temperatureAssumed()).isFalse();
    }

    /** 4 mats are 4.3 mm: near the 5 mm that the resin bears, far below 6 mm. */
    @Test
    void theHeatOfAStageIsToldWhereItNearsWhatItsResinBears() {
        assertThat(heat(bearing(0.005), 4))
                .singleElement()
                .asString()
                .startsWith("4.3 mm at once, where polyester-ortho bears 5.0 mm: its own heat warms it by no more than")
                .endsWith("Ceilings, not a forecast.");
        assertThat(heat(bearing(0.006), 4)).isEmpty();
        assertThat(heat(bearing(0.005), 3)).isEmpty();
    }

    @Test
    void theHeatOfAStageIsToldWhereNothingSaysWhatItsResinBears() {
        assertThat(heat(TestMaterials.VINYLESTER, 1))
                .singleElement()
                .asString()
                .startsWith("1.1 mm at once, and how much vinylester bears at once is not known");
        assertThat(heat(PlanParts.EPOXY, 1)).as("its heat of cure is not known").isEmpty();
    }

    @Test
    void ofTwoSkinsTheThickerWarmsByItself() {
        LayUp infused = PlanParts.layUp(Process.INFUSION, bearing(0.001), 0.01);
        MixPlan cored = plan(
                Part.of(
                        "p",
                        List.of(zone(
                                "z",
                                1,
                                List.of(),
                                layer(biaxial(0.6), infused, ""),
                                core(infused, false),
                                layer(biaxial(0.6), infused, ""),
                                layer(biaxial(0.6), infused, "")))),
                TWENTY);

        assertThat(heat(cored)).singleElement().asString().startsWith("0.9 mm at once");
    }

    private static Resin bearing(double thickness) {
        return PlanParts.withPoints(
                TestMaterials.with(TestMaterials.POLYESTER, Property.STAGE_THICKNESS, thickness),
                PlanParts.POLYESTER.gelPoints());
    }

    private static List<String> heat(Resin resin, int mats) {
        LayUp layUp =
                resin == PlanParts.EPOXY ? PlanParts.HAND_EPOXY : PlanParts.layUp(Process.HAND_LAY_UP, resin, 0.02);
        Layer[] layers = Collections.nCopies(mats, layer(mat(0.45), layUp, "")).toArray(Layer[]::new);
        return heat(plan(Part.of("p", List.of(zone("z", 1, List.of(), layers))), TWENTY));
    }

    private static List<String> heat(MixPlan plan) {
        return plan.stages().get(0).cautions().stream()
                .map(caution -> caution.text())
                .filter(text -> text.contains("its own heat warms it"))
                .toList();
    }

    @Test
    void aLargestMixBeyondWhatIsKnownOfPotsIsTold() {
        Part part = Part.of("p", List.of(zone("z", 1, List.of(), mats(1))));
        Workshop five =
                PlanParts.with(TWENTY, PlanParts.mixing(0.005, 0.0001, OptionalDouble.empty(), OptionalDouble.of(5)));
        Workshop one =
                PlanParts.with(TWENTY, PlanParts.mixing(0.005, 0.0001, OptionalDouble.empty(), OptionalDouble.of(1)));

        assertThat(texts(plan(part, five)))
                .contains("mixes up to 5.0 kg at once; polyester is planned in pots of up to 2.0 kg");
        assertThat(texts(plan(part, one))).doesNotContain("at once; polyester");
    }

    @Test
    void twoPeroxidesAndColdAreTold() {
        Layer other = layer(
                mat(0.45),
                new LayUp(Process.HAND_LAY_UP, TestMaterials.POLYESTER, new Dose(TestMaterials.CUMENE, 0.015)),
                "other");
        MixPlan plan = plan(Part.of("p", List.of(zone("z", 1, List.of(), mats(1)[0], other))), workshop(12, 1));

        assertThat(texts(plan))
                .contains("never bring two peroxides together")
                .contains("do not cure through below 15 °C")
                .contains("stir the accelerator into the resin first")
                .contains("hazardous waste");
        assertThat(texts(plan(
                        Part.of("p", List.of(zone("z", 1, List.of(), layer(mat(0.45), PlanParts.HAND_EPOXY, "")))),
                        TWENTY)))
                .doesNotContain("peroxide last");
    }

    /** At 30 °C and 1 % the film gels in 20 min; laying 3 m² takes 40 min and the bag 2.25 h. */
    @Test
    void aBagThatComesAfterTheGelIsTold() {
        MixPlan plan = plan(Part.of("p", List.of(zone("z", 3, List.of(), layer(mat(0.45), BAG, "")))), workshop(30, 1));

        Stage stage = plan.stages().get(0);
        assertThat(stage.bagTime()).isCloseTo(3 * 0.75 * 3600, within(1e-6));
        double minutes = (stage.wetTime() + stage.bagTime()) / 60;
        assertThat(stage.cautions())
                .anyMatch(caution -> caution.text()
                        .startsWith(String.format(
                                Locale.ROOT,
                                "polyester-ortho gels after 20 min, and laying and bagging take %.0f min: the first layers gel"
                                        + " before the vacuum presses them.",
                                minutes)));
        assertThat(stage.gelled()).contains(stage.end());
    }

    /** Infusing takes an hour, and at 30 °C and 1 % the resin gels in 20 min. */
    @Test
    void aFillThatTakesLongerThanTheGelIsTold() {
        Part part = Part.of("p", List.of(zone("z", 1, List.of(), layer(biaxial(0.6), INFUSED, ""))));

        assertThat(plan(part, workshop(30, 1)).stages().get(0).cautions())
                .anyMatch(caution -> caution.text()
                        .equals(
                                "Infusing is reckoned at 60 min, and polyester-ortho gels after 20 min: what is drawn in first"
                                        + " may gel before the mould is full."));
        assertThat(plan(part, workshop(10, 1)).stages().get(0).cautions())
                .noneMatch(caution -> caution.text().startsWith("Infusing"));
    }

    @Test
    void aLayerThickerThanItsResinBearsStandsAloneAndIsTold() {
        Layer mat = layer(mat(0.45), PlanParts.layUp(Process.HAND_LAY_UP, bearing(0.0005), 0.02), "");

        MixPlan plan = plan(Part.of("p", List.of(zone("z", 1, List.of(), mat, mat))), TWENTY);

        assertThat(plan.stages())
                .hasSize(2)
                .allSatisfy(stage -> assertThat(stage.cautions())
                        .anyMatch(caution -> caution.text().contains("1.1 mm at once; polyester-ortho bears 0.5 mm")));
    }

    /** What no dose or hand mends at 5 °C: the stage says why, the other stages go on. */
    @Test
    void aStageThatCannotBeMixedDoesNotHinderTheOthers() {
        Part part = Part.of(
                "p",
                List.of(zone("z", 1, List.of(), layer(mat(0.3), HAND, "skin"), layer(roving(0.6), unknown(), ""))));

        MixPlan plan = plan(part, workshop(5, 1));

        assertThat(plan.fits()).isFalse();
        assertThat(plan.stages().get(0).fits()).isFalse();
        assertThat(plan.stages().get(0).cautions())
                .anyMatch(caution -> caution.text().startsWith("No mix fits: "));
        assertThat(plan.stages().get(1).fits()).isTrue();
        assertThat(plan.stages().get(1).start().day())
                .as("after a gel that is not known: next morning")
                .isEqualTo(2);
    }

    /** 20 m² of three layers at 0.22 h/m² are 13.2 h, and each of the mixes is stirred for two minutes. */
    @Test
    void aStageLongerThanTheDayIsToldAndStartsInTheMorning() {
        MixPlan plan = plan(Part.of("p", List.of(zone("z", 20, List.of(gelcoat(1)), mats(3)))), TWENTY);

        Stage stage = plan.stages().get(1);
        double hours = 13.2 + stage.mixes().size() * 2 / 60.0;
        assertThat(stage.wetTime()).isCloseTo(hours * 3600, within(1e-6));
        assertThat(stage.cautions())
                .anyMatch(caution ->
                        caution.text().startsWith(String.format(Locale.ROOT, "It takes %.1f h, longer", hours)));
        assertThat(stage.start()).isEqualTo(new ClockTime(2, LocalTime.of(8, 0)));
    }

    @Test
    void pliesGivenDirectlyAreNotLaid() {
        Part part = Part.of(
                "p",
                List.of(zone("z", 1, List.of(), new LaminaLayer(Lamina.isotropic(70e9, 0.3), 2700, 0.002, 0, ""))));

        MixPlan plan = plan(part, TWENTY);

        assertThat(plan.stages()).isEmpty();
        assertThat(plan.fits()).isTrue();
        assertThat(plan.freshAir()).isEmpty();
        assertThat(JobSheet.of(plan).pages()).isEmpty();
    }

    @Test
    void lapsAndPiecesStandOnTheLayer() {
        Workshop lapped = TWENTY.withLosses(Map.of(Process.HAND_LAY_UP, Map.of(Loss.LAPS, Figure.stated(0.04))));
        PartEstimate estimate = new Estimator(lapped).estimate(Part.of("p", List.of(zone("z", 2, List.of(), mats(1)))));

        StageLayer layer =
                new MixPlanner(lapped).plan(estimate).stages().get(0).layers().get(0);

        assertThat(layer.lapShare()).isEqualTo(0.04);
        assertThat(layer.area()).isCloseTo(2.08, within(1e-12));
        assertThat(layer.pieces()).isEqualTo(1);
        assertThat(layer.angle()).hasValue(0.0);
    }

    /** Three pieces of 2 m² with a margin of 0.08 m² each, laid four times, turned, at 45°; the plan is of one moulding. */
    @Test
    void aLayerTellsItsPiecesAreaAndAngle() {
        Layer turned = TestParts.turned(biaxial(0.6), HAND, 45);
        Zone zone = new Zone(
                "z",
                2,
                3,
                List.of(gelcoat(2)),
                List.of(turned, core(HAND, false)),
                Optional.of(new Trim(2, 0.04)),
                ContentSet.TRADE,
                Measured.NOTHING);

        List<Stage> stages =
                plan(TestParts.times(4, Part.of("p", List.of(zone))), TWENTY).stages();

        StageLayer coat = stages.get(1).layers().get(0);
        assertThat(coat.number()).isEqualTo(2);
        assertThat(coat.angle()).isEmpty();
        assertThat(coat.area()).isCloseTo(3 * 2.08, within(1e-12));
        // 0.5 mm of 1200 kg/m³, of which 4.72 % evaporate, of 1250 kg/m³ cured.
        assertThat(coat.thickness()).isCloseTo(0.0005 * 1200 * (1 - (0.286 * 0.35 - 0.0529)) / 1250, within(1e-12));
        StageLayer layer = stages.get(2).layers().get(0);
        assertThat(layer.pieces()).isEqualTo(3);
        assertThat(layer.area()).isCloseTo(3 * 2.08, within(1e-12));
        assertThat(layer.angle()).hasValue(45.0);
        assertThat(layer.turned()).isTrue();
        assertThat(layer.lapShare()).isZero();
        StageLayer sheet = stages.get(3).layers().get(0);
        assertThat(sheet.turned()).isFalse();
        assertThat(sheet.angle()).hasValue(0.0);
        assertThat(sheet.area()).isCloseTo(3 * 2.08, within(1e-12));
    }

    /** A zone of three times the area takes three times the resin, of coats, layers, cores and beds alike. */
    @Test
    void resinIsSharedOutByWhatStaysInEachLayer() {
        Layer[] layers = {layer(mat(0.45), HAND, ""), layer(mat(0.3), HAND, ""), core(HAND, true)};
        List<Stage> stages = plan(
                        Part.of(
                                "p",
                                List.of(
                                        zone("small", 0.5, List.of(gelcoat(1)), layers),
                                        zone("large", 1.5, List.of(gelcoat(1)), layers))),
                        TWENTY)
                .stages();

        for (Stage stage : stages) {
            assertThat(resin(stage, "large")).as(stage.name()).isCloseTo(3 * resin(stage, "small"), within(1e-12));
        }
        List<StageLayer> laminate = stages.get(1).layers();
        assertThat(laminate.get(0).resin()).isCloseTo(1.5 * laminate.get(1).resin(), within(1e-12));
        List<StageLayer> cores = stages.get(2).layers();
        double paste = 0.001 * 1220 * 0.5 * 1.10;
        double uptake = stages.get(2).resins().get(1).need() / 4;
        assertThat(cores.get(0).resin()).isCloseTo(paste + uptake, within(1e-9));
    }

    /** A patch of 0.01 m² takes 12 g, and 0.1 g is within the room of 2 % from 50 g on. */
    @Test
    void aPotThatIsMostlyLeftOverIsTold() {
        Part patch = Part.of("p", List.of(zone("z", 0.01, List.of(), mats(1))));

        assertThat(stageTexts(plan(patch, TWENTY)))
                .contains("polyester-ortho: 12 g are needed, and the scales hold the dose from 50 g on");
        assertThat(stageTexts(plan(Part.of("p", List.of(zone("z", 1, List.of(), mats(1)))), TWENTY)))
                .doesNotContain("are needed");
    }

    @Test
    void aGelTimeThatIsNotKnownIsTold() {
        Part part = Part.of("p", List.of(zone("z", 1, List.of(), layer(mat(0.45), unknown(), ""))));

        assertThat(stageTexts(plan(part, TWENTY)))
                .contains(
                        "no gel time of polyester-ortho with mekp is known: time a cup before you mix a pot. The mixes are no"
                                + " larger than the usual pot");
    }

    private static String stageTexts(MixPlan plan) {
        return String.join(
                "\n",
                plan.stages().get(0).cautions().stream()
                        .map(caution -> caution.text())
                        .toList());
    }

    private static double resin(Stage stage, String zone) {
        return stage.layers().stream()
                .filter(layer -> layer.zone().equals(zone))
                .mapToDouble(StageLayer::resin)
                .sum();
    }

    private static LayUp unknown() {
        return PlanParts.layUp(Process.HAND_LAY_UP, TestMaterials.POLYESTER, 0.015);
    }

    private static Layer[] mats(int count) {
        return Collections.nCopies(count, layer(mat(0.45), HAND, "")).toArray(Layer[]::new);
    }

    private static String texts(MixPlan plan) {
        return String.join(
                "\n", plan.cautions().stream().map(caution -> caution.text()).toList());
    }

    private static List<String> names(MixPlan plan) {
        return plan.stages().stream().map(Stage::name).toList();
    }
}
