package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every formula of strength: ends, order, scale and the refusal of what cannot be. */
class StrengthFormulasTest {
    private static final FibreProperties GLASS = FibreProperties.isotropic(72.4e9, 0.22);
    private static final FibreProperties FOLDING = FibreProperties.of(125e9, 6e9, 2.5e9, 0.35);
    private static final MatrixProperties MATRIX = MatrixProperties.of(3.3e9, 0.36);
    private static final MatrixStrength BRITTLE = new MatrixStrength(58e6, 120e6, 0.02);
    private static final MatrixStrength TOUGH = new MatrixStrength(80e6, 120e6, 0.05);

    private static PlyStrength straight(MatrixStrength matrix, double Vf, double Vv) {
        return StrengthMicromechanics.straight(GLASS, FibreStrength.inTension(2000e6), MATRIX, matrix, Vf, Vv);
    }

    @Test
    void withoutFibresThePlyIsAsStrongAsTheMatrix() {
        PlyStrength bare = straight(BRITTLE, 0, 0);
        assertThat(bare.Xt()).isEqualTo(58e6);
        assertThat(bare.Yt()).isEqualTo(58e6);
        assertThat(bare.Yc()).isEqualTo(120e6);
        assertThat(bare.S()).isCloseTo(Math.sqrt(58e6 * 120e6 / 3), within(1.0));
    }

    /** 2000 MPa at 72.4 GPa is 2.76 %: the tough matrix holds 80 MPa then, the brittle one has broken at 2 %. */
    @Test
    void onlyAMatrixThatOutlastsTheFibreHelpsIt() {
        assertThat(straight(BRITTLE, 0.5, 0).Xt()).isCloseTo(1000e6, within(1.0));
        assertThat(straight(TOUGH, 0.5, 0).Xt()).isCloseTo(1040e6, within(1.0));
        MatrixProperties soft = MatrixProperties.of(1e9, 0.36);
        PlyStrength held = StrengthMicromechanics.straight(GLASS, FibreStrength.inTension(2000e6), soft, TOUGH, 0.5, 0);
        assertThat(held.Xt()).isCloseTo(1000e6 + 0.5 * 1e9 * 2000 / 72400, within(1.0));
    }

    @Test
    void kinkingEndsInElasticBucklingAndInYield() {
        assertThat(StrengthFormulas.kinking(4e9, 40e6, 0)).isEqualTo(4e9);
        assertThat(StrengthFormulas.kinking(1e15, 40e6, 0.05)).isCloseTo(40e6 / 0.05, within(1e3));
        assertThat(StrengthFormulas.kinking(4e9, 40e6, 0.03)).isCloseTo(1e9, within(1.0));
        assertThat(StrengthMicromechanics.MISALIGNMENT).isCloseTo(0.0698, within(1e-4));
    }

    /** 430 MPa of the fibre at 60 % leave 258 MPa and what the matrix carries at that strain; a ply of it kinks later. */
    @Test
    void aFibreThatFoldsLimitsItsPly() {
        FibreStrength folding = new FibreStrength(2300e6, OptionalDouble.of(430e6));
        double folded = StrengthMicromechanics.straight(FOLDING, folding, MATRIX, TOUGH, 0.6, 0)
                .Xc();
        assertThat(folded).isCloseTo(430e6 * (0.6 + 0.4 * 3.3 / 125), within(1.0));
        assertThat(StrengthMicromechanics.straight(FOLDING, FibreStrength.inTension(2300e6), MATRIX, TOUGH, 0.6, 0)
                        .Xc())
                .isGreaterThan(folded);
        FibreStrength firm = new FibreStrength(2300e6, OptionalDouble.of(5000e6));
        assertThat(StrengthMicromechanics.straight(FOLDING, firm, MATRIX, TOUGH, 0.6, 0))
                .isEqualTo(StrengthMicromechanics.straight(
                        FOLDING, FibreStrength.inTension(2300e6), MATRIX, TOUGH, 0.6, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.08, 0.15, 0.2, 0.3, 0.4, 0.5})
    void moreFibreIsStrongerAlongItAndInAMat(double Vf) {
        PlyStrength less = straight(BRITTLE, Vf, 0.02);
        PlyStrength more = straight(BRITTLE, Vf + 0.05, 0.02);
        assertThat(more.Xt()).isGreaterThan(less.Xt());
        assertThat(more.Xc()).isGreaterThan(less.Xc());
        assertThat(StrengthMicromechanics.mat(more).tension())
                .isGreaterThan(StrengthMicromechanics.mat(less).tension());
        assertThat(StrengthMicromechanics.woven(more, 0.5, 0.7).Xt())
                .isGreaterThanOrEqualTo(
                        StrengthMicromechanics.woven(less, 0.5, 0.7).Xt());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.2, 0.4, 0.6})
    void voidsWeakenAllThatTheMatrixCarries(double Vf) {
        PlyStrength sound = straight(BRITTLE, Vf, 0);
        PlyStrength porous = straight(BRITTLE, Vf, 0.03);
        double left = 1 - Math.sqrt(0.12 / (Math.PI * (1 - Vf)));
        assertThat(porous.S() / sound.S()).isCloseTo(left, within(1e-12));
        assertThat(porous.Yt() / sound.Yt()).isCloseTo(left, within(0.02));
        assertThat(porous.Yc() / sound.Yc()).isCloseTo(left, within(0.02));
        assertThat(porous.Xc()).isLessThan(sound.Xc());
        assertThat(porous.Xt()).isLessThanOrEqualTo(sound.Xt());
    }

