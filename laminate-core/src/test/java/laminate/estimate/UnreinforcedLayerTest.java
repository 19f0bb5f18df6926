package laminate.estimate;

import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.HONEYCOMB;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYSTYRENE;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.Grooves;
import laminate.process.Workshop;
import laminate.theory.Lamina;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cores with their finish and bed, bulking mats, and plies that are given directly. */
class UnreinforcedLayerTest {
    private static final Estimator USUAL = new Estimator(Workshop.USUAL);

    /** Two faces of 0.25 kg/m² by hand, of 0.40 infused; 80 kg/m³ by 10 mm of core. */
    @Test
    void aPlainCoreTakesResinAtBothFaces() {
        LaidLayer wet = lay(Workshop.USUAL, CoreLayer.of(PVC, 0.010, HAND));
        LaidLayer infused = lay(Workshop.USUAL, CoreLayer.of(PVC, 0.010, INFUSED));
        assertThat(wet.resinMass().planned()).isEqualTo(0.5);
        assertThat(infused.resinMass().planned()).isEqualTo(0.8);
        assertThat(wet.coreMass()).isCloseTo(0.8, within(1e-15));
        assertThat(wet.thickness().planned()).isEqualTo(0.010);
        assertThat(wet.massPerArea().planned()).isCloseTo(1.3, within(1e-15));
        assertThat(wet.isReinforced()).isFalse();
        assertThat(wet.fibreMassFraction() + wet.fibreVolumeFraction()).isZero();
    }

    /** Grooves of 2 × 2 mm at 20 mm in both faces: 2 · 1200 · 0.2 mm; holes of 2 mm at 50 mm through 10 mm. */
    @ParameterizedTest
    @CsvSource({"PLAIN, 0", "SCORED, 0.5", "GROOVED, 0.48", "PERFORATED, 0.015080"})
    void theFinishOfACoreTakesResinOnTop(CoreFinish.Kind kind, double extra) {
        LaidLayer laid = lay(Workshop.USUAL, core(CoreFinish.of(kind), Optional.empty()));
        assertThat(laid.resinMass().planned()).isCloseTo(0.5 + extra, within(1e-6));
        assertThat(laid.thickness().planned()).isEqualTo(0.010);
    }

    @Test
    void statedGroovesAreReckonedByTheirFacesAndWays() {
        Grooves grid = new Grooves(0.003, 0.002, 0.030, 1, 2);
        LaidLayer laid = lay(Workshop.USUAL, core(CoreFinish.grooved(grid), Optional.empty()));
        double volume = 2 * 0.003 * 0.002 / 0.030 - 0.003 * 0.003 * 0.002 / (0.030 * 0.030);
        assertThat(laid.resinMass().planned()).isCloseTo(0.5 + 1200 * volume, within(1e-14));
    }

    @Test
    void groovesMustFitTheCore() {
        assertThatThrownBy(() -> core(CoreFinish.grooved(new Grooves(0.002, 0.005, 0.02, 2, 1)), Optional.empty()))
                .hasMessageContaining("pvc-80 of 10.0 mm cannot hold grooves 5.0 mm deep in both faces");
        assertThat(core(CoreFinish.grooved(new Grooves(0.002, 0.005, 0.02, 1, 1)), Optional.empty())
                        .finish()
                        .grooves())
                .isPresent();
        assertThatThrownBy(() -> new CoreFinish(CoreFinish.Kind.PLAIN, Optional.of(Grooves.USUAL)))
                .hasMessage("grooves go with a grooved finish, not with plain");
    }

    /** A bed of 1 mm takes the place of the resin at one face; it is a ply of the paste's modulus. */
    @Test
    void aBedIsAPlyOfPaste() {
        LaidLayer laid = lay(
                Workshop.USUAL, core(CoreFinish.PLAIN, Optional.of(new Bed(PASTE, Dose.usual(PASTE, MEKP), 0.001))));
        assertThat(laid.resinMass().planned()).isEqualTo(0.25);
        assertThat(laid.bedMass()).isCloseTo(1.22, within(1e-15));
        assertThat(laid.thickness().planned()).isCloseTo(0.011, within(1e-16));
        assertThat(laid.plies()).hasSize(2);
        assertThat(laid.plies().get(0).lamina().E1()).isEqualTo(3e9);
        assertThat(laid.plies().get(1).lamina().E1()).isEqualTo(55e6);
        assertThat(laid.plies().get(1).lamina().G13()).isEqualTo(27e6);
        assertThat(laid.plies().get(1).lamina().G23()).isEqualTo(25e6);
    }

    private static CoreLayer core(CoreFinish finish, Optional<Bed> bed) {
        return new CoreLayer(PVC, 0.010, 0, finish, HAND, bed, "");
    }

    @Test
    void anOpenCoreCannotBeInfused() {
        assertThatThrownBy(() -> CoreLayer.of(HONEYCOMB, 0.010, INFUSED)).hasMessageContaining("open cells");
        assertThatThrownBy(() -> CoreLayer.of(POLYSTYRENE, 0.010, INFUSED))
                .hasMessage("ps-30 states no uptake-infusion, what a face takes up under vacuum; add it to the core");
        assertThat(CoreLayer.of(HONEYCOMB, 0.010, BAG).material()).isEqualTo("honeycomb-48");
    }

    /** 3 mm at 620 kg/m³ impregnated is 1.86 kg/m², 0.105 of it dry: trade, 1 mm takes about 0.6 kg/m². */
    @Test
    void aBulkingMatTakesResinToItsImpregnatedDensity() {
        LaidLayer laid = lay(Workshop.USUAL, new BulkerLayer(BULKING_MAT, HAND, ""));
        assertThat(laid.resinMass().planned()).isCloseTo(1.755, within(1e-14));
        assertThat(laid.massPerArea().planned()).isCloseTo(1.86, within(1e-14));
        assertThat(laid.resinMass().planned() / 3).isCloseTo(0.6, within(0.02));
        assertThat(laid.coreMass()).isEqualTo(0.105);
        assertThat(laid.plies())
                .singleElement()
                .satisfies(ply -> assertThat(ply.thickness()).isEqualTo(0.003));
    }

    @Test
    void aPlyGivenDirectlyIsTakenAsItIs() {
        Lamina lamina = Lamina.of(181e9, 10.3e9, 7.17e9, 0.28);
        LaidLayer laid = lay(Workshop.USUAL, new LaminaLayer(lamina, 1600, 0.005, 30, ""));
        assertThat(laid.massPerArea().planned()).isCloseTo(8, within(1e-14));
        assertThat(laid.plies()).singleElement().satisfies(ply -> {
            assertThat(ply.lamina()).isEqualTo(lamina);
            assertThat(ply.angleDegrees()).isEqualTo(30);
        });
        ZoneEstimate zone = USUAL.lay(zone(1, new LaminaLayer(lamina, 1600, 0.005, 30, "")));
        assertThat(zone.fibreMassFraction() + zone.fibreVolumeFraction() + zone.voidFraction())
                .isZero();
    }

    private static LaidLayer lay(Workshop workshop, Layer layer) {
        return new Estimator(workshop).lay(zone(1, layer)).layers().get(0);
    }
}
