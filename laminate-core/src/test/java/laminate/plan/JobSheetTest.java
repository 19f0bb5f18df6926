package laminate.plan;

import static laminate.plan.PlanParts.HAND;
import static laminate.plan.PlanParts.INFUSED;
import static laminate.plan.PlanParts.core;
import static laminate.plan.PlanParts.gelcoat;
import static laminate.plan.PlanParts.layer;
import static laminate.plan.PlanParts.workshop;
import static laminate.plan.PlanParts.zone;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.mat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import laminate.part.Bed;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.plan.JobSheet.Action;
import laminate.plan.JobSheet.Reading;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.testing.TestMaterials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The sheet that goes to the mould. */
class JobSheetTest {

    static Stream<Part> parts() {
        return PlanParts.random(40);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void everyMixAndEveryLayerIsTickedOffOnce(Part part) {
        JobSheet sheet = JobSheet.of(PlanParts.plan(part, workshop(20, 1)));

        assertThat(sheet.pages()).hasSameSizeAs(sheet.plan().stages());
        for (JobSheet.Page page : sheet.pages()) {
            List<Mix> mixes =
                    page.steps().stream().flatMap(step -> step.mix().stream()).toList();
            List<StageLayer> layers =
                    page.steps().stream().flatMap(step -> step.layer().stream()).toList();
            assertThat(mixes).containsExactlyInAnyOrderElementsOf(page.stage().mixes());
            assertThat(layers).isEqualTo(page.stage().layers());
        }
    }

    /** The mixes above a layer wet it to its end, and the last of them wets no layer above it. */
    @ParameterizedTest
    @MethodSource("parts")
    void aMixStandsBeforeTheFirstLayerThatItWets(Part part) {
        for (JobSheet.Page page :
                JobSheet.of(PlanParts.plan(part, workshop(20, 1))).pages()) {
            Stage stage = page.stage();
            if (stage.kind() == Stage.Kind.INFUSION || stage.resins().size() > 1) {
                continue;
            }
            double stirred = 0;
            double laid = 0;
            double each = stage.mixes().get(0).needed();
            for (JobSheet.Step step : page.steps()) {
                if (step.mix().isPresent()) {
                    stirred += each;
                } else if (step.layer().isPresent()) {
                    laid += step.layer().get().resin();
                    assertThat(stirred).as("there is resin for all of it").isGreaterThanOrEqualTo(laid * (1 - 1e-6));
                    assertThat(stirred - each).as("the last mix is for it").isLessThan(laid);
                }
            }
        }
    }

    /** A mix that is stirred before the bag is tight gels in its bucket; one that comes after the hose has run dry lets in air. */
    @Test
    void anInfusionIsMixedOnceItsBagIsTight() {
        List<Action> actions = actions(JobSheet.of(PlanParts.plan(
                        Part.of("p", List.of(zone("z", 4, List.of(), layer(biaxial(0.6), INFUSED, "")))),
                        workshop(20, 2)))
                .pages()
                .get(0));

        assertThat(actions).startsWith(Action.LAY_DRY, Action.BAG, Action.MIX, Action.INFUSE, Action.MIX);
        assertThat(actions).endsWith(Action.MIX, Action.AWAIT_GEL);
    }

    /** What a core is bedded in is spread before the bag goes on; the resin that is drawn in is stirred once it is tight. */
    @Test
    void aBedIsMixedBeforeTheBagGoesOn() {
        MixPlan plan = PlanParts.plan(
                Part.of("p", List.of(zone("z", 0.5, List.of(), layer(biaxial(0.6), INFUSED, ""), core(INFUSED, true)))),
                workshop(20, 2));
        Stage stage = plan.stages().get(0);

        assertThat(actions(JobSheet.of(plan).pages().get(0)))
                .startsWith(Action.MIX, Action.LAY_DRY, Action.LAY_DRY, Action.BAG, Action.MIX, Action.INFUSE);
        StageResin drawn = stage.drawn().orElseThrow();
        assertThat(drawn.resin().id()).isEqualTo(PlanParts.POLYESTER.id());
        assertThat(drawn.workTime()).as("bedding is no part of it").isCloseTo(3600, within(1e-6));
        assertThat(stage.wetTime()).isCloseTo(3600 + 120, within(1e-6));
        StageResin bed = stage.resins().stream()
                .filter(resin -> resin != drawn)
                .findFirst()
                .orElseThrow();
        // A core takes 0.30 h/m² and two people lay it.
        assertThat(bed.workTime()).isCloseTo(0.30 * 0.5 * 3600 / 2, within(1e-6));
    }

    /** A core takes 0.30 h/m², two people lay it, and of two pastes that of three times the thickness three times the time. */
    @Test
    void theTimeOfBeddingGoesToEachPasteByWhatItTakes() {
        MixPlan plan = PlanParts.plan(
                Part.of("p", List.of(zone("z", 0.5, List.of(), bedded(0.015, 0.001), bedded(0.02, 0.003)))),
                workshop(20, 2));

        List<Double> times = plan.stages().get(0).resins().stream()
                .filter(resin -> resin.resin().id().equals(PlanParts.PASTE.id()))
                .map(StageResin::workTime)
                .toList();
        double both = 2 * 0.30 * 0.5 * 3600 / 2;
        assertThat(times).hasSize(2);
        assertThat(times.get(0)).isCloseTo(both / 4, within(1e-6));
        assertThat(times.get(1)).isCloseTo(both * 3 / 4, within(1e-6));
    }

    /** Bedding 2 m² takes one person 36 min and the paste gels sooner, but it is spread in several mixes and not drawn in. */
    @Test
    void aPasteIsNotTakenForWhatIsDrawnIn() {
        Stage stage = PlanParts.plan(
                        Part.of("p", List.of(zone("z", 2, List.of(), bedded(0.015, 0.001)))), workshop(20, 1))
                .stages()
                .get(0);

        StageResin paste = stage.resins().get(0);
        assertThat(paste.workTime()).isGreaterThan(paste.gelTime().orElseThrow());
        assertThat(stage.cautions())
                .filteredOn(caution -> caution.text().startsWith("Infusing is reckoned at"))
                .singleElement()
                .matches(caution -> caution.text().contains(PlanParts.POLYESTER.id() + " gels after"));
    }

    private static CoreLayer bedded(double dose, double thickness) {
        Bed bed = new Bed(PlanParts.PASTE, new Dose(MEKP, dose), thickness);
        return new CoreLayer(PVC, 0.010, 0, CoreFinish.PLAIN, INFUSED, Optional.of(bed), "");
    }

    @Test
    void aPageOfEachKind() {
        List<JobSheet.Page> pages = JobSheet.of(PlanParts.plan(
                        Part.of(
                                "p",
                                List.of(zone(
                                        "z",
                                        0.5,
                                        List.of(gelcoat(1)),
                                        layer(mat(0.3), HAND, "skin"),
                                        core(HAND, true),
                                        layer(biaxial(0.6), INFUSED, "")))),
                        workshop(20, 2)))
                .pages();

        assertThat(actions(pages.get(0))).containsExactly(Action.MIX, Action.COAT, Action.AWAIT_GEL);
        assertThat(actions(pages.get(1))).containsExactly(Action.MIX, Action.LAY, Action.AWAIT_GEL);
        assertThat(actions(pages.get(2))).containsExactly(Action.MIX, Action.MIX, Action.LAY, Action.AWAIT_GEL);
        assertThat(actions(pages.get(3)))
                .startsWith(Action.LAY_DRY, Action.BAG, Action.MIX, Action.INFUSE)
                .endsWith(Action.AWAIT_GEL);
        assertThat(pages.get(0).readings())
                .contains(Reading.FILM_THICKNESS, Reading.HUMIDITY, Reading.AGENT_BATCH)
                .doesNotContain(Reading.THICKNESS, Reading.VACUUM);
        assertThat(pages.get(1).readings())
                .contains(Reading.THICKNESS, Reading.DRY_MASS, Reading.RESIN_USED)
                .doesNotContain(Reading.FILM_THICKNESS, Reading.VACUUM);
        assertThat(pages.get(3).readings()).contains(Reading.VACUUM, Reading.PRESSURE_DROP);
    }

    @Test
    void aWetBagIsFittedAfterTheLayers() {
        JobSheet.Page page = JobSheet.of(PlanParts.plan(
                        Part.of("p", List.of(zone("z", 0.2, List.of(), layer(mat(0.3), PlanParts.BAG, "")))),
                        workshop(20, 1)))
                .pages()
                .get(0);

        assertThat(actions(page)).containsExactly(Action.MIX, Action.LAY, Action.BAG, Action.AWAIT_GEL);
        assertThat(page.readings()).contains(Reading.VACUUM);
    }

    @Test
    void waxIsGroundFirst() {
        Layer waxed = layer(
                mat(0.3),
                PlanParts.layUp(laminate.process.Process.HAND_LAY_UP, TestMaterials.waxed(PlanParts.POLYESTER), 0.02),
                "first");
        List<JobSheet.Page> pages = JobSheet.of(PlanParts.plan(
                        Part.of("p", List.of(zone("z", 0.2, List.of(), waxed, layer(mat(0.3), HAND, "second")))),
                        workshop(20, 1)))
                .pages();

        assertThat(actions(pages.get(0))).first().isEqualTo(Action.MIX);
        assertThat(actions(pages.get(1))).first().isEqualTo(Action.PREPARE_SURFACE);
    }

    @Test
    void cautionsStandOnThePagesThatTheyConcern() {
        List<JobSheet.Page> pages = JobSheet.of(PlanParts.plan(
                        Part.of(
                                "p",
                                List.of(zone(
                                        "z", 0.5, List.of(gelcoat(1)), layer(mat(0.3), PlanParts.HAND_EPOXY, "")))),
                        workshop(20, 1)))
                .pages();

        assertThat(texts(pages.get(0))).contains("Peroxide").contains("Styrene").doesNotContain("nitrile");
        assertThat(texts(pages.get(1))).contains("nitrile").doesNotContain("Peroxide");
    }

    private static String texts(JobSheet.Page page) {
        return String.join(
                "\n", page.cautions().stream().map(caution -> caution.text()).toList());
    }

    private static List<Action> actions(JobSheet.Page page) {
        return page.steps().stream().map(JobSheet.Step::action).toList();
    }
}
