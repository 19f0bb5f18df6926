package laminate.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import laminate.estimate.Estimator;
import laminate.estimate.LaidLayer;
import laminate.estimate.StrengthOrigin;
import laminate.material.Agent;
import laminate.material.Bulker;
import laminate.material.Core;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.theory.MatStrength;
import laminate.theory.PlyStrength;
import laminate.theory.Strength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the library knows of the strength of laid layers, and what it says of those it does not know. */
class StrengthOfLaminatesTest {
    private static final MaterialLibrary LIBRARY = new MaterialLibrary();

    private static LayUp hand(String resinId) {
        Resin resin = (Resin) LIBRARY.find(resinId).orElseThrow();
        Agent agent = (Agent) LIBRARY.find(resin.defaultCure().agent()).orElseThrow();
        return new LayUp(Process.HAND_LAY_UP, resin, Dose.usual(resin, agent));
    }

    private static LaidLayer lay(Layer layer) {
        return new Estimator(Workshop.USUAL)
                .lay(Zone.of("zone", 1, List.of(layer)))
                .layers()
                .get(0);
    }

    private static <M> Stream<M> all(Class<M> kind) {
        return LIBRARY.ids().stream()
                .map(id -> LIBRARY.find(id).orElseThrow())
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    /** Flax and the polyester of veils state no compressive strength; hybrids of two fibres have none of their own. */
    @ParameterizedTest
    @ValueSource(strings = {"polyester-ortho", "polyester-iso", "vinylester", "epoxy-laminating"})
    void everyReinforcementHasStrengthOrSaysWhyNot(String resin) {
        Map<String, String> missing = new TreeMap<>();
        all(Reinforcement.class)
                .forEach(roll -> lay(ReinforcementLayer.of(roll, hand(resin)))
                        .strengths()
                        .forEach(origin -> check(roll, origin, missing)));
        assertThat(missing.keySet())
                .allMatch(id -> id.startsWith("flax") || id.contains("polyester") || id.startsWith("carbon-aramid"));
        assertThat(missing.values())
                .contains("flax states no compressive-strength", "polyester-fibre states no compressive-strength");
    }

    private static void check(Reinforcement roll, StrengthOrigin origin, Map<String, String> missing) {
        if (origin.isKnown()) {
            assertThat(origin.status()).isNotEqualTo(Optional.of(Status.PRINTED));
        } else {
            missing.put(roll.id(), origin.text());
        }
    }

    @Test
    void everyCoreAndBulkerHasStrength() {
        LayUp hand = hand("epoxy-laminating");
        Stream<Layer> cores = all(Core.class).map(core -> CoreLayer.of(core, 0.012, hand));
        Stream<Layer> bulkers = all(Bulker.class).map(bulker -> new BulkerLayer(bulker, hand, ""));
        assertThat(Stream.concat(cores, bulkers).map(StrengthOfLaminatesTest::lay))
                .isNotEmpty()
                .allSatisfy(laid -> assertThat(laid.strengths()).allMatch(StrengthOrigin::isKnown));
    }

    /** Typical hand-laid laminates, handbooks, from memory: mat 80 to 110 MPa, woven roving 180 to 250 MPa in tension. */
    @Test
    void handLaidLaminatesAreAsStrongAsInTheTrade() {
        assertThat(((MatStrength) strength("mat-450")).tension()).isBetween(80e6, 110e6);
        assertThat(((PlyStrength) strength("roving-600")).Xt()).isBetween(180e6, 250e6);
        assertThat(((PlyStrength) strength("unidirectional-450")).Xt()).isBetween(500e6, 800e6);
    }

    private static Strength strength(String id) {
        Reinforcement roll = (Reinforcement) LIBRARY.find(id).orElseThrow();
        return lay(ReinforcementLayer.of(roll, hand("polyester-ortho")))
                .plies()
                .get(0)
                .lamina()
                .strength()
                .orElseThrow();
    }

    @Test
    void honeycombsTellTheirCells() {
        assertThat(all(Core.class).filter(core -> core.type() == Core.Type.HONEYCOMB))
                .isNotEmpty()
                .allSatisfy(core -> assertThat(core.cellSize().orElseThrow()).isBetween(0.003, 0.01));
    }
}
