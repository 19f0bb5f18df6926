package laminate.theory.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import laminate.theory.Deformation;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.Matrix3;
import laminate.theory.Ply;
import laminate.theory.RandomLaminates;
import laminate.theory.Vector3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The bending stiffness of strips, narrow and wide. */
class StripTest {
    private static final double B = 0.03;

    static Stream<Laminate> laminates() {
        return RandomLaminates.take(40);
    }

    /** E b h³/12, and 1/(1 − ν²) of it where held flat (textbook). */
    @Test
    void isotropicStrip() {
        Laminate laminate = Laminate.of(List.of(new Ply(Lamina.isotropic(70e9, 0.3), 0.004, 0)));
        double EI = 70e9 * B * Math.pow(0.004, 3) / 12;
        assertThat(new Strip(laminate, B, StripWidth.NARROW).bendingStiffness()).isCloseTo(EI, within(1e-12 * EI));
        assertThat(new Strip(laminate, B, StripWidth.CYLINDRICAL).bendingStiffness())
                .isCloseTo(EI / 0.91, within(1e-12 * EI));
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void narrowIsTheInverseOfTheComplianceAndSofterThanWide(Laminate laminate) {
        double narrow = StripWidth.NARROW.bendingStiffness(laminate);
        double d11 = laminate.compliance().d().m11();
        assertThat(narrow).isCloseTo(1 / d11, within(1e-8 / d11));
        double wide = StripWidth.CYLINDRICAL.bendingStiffness(laminate);
        assertThat(wide)
                .isGreaterThanOrEqualTo(narrow * (1 - 1e-8))
                .isLessThanOrEqualTo(laminate.bending().m11());
    }

    /** The formula of Whitney, written out. */
    @ParameterizedTest
    @MethodSource("laminates")
    void wideIsTheFormulaOfCylindricalBending(Laminate laminate) {
        Matrix3 A = laminate.membrane();
        Matrix3 Bc = laminate.coupling();
        double determinant = A.m11() * A.m66() - A.m16() * A.m16();
        double lost = (Bc.m11() * (A.m66() * Bc.m11() - A.m16() * Bc.m16())
                        + Bc.m16() * (A.m11() * Bc.m16() - A.m16() * Bc.m11()))
                / determinant;
        double D = laminate.bending().m11();
        assertThat(StripWidth.CYLINDRICAL.bendingStiffness(laminate)).isCloseTo(D - lost, within(1e-10 * D));
    }

    /** The deformation gives back the moment, and no force along the strip. */
    @ParameterizedTest
    @MethodSource("laminates")
    void theDeformationCarriesTheMoment(Laminate laminate) {
        for (StripWidth form : StripWidth.values()) {
            Strip strip = new Strip(laminate, B, form);
            Deformation d = strip.deformationUnder(12);
            double Mx = laminate.coupling().transposed().times(d.strain()).x()
                    + laminate.bending().times(d.curvature()).x();
            Vector3 N = laminate.membrane()
                    .times(d.strain())
                    .plus(laminate.coupling().times(d.curvature()));
            assertThat(B * Mx).isCloseTo(12, within(1e-6));
            double small = 1e-7 * 12 / B / laminate.thickness();
            assertThat(N.x()).isCloseTo(0, within(small));
            assertThat(N.xy()).isCloseTo(0, within(small));
            assertThat(d.curvature().x())
                    .isCloseTo(12 / strip.bendingStiffness(), within(1e-9 * 12 / strip.bendingStiffness()));
            if (form == StripWidth.CYLINDRICAL) {
                assertThat(d.strain().y()).isZero();
                assertThat(d.curvature().y()).isZero();
                assertThat(d.curvature().xy()).isZero();
            }
        }
    }

    /** A strip cut across sees the laminate turned back by a right angle. */
    @Test
    void aStripCutAcross() {
        Lamina lamina = Lamina.of(40e9, 10e9, 4e9, 0.3);
        Laminate laminate = Laminate.of(List.of(new Ply(lamina, 0.001, 0), new Ply(lamina, 0.002, 90)));
        assertThat(StripWidth.NARROW.bendingStiffness(laminate.turnedBy(-90)))
                .isCloseTo(1 / laminate.compliance().d().m22(), within(1e-9));
        Laminate oblique = Laminate.of(List.of(new Ply(lamina, 0.001, 30)));
        assertThat(StripWidth.NARROW.bendingStiffness(oblique.turnedBy(-30))).isCloseTo(40e9 * 1e-9 / 12, within(1e-9));
    }

    @Test
    void theSectionCarriesTheWidth() {
        Laminate laminate = Laminate.of(List.of(new Ply(Lamina.isotropic(70e9, 0.3), 0.004, 0)));
        Strip strip = new Strip(laminate, B, StripWidth.NARROW);
        BeamSection section = strip.section(2e6);
        assertThat(section.bendingStiffness()).isEqualTo(strip.bendingStiffness());
        assertThat(section.shearStiffness()).hasValue(2e6 * B);
    }

    /** Solid plate: S = 5/6 G h b (Reissner 1945). */
    @Test
    void theShearStiffnessIsThatOfTheEquilibriumStress() {
        Laminate laminate = Laminate.of(List.of(new Ply(Lamina.isotropic(70e9, 0.25), 0.004, 0)));
        double S = new Strip(laminate, B, StripWidth.NARROW)
                .section()
                .shearStiffness()
                .orElseThrow();
        double expected = 5.0 / 6 * 28e9 * 0.004 * B;
        assertThat(S).isCloseTo(expected, within(1e-12 * expected));
    }

    /** A ply whose shear moduli differ, at 30°: 1/S is 6/5 of (c²/G13 + s²/G23)/h, no force acting across. */
    @Test
    void theShearStiffnessOfAnObliquePly() {
        Lamina lamina = Lamina.of(40e9, 10e9, 4e9, 0.3).withTransverseShear(4e9, 1e9);
        Laminate laminate = Laminate.of(List.of(new Ply(lamina, 0.004, 30)));
        double S = new Strip(laminate, B, StripWidth.NARROW)
                .section()
                .shearStiffness()
                .orElseThrow();
        double expected = 5.0 / 6 * 0.004 * B / (0.75 / 4e9 + 0.25 / 1e9);
        assertThat(S).isCloseTo(expected, within(1e-12 * expected));
    }

    @Test
    void theLaminateCarriesMomentAndShearForcePerWidth() {
        Laminate laminate = Laminate.of(List.of(new Ply(Lamina.isotropic(70e9, 0.3), 0.004, 0)));
        Strip narrow = new Strip(laminate, B, StripWidth.NARROW);
        BeamResponse response =
                new Beam(narrow.section(), 0.5, Supports.SIMPLY_SUPPORTED).under(BeamLoad.threePoint(60, 0.5));
        LaminateLoad load = narrow.loadAt(response, 0.125);
        assertThat(load.given()).containsOnlyKeys(Term.MX);
        assertThat(load.given().get(Term.MX)).isCloseTo(3.75 / B, within(1e-9));
        assertThat(load.Qx()).isCloseTo(30 / B, within(1e-9));
        assertThat(load.Qy()).isZero();
        LaminateLoad held = new Strip(laminate, B, StripWidth.CYLINDRICAL).loadAt(response, 0.125);
        assertThat(held.given()).containsOnlyKeys(Term.MX, Term.EPS_Y, Term.KAPPA_Y, Term.KAPPA_XY);
        assertThat(held.given().get(Term.MX)).isCloseTo(3.75 / B, within(1e-9));
        assertThat(held.given()).containsEntry(Term.EPS_Y, 0.0).containsEntry(Term.KAPPA_Y, 0.0);
    }

    /** The laminate under the load it is handed deforms as the strip does, whether free or held across. */
    @ParameterizedTest
    @MethodSource("laminates")
    void theLoadHandedOnDeformsTheLaminateAsTheStrip(Laminate laminate) {
        for (StripWidth form : StripWidth.values()) {
            Strip strip = new Strip(laminate, B, form);
            BeamResponse response = new Beam(strip.section(), 0.5, Supports.CANTILEVER).under(BeamLoad.at(60, 0.5));
            Deformation expected = strip.deformationUnder(response.momentAt(0.1));
            Deformation actual =
                    laminate.responseTo(strip.loadAt(response, 0.1)).deformation();
            double size = Math.abs(expected.curvature().x());
            double curved = actual.curvature().minus(expected.curvature()).x();
            double twisted = actual.curvature().minus(expected.curvature()).xy();
            double stretched = actual.strain().minus(expected.strain()).x();
            double sheared = actual.strain().minus(expected.strain()).xy();
            assertThat(curved).isCloseTo(0, within(1e-6 * size));
            assertThat(twisted).isCloseTo(0, within(1e-6 * size));
            assertThat(stretched).isCloseTo(0, within(1e-6 * size * laminate.thickness()));
            assertThat(sheared).isCloseTo(0, within(1e-6 * size * laminate.thickness()));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void theWidthIsPositive(double bad) {
        Laminate laminate = Laminate.of(List.of(new Ply(Lamina.isotropic(70e9, 0.3), 0.004, 0)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Strip(laminate, bad, StripWidth.NARROW))
                .withMessageContaining(String.valueOf(bad));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Strip(laminate, 1, StripWidth.NARROW).deformationUnder(Double.NaN))
                .withMessageContaining("NaN");
    }
}
