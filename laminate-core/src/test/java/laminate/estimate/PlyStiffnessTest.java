package laminate.estimate;

import static laminate.testing.TestMaterials.E_GLASS;
import static laminate.testing.TestMaterials.biaxial;
import static laminate.testing.TestMaterials.combination;
import static laminate.testing.TestMaterials.hybridCloth;
import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestMaterials.roving;
import static laminate.testing.TestMaterials.stitched;
import static laminate.testing.TestMaterials.unidirectional;
import static laminate.testing.TestParts.HAND;
import static laminate.testing.TestParts.HAND_EPOXY;
import static laminate.testing.TestParts.INFUSED;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.turned;
import static laminate.testing.TestParts.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.FibreContent;
import laminate.process.StiffnessBasis;
import laminate.process.Workshop;
import laminate.theory.FibreProperties;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import laminate.theory.MatrixProperties;
import laminate.theory.Micromechanics;
import laminate.theory.Ply;
import laminate.theory.RandomMat;
import laminate.theory.Woven;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Elastic constants of laid plies: micromechanics with knock-downs, measured ones, hybrids, and how plies lie. */
class PlyStiffnessTest {
    private static final FibreProperties GLASS =
            FibreProperties.of(72.4e9, 72.4e9, 29.67e9, 0.22).withExpansion(5.3e-6, 5.3e-6);
    private static final MatrixProperties POLYESTER =
            MatrixProperties.of(3.3e9, 0.36).withExpansion(60e-6);

    @ParameterizedTest
    @EnumSource(Micromechanics.class)
    void everyFormFollowsItsTheoryWithItsKnockDown(Micromechanics model) {
        StiffnessBasis basis = StiffnessBasis.usual(model);
        Workshop workshop = Workshop.USUAL.withStiffness(basis);
        LaidLayer straight = lay(workshop, hand(unidirectional(0.6)));
        assertThat(lamina(straight)).isEqualTo(theory(model, straight));
        LaidLayer woven = lay(workshop, hand(roving(0.6)));
        assertThat(lamina(woven))
                .isEqualTo(
                        Woven.crossed(theory(model, woven), 0.5, basis.woven().value()));
        LaidLayer mat = lay(workshop, hand(mat(0.6)));
        assertThat(lamina(mat))
                .isEqualTo(RandomMat.average(theory(model, mat))
                        .scaledBy(basis.mat().value()));
    }

    private static Lamina theory(Micromechanics model, LaidLayer laid) {
        return model.lamina(GLASS, POLYESTER, laid.fibreVolumeFraction(), laid.voids());
    }

    @Test
    void theMarineRuleHasKnockDownsOfItsOwn() {
        assertThat(StiffnessBasis.usual(Micromechanics.MARINE_RULE).knockDown(Form.MAT))
                .isEqualTo(1);
        assertThat(StiffnessBasis.usual(Micromechanics.MARINE_RULE).knockDown(Form.WOVEN_CLOTH))
                .isEqualTo(0.925);
        assertThat(StiffnessBasis.USUAL.knockDown(Form.TISSUE)).isEqualTo(0.81);
        assertThat(StiffnessBasis.USUAL.knockDown(Form.WOVEN_ROVING)).isEqualTo(0.88);
        assertThat(StiffnessBasis.USUAL.knockDown(Form.STITCHED)).isEqualTo(1);
    }

    @Test
    void aZoneTellsTheKnockDownsOfItsPlies() {
        assertThat(knockDowns(hand(unidirectional(0.6)))).isEmpty();
        assertThat(knockDowns(hand(measured(roving(0.6), ply())))).isEmpty();
        assertThat(knockDowns(hand(unidirectional(0.6)), hand(mat(0.3))))
                .containsExactly(Map.entry(Form.Architecture.RANDOM, StiffnessBasis.USUAL.mat()));
        assertThat(knockDowns(hand(roving(0.6)), hand(mat(0.3))))
                .containsExactly(
                        Map.entry(Form.Architecture.RANDOM, StiffnessBasis.USUAL.mat()),
                        Map.entry(Form.Architecture.WOVEN, StiffnessBasis.USUAL.woven()));
    }

