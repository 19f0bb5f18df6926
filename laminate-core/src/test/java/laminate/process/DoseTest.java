package laminate.process;

import static laminate.testing.TestMaterials.AMINE;
import static laminate.testing.TestMaterials.CUMENE;
import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.FLOWCOAT;
import static laminate.testing.TestMaterials.GELCOAT;
import static laminate.testing.TestMaterials.MEKP;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYESTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import laminate.material.Resin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Doses by mass and by volume; those outside a resin's range are refused. */
class DoseTest {

    @Test
    void theUsualDoseIsThatOfTheResin() {
        assertThat(Dose.usual(POLYESTER, MEKP)).isEqualTo(new Dose(MEKP, 0.015));
        assertThat(Dose.usual(EPOXY, AMINE).ratio()).isEqualTo(0.30);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.02, 0.03})
    void aDoseWithinTheRangeIsTaken(double ratio) {
        assertThat(Dose.of(POLYESTER, MEKP, ratio).ratio()).isEqualTo(ratio);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.00999, 0.03001, 0, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
    void aDoseOutsideTheRangeIsRefused(double ratio) {
        assertThatThrownBy(() -> Dose.of(POLYESTER, MEKP, Double.isFinite(ratio) ? ratio : 1e9))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("polyester-ortho takes 1 % to 3 % of mekp by mass, not ");
        assertThatThrownBy(() -> Dose.of(POLYESTER, MEKP, ratio)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aTwoPartResinKeepsToItsRatio() {
        assertThat(Dose.of(EPOXY, AMINE, 0.31).shareOfMatrix()).isCloseTo(0.31 / 1.31, within(1e-15));
        assertThatThrownBy(() -> Dose.of(EPOXY, AMINE, 0.32))
                .hasMessage("epoxy-laminating takes 29 % to 31 % of amine-hardener by mass, not 32 %");
    }

    /** 10 ml/kg of 1170 kg/m³ is 1.17 %: trade tables call it "1 %". */
    @Test
    void aDoseByVolumeIsTurnedIntoMassByTheAgentsDensity() {
        assertThat(Dose.ofVolume(POLYESTER, MEKP, 10e-6).ratio()).isCloseTo(0.0117, within(1e-15));
        assertThatThrownBy(() -> Dose.ofVolume(POLYESTER, MEKP, 8.5e-6)).hasMessageContaining("not 0.9945 %");
        assertThatThrownBy(() -> Dose.ofVolume(POLYESTER, MEKP, 25.7e-6)).hasMessageContaining("not 3.007 %");
    }

    /** 1 % by mass is 8.547 ml/kg; rounding in the conversion must not put the edge out of reach. */
    @Test
    void theEdgesOfTheRangeCanBeReachedByVolume() {
        assertThat(Dose.ofVolume(POLYESTER, MEKP, 0.01 / 1170).ratio()).isCloseTo(0.01, within(1e-15));
        assertThat(Dose.ofVolume(POLYESTER, MEKP, 0.03 / 1170).ratio()).isCloseTo(0.03, within(1e-15));
    }

    @Test
    void anAgentThatDoesNotCureTheResinIsRefused() {
        assertThatThrownBy(() -> Dose.usual(EPOXY, MEKP))
                .hasMessage("mekp does not cure epoxy-laminating; it takes amine-hardener");
        assertThatThrownBy(() -> Dose.of(POLYESTER, AMINE, 0.02))
                .hasMessage("amine-hardener does not cure polyester-ortho; it takes mekp, cumene-peroxide");
        assertThat(Dose.usual(POLYESTER, CUMENE).shareOfMatrix()).isZero();
    }

    @Test
    void aDoseGivesTheMassOfAgent() {
        assertThat(new Dose(MEKP, 0.02).massFor(5)).isCloseTo(0.1, within(1e-16));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -0.01, Double.NaN, Double.POSITIVE_INFINITY})
    void aDoseIsAboveNothing(double ratio) {
        assertThatThrownBy(() -> new Dose(MEKP, ratio)).hasMessageContaining("a dose must be above zero");
    }

    static Resin[] notForLaminating() {
        return new Resin[] {GELCOAT, FLOWCOAT, PASTE};
    }

    @ParameterizedTest
    @MethodSource("notForLaminating")
    void layersAreLaidWithLaminatingResins(Resin resin) {
        assertThatThrownBy(() -> new LayUp(Process.HAND_LAY_UP, resin, new Dose(MEKP, 0.018)))
                .hasMessage(resin.id() + " is a " + resin.use().word()
                        + "; layers are laid with a laminating or infusion resin");
    }

    @Test
    void aLayUpChecksItsDose() {
        assertThatThrownBy(() -> new LayUp(Process.HAND_LAY_UP, POLYESTER, new Dose(MEKP, 0.04)))
                .hasMessageContaining("1 % to 3 %");
    }
}
