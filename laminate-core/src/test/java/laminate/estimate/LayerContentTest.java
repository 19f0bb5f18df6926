package laminate.estimate;

import static laminate.testing.TestMaterials.CARBON;
import static laminate.testing.TestMaterials.E_GLASS;
import static laminate.testing.TestMaterials.FLAX;
import static laminate.testing.TestMaterials.POLYESTER;
import static laminate.testing.TestMaterials.PVC;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.cloth;
import static laminate.testing.TestMaterials.combination;
import static laminate.testing.TestMaterials.fibre;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.single;
import static laminate.testing.TestMaterials.stitched;
import static laminate.testing.TestMaterials.tissue;
import static laminate.testing.TestParts.BAG;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.layUp;
import static laminate.testing.TestParts.withVoids;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.ContentBand;
import laminate.process.ContentRule;
import laminate.process.ContentSet;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.Range;
import laminate.process.Workshop;
import laminate.theory.Mixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a layer of reinforcement takes: nominal contents, stated ones and the workshop's own; voids; packing. */
class LayerContentTest {
    private static final Estimator USUAL = new Estimator(Workshop.USUAL);

    /** Nominal contents of the trade, glass by mass for wet work. */
    @ParameterizedTest
    @CsvSource({
        "MAT, HAND_LAY_UP, POLYESTER, .30", "MAT, VACUUM_BAG, POLYESTER, .36",
        "TISSUE, HAND_LAY_UP, POLYESTER, .09", "TISSUE, VACUUM_BAG, EPOXY, .13",
        "WOVEN_ROVING, HAND_LAY_UP, VINYLESTER, .48", "WOVEN_ROVING, VACUUM_BAG, EPOXY, .58",
        "WOVEN_CLOTH, HAND_LAY_UP, POLYESTER, .50", "WOVEN_CLOTH, HAND_LAY_UP, EPOXY, .60",
        "WOVEN_CLOTH, VACUUM_BAG, EPOXY, .62", "STITCHED, HAND_LAY_UP, POLYESTER, .50",
        "STITCHED, VACUUM_BAG, POLYESTER, .60", "UNIDIRECTIONAL, HAND_LAY_UP, EPOXY, .55",
        "UNIDIRECTIONAL, VACUUM_BAG, EPOXY, .66"
    })
    void wetGlassTakesItsNominalMassFraction(Form form, Process process, Resin.Family family, double psi) {
        assertThat(band(form, process, Fibre.Type.GLASS, family).nominal()).isEqualTo(FibreContent.ofMassFraction(psi));
    }

    @ParameterizedTest
    @CsvSource({
        "MAT, .25",
        "TISSUE, .08",
        "WOVEN_ROVING, .50",
        "WOVEN_CLOTH, .50",
        "STITCHED, .53",
        "UNIDIRECTIONAL, .55"
    })
    void infusedGlassTakesItsNominalVolumeFraction(Form form, double vf) {
        assertThat(band(form, Process.INFUSION, Fibre.Type.GLASS, Resin.Family.VINYLESTER)
                        .nominal())
                .isEqualTo(FibreContent.ofVolumeFraction(vf));
    }

    @ParameterizedTest
    @CsvSource({"HAND_LAY_UP, .45, .24", "VACUUM_BAG, .55, .31", "INFUSION, .62, .36"})
    void carbonAndFlaxHaveContentsOfTheirOwn(Process process, double carbon, double flax) {
        assertThat(band(Form.STITCHED, process, Fibre.Type.CARBON, Resin.Family.EPOXY)
                        .nominal())
                .isEqualTo(FibreContent.ofMassFraction(carbon));
        assertThat(band(Form.STITCHED, process, Fibre.Type.NATURAL, Resin.Family.EPOXY)
                        .nominal())
                .isEqualTo(FibreContent.ofVolumeFraction(flax));
    }

    /** A bed packs by volume: aramid takes the volume fraction of glass, 0.5 by mass of glass being 0.319 by volume. */
    @Test
    void aFibreWithoutRowsPacksLikeGlass() {
        double vf = band(Form.STITCHED, Process.HAND_LAY_UP, Fibre.Type.ARAMID, Resin.Family.EPOXY)
                .nominal()
                .value();
        assertThat(vf).isCloseTo(Mixture.fibreVolumeFraction(0.5, 2560, 1200, 0), within(1e-15));
        assertThat(band(Form.MAT, Process.INFUSION, Fibre.Type.CARBON, Resin.Family.EPOXY)
                        .nominal()
                        .value())
                .isEqualTo(0.25);
    }