    /** Moduli and strengths in another unit give strengths in that unit. */
    @Test
    void theUnitOfStressDoesNotMatter() {
        double k = 145.0377e-6;
        PlyStrength scaled = StrengthMicromechanics.straight(
                FibreProperties.isotropic(72.4e9 * k, 0.22),
                FibreStrength.inTension(2000e6 * k),
                MatrixProperties.of(3.3e9 * k, 0.36),
                new MatrixStrength(58e6 * k, 120e6 * k, 0.02),
                0.4,
                0.02);
        PlyStrength plain = straight(BRITTLE, 0.4, 0.02);
        assertThat(scaled.Xt() / plain.Xt()).isCloseTo(k, within(1e-12));
        assertThat(scaled.Xc() / plain.Xc()).isCloseTo(k, within(1e-12));
        assertThat(scaled.Yt() / plain.Yt()).isCloseTo(k, within(1e-12));
        assertThat(scaled.Yc() / plain.Yc()).isCloseTo(k, within(1e-12));
        assertThat(scaled.S() / plain.S()).isCloseTo(k, within(1e-12));
        assertThat(StrengthMicromechanics.mat(scaled).shear()
                        / StrengthMicromechanics.mat(plain).shear())
                .isCloseTo(k, within(1e-12));
    }

    @Test
    void aWeaveIsItsOwnImageWhenWarpAndWeftChangePlaces() {
        PlyStrength straight = straight(BRITTLE, 0.35, 0.01);
        PlyStrength warp = StrengthMicromechanics.woven(straight, 0.7, 0.66);
        PlyStrength weft = StrengthMicromechanics.woven(straight, 0.3, 0.66);
        assertThat(warp.Xt()).isCloseTo(weft.Yt(), within(1e-3));
        assertThat(warp.Xc()).isCloseTo(weft.Yc(), within(1e-3));
        assertThat(warp.Xt()).isCloseTo(0.7 * 0.66 * straight.Xt(), within(1e-3));
        assertThat(warp.Xc()).isCloseTo(0.7 * 0.66 * straight.Xc(), within(1e-3));
        assertThat(warp.S()).isEqualTo(straight.S());
    }

    @Test
    void aWeaveWithoutWeftIsAsWeakAcrossAsAStraightPly() {
        PlyStrength straight = straight(BRITTLE, 0.35, 0.01);
        PlyStrength allWarp = StrengthMicromechanics.woven(straight, 1, 1);
        assertThat(allWarp).isEqualTo(straight);
        PlyStrength allWeft = StrengthMicromechanics.woven(straight, 0, 1);
        assertThat(allWeft.Xt()).isEqualTo(straight.Yt());
        assertThat(allWeft.Yt()).isEqualTo(straight.Xt());
    }

    /** A mat lies between the weakest and the strongest direction of the ply that it is made of. */
    @Test
    void aMatLiesBetweenTheDirectionsOfItsPly() {
        Random random = new Random(20_260_115);
        for (int i = 0; i < 1000; i++) {
            PlyStrength ply = straight(
                    new MatrixStrength(30e6 + 60e6 * random.nextDouble(), 90e6 + 60e6 * random.nextDouble(), 0.02),
                    0.08 + 0.4 * random.nextDouble(),
                    0.03 * random.nextDouble());
            MatStrength mat = StrengthMicromechanics.mat(ply);
            assertThat(mat.tension()).isBetween(ply.Yt(), ply.Xt());
            assertThat(mat.compression()).isBetween(ply.Yc(), ply.Xc());
        }
    }

