package laminate.estimate;

import static laminate.estimate.StrongLayers.ISO;
import static laminate.estimate.StrongLayers.LIBRARY;
import static laminate.estimate.StrongLayers.lay;
import static laminate.estimate.StrongLayers.straight;
import static laminate.estimate.StrongLayers.strength;
import static laminate.estimate.StrongLayers.strong;
import static laminate.estimate.StrongLayers.strongEpoxy;
import static laminate.testing.TestMaterials.ARAMID;
import static laminate.testing.TestMaterials.CARBON;
import static laminate.testing.TestMaterials.E_GLASS;
import static laminate.testing.TestMaterials.FLAX;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.combination;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.single;
import static laminate.testing.TestMaterials.unidirectional;
import static laminate.testing.TestMaterials.with;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.layUp;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Status;
import laminate.part.ReinforcementLayer;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.StrengthBasis;
import laminate.process.Workshop;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import laminate.theory.GlassContentStrengths;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.PlyStrength;
import laminate.theory.Strength;
import laminate.theory.StrengthMicromechanics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Strengths of laid plies by the library and by the standard, and what is said where there are none. */
class PlyStrengthsTest {
    @Test
    void everyFormFollowsItsTheory() {
        LaidLayer straight = lay(LIBRARY, strong(unidirectional(0.6)));
        assertThat(strength(straight)).isEqualTo(straight(straight));
        LaidLayer woven = lay(LIBRARY, strong(roving(0.6)));
        assertThat(strength(woven)).isEqualTo(StrengthMicromechanics.woven(straight(woven), 0.5, 1.8 / 2.7));
        LaidLayer mat = lay(LIBRARY, strong(mat(0.45)));
        assertThat(strength(mat)).isEqualTo(StrengthMicromechanics.mat(straight(mat)));
    }

    @Test
    void moduliAreThoseWithoutStrength() {
        for (Reinforcement reinforcement : List.of(mat(0.45), roving(0.6), unidirectional(0.6))) {
            Lamina plain = lay(LIBRARY, ReinforcementLayer.of(reinforcement, HAND))
                    .plies()
                    .get(0)
                    .lamina();
            Lamina strong = lay(LIBRARY, strong(reinforcement)).plies().get(0).lamina();
            assertThat(plain.strength()).isEmpty();
            assertThat(plain.withStrength(strong.strength().orElseThrow())).isEqualTo(strong);
        }
    }

    @Test
    void theOriginNamesFibreResinAndFormulas() {
        LaidLayer woven = lay(LIBRARY, strong(roving(0.6)));
        StrengthOrigin origin = woven.strengths().get(0);
        assertThat(origin.isKnown()).isTrue();
        assertThat(origin.status()).contains(Status.MEMORY);
        assertThat(origin.text())
                .startsWith("micromechanics of e-glass and polyester-ortho: ")
                .contains("crossed plies, 67 % left by crimp (class-rule breaking strains");
        assertThat(lay(LIBRARY, strong(mat(0.45))).strengths().get(0).text())
                .endsWith("averaged over all directions (Chen 1971)");
    }