    @Test
    void everyBandIsInOrderOfItsResin() {
        for (Process process : Process.values()) {
            for (Form form : Form.values()) {
                for (Fibre.Type fibre : Fibre.Type.values()) {
                    for (Resin.Family family : Resin.Family.values()) {
                        Range range = band(form, process, fibre, family).resinVolume(0.6, 0.6 / 2000, 1200, 0.01);
                        assertThat(range.least()).isPositive().isLessThan(range.planned());
                        assertThat(range.most()).isGreaterThan(range.planned());
                    }
                }
            }
        }
    }

    private static ContentBand band(Form form, Process process, Fibre.Type type, Resin.Family family) {
        Fibre fibre = fibre("some", type, 2000, 70e9, 7e9, 3e9, 0, 0);
        return ContentSet.TRADE
                .bands(process, List.of(FibrePly.of(fibre, form, 0, 0.6)), family)
                .get(0);
    }

    /** Voids thicken a layer of stated mass fraction: t = (w/ρf + w (1 − ψ)/(ψ ρr))/(1 − Vv). */
    @Test
    void voidsThickenAtAMassFraction() {
        ReinforcementLayer layer = hand(mat(0.45)).with(FibreContent.ofMassFraction(0.3));
        LaidLayer solid = lay(withVoids(0), layer);
        LaidLayer porous = lay(withVoids(0.05), layer);
        assertThat(porous.thickness().planned()).isCloseTo(solid.thickness().planned() / 0.95, within(1e-16));
        assertThat(porous.resinMass().planned()).isCloseTo(solid.resinMass().planned(), within(1e-16));
        assertThat(porous.fibreVolumeFraction()).isCloseTo(0.95 * solid.fibreVolumeFraction(), within(1e-15));
        assertThat(porous.thickness().planned())
                .isCloseTo(Mixture.thickness(0.45, 0.3, 2560, 1200, 0.05), within(1e-16));
    }

    /** At a volume fraction or a moulded thickness voids displace resin. */
    @Test
    void voidsDisplaceResinAtAVolumeFractionOrThickness() {
        double thickness = 0.6 / 2560 / 0.35;
        for (FibreContent content : List.of(FibreContent.ofVolumeFraction(0.35), FibreContent.ofThickness(thickness))) {
            LaidLayer solid = lay(withVoids(0), hand(roving(0.6)).with(content));
            LaidLayer porous = lay(withVoids(0.05), hand(roving(0.6)).with(content));
            assertThat(solid.thickness().planned()).isCloseTo(thickness, within(1e-15));
            assertThat(porous.thickness().planned()).isCloseTo(thickness, within(1e-15));
            assertThat(solid.resinMass().planned()).isCloseTo(thickness * 0.65 * 1200, within(1e-12));
            assertThat(porous.resinMass().planned()).isCloseTo(thickness * (1 - 0.35 - 0.05) * 1200, within(1e-12));
            assertThat(porous.fibreVolumeFraction()).isCloseTo(0.35, within(1e-14));
        }
    }

    @Test
    void massFractionResinRatioAndVolumeFractionSayTheSame() {
        double vf = Mixture.fibreVolumeFraction(0.48, 2560, 1200, 0.03);
        LaidLayer byMass = lay(Workshop.USUAL, hand(roving(0.6)).with(FibreContent.ofMassFraction(0.48)));
        for (FibreContent same : List.of(
                FibreContent.ofVolumeFraction(vf),
                FibreContent.ofResinRatio(0.52 / 0.48),
                FibreContent.ofThickness(byMass.thickness().planned()))) {
            LaidLayer laid = lay(Workshop.USUAL, hand(roving(0.6)).with(same));
            assertThat(laid.thickness().planned()).isCloseTo(byMass.thickness().planned(), within(1e-16));
            assertThat(laid.resinMass().planned()).isCloseTo(byMass.resinMass().planned(), within(1e-13));
        }
    }

