package laminate.estimate;

import static laminate.testing.TestMaterials.ARAMID;
import static laminate.testing.TestMaterials.BULKING_MAT;
import static laminate.testing.TestMaterials.CARBON;
import static laminate.testing.TestMaterials.EPOXY;
import static laminate.testing.TestMaterials.E_GLASS;
import static laminate.testing.TestMaterials.FLAX;
import static laminate.testing.TestMaterials.PASTE;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.combination;
import static laminate.testing.TestMaterials.hybridCloth;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.single;
import static laminate.testing.TestMaterials.unidirectional;
import static laminate.testing.TestMaterials.with;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.layUp;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Bulker;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Bed;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.CoreFinish;
import laminate.process.Dose;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.StiffnessBasis;
import laminate.process.StrengthBasis;
import laminate.process.Workshop;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import laminate.theory.CoreStrength;
import laminate.theory.FibreProperties;
import laminate.theory.FibreStrength;
import laminate.theory.GlassContentStrengths;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.MatrixProperties;
import laminate.theory.MatrixStrength;
import laminate.theory.Micromechanics;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import laminate.theory.Strength;
import laminate.theory.StrengthMicromechanics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Strengths of laid plies: by the library, by the standard, as measured, and what is said where there are none. */
class PlyStrengthsTest {
    private static final Workshop LIBRARY = Workshop.USUAL;
    private static final Workshop ISO = Workshop.USUAL.withStrength(StrengthBasis.ISO_12215_5);
    private static final Resin STRONG = strong(POLYESTER, Status.MEMORY);
    private static final LayUp STRONG_HAND = layUp(Process.HAND_LAY_UP, STRONG);

    private static Resin strong(Resin resin, Status status) {
        Figures figures = resin.figures()
                .with(Property.TENSILE_STRENGTH, new Figure(58e6, "a handbook", status))
                .with(Property.COMPRESSIVE_STRENGTH, new Figure(120e6, "a handbook", Status.MEMORY))
                .with(Property.ELONGATION, new Figure(0.02, "a handbook", Status.MEMORY));
        return new Resin(
                resin.id(),
                resin.name(),
                resin.family(),
                resin.use(),
                resin.waxed(),
                figures,
                resin.cures(),
                resin.gelPoints());
    }

    private static LayUp strongEpoxy() {
        Resin epoxy = strong(EPOXY, Status.MEMORY);
        return new LayUp(Process.HAND_LAY_UP, epoxy, Dose.usual(epoxy, TestMaterials.AMINE));
    }

    private static LaidLayer lay(Workshop workshop, Layer layer) {
        return new Estimator(workshop).lay(zone(1, layer)).layers().get(0);
    }

    private static ReinforcementLayer strong(Reinforcement reinforcement) {
        return ReinforcementLayer.of(reinforcement, STRONG_HAND);
    }

    private static Strength strength(LaidLayer laid) {
        return laid.plies().get(0).lamina().strength().orElseThrow();
    }

    private static PlyStrength straight(LaidLayer laid) {
        return StrengthMicromechanics.straight(
                FibreProperties.of(72.4e9, 72.4e9, 29.67e9, 0.22),
                FibreStrength.inTension(2e9),
                MatrixProperties.of(3.3e9, 0.36),
                new MatrixStrength(58e6, 120e6, 0.02),
                laid.fibreVolumeFraction(),
                laid.voids());
    }

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

    private static Reinforcement measured(Reinforcement plain, Figures more) {
        Figures ply = Figures.none()
                .with(Property.FIBRE_VOLUME_FRACTION, 0.3)
                .with(Property.E1, 15e9)
                .with(Property.E2, 14e9)
                .with(Property.G12, 3e9)
                .with(Property.NU12, 0.15);
        for (var figure : more.asMap().entrySet()) {
            ply = ply.with(figure.getKey(), figure.getValue());
        }
        return new Reinforcement(
                plain.id(),
                plain.name(),
                plain.form(),
                plain.plies(),
                plain.binder(),
                plain.figures(),
                Optional.of(ply));
    }