    /** Formulas are from memory, so that nothing is more than that; a figure without a source is less. */
    @ParameterizedTest
    @CsvSource({"PRINTED, MEMORY", "USER, MEMORY", "MEMORY, MEMORY", "COMMON_PRACTICE, COMMON_PRACTICE"})
    void theWeakestFigureGivesTheStatus(Status resin, Status expected) {
        LayUp layUp = layUp(Process.HAND_LAY_UP, strong(POLYESTER, resin));
        LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(mat(0.3), layUp));
        assertThat(laid.strengths()).extracting(StrengthOrigin::status).containsExactly(Optional.of(expected));
    }

    @Test
    void everyPlyOfAReinforcementHasItsOrigin() {
        LaidLayer laid = lay(LIBRARY, strong(combination(0.6, 0.225)));
        assertThat(laid.plies()).hasSize(2);
        assertThat(laid.strengths()).hasSize(2);
        assertThat(laid.plies().get(0).lamina().strength().orElseThrow()).isInstanceOf(PlyStrength.class);
        assertThat(laid.plies().get(1).lamina().strength().orElseThrow()).isInstanceOf(MatStrength.class);
    }

    @Test
    void whatIsMissingIsToldAndNothingMadeUp() {
        LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(mat(0.3), HAND));
        assertThat(laid.plies().get(0).lamina().strength()).isEmpty();
        assertThat(laid.strengths())
                .containsExactly(StrengthOrigin.missing(
                        "polyester-ortho states no tensile-strength, compressive-strength, elongation"));
        assertThat(laid.strengths().get(0).isKnown()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(names = {"TENSILE_STRENGTH", "COMPRESSIVE_STRENGTH", "ELONGATION"})
    void everyStrengthOfTheResinIsWanted(Property present) {
        LayUp layUp = layUp(Process.HAND_LAY_UP, with(POLYESTER, present, 0.02));
        LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(mat(0.3), layUp));
        assertThat(laid.plies().get(0).lamina().strength()).isEmpty();
        assertThat(laid.strengths().get(0).text())
                .startsWith("polyester-ortho states no ")
                .doesNotContain(present.key());
    }

    @Test
    void carbonIsReckonedLikeGlassAndFibresThatFoldWantTheirFigure() {
        LayUp epoxy = strongEpoxy();
        assertThat(lay(LIBRARY, ReinforcementLayer.of(single("c", Form.UNIDIRECTIONAL, CARBON, 0.2), epoxy))
                        .strengths()
                        .get(0)
                        .isKnown())
                .isTrue();
        for (Fibre fibre : List.of(ARAMID, FLAX)) {
            LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(single("f", Form.WOVEN_CLOTH, fibre, 0.2), epoxy));
            assertThat(laid.plies().get(0).lamina().strength()).isEmpty();
            assertThat(laid.strengths())
                    .containsExactly(StrengthOrigin.missing(fibre.id() + " states no compressive-strength"));
        }
    }

    @Test
    void aFibreThatFoldsLimitsItsPlyInCompression() {
        Fibre folding = new Fibre(
                "aramid",
                "Aramid",
                Fibre.Type.ARAMID,
                ARAMID.figures().with(Property.COMPRESSIVE_STRENGTH, new Figure(430e6, "x", Status.COMMON_PRACTICE)));
        LayUp epoxy = strongEpoxy();
        LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(single("a", Form.UNIDIRECTIONAL, folding, 0.2), epoxy));
        PlyStrength strength = (PlyStrength) strength(laid);
        assertThat(strength.Xc()).isBetween(430e6 * laid.fibreVolumeFraction(), 450e6 * laid.fibreVolumeFraction());
        assertThat(laid.strengths().get(0).status()).contains(Status.COMMON_PRACTICE);
    }

    @Test
    void turningARollTurnsNoStrength() {
        for (double angle : new double[] {0, 30, 45, 90}) {
            ReinforcementLayer plain = strong(biaxial(0.6));
            LaidLayer turned = lay(
                    LIBRARY,
                    new ReinforcementLayer(plain.reinforcement(), angle, true, plain.layUp(), Optional.empty(), ""));
            LaidLayer upright = lay(LIBRARY, plain);
            assertThat(turned.plies().get(1).lamina())
                    .isEqualTo(upright.plies().get(0).lamina());
            assertThat(turned.strengths()).isEqualTo(upright.strengths());
        }
    }

    @Test
    void theStandardsFormulasFollowTheGlassContent() {
        LaidLayer mat = lay(ISO, ReinforcementLayer.of(mat(0.45), HAND));
        assertThat(mat.fibreMassFraction()).isCloseTo(0.30, within(1e-12));
        assertClose(strength(mat), GlassContentStrengths.mat(0.30));
        LaidLayer roving = lay(ISO, ReinforcementLayer.of(roving(0.6), HAND));
        assertThat(((PlyStrength) strength(roving)).Xt()).isCloseTo(182e6, within(1.0));
        LaidLayer straight = lay(ISO, ReinforcementLayer.of(biaxial(0.6), HAND));
        assertThat(straight.plies())
                .allSatisfy(ply -> assertThat(ply.lamina().strength())
                        .contains(GlassContentStrengths.straight(0.5, ply.lamina())));
        assertThat(roving.strengths().get(0).status()).contains(Status.MEMORY);
        assertThat(roving.strengths().get(0).text()).contains("from memory, for E-glass and polyester");
    }

    private static void assertClose(Strength strength, MatStrength expected) {
        MatStrength mat = (MatStrength) strength;
        assertThat(mat.tension()).isCloseTo(expected.tension(), within(1.0));
        assertThat(mat.compression()).isCloseTo(expected.compression(), within(1.0));
        assertThat(mat.shear()).isCloseTo(expected.shear(), within(1.0));
    }

    /** Voids thicken a layer of a given glass content; the standard's formulas do not know them. */
    @Test
    void voidsDoNotEnterTheStandardsFormulas() {
        Workshop dense = TestParts.withVoids(0).withStrength(StrengthBasis.ISO_12215_5);
        Workshop porous = TestParts.withVoids(0.05).withStrength(StrengthBasis.ISO_12215_5);
        ReinforcementLayer layer = ReinforcementLayer.of(mat(0.45), HAND);
        assertClose(strength(lay(porous, layer)), (MatStrength) strength(lay(dense, layer)));
    }

    @ParameterizedTest
    @CsvSource({"0.249, false", "0.25, true", "0.36, true", "0.361, false"})
    void outsideTheStandardsContentsThereIsNoStrength(double psi, boolean known) {
        ReinforcementLayer layer = ReinforcementLayer.of(mat(0.45), HAND).with(FibreContent.ofMassFraction(psi));
        StrengthOrigin origin = lay(ISO, layer).strengths().get(0);
        assertThat(origin.isKnown()).isEqualTo(known);
        assertThat(lay(ISO, layer).plies().get(0).lamina().strength().isPresent())
                .isEqualTo(known);
        if (!known) {
            assertThat(origin.text()).contains("the strength of mat hold for a glass content of 0.25 to 0.36 by mass");
        }
    }

    @Test
    void theStandardIsForGlassInBalancedWeavesAndSaysWhereItIsStretched() {
        LaidLayer carbon = lay(ISO, strong(single("c", Form.UNIDIRECTIONAL, CARBON, 0.3)));
        assertThat(carbon.plies().get(0).lamina().strength()).isEmpty();
        assertThat(carbon.strengths())
                .containsExactly(StrengthOrigin.missing("iso-12215-5 has formulas for glass only, not for carbon"));
        Reinforcement uneven = new Reinforcement(
                "r",
                "r",
                Form.WOVEN_ROVING,
                List.of(new FibrePly(E_GLASS, Form.WOVEN_ROVING, 0, 0.6, 0.6)),
                Optional.empty(),
                Figures.none().with(Property.AREAL_WEIGHT, 0.6),
                Optional.empty());
        assertThat(lay(ISO, strong(uneven)).strengths())
                .containsExactly(StrengthOrigin.missing("iso-12215-5 has formulas for balanced weaves only"));
        LaidLayer vinylester = lay(
                ISO,
                ReinforcementLayer.of(roving(0.6), TestParts.layUp(Process.HAND_LAY_UP, TestMaterials.VINYLESTER)));
        assertThat(vinylester.strengths().get(0).text()).endsWith("taken for vinylester as well");
        assertThat(vinylester.strengths().get(0).status()).contains(Status.COMMON_PRACTICE);
    }

    @Test
    void anOriginIsToldAndThereIsOneForEachPly() {
        assertThatThrownBy(() -> StrengthOrigin.missing(" ")).hasMessageContaining("must be told");
        LaidLayer laid = lay(LIBRARY, strong(mat(0.3)));
        assertThatThrownBy(() -> new LaidLayer(
                        laid.layer(), laid.thickness(), 0, 0, 0, laid.resinMass(), 0, 0, 0, laid.plies(), List.of()))
                .hasMessage("1 plies cannot have 0 origins of strength");
    }
}