    @Test
    void aPlyWithTooMuchShearStrengthMakesNoMat() {
        assertThatThrownBy(() -> StrengthMicromechanics.mat(PlyStrength.of(40e6, 400e6, 30e6, 80e6, 60e6)))
                .hasMessageContaining("in tension wants X Y of at least S²");
        assertThatThrownBy(() -> StrengthMicromechanics.mat(PlyStrength.of(400e6, 40e6, 80e6, 30e6, 60e6)))
                .hasMessageContaining("in compression wants X Y of at least S²");
    }

    @ParameterizedTest
    @CsvSource({"-0.1, 0", "0.5, -0.01", "0.6, 0.4"})
    void impossibleFractionsAreRefused(double Vf, double Vv) {
        assertThatThrownBy(() -> straight(BRITTLE, Vf, Vv)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void moreVoidsThanTheRuleCanTakeAreRefused() {
        assertThatThrownBy(() -> straight(BRITTLE, 0.5, 0.45))
                .hasMessageContaining("what voids leave of the strength of the matrix must be positive");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void impossibleStrengthsAreRefused(double bad) {
        assertThatThrownBy(() -> FibreStrength.inTension(bad)).hasMessageContaining("fibre tensile strength");
        assertThatThrownBy(() -> new FibreStrength(1, OptionalDouble.of(bad)))
                .hasMessageContaining("fibre compressive strength");
        assertThatThrownBy(() -> new MatrixStrength(bad, 1, 1)).hasMessageContaining("matrix tensile strength");
        assertThatThrownBy(() -> new MatrixStrength(1, bad, 1)).hasMessageContaining("matrix compressive strength");
        assertThatThrownBy(() -> new MatrixStrength(1, 1, bad)).hasMessageContaining("matrix elongation");
    }

    @ParameterizedTest
    @CsvSource({"0.249, mat", "0.361, mat", "NaN, mat", "0.359, woven roving", "0.581, woven roving"})
    void contentsOutsideTheStandardAreRefused(double psi, String what) {
        assertThatThrownBy(() -> {
                    if (what.equals("mat")) {
                        GlassContentStrengths.mat(psi);
                    } else {
                        GlassContentStrengths.wovenRoving(psi);
                    }
                })
                .hasMessageContaining("strength of " + what + " hold for a glass content of")
                .hasMessageEndingWith("was " + psi);
    }

    @ParameterizedTest
    @CsvSource({"0.249", "0.581"})
    void contentsOfMatAndRovingOutsideTheStandardAreRefused(double psi) {
        assertThatThrownBy(() -> GlassContentStrengths.matAndRoving(psi))
                .hasMessageContaining("of 0.25 to 0.58 by mass");
    }

    @ParameterizedTest
    @CsvSource({"0.379", "0.661"})
    void contentsOfStraightPliesOutsideTheStandardAreRefused(double psi) {
        Lamina lamina = Lamina.of(30e9, 8e9, 3e9, 0.3);
        assertThatThrownBy(() -> GlassContentStrengths.straight(psi, lamina))
                .hasMessageContaining("of 0.38 to 0.66 by mass");
    }

    /** Strains 2.7, 1.8, 0.42, 1.55 and 1.8 % of class rules times 30, 30, 8, 8 and 3 GPa. */
    @Test
    void aStraightPlyBreaksAtItsStrains() {
        PlyStrength ply = GlassContentStrengths.straight(0.5, Lamina.of(30e9, 8e9, 3e9, 0.3));
        assertThat(ply.Xt()).isCloseTo(810e6, within(1.0));
        assertThat(ply.Xc()).isCloseTo(540e6, within(1.0));
        assertThat(ply.Yt()).isCloseTo(33.6e6, within(1.0));
        assertThat(ply.Yc()).isCloseTo(124e6, within(1.0));
        assertThat(ply.S()).isCloseTo(54e6, within(1.0));
        assertThat(ply.strainLimits()).contains(GlassContentStrengths.STRAIGHT_STRAINS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.37, 0.42, 0.5, 0.55})
    void moreGlassIsStrongerByTheStandard(double psi) {
        PlyStrength less = GlassContentStrengths.wovenRoving(psi);
        PlyStrength more = GlassContentStrengths.wovenRoving(psi + 0.02);
        assertThat(more.Xt()).isGreaterThan(less.Xt());
        assertThat(more.Xc()).isGreaterThan(less.Xc());
        assertThat(more.S()).isGreaterThan(less.S());
        assertThat(GlassContentStrengths.matAndRoving(psi + 0.02).Xt())
                .isGreaterThan(GlassContentStrengths.matAndRoving(psi).Xt());
    }
}
