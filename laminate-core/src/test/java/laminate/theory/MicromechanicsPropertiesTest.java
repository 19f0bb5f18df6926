package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits and trends of micromechanics, mat and woven rules. */
class MicromechanicsPropertiesTest {
    private static final FibreProperties GLASS =
            FibreProperties.isotropic(72.4e9, 0.22).withExpansion(5e-6, 5e-6);
    private static final FibreProperties CARBON =
            FibreProperties.of(230e9, 14e9, 20e9, 0.2).withExpansion(-0.4e-6, 12e-6);
    private static final MatrixProperties POLYESTER =
            MatrixProperties.of(3.5e9, 0.36).withExpansion(80e-6);

    @ParameterizedTest
    @EnumSource(value = Micromechanics.class, names = "MARINE_RULE", mode = Mode.EXCLUDE)
    void withoutFibreThereIsMatrix(Micromechanics model) {
        Lamina lamina = model.lamina(CARBON, POLYESTER, 0, 0);
        assertThat(lamina.E1()).isCloseTo(3.5e9, within(1e-3));
        assertThat(lamina.E2()).isCloseTo(3.5e9, within(1e-3));
        assertThat(lamina.G12()).isCloseTo(POLYESTER.G(), within(1e-3));
        assertThat(lamina.nu12()).isEqualTo(0.36);
        assertThat(lamina.thermalExpansion().orElseThrow().along()).isCloseTo(80e-6, within(1e-18));
        assertThat(lamina.thermalExpansion().orElseThrow().across()).isCloseTo(80e-6, within(1e-18));
    }

    @ParameterizedTest
    @EnumSource(Micromechanics.class)
    void moreFibreIsStiffer(Micromechanics model) {
        Lamina before = model.lamina(GLASS, POLYESTER, 0.15, 0.01);
        for (double Vf = 0.2; Vf < 0.9; Vf += 0.05) {
            Lamina lamina = model.lamina(GLASS, POLYESTER, Vf, 0.01);
            assertThat(lamina.E1()).isGreaterThan(before.E1());
            assertThat(lamina.E2()).isGreaterThan(before.E2());
            assertThat(lamina.G12()).isGreaterThan(before.G12());
            assertThat(lamina.nu12()).isLessThan(before.nu12());
            before = lamina;
        }
    }

    @ParameterizedTest
    @EnumSource(Micromechanics.class)
    void voidsWeakenSteadilyFromNone(Micromechanics model) {
        Lamina sound = model.lamina(GLASS, POLYESTER, 0.4, 0);
        Lamina nearly = model.lamina(GLASS, POLYESTER, 0.4, 1e-9);
        Lamina porous = model.lamina(GLASS, POLYESTER, 0.4, 0.05);
        assertThat(nearly.E2()).isCloseTo(sound.E2(), within(1e-8 * sound.E2()));
        assertThat(porous.E1()).isCloseTo(72.4e9 * 0.4 + 3.5e9 * 0.55, within(1.0));
        assertThat(porous.E2()).isLessThan(sound.E2());
        assertThat(porous.G12()).isLessThan(sound.G12());
        assertThat(porous.nu12()).isEqualTo(sound.nu12());
    }

    /** Glass in polyester at Vf = 0.5 by the rule's coefficients, worked by hand. */
    @Test
    void marineRuleHasItsCoefficients() {
        Lamina lamina = Micromechanics.MARINE_RULE.lamina(GLASS, POLYESTER, 0.5, 0);
        Lamina halpinTsai = Micromechanics.HALPIN_TSAI.lamina(GLASS, POLYESTER, 0.5, 0);
        assertThat(lamina.E1()).isEqualTo(halpinTsai.E1());
        assertThat(lamina.G12()).isCloseTo(0.9 * halpinTsai.G12(), within(1.0));
        double across = 3.5e9 / 0.8704 * 1.2125 / (0.42044820762685725 + 3.5 / 72.4 * 0.5 / 0.8704);
        assertThat(lamina.E2()).isCloseTo(0.8 * across, within(1.0));
    }