    @Test
    void voidsLetTheThicknessStrayFromNoneToTwice() {
        LaidLayer laid = lay(withVoids(0.05), hand(mat(0.45)));
        double fibre = 0.45 / 2560;
        assertThat(laid.thickness().least()).isCloseTo(fibre + laid.resinMass().least() / 1200, within(1e-16));
        assertThat(laid.thickness().most()).isCloseTo((fibre + laid.resinMass().most() / 1200) / 0.9, within(1e-16));
    }

    @ParameterizedTest
    @CsvSource({"HAND_LAY_UP, .03", "VACUUM_BAG, .02", "INFUSION, .01"})
    void everyProcessHasItsUsualVoids(Process process, double voids) {
        assertThat(lay(Workshop.USUAL, ReinforcementLayer.of(mat(0.3), layUpOf(process)))
                        .voids())
                .isEqualTo(voids);
    }

    private static LayUp layUpOf(Process process) {
        return layUp(process, POLYESTER);
    }

    @Test
    void aStandardsSetHasNoVoids() {
        ZoneEstimate zone = USUAL.lay(zone(1, hand(mat(0.3)), hand(roving(0.6))).with(ContentSet.ISO_NOMINAL_COMPLEX));
        assertThat(zone.voidFraction()).isZero();
    }

    @Test
    void theWorkshopsOwnContentReplacesTheNominalOne() {
        Workshop own = Workshop.USUAL.withContentRules(
                List.of(rule(Process.VACUUM_BAG, Form.MAT, 0.40), rule(Process.HAND_LAY_UP, Form.MAT, 0.33)));
        assertThat(lay(own, hand(mat(0.3))).fibreMassFraction()).isCloseTo(0.33, within(1e-15));
        assertThat(lay(own, hand(roving(0.6))).fibreMassFraction()).isCloseTo(0.48, within(1e-15));
        assertThat(lay(own, ReinforcementLayer.of(mat(0.3), BAG)).fibreMassFraction())
                .isCloseTo(0.40, within(1e-15));
        // The scatter of resin stays that of the trade: 0.30 by 0.27 to 0.33.
        LaidLayer laid = lay(own, hand(mat(0.3)));
        assertThat(laid.resinMass().most() / laid.resinMass().planned())
                .isCloseTo((0.73 / 0.27) / (0.7 / 0.3), within(1e-12));
    }

    @Test
    void theFirstRuleThatHoldsWinsAndEachOfItsTermsCounts() {
        ContentRule glass = new ContentRule(
                Optional.empty(),
                Optional.empty(),
                Optional.of(Fibre.Type.GLASS),
                Optional.empty(),
                FibreContent.ofMassFraction(0.41));
        ContentRule epoxy = new ContentRule(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(Resin.Family.EPOXY),
                FibreContent.ofMassFraction(0.44));
        ReinforcementLayer carbon = ReinforcementLayer.of(single("carbon", Form.STITCHED, CARBON, 0.3), HAND_EPOXY);
        Workshop glassFirst = Workshop.USUAL.withContentRules(List.of(glass, epoxy));
        Workshop epoxyFirst = Workshop.USUAL.withContentRules(List.of(epoxy, glass));
        ReinforcementLayer cloth = ReinforcementLayer.of(cloth(0.3), HAND_EPOXY);
        assertThat(lay(glassFirst, cloth).fibreMassFraction()).isCloseTo(0.41, within(1e-15));
        assertThat(lay(epoxyFirst, cloth).fibreMassFraction()).isCloseTo(0.44, within(1e-15));
        assertThat(lay(glassFirst, carbon).fibreMassFraction()).isCloseTo(0.44, within(1e-15));
        assertThat(lay(Workshop.USUAL.withContentRules(List.of(epoxy)), hand(mat(0.3)))
                        .fibreMassFraction())
                .isCloseTo(0.30, within(1e-15));
    }

    @Test
    void theLayersOwnContentWinsOverTheWorkshops() {
        Workshop own = Workshop.USUAL.withContentRules(List.of(rule(Process.HAND_LAY_UP, Form.MAT, 0.33)));
        LaidLayer laid = lay(own, hand(mat(0.3)).with(FibreContent.ofMassFraction(0.28)));
        assertThat(laid.fibreMassFraction()).isCloseTo(0.28, within(1e-15));
    }