    private static Figures five() {
        Figures figures = Figures.none();
        double value = 320e6;
        for (Property property : List.of(Property.XT, Property.XC, Property.YT, Property.YC, Property.S)) {
            figures = figures.with(property, new Figure(value, "test sheet", Status.PRINTED));
            value -= 60e6;
        }
        return figures;
    }

    @ParameterizedTest
    @EnumSource(StrengthBasis.class)
    void measuredStrengthsWinUnderEitherBasis(StrengthBasis basis) {
        Workshop workshop = Workshop.USUAL.withStrength(basis);
        LaidLayer laid = lay(workshop, strong(measured(roving(0.6), five())));
        assertThat(strength(laid)).isEqualTo(PlyStrength.of(320e6, 260e6, 200e6, 140e6, 80e6));
        assertThat(laid.strengths())
                .containsExactly(StrengthOrigin.known("measured on roving-600: test sheet", Status.PRINTED));
    }

    @Test
    void measuredStrainsAndS23GoWithTheStrengths() {
        Figures figures = five().with(Property.S23, new Figure(40e6, "test sheet", Status.PRINTED));
        double strain = 0.01;
        for (Property property : Reinforcement.MEASURED_STRAINS) {
            figures = figures.with(property, strain);
            strain += 0.001;
        }
        PlyStrength strength = (PlyStrength) strength(lay(LIBRARY, strong(measured(roving(0.6), figures))));
        assertThat(strength.S23()).hasValue(40e6);
        StrainLimits limits = strength.strainLimits().orElseThrow();
        assertThat(new double[] {limits.e1t(), limits.e1c(), limits.e2t(), limits.e2c(), limits.g12()})
                .containsExactly(new double[] {0.010, 0.011, 0.012, 0.013, 0.014}, within(1e-12));
    }

    @Test
    void aMeasuredMatIsAsWeakAsItsWeakerDirection() {
        Figures figures = five().with(Property.S, new Figure(110e6, "the yard's own", Status.USER));
        LaidLayer laid = lay(LIBRARY, strong(measured(mat(0.45), figures)));
        assertThat(strength(laid)).isEqualTo(new MatStrength(200e6, 140e6, 110e6));
        assertThat(laid.strengths().get(0).text()).endsWith("test sheet; the yard's own");
        assertThat(laid.strengths().get(0).status()).contains(Status.USER);
    }

    @Test
    void measuredModuliWithoutStrengthsLeaveTheStrengthToTheBasis() {
        Workshop marine = LIBRARY.withStiffness(StiffnessBasis.usual(Micromechanics.MARINE_RULE));
        LaidLayer laid = lay(marine, strong(measured(single("c", Form.UNIDIRECTIONAL, CARBON, 0.3), Figures.none())));
        assertThat(laid.plies().get(0).lamina().E1()).isEqualTo(15e9);
        assertThat(laid.strengths().get(0).text()).startsWith("micromechanics of carbon");
    }

    @Test
    void aHybridClothHasNoStrengthUnlessMeasured() {
        LayUp epoxy = strongEpoxy();
        LaidLayer laid = lay(LIBRARY, ReinforcementLayer.of(hybridCloth(0.2), epoxy));
        assertThat(laid.plies()).hasSize(1);
        assertThat(laid.plies().get(0).lamina().strength()).isEmpty();
        assertThat(laid.strengths().get(0).text()).contains("wants measured strengths");
        LaidLayer tested = lay(LIBRARY, ReinforcementLayer.of(measured(hybridCloth(0.2), five()), epoxy));
        assertThat(tested.strengths()).hasSize(1).allMatch(StrengthOrigin::isKnown);
        assertThat(strength(tested)).isInstanceOf(PlyStrength.class);
    }

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

    @Test
    void anOriginIsToldAndThereIsOneForEachPly() {
        assertThatThrownBy(() -> StrengthOrigin.missing(" ")).hasMessageContaining("must be told");
        LaidLayer laid = lay(LIBRARY, strong(mat(0.3)));
        assertThatThrownBy(() -> new LaidLayer(
                        laid.layer(), laid.thickness(), 0, 0, 0, laid.resinMass(), 0, 0, 0, laid.plies(), List.of()))
                .hasMessage("1 plies cannot have 0 origins of strength");
    }
}