    @Test
    void marineRuleIsForEGlassOnly() {
        for (FibreProperties fibre :
                List.of(CARBON, FibreProperties.isotropic(87e9, 0.22), FibreProperties.isotropic(60e9, 0.22))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Micromechanics.MARINE_RULE.lamina(fibre, POLYESTER, 0.5, 0))
                    .withMessageContaining("E-glass")
                    .withMessageContaining(String.valueOf(fibre.E1()));
        }
    }

    @ParameterizedTest
    @CsvSource({"-0.01, 0", "0.91, 0", "NaN, 0", "0.5, -0.01", "0.5, 0.5", "0.5, NaN"})
    void impossibleFractionsAreRefused(double Vf, double Vv) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Micromechanics.HALPIN_TSAI.lamina(GLASS, POLYESTER, Vf, Vv))
                .withMessageContaining(String.valueOf(Vf));
    }

    @Test
    void halpinTsaiWithoutReinforcingEfficiencyIsTheInverseRule() {
        double series = UnidirectionalFormulas.inverseRuleOfMixtures(72e9, 3e9, 0.3);
        assertThat(UnidirectionalFormulas.halpinTsai(72e9, 3e9, 0.3, 0)).isCloseTo(series, within(1e-3));
        double parallel = UnidirectionalFormulas.ruleOfMixtures(72e9, 3e9, 0.3);
        assertThat(UnidirectionalFormulas.halpinTsai(72e9, 3e9, 0.3, 1e12)).isCloseTo(parallel, within(1.0));
    }

    @Test
    void expansionNeedsThatOfBoth() {
        FibreProperties unknown = FibreProperties.isotropic(72.4e9, 0.22);
        MatrixProperties plain = MatrixProperties.of(3.5e9, 0.36);
        assertThat(Micromechanics.HALPIN_TSAI.lamina(unknown, POLYESTER, 0.5, 0).thermalExpansion())
                .isEmpty();
        assertThat(Micromechanics.HALPIN_TSAI.lamina(GLASS, plain, 0.5, 0).thermalExpansion())
                .isEmpty();
        assertThat(Micromechanics.HALPIN_TSAI.lamina(GLASS, POLYESTER, 0.5, 0).transverseShearAssumed())
                .isTrue();
    }

    /** The exact average is what a laminate of many thin plies at all angles has, stiffness and expansion alike. */
    @Test
    void matIsTheLaminateOfAllAngles() {
        Lamina ud = Micromechanics.HALPIN_TSAI
                .lamina(CARBON, POLYESTER, 0.3, 0.02)
                .withTransverseShear(4e9, 2e9)
                .withMoistureExpansion(0.01, 0.3);
        List<Ply> plies = new ArrayList<>();
        for (int angle = -90; angle < 90; angle++) {
            plies.add(new Ply(ud, 1e-5, angle));
        }
        Laminate all = Laminate.of(plies);
        Lamina mat = RandomMat.average(ud);
        EngineeringConstants constants = all.inPlaneRestrained();
        assertThat(mat.E1()).isEqualTo(mat.E2()).isCloseTo(constants.Ex(), within(1.0));
        assertThat(mat.nu12()).isCloseTo(constants.nuxy(), within(1e-12));
        assertThat(mat.G12()).isCloseTo(constants.Gxy(), within(1.0));
        assertThat(mat.G13()).isEqualTo(mat.G23()).isEqualTo(3e9);
        Vector3 alpha = all.membrane()
                .inverse()
                .times(all.thermalResultants().orElseThrow().force());
        Vector3 beta = all.membrane()
                .inverse()
                .times(all.moistureResultants().orElseThrow().force());
        assertThat(mat.thermalExpansion().orElseThrow().along()).isCloseTo(alpha.x(), within(1e-16));
        assertThat(mat.moistureExpansion().orElseThrow().across()).isCloseTo(beta.y(), within(1e-12));
    }

    @Test
    void matRulesShareTheExpansionAndDifferInStiffness() {
        Lamina exact = RandomMat.EXACT_AVERAGE.lamina(Micromechanics.HALPIN_TSAI, GLASS, POLYESTER, 0.18, 0.02);
        Lamina rule = RandomMat.TSAI_PAGANO.lamina(Micromechanics.HALPIN_TSAI, GLASS, POLYESTER, 0.18, 0.02);
        Lamina manera = RandomMat.MANERA.lamina(Micromechanics.HALPIN_TSAI, GLASS, POLYESTER, 0.18, 0.02);
        assertThat(rule.thermalExpansion()).isEqualTo(exact.thermalExpansion()).isEqualTo(manera.thermalExpansion());
        assertThat(rule.E1() / exact.E1()).isBetween(1.08, 1.10);
        assertThat(manera.E1() / exact.E1()).isBetween(1.0, 1.08);
        assertThat(manera.G12()).isCloseTo(3.0 / 8 * manera.E1(), within(1.0));
    }

    @ParameterizedTest
    @CsvSource({"0.09, 3.5e9", "0.41, 3.5e9", "0.2, 1.9e9", "0.2, 4.1e9", "NaN, 3e9"})
    void maneraHasARange(double Vf, double Em) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RandomMat.manera(72.4e9, Em, Vf))
                .withMessageContaining(String.valueOf(Vf))
                .withMessageContaining(String.valueOf(Em));
    }

    /** Crossed plies are a symmetric cross-ply laminate whose 0° plies have the share of the warp. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 0.75})
    void wovenIsTheCrossPly(double warp) {
        Lamina ud =
                Micromechanics.HALPIN_TSAI.lamina(GLASS, POLYESTER, 0.35, 0.02).withMoistureExpansion(0.01, 0.3);
        Laminate crossPly = Laminate.of(List.of(
                new Ply(ud, 0.0005 * warp, 0), new Ply(ud, 0.001 * (1 - warp), 90), new Ply(ud, 0.0005 * warp, 0)));
        Lamina woven = Woven.crossed(ud, warp, 0.9);
        EngineeringConstants constants = crossPly.inPlane();
        assertThat(woven.E1()).isCloseTo(0.9 * constants.Ex(), within(1.0));
        assertThat(woven.E2()).isCloseTo(0.9 * constants.Ey(), within(1.0));
        assertThat(woven.G12()).isCloseTo(0.9 * constants.Gxy(), within(1.0));
        assertThat(woven.nu12()).isCloseTo(constants.nuxy(), within(1e-12));
        Vector3 alpha = crossPly.thermalExpansion().orElseThrow().strain();
        assertThat(woven.thermalExpansion().orElseThrow().along()).isCloseTo(alpha.x(), within(1e-17));
        assertThat(woven.thermalExpansion().orElseThrow().across()).isCloseTo(alpha.y(), within(1e-17));
        Vector3 beta = crossPly.moistureExpansion().orElseThrow().strain();
        assertThat(woven.moistureExpansion().orElseThrow().along()).isCloseTo(beta.x(), within(1e-13));
    }

    @Test
    void wovenKeepsItsEndsAndRefusesOthers() {
        Lamina ud = Lamina.of(40e9, 10e9, 4e9, 0.3).withTransverseShear(4e9, 2e9);
        assertThat(Woven.crossed(ud, 1, 1).E1()).isCloseTo(40e9, within(1.0));
        assertThat(Woven.crossed(ud, 0, 1).E1()).isCloseTo(10e9, within(1.0));
        assertThat(Woven.crossed(ud, 0.25, 1).transverseShear()).contains(new TransverseShear(2.5e9, 3.5e9));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Woven.crossed(ud, 1.1, 1))
                .withMessageContaining("1.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Woven.crossed(ud, 0.5, 1.2))
                .withMessageContaining("1.2");
    }
}
