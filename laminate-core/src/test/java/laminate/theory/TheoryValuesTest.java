package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The small values: what they refuse, with the value in the message, and what they keep. */
class TheoryValuesTest {
    private static final Lamina CARBON = Lamina.of(181e9, 10.3e9, 7.17e9, 0.28);

    private static void refused(ThrowingCallable call, String shown) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContaining(shown);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void moduliAndThicknessesArePositiveAndFinite(double bad) {
        String shown = String.valueOf(bad);
        refused(() -> Lamina.of(bad, 1, 1, 0), shown);
        refused(() -> Lamina.of(1, bad, 1, 0), shown);
        refused(() -> Lamina.of(1, 1, bad, 0), shown);
        refused(() -> Lamina.isotropic(bad, 0), shown);
        refused(() -> CARBON.withTransverseShear(bad, 1), shown);
        refused(() -> CARBON.withTransverseShear(1, bad), shown);
        refused(() -> CARBON.scaledBy(bad), shown);
        refused(() -> new Ply(CARBON, bad, 0), shown);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.NEGATIVE_INFINITY})
    void anglesAndExpansionsAreFinite(double bad) {
        String shown = String.valueOf(bad);
        refused(() -> new Ply(CARBON, 1, bad), shown);
        refused(() -> Angle.ofDegrees(bad), shown);
        refused(() -> CARBON.withExpansion(bad, 0), shown);
        refused(() -> CARBON.withMoistureExpansion(0, bad), shown);
        refused(() -> MatrixProperties.of(3e9, 0.35).withExpansion(bad), shown);
        refused(() -> new Vector3(0, 0, bad), shown);
    }

    @Test
    void poissonRatioKeepsTheEnergyPositive() {
        refused(() -> Lamina.of(100, 25, 10, 2), "2.0");
        refused(() -> Lamina.of(100, 25, 10, -2), "-2.0");
        refused(() -> Lamina.of(100, 25, 10, Double.NaN), "NaN");
        assertThat(Lamina.of(100, 25, 10, 1.99).nu21()).isCloseTo(0.4975, within(1e-12));
        refused(() -> Lamina.isotropic(1, 0.51), "0.51");
        refused(() -> Lamina.isotropic(1, -1), "-1.0");
    }

    @Test
    void transverseShearIsG12WhereUnknownAndSaysSo() {
        assertThat(CARBON.G13()).isEqualTo(7.17e9);
        assertThat(CARBON.G23()).isEqualTo(7.17e9);
        assertThat(CARBON.transverseShearAssumed()).isTrue();
        Lamina known = CARBON.withTransverseShear(6e9, 3e9);
        assertThat(known.G13()).isEqualTo(6e9);
        assertThat(known.G23()).isEqualTo(3e9);
        assertThat(known.transverseShearAssumed()).isFalse();
        assertThat(Lamina.isotropic(200e9, 0.25).transverseShearAssumed()).isFalse();
        assertThat(Lamina.isotropic(200e9, 0.25).G23()).isEqualTo(80e9);
    }

    @Test
    void knockDownScalesModuliOnly() {
        Lamina whole = CARBON.withTransverseShear(6e9, 3e9)
                .withExpansion(2e-8, 2.25e-5)
                .withMoistureExpansion(0, 0.6);
        Lamina half = whole.scaledBy(0.5);
        assertThat(half)
                .isEqualTo(Lamina.of(90.5e9, 5.15e9, 3.585e9, 0.28)
                        .withTransverseShear(3e9, 1.5e9)
                        .withExpansion(2e-8, 2.25e-5)
                        .withMoistureExpansion(0, 0.6));
    }

    @Test
    void laminaComesBackFromItsStiffness() {
        Lamina back = Lamina.from(CARBON.reducedStiffness());
        assertThat(back.E1()).isCloseTo(181e9, within(1.0));
        assertThat(back.E2()).isCloseTo(10.3e9, within(1.0));
        assertThat(back.G12()).isEqualTo(7.17e9);
        assertThat(back.nu12()).isCloseTo(0.28, within(1e-14));
        refused(() -> Lamina.from(CARBON.reducedStiffness().rotatedBy(30)), "Q16");
        refused(() -> Lamina.from(new ReducedStiffness(2, 0, 2, 0, 0.5, 1)), "0.5");
    }

    @Test
    void stiffnessHasPositiveDiagonal() {
        refused(() -> new ReducedStiffness(-3, 0, 1, 0, 0, 1), "-3.0");
        refused(() -> new ReducedStiffness(1, 0, 1, Double.NaN, 0, 1), "NaN");
        refused(() -> new ReducedStiffness(1, 0, 1, 0, 0, 0), "Q66");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-90, 90",
        "90, 90",
        "270, 90",
        "180, 0",
        "-180, 0",
        "135, -45",
        "3645, 45",
        "30, 30",
        "-150, 30"
    })
    void anglesAreKeptToHalfATurn(double given, double kept) {
        Angle angle = Angle.ofDegrees(given);
        assertThat(angle.degrees()).isEqualTo(kept);
        assertThat(angle).isEqualTo(Angle.ofDegrees(kept)).hasSameHashCodeAs(Angle.ofDegrees(kept));
        assertThat(angle)
                .isNotEqualTo(Angle.ofDegrees(kept + 1))
                .isNotEqualTo(kept)
                .hasToString(kept + "°");
    }

    @Test
    void specialAnglesAreExact() {
        ReducedStiffness q = CARBON.reducedStiffness();
        assertThat(q.rotatedBy(0)).isEqualTo(q);
        ReducedStiffness across = q.rotatedBy(90);
        assertThat(across.Q11()).isEqualTo(q.Q22());
        assertThat(across.Q22()).isEqualTo(q.Q11());
        assertThat(across.Q12()).isEqualTo(q.Q12());
        assertThat(across.Q16()).isZero();
        assertThat(q.rotatedBy(45).Q16())
                .isEqualTo(-q.rotatedBy(-45).Q16())
                .isEqualTo(q.rotatedBy(45).Q26());
        assertThat(q.rotatedBy(45).Q16()).isEqualTo((q.Q11() - q.Q22()) / 4);
        Vector3 turned = Angle.ofDegrees(90).stressToPly(new Vector3(1, 2, 3));
        assertThat(turned).isEqualTo(new Vector3(2, 1, -3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 13, 30, 45, 60, 89.999, 90, -22.5, -75})
    void invariantsGiveTheRotatedStiffness(double degrees) {
        ReducedStiffness turned = CARBON.reducedStiffness().rotatedBy(degrees);
        Invariants u = CARBON.reducedStiffness().invariants();
        double two = Math.toRadians(2 * degrees);
        double allowed = 1e-4;
        assertThat(turned.Q11())
                .isCloseTo(u.U1() + u.U2() * Math.cos(two) + u.U3() * Math.cos(2 * two), within(allowed));
        assertThat(turned.Q12()).isCloseTo(u.U4() - u.U3() * Math.cos(2 * two), within(allowed));
        assertThat(turned.Q16()).isCloseTo(u.U2() / 2 * Math.sin(two) + u.U3() * Math.sin(2 * two), within(allowed));
        assertThat(turned.Q26()).isCloseTo(u.U2() / 2 * Math.sin(two) - u.U3() * Math.sin(2 * two), within(allowed));
        assertThat(turned.Q66()).isCloseTo(u.U5() - u.U3() * Math.cos(2 * two), within(allowed));
        assertThat(turned.invariants().U1()).isCloseTo(u.U1(), within(allowed));
        assertThat(turned.invariants().U4()).isCloseTo(u.U4(), within(allowed));
    }

    @Test
    void turningAddsUpAndTurnsBack() {
        ReducedStiffness q = CARBON.reducedStiffness();
        ReducedStiffness twice = q.rotatedBy(20).rotatedBy(35);
        ReducedStiffness once = q.rotatedBy(55);
        assertThat(twice.matrix().m16()).isCloseTo(once.Q16(), within(1e-4));
        assertThat(twice.matrix().m26()).isCloseTo(once.Q26(), within(1e-4));
        assertThat(twice.matrix().m12()).isCloseTo(once.Q12(), within(1e-4));
        assertThat(twice.rotatedBy(-55).Q22()).isCloseTo(q.Q22(), within(1e-4));
        Angle angle = Angle.ofDegrees(27);
        Vector3 v = new Vector3(3, -1, 0.7);
        assertThat(angle.stressFromPly(angle.stressToPly(v)).xy()).isCloseTo(0.7, within(1e-14));
        assertThat(angle.strainFromPly(angle.strainToPly(v)).x()).isCloseTo(3, within(1e-14));
    }

    @Test
    void stressTimesStrainDoesNotDependOnTheAxes() {
        Angle angle = Angle.ofDegrees(-62);
        Vector3 stress = new Vector3(4, -1, 2);
        Vector3 strain = new Vector3(0.3, 0.5, -0.2);
        assertThat(energy(angle.stressToPly(stress), angle.strainToPly(strain)))
                .isCloseTo(energy(stress, strain), within(1e-14));
    }

    private static double energy(Vector3 s, Vector3 e) {
        return s.x() * e.x() + s.y() * e.y() + s.xy() * e.xy();
    }

    @Test
    void matrixHasItsEntriesAndItsInverse() {
        Matrix3 m = new Matrix3(4, 1, -2, 3, 5, 1, 0.5, 1, 6);
        assertThat(m.get(1, 0)).isEqualTo(3);
        assertThat(m.transposed().get(0, 1)).isEqualTo(3);
        assertThat(m.scale()).isEqualTo(6);
        Vector3 back = m.inverse().times(m.times(new Vector3(1, 2, 3)));
        assertThat(back.x()).isCloseTo(1, within(1e-14));
        assertThat(back.y()).isCloseTo(2, within(1e-14));
        assertThat(back.xy()).isCloseTo(3, within(1e-14));
        refused(() -> Matrix3.symmetric(1, 1, 1, 1, 1, 1).inverse(), "singular");
        refused(() -> Matrix3.symmetric(1e-200, 0, 1e-200, 0, 0, 1e-200).inverse(), "singular");
        refused(() -> m.times(Double.NaN), "NaN");
        assertThatThrownBy(() -> m.get(3, 0)).isInstanceOf(IndexOutOfBoundsException.class);
        m.rows()[0][0] = 99;
        assertThat(m.m11()).as("rows are the caller's own").isEqualTo(4);
    }

    @Test
    void laminateIsAValueOfItsPlies() {
        Ply ply = new Ply(CARBON, 0.001, 30);
        Laminate laminate = Laminate.of(List.of(ply, ply));
        assertThat(laminate)
                .isEqualTo(Laminate.of(List.of(ply, ply)))
                .hasSameHashCodeAs(Laminate.of(List.of(ply, ply)));
        assertThat(laminate).isNotEqualTo(Laminate.of(List.of(ply))).isNotEqualTo(ply);
        assertThat(laminate.toString()).contains("30.0");
        assertThat(laminate.interfaces()).containsExactly(-0.001, 0, 0.001);
        assertThat(laminate.thickness()).isEqualTo(0.002);
        assertThatThrownBy(() -> laminate.plies().clear()).isInstanceOf(UnsupportedOperationException.class);
        refused(() -> Laminate.of(List.of()), "at least one ply");
        refused(() -> Laminate.of(List.of(new Ply(CARBON, 1e308, 0), new Ply(CARBON, 1e308, 0))), "thickness");
    }

    @Test
    void symmetryLooksAtLaminaThicknessAndAngle() {
        Ply ply = new Ply(CARBON, 0.001, 90);
        assertThat(Laminate.of(List.of(ply, new Ply(CARBON, 0.001, -90))).isSymmetric())
                .isTrue();
        assertThat(Laminate.of(List.of(ply, new Ply(CARBON, 0.002, 90))).isSymmetric())
                .isFalse();
        assertThat(Laminate.of(List.of(ply, new Ply(CARBON, 0.001, 80))).isSymmetric())
                .isFalse();
        assertThat(Laminate.of(List.of(ply, new Ply(CARBON.scaledBy(0.9), 0.001, 90)))
                        .isSymmetric())
                .isFalse();
    }

    @Test
    void singularStiffnessIsNamed() {
        Laminate film = Laminate.of(
                List.of(new Ply(Lamina.isotropic(200e9, 0.3), 1e-9, 0), new Ply(Lamina.isotropic(1e-12, 0.3), 1, 0)));
        refused(film::compliance, "singular");
        Matrix3 one = Matrix3.symmetric(1, 0, 1, 0, 0, 1);
        refused(() -> Compliance.of(one, one.times(2), one), "singular");
        refused(() -> Compliance.of(one, one, one.times(-1)), "-1.0");
    }

    @Test
    void equilibriumShearVanishesAtTheFacesAndCarriesTheForce() {
        Laminate laminate = Laminate.of(
                List.of(new Ply(CARBON, 0.001, 0), new Ply(CARBON, 0.002, 90), new Ply(CARBON, 0.0005, 30)));
        double[] heights = laminate.interfaces();
        assertThat(EquilibriumShear.alongX(laminate, 500, heights[0])).isZero();
        assertThat(EquilibriumShear.alongX(laminate, 500, heights[3])).isCloseTo(0, within(1e-6));
        double sum = 0;
        int steps = 7000;
        for (int i = 0; i < steps; i++) {
            double z = heights[0] + laminate.thickness() * (i + 0.5) / steps;
            sum += EquilibriumShear.alongY(laminate, 500, z) * laminate.thickness() / steps;
        }
        assertThat(sum).isCloseTo(500, within(0.001));
        refused(() -> EquilibriumShear.alongX(laminate, 500, 0.01), "0.01");
        refused(() -> EquilibriumShear.alongX(laminate, Double.NaN, 0), "NaN");
    }

    @Test
    void deformationAddsCurvatureOverHeight() {
        Deformation d = new Deformation(new Vector3(1, 2, 3), new Vector3(10, 20, 30)).times(2);
        assertThat(d.at(-0.1)).isEqualTo(new Vector3(0, 0, 0));
        assertThat(d.at(0.1)).isEqualTo(new Vector3(4, 8, 12));
    }
}