    private static Map<Form.Architecture, Figure> knockDowns(Layer... layers) {
        return new Estimator(Workshop.USUAL).lay(zone(1, layers)).knockDowns();
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1.01, 1", "1, 0", "1, 1.01"})
    void aKnockDownIsAboveNothingAndAtMostOne(double mat, double woven) {
        assertThatThrownBy(
                        () -> new StiffnessBasis(Micromechanics.HALPIN_TSAI, Figure.stated(mat), Figure.stated(woven)))
                .hasMessageContaining("must be above 0 % and at most 100 %");
    }

    private static Reinforcement measured(Reinforcement reinforcement, Figures ply) {
        return new Reinforcement(
                reinforcement.id(),
                reinforcement.name(),
                reinforcement.form(),
                reinforcement.plies(),
                reinforcement.binder(),
                reinforcement.figures(),
                Optional.of(ply));
    }

    private static Figures ply() {
        return Figures.none()
                .with(Property.FIBRE_VOLUME_FRACTION, 0.5)
                .with(Property.E1, 21e9)
                .with(Property.E2, 20e9)
                .with(Property.G12, 3.5e9)
                .with(Property.NU12, 0.13);
    }

    @Test
    void measuredPropertiesAreUsedUntouched() {
        Lamina lamina = lamina(lay(Workshop.USUAL, hand(measured(roving(0.6), ply()))));
        assertThat(lamina).isEqualTo(Lamina.of(21e9, 20e9, 3.5e9, 0.13));
        Figures whole =
                ply().with(Property.ALPHA1, 1e-5).with(Property.ALPHA2, 2e-5).with(Property.G23, 2e9);
        assertThat(lamina(lay(Workshop.USUAL, hand(measured(roving(0.6), whole)))))
                .isEqualTo(Lamina.of(21e9, 20e9, 3.5e9, 0.13)
                        .withTransverseShear(3.5e9, 2e9)
                        .withExpansion(1e-5, 2e-5));
    }

    @Test
    void aHybridClothIsOnePlyWithoutCoupling() {
        ReinforcementLayer layer = ReinforcementLayer.of(hybridCloth(0.2), HAND_EPOXY);
        ZoneEstimate zone = new Estimator(Workshop.USUAL).lay(zone(1, layer));
        assertThat(zone.laminate().plies()).hasSize(1);
        assertThat(zone.laminate().isCoupled()).isFalse();
        assertThat(zone.laminate().thickness()).isCloseTo(zone.thickness().planned(), within(1e-18));
    }

    /** Joined or apart, the plies stretch alike: A is that of carbon and aramid one over the other. */
    @Test
    void aHybridClothStretchesAsItsPliesDo() {
        Reinforcement apart = stitched("apart", hybridCloth(0.2).plies().toArray(FibrePly[]::new));
        Reinforcement two = new Reinforcement(
                "two",
                "two",
                Form.WOVEN_CLOTH,
                List.of(apart.plies().get(0), apart.plies().get(1).withAngle(90)),
                Optional.empty(),
                apart.figures(),
                Optional.empty());
        LaidLayer joined = lay(Workshop.USUAL, ReinforcementLayer.of(hybridCloth(0.2), HAND_EPOXY));
        LaidLayer laid = lay(Workshop.USUAL, ReinforcementLayer.of(two, HAND_EPOXY));
        // At 90° a balanced ply is the same as at 0°, but not one of a cloth that is joined.
        assertThat(laid.plies()).hasSize(2);
        Matrix3 one = Laminate.of(joined.plies()).membrane();
        Matrix3 other = Laminate.of(laid.plies()).membrane();
        assertThat(one.get(0, 0)).isCloseTo(other.get(0, 0), within(1e-9 * one.get(0, 0)));
        assertThat(one.get(0, 1)).isCloseTo(other.get(0, 1), within(1e-9 * one.get(0, 0)));
        assertThat(one.get(2, 2)).isCloseTo(other.get(2, 2), within(1e-9 * one.get(0, 0)));
        double alpha = Laminate.of(joined.plies())
                .thermalExpansion()
                .orElseThrow()
                .strain()
                .x();
        double expected =
                (laid.plies().get(0).lamina().thermalExpansion().orElseThrow().along()
                                        * stretch(laid.plies().get(0))
                                + laid.plies()
                                                .get(1)
                                                .lamina()
                                                .thermalExpansion()
                                                .orElseThrow()
                                                .along()
                                        * stretch(laid.plies().get(1)))
                        / (stretch(laid.plies().get(0)) + stretch(laid.plies().get(1)));
        assertThat(alpha).isCloseTo(expected, within(1e-12 * Math.abs(expected) + 1e-18));
    }

    /** (Q11 + Q12) t of a ply alike in both directions. */
    private static double stretch(Ply ply) {
        return (ply.lamina().reducedStiffness().Q11()
                        + ply.lamina().reducedStiffness().Q12())
                * ply.thickness();
    }

    @Test
    void aHybridClothKeepsItsAngleAndMeasuredProperties() {
        ReinforcementLayer layer = new ReinforcementLayer(
                measured(hybridCloth(0.2), ply().with(Property.G13, 3e9)), 30, false, HAND_EPOXY, Optional.empty(), "");
        LaidLayer laid = lay(Workshop.USUAL, layer);
        assertThat(laid.plies()).singleElement().satisfies(ply -> {
            assertThat(ply.angleDegrees()).isEqualTo(30);
            assertThat(ply.thickness()).isCloseTo(laid.thickness().planned(), within(1e-18));
            assertThat(ply.lamina())
                    .isEqualTo(Lamina.of(21e9, 20e9, 3.5e9, 0.13).withTransverseShear(3e9, 3.5e9));
        });
    }

    /** A make-up of 0° below −45°, laid other face down, is +45° below 0°; the layer's angle is added to both. */
    @Test
    void aTurnedLayerIsReversedAndItsAnglesNegated() {
        Reinforcement skew = stitched(
                "skew", FibrePly.of(E_GLASS, Form.STITCHED, 0, 0.2), FibrePly.of(E_GLASS, Form.STITCHED, -45, 0.4));
        assertThat(ReinforcementLayer.of(skew, HAND).plies())
                .extracting(FibrePly::angle)
                .containsExactly(0.0, -45.0);
        assertThat(turned(skew, HAND, 0).plies()).extracting(FibrePly::angle).containsExactly(45.0, 0.0);
        assertThat(turned(skew, HAND, 0).plies())
                .extracting(FibrePly::arealMass)
                .containsExactly(0.4, 0.2);
        assertThat(turned(skew, HAND, 30).plies()).extracting(FibrePly::angle).containsExactly(75.0, 30.0);
        Matrix3 b = laminate(ReinforcementLayer.of(skew, HAND)).coupling();
        Matrix3 turned = laminate(turned(skew, HAND, 0)).coupling();
        assertThat(turned.get(0, 0)).isCloseTo(-b.get(0, 0), within(1e-9 * Math.abs(b.get(0, 0))));
        assertThat(turned.get(0, 2)).isCloseTo(b.get(0, 2), within(1e-9 * Math.abs(b.get(0, 2))));
    }

    /** One layer and its turned twin over it are symmetric for a biaxial, whose angles are their own negatives. */
    @Test
    void aBiaxialAndItsTurnedTwinAreSymmetric() {
        assertThat(laminate(ReinforcementLayer.of(biaxial(0.6), HAND)).isCoupled())
                .isTrue();
        assertThat(laminate(ReinforcementLayer.of(biaxial(0.6), HAND), turned(biaxial(0.6), HAND, 0))
                        .isCoupled())
                .isFalse();
    }

    @Test
    void aCombinationHasItsRovingTowardsTheMould() {
        List<Ply> plies = lay(Workshop.USUAL, hand(combination(0.6, 0.3))).plies();
        assertThat(plies.get(0).lamina().E1())
                .isGreaterThan(1.5 * plies.get(1).lamina().E1());
        List<Ply> over =
                lay(Workshop.USUAL, turned(combination(0.6, 0.3), HAND, 0)).plies();
        assertThat(over.get(1)).isEqualTo(plies.get(0));
    }

    @Test
    void aWovenPlyOfUnequalWarpIsStifferAlongIt() {
        FibrePly warped = new FibrePly(E_GLASS, Form.WOVEN_CLOTH, 0, 0.3, 0.8);
        Reinforcement cloth = new Reinforcement(
                "warped",
                "warped",
                Form.WOVEN_CLOTH,
                List.of(warped),
                Optional.empty(),
                Figures.none().with(Property.AREAL_WEIGHT, 0.3),
                Optional.empty());
        LaidLayer laid = lay(Workshop.USUAL, hand(cloth));
        assertThat(lamina(laid)).isEqualTo(Woven.crossed(theory(Micromechanics.HALPIN_TSAI, laid), 0.8, 0.88));
        assertThat(lamina(laid).E1()).isGreaterThan(1.5 * lamina(laid).E2());
    }

    /** More resin, less stiffness per thickness; the same fibre carries the same load along it. */
    @Test
    void resinAddsThicknessRatherThanStiffness() {
        LaidLayer lean = lay(Workshop.USUAL, ReinforcementLayer.of(unidirectional(0.6), INFUSED));
        LaidLayer rich = lay(
                Workshop.USUAL,
                ReinforcementLayer.of(unidirectional(0.6), INFUSED).with(FibreContent.ofVolumeFraction(0.35)));
        assertThat(lamina(rich).E1()).isLessThan(lamina(lean).E1());
        double membrane = lamina(lean).E1() * lean.thickness().planned();
        assertThat(lamina(rich).E1() * rich.thickness().planned()).isBetween(membrane, 1.12 * membrane);
    }

    private static Laminate laminate(Layer... layers) {
        return new Estimator(Workshop.USUAL).lay(zone(1, layers)).laminate();
    }

    private static Lamina lamina(LaidLayer laid) {
        return laid.plies().get(0).lamina();
    }

    private static LaidLayer lay(Workshop workshop, Layer layer) {
        return new Estimator(workshop).lay(zone(1, layer)).layers().get(0);
    }
}