    @Test
    void theSetChosenByNameWinsOverTheWorkshops() {
        Workshop own = Workshop.USUAL.withContentRules(List.of(rule(Process.HAND_LAY_UP, Form.MAT, 0.33)));
        ZoneEstimate zone = new Estimator(own).lay(zone(1, hand(mat(0.3))).with(ContentSet.ISO_NOMINAL_SIMPLE));
        assertThat(zone.fibreMassFraction()).isCloseTo(0.30, within(1e-15));
    }

    private static ContentRule rule(Process process, Form form, double psi) {
        return new ContentRule(
                Optional.of(process),
                Optional.of(form),
                Optional.empty(),
                Optional.empty(),
                FibreContent.ofMassFraction(psi));
    }

    @Test
    void aRuleForManyLayersCannotStateAThickness() {
        assertThatThrownBy(() -> new ContentRule(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        FibreContent.ofThickness(0.001)))
                .hasMessageContaining("cannot state a thickness");
    }

    @Test
    void aStandardsSetHasContentsForGlassOnlyUnlessOneIsStated() {
        ReinforcementLayer carbon = ReinforcementLayer.of(single("carbon", Form.STITCHED, CARBON, 0.3), HAND_EPOXY);
        ReinforcementLayer mixed = ReinforcementLayer.of(
                stitched("mixed", FibrePly.of(CARBON, Form.STITCHED, 0, 0.3), FibrePly.of(E_GLASS, Form.MAT, 0, 0.3)),
                HAND_EPOXY);
        ReinforcementLayer tissue = hand(tissue(0.03));
        for (ReinforcementLayer layer : List.of(carbon, mixed, tissue)) {
            assertThatThrownBy(() -> USUAL.lay(zone(1, layer).with(ContentSet.ISO_NOMINAL_SIMPLE)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("iso-nominal")
                    .hasMessageContaining("state");
            double stated = layer == tissue ? 0.1 : 0.4;
            LaidLayer laid = USUAL.lay(zone(1, layer.with(FibreContent.ofMassFraction(stated)))
                            .with(ContentSet.ISO_NOMINAL_SIMPLE))
                    .layers()
                    .get(0);
            assertThat(laid.fibreMassFraction()).isCloseTo(stated, within(1e-15));
            assertThat(laid.voids()).isZero();
        }
    }

    /** Each ply of a combined reinforcement takes its own content; one stated for the whole keeps the shares of resin. */
    @Test
    void aCombinedReinforcementSharesItsResin() {
        ReinforcementLayer layer = hand(combination(0.6, 0.3));
        LaidLayer usual = lay(withVoids(0), layer);
        double resin = 0.6 * 0.52 / 0.48 + 0.3 * 0.70 / 0.30;
        assertThat(usual.resinMass().planned()).isCloseTo(resin, within(1e-14));
        assertThat(usual.plies().get(0).thickness())
                .isCloseTo(Mixture.thickness(0.6, 0.48, 2560, 1200, 0), within(1e-16));
        assertThat(usual.plies().get(1).thickness())
                .isCloseTo(Mixture.thickness(0.3, 0.30, 2560, 1200, 0), within(1e-16));
        LaidLayer stated = lay(withVoids(0), layer.with(FibreContent.ofMassFraction(0.45)));
        double factor = 0.9 * 0.55 / 0.45 / resin;
        assertThat(stated.fibreMassFraction()).isCloseTo(0.45, within(1e-15));
        assertThat(stated.plies().get(0).thickness())
                .isCloseTo(0.6 / 2560 + factor * 0.6 * 0.52 / 0.48 / 1200, within(1e-16));
        assertThat(stated.thickness().planned())
                .isCloseTo(
                        stated.plies().get(0).thickness()
                                + stated.plies().get(1).thickness(),
                        within(1e-16));
    }

    @ParameterizedTest
    @CsvSource({
        "MAT, .44, .46",
        "WOVEN_ROVING, .64, .66",
        "WOVEN_CLOTH, .67, .69",
        "STITCHED, .69, .71",
        "UNIDIRECTIONAL, .74, .76",
        "TISSUE, .29, .31"
    })
    void aBedHoldsNoMoreThanItPacks(Form form, double possible, double impossible) {
        ReinforcementLayer layer = hand(single("some", form, E_GLASS, 0.3));
        assertThat(lay(withVoids(0), layer.with(FibreContent.ofVolumeFraction(possible)))
                        .fibreVolumeFraction())
                .isCloseTo(possible, within(1e-14));
        assertThatThrownBy(() -> layer.with(FibreContent.ofVolumeFraction(impossible)))
                .hasMessageContaining("bed holds at most")
                .hasMessageContaining("some-300");
    }

    /** The bed as a whole has room, yet one ply would not: the mat of a combination takes its share of too little resin. */
    @Test
    void everyPlyMustHaveRoomForItself() {
        Workshop lean = Workshop.USUAL.withContentRules(List.of(new ContentRule(
                Optional.empty(),
                Optional.of(Form.MAT),
                Optional.empty(),
                Optional.empty(),
                FibreContent.ofVolumeFraction(0.5))));
        assertThatThrownBy(() -> new Estimator(lean).lay(zone(1, hand(combination(0.6, 0.3)))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "zone panel, layer 1: combination-900: its mat plies would be 52 % fibre by volume; such a bed"
                                + " holds at most 45 %");
    }

    @Test
    void aThicknessBelowThatOfTheFibreIsRefused() {
        assertThatThrownBy(() -> hand(roving(0.6)).with(FibreContent.ofThickness(0.0002)))
                .hasMessageContaining("leaves no room for resin")
                .hasMessageContaining("0.200 mm");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aFractionLiesBetweenNothingAndAll(double fraction) {
        assertThatThrownBy(() -> FibreContent.ofMassFraction(fraction)).hasMessageContaining("below 100 %");
        assertThatThrownBy(() -> FibreContent.ofVolumeFraction(fraction)).hasMessageContaining("below 100 %");
    }

    @Test
    void aResinRatioMayExceedOne() {
        assertThat(FibreContent.ofResinRatio(2.5).value()).isEqualTo(2.5);
        assertThatThrownBy(() -> FibreContent.ofResinRatio(0))
                .hasMessageContaining("resin-ratio must be above 0, not 0.0");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1e-4, 1200, 0",
        "0.3, 0, 1200, 0",
        "0.3, 1e-4, 0, 0",
        "0.3, 1e-4, Infinity, 0",
        "NaN, 1e-4, 1200, 0",
        "0.3, 1e-4, 1200, -0.1",
        "0.3, 1e-4, 1200, 1"
    })
    void resinIsReckonedForFibreInResinOnly(double fibreMass, double fibreVolume, double resinDensity, double voids) {
        for (FibreContent.Basis basis : FibreContent.Basis.values()) {
            assertThatThrownBy(
                            () -> new FibreContent(basis, 0.1).resinVolume(fibreMass, fibreVolume, resinDensity, voids))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("fibre and resin of a layer must be above zero");
        }
    }

    /** A zone's fibre content counts its reinforced layers only, as a burn-off measures. */
    @Test
    void theContentOfAZoneLeavesItsCoreOut() {
        ZoneEstimate solid = USUAL.lay(zone(1, hand(biaxial(0.6)), hand(biaxial(0.6))));
        ZoneEstimate cored = USUAL.lay(zone(1, hand(biaxial(0.6)), CoreLayer.of(PVC, 0.01, HAND), hand(biaxial(0.6))));
        assertThat(cored.fibreMassFraction()).isCloseTo(solid.fibreMassFraction(), within(1e-15));
        assertThat(cored.fibreVolumeFraction()).isCloseTo(solid.fibreVolumeFraction(), within(1e-15));
        assertThat(cored.voidFraction()).isCloseTo(0.03, within(1e-15));
    }

    /** Flax of 1480 kg/m³ at 24 % by volume. */
    @Test
    void flaxIsLaidByVolume() {
        Reinforcement flax = single("flax", Form.UNIDIRECTIONAL, FLAX, 0.2);
        assertThat(lay(Workshop.USUAL, ReinforcementLayer.of(flax, HAND_EPOXY)).fibreVolumeFraction())
                .isCloseTo(0.24, within(1e-14));
    }

    private static LaidLayer lay(Workshop workshop, Layer layer) {
        return new Estimator(workshop).lay(zone(1, layer)).layers().get(0);
    }
}
