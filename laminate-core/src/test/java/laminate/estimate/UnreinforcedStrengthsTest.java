package laminate.estimate;

import static laminate.estimate.StrongLayers.ISO;
import static laminate.estimate.StrongLayers.LIBRARY;
import static laminate.estimate.StrongLayers.lay;
import static laminate.estimate.StrongLayers.strength;
import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.with;
import static laminate.testing.TestParts.HAND;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Bulker;
import laminate.material.Core;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import org.junit.jupiter.api.Test;

/** Strengths of cores, bulking mats, beds and plies given directly. */
class UnreinforcedStrengthsTest {
    @Test
    void aCoreHasTheFiguresOfItsSheet() {
        LaidLayer laid = lay(LIBRARY, TestParts.core(HAND));
        assertThat(strength(laid)).isEqualTo(new CoreStrength(1.15e6, 1.15e6, 1.4e6, OptionalDouble.empty()));
        assertThat(laid.strengths().get(0).status()).contains(Status.USER);
        assertThat(laid.strengths().get(0).text()).startsWith("figures of pvc-80, shear alike in both directions: ");
        Core tested = new Core(
                "t",
                "t",
                Core.Type.PET,
                false,
                PVC.figures().with(Property.TENSILE_STRENGTH, new Figure(2.3e6, "x", Status.COMMON_PRACTICE)));
        LaidLayer pulled = lay(LIBRARY, CoreLayer.of(tested, 0.01, HAND));
        assertThat(((CoreStrength) strength(pulled)).tension()).hasValue(2.3e6);
        assertThat(pulled.strengths().get(0).status()).contains(Status.COMMON_PRACTICE);
    }

    @Test
    void aBulkerHasStrengthIfItsFiguresStand() {
        LaidLayer bare = lay(LIBRARY, new BulkerLayer(BULKING_MAT, HAND, ""));
        assertThat(bare.plies().get(0).lamina().strength()).isEmpty();
        assertThat(bare.strengths())
                .containsExactly(
                        StrengthOrigin.missing("bulking-mat-3 states no shear-strength, compressive-strength"));
        Bulker strong = new Bulker(
                "b",
                "b",
                BULKING_MAT.figures().with(Property.SHEAR_STRENGTH, 4e6).with(Property.COMPRESSIVE_STRENGTH, 12e6));
        assertThat(strength(lay(LIBRARY, new BulkerLayer(strong, HAND, ""))))
                .isEqualTo(new CoreStrength(4e6, 4e6, 12e6, OptionalDouble.empty()));
    }

    @Test
    void aBedIsAPlyOfItsOwn() {
        Dose dose = Dose.usual(PASTE, TestMaterials.MEKP);
        LaidLayer bare = lay(LIBRARY, bedded(new Bed(PASTE, dose, 0.001)));
        assertThat(bare.strengths()).hasSize(2);
        assertThat(bare.strengths().get(0))
                .isEqualTo(StrengthOrigin.missing("bonding-paste states no tensile-strength, compressive-strength"));
        Resin strong = with(with(PASTE, Property.TENSILE_STRENGTH, 30e6), Property.COMPRESSIVE_STRENGTH, 90e6);
        LaidLayer laid = lay(LIBRARY, bedded(new Bed(strong, dose, 0.001)));
        MatStrength paste = (MatStrength) strength(laid);
        assertThat(paste.tension()).isEqualTo(30e6);
        assertThat(paste.compression()).isEqualTo(90e6);
        assertThat(paste.shear()).isCloseTo(30e6, within(1.0));
        assertThat(laid.plies().get(1).lamina().strength().orElseThrow()).isInstanceOf(CoreStrength.class);
    }

    private static CoreLayer bedded(Bed bed) {
        return new CoreLayer(PVC, 0.01, 0, CoreFinish.PLAIN, HAND, Optional.of(bed), "");
    }

    @Test
    void aLaminaIsAsStrongAsStated() {
        Lamina bare = Lamina.of(40e9, 8e9, 3e9, 0.3);
        Lamina strong = bare.withStrength(PlyStrength.of(1e9, 6e8, 4e7, 1.2e8, 6e7));
        assertThat(lay(LIBRARY, lamina(bare)).strengths())
                .containsExactly(StrengthOrigin.missing("the lamina states no strengths"));
        LaidLayer laid = lay(ISO, lamina(strong));
        assertThat(laid.plies()).containsExactly(new Ply(strong, 0.001, 0));
        assertThat(laid.strengths()).containsExactly(StrengthOrigin.known("stated by the user", Status.USER));
    }

    private static LaminaLayer lamina(Lamina lamina) {
        return new LaminaLayer(lamina, 1600, 0.001, 0, "");
    }
}
