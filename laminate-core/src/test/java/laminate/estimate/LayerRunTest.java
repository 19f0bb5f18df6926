package laminate.estimate;

import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.core;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.staged;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import laminate.part.BulkerLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import org.junit.jupiter.api.Test;

/** Runs of layers that are laid wet in wet. */
class LayerRunTest {
    private static final Layer LAMINA = new LaminaLayer(Lamina.isotropic(70e9, 0.3), 2700, 0.002, 0, "");

    @Test
    void coresGivenPliesAndStageNamesPartRuns() {
        List<LayerRun> runs = runs(
                staged(mat(0.3), HAND, "skin"),
                hand(mat(0.45)),
                new BulkerLayer(BULKING_MAT, HAND, ""),
                core(HAND),
                core(HAND),
                hand(mat(0.45)),
                LAMINA,
                hand(mat(0.45)),
                hand(mat(0.45)));

        assertThat(runs).extracting(LayerRun::first).containsExactly(0, 1, 5, 7);
        assertThat(runs).extracting(run -> run.layers().size()).containsExactly(1, 2, 1, 2);
        assertThat(runs).extracting(LayerRun::stage).containsExactly("skin", "", "", "");
    }

    @Test
    void onlyWhatIsLaidWetMakesARun() {
        assertThat(runs(LAMINA, core(HAND))).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> new LayerRun(0, List.of()));
    }

    /** Mat 450 is 1.08 mm, and the polyester bears 6 mm. */
    @Test
    void aThickRunIsPartedIntoAsFewStagesAsHold() {
        LayerRun run = runs(Collections.nCopies(12, hand(mat(0.45))).toArray(Layer[]::new))
                .get(0);

        assertThat(run.isTooThick()).isTrue();
        assertThat(run.weakest()).contains(POLYESTER);
        List<LayerRun> stages = run.stages();
        assertThat(stages).extracting(LayerRun::first).containsExactly(0, 5, 10);
        assertThat(stages).noneMatch(LayerRun::isTooThick);
        assertThat(stages.stream().mapToDouble(LayerRun::thickness).sum()).isCloseTo(run.thickness(), within(1e-12));
    }

    @Test
    void anotherResinOrProcessIsAnotherStage() {
        LayerRun run = runs(hand(mat(0.3)), staged(mat(0.3), HAND_EPOXY, ""), staged(mat(0.3), BAG, ""))
                .get(0);

        assertThat(run.layers()).hasSize(3);
        assertThat(run.stages()).extracting(LayerRun::first).containsExactly(0, 1, 2);
    }

    @Test
    void aResinWithoutALimitIsNeverTooThick() {
        LayerRun run = runs(Collections.nCopies(40, staged(mat(0.45), HAND_EPOXY, ""))
                        .toArray(Layer[]::new))
                .get(0);

        assertThat(run.isTooThick()).isFalse();
        assertThat(run.weakest()).isEmpty();
        assertThat(run.stages()).hasSize(1);
    }

    private static List<LayerRun> runs(Layer... layers) {
        return LayerRun.of(new Estimator(Workshop.USUAL).lay(zone(1, layers)).layers());
    }
}
