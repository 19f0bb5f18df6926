package laminate.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for any laminate, whatever its numbers. */
class LaminatePropertiesTest {
    private static final Lamina CARBON = Lamina.of(181e9, 10.3e9, 7.17e9, 0.28);
    private static final Lamina STEEL = Lamina.isotropic(200e9, 0.3);
    private static final double ROUNDING = 1e-12;

    static Stream<Laminate> laminates() {
        return RandomLaminates.take(60);
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void turnsLikeItsStiffness(Laminate laminate) {
        for (double turn : new double[] {17, -30, 45, 90, 200}) {
            Laminate turned = each(laminate, p -> new Ply(p.lamina(), p.thickness(), p.angleDegrees() + turn));
            assertClose(
                    turned.membrane(),
                    rotated(laminate.membrane(), turn),
                    laminate.membrane().scale());
            assertClose(
                    turned.bending(),
                    rotated(laminate.bending(), turn),
                    laminate.bending().scale());
        }
    }

    /** A and D are stiffnesses and turn like Q. */
    private static Matrix3 rotated(Matrix3 m, double degrees) {
        return new ReducedStiffness(m.m11(), m.m12(), m.m22(), m.m16(), m.m26(), m.m66())
                .rotatedBy(degrees)
                .matrix();
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void turnedTogetherWithItsLoadDeformsTheSame(Laminate laminate) {
        Angle angle = Angle.ofDegrees(33);
        Vector3 force = new Vector3(1000, -300, 200);
        Vector3 moment = new Vector3(1, 4, -2);
        Deformation before = laminate.deformationUnder(new Resultants(force, moment));
        Deformation after = each(laminate, p -> new Ply(p.lamina(), p.thickness(), p.angleDegrees() + 33))
                .deformationUnder(new Resultants(angle.stressFromPly(force), angle.stressFromPly(moment)));
        assertClose(angle.strainToPly(after.strain()), before.strain(), 1e-10);
        assertClose(angle.strainToPly(after.curvature()), before.curvature(), 1e-10);
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void aQuarterTurnExchangesTheAxes(Laminate laminate) {
        Laminate turned =
                each(laminate, p -> new Ply(p.lamina(), p.thickness(), p.angle().degrees() + 90));
        Laminate plain =
                each(laminate, p -> new Ply(p.lamina(), p.thickness(), p.angle().degrees()));
        assertThat(turned.membrane().m11())
                .isCloseTo(
                        plain.membrane().m22(),
                        within(ROUNDING * plain.membrane().scale()));
        assertThat(turned.membrane().m16())
                .isCloseTo(
                        -plain.membrane().m26(),
                        within(ROUNDING * plain.membrane().scale()));
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void otherFaceDownChangesOnlyTheSignOfCoupling(Laminate laminate) {
        Laminate reversed = reversed(laminate);
        assertClose(
                reversed.membrane(), laminate.membrane(), laminate.membrane().scale());
        assertClose(
                reversed.coupling().times(-1),
                laminate.coupling(),
                laminate.membrane().scale() * laminate.thickness());
        assertClose(reversed.bending(), laminate.bending(), laminate.bending().scale());
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void aPlySplitInTwoIsTheSamePly(Laminate laminate) {
        List<Ply> split = new ArrayList<>();
        for (Ply p : laminate.plies()) {
            split.add(new Ply(p.lamina(), 0.3 * p.thickness(), p.angleDegrees()));
            split.add(new Ply(p.lamina(), 0.7 * p.thickness(), p.angleDegrees()));
        }
        Laminate finer = Laminate.of(split);
        assertClose(finer.membrane(), laminate.membrane(), laminate.membrane().scale());
        assertClose(finer.coupling(), laminate.coupling(), laminate.membrane().scale() * laminate.thickness());
        assertClose(finer.bending(), laminate.bending(), laminate.bending().scale());
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void stiffnessGrowsWithThePowersOfThickness(Laminate laminate) {
        Laminate thrice = each(laminate, p -> new Ply(p.lamina(), 3 * p.thickness(), p.angleDegrees()));
        assertClose(
                thrice.membrane().times(1.0 / 3),
                laminate.membrane(),
                laminate.membrane().scale());
        assertClose(
                thrice.coupling().times(1.0 / 9),
                laminate.coupling(),
                laminate.membrane().scale() * laminate.thickness());
        assertClose(
                thrice.bending().times(1.0 / 27),
                laminate.bending(),
                laminate.bending().scale());
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void mirroredLaminateIsSymmetricAndExactlyUncoupled(Laminate laminate) {
        List<Ply> both = new ArrayList<>(laminate.plies());
        both.addAll(reversed(laminate).plies());
        Laminate mirrored = Laminate.of(both);
        assertThat(mirrored.isSymmetric()).isTrue();
        assertThat(mirrored.isCoupled()).isFalse();
        assertThat(mirrored.coupling().scale()).isZero();
        assertThat(mirrored.compliance().b().scale()).isZero();
        assertThat(mirrored.thermalResultants().orElseThrow().moment()).isEqualTo(Vector3.ZERO);
        assertThat(mirrored.inPlane().Ex())
                .isCloseTo(mirrored.inPlaneRestrained().Ex(), within(1.0));
        assertThat(mirrored.flexural().Gxy())
                .isCloseTo(mirrored.flexuralRestrained().Gxy(), within(1.0));
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void freeToCoupleIsNeverStifferThanRestrained(Laminate laminate) {
        assertThat(laminate.inPlane().Ex())
                .isLessThanOrEqualTo(laminate.inPlaneRestrained().Ex() * (1 + 1e-9));
        assertThat(laminate.flexural().Ey())
                .isLessThanOrEqualTo(laminate.flexuralRestrained().Ey() * (1 + 1e-9));
    }

    @ParameterizedTest
    @MethodSource("laminates")
    void complianceUndoesStiffness(Laminate laminate) {
        Deformation wanted = new Deformation(new Vector3(1e-3, -2e-3, 5e-4), new Vector3(0.1, 0.2, -0.3));
        Resultants load = new Resultants(
                laminate.membrane()
                        .times(wanted.strain())
                        .plus(laminate.coupling().times(wanted.curvature())),
                laminate.coupling()
                        .times(wanted.strain())
                        .plus(laminate.bending().times(wanted.curvature())));
        Deformation found = laminate.deformationUnder(load);
        assertClose(found.strain(), wanted.strain(), 1e-9);
        assertClose(found.curvature(), wanted.curvature(), 1e-9);
    }

    /** Where every ply would expand alike, the laminate does too and stays flat, whatever its stiffness. */
    @ParameterizedTest
    @MethodSource("laminates")
    void uniformExpansionIsFreeAndFlat(Laminate laminate) {
        Laminate uniform = each(
                laminate,
                p -> new Ply(
                        p.lamina().withExpansion(2e-5, 2e-5).withMoistureExpansion(0.3, 0.3),
                        p.thickness(),
                        p.angleDegrees()));
        Deformation thermal = uniform.thermalExpansion().orElseThrow();
        assertClose(thermal.strain(), new Vector3(2e-5, 2e-5, 0), 1e-10);
        assertClose(thermal.curvature().times(laminate.thickness()), Vector3.ZERO, 1e-14);
        assertClose(uniform.moistureExpansion().orElseThrow().strain(), new Vector3(0.3, 0.3, 0), 1e-10);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.0001, 0.003, 2})
    void isotropicPlateHasItsTextbookStiffness(double h) {
        Laminate plate = Laminate.of(List.of(new Ply(STEEL, h, 30)));
        double expected = 200e9 * h * h * h / (12 * (1 - 0.3 * 0.3));
        assertThat(plate.bending().m11()).isCloseTo(expected, within(ROUNDING * expected));
        assertThat(plate.bending().m12()).isCloseTo(0.3 * expected, within(ROUNDING * expected));
        assertThat(plate.inPlane().Ex()).isCloseTo(200e9, within(1.0));
        assertThat(plate.flexural().nuxy()).isCloseTo(0.3, within(ROUNDING));
    }

    /** A ply that is thin enough leaves the laminate as it was. */
    @Test
    void aVanishingPlyVanishes() {
        Laminate plain = Laminate.of(List.of(new Ply(CARBON, 0.002, 30)));
        Laminate withFilm = Laminate.of(List.of(new Ply(CARBON, 0.002, 30), new Ply(STEEL, 1e-18, 0)));
        assertClose(withFilm.membrane(), plain.membrane(), plain.membrane().scale());
        assertClose(withFilm.bending(), plain.bending(), plain.bending().scale());
    }

    @Test
    void crossPlyAndBalancedLaminatesHaveExactZeros() {
        Laminate crossPly = stack(0, 90, 0, 90, 90, 180, -90);
        assertThat(crossPly.membrane().m16()).isZero();
        assertThat(crossPly.membrane().m26()).isZero();
        assertThat(crossPly.coupling().m16()).isZero();
        assertThat(crossPly.bending().m26()).isZero();
        assertThat(crossPly.compliance().a().m16()).isZero();
        assertThat(crossPly.compliance().b().m61()).isZero();
        assertThat(1 / crossPly.membrane().m16()).as("no negative zero").isPositive();
        assertThat(stack(45, 45, 45, -45, -45, -45).membrane().m16()).isZero();
        assertThat(stack(20, -50, 20, 50, -20, -20).membrane().m26()).isZero();
    }

    @Test
    void unsymmetricCrossPlyBendsWhenWarmed() {
        Lamina glass = Lamina.of(45.6e9, 16.2e9, 5.83e9, 0.278).withExpansion(8.6e-6, 26.4e-6);
        Laminate strip = Laminate.of(List.of(new Ply(glass, 0.001, 0), new Ply(glass, 0.001, 90)));
        Deformation perKelvin = strip.thermalExpansion().orElseThrow();
        assertThat(perKelvin.curvature().x()).isPositive();
        assertThat(perKelvin.curvature().y()).isCloseTo(-perKelvin.curvature().x(), within(1e-12));
        assertThat(perKelvin.strain().x()).isCloseTo(perKelvin.strain().y(), within(1e-18));
        assertThat(strip.isCoupled()).isTrue();
        assertThat(strip.isSymmetric()).isFalse();
    }

    @Test
    void unknownExpansionOfOnePlyLeavesThatOfTheLaminateOut() {
        Ply known = new Ply(CARBON.withExpansion(2e-8, 2.25e-5).withMoistureExpansion(0, 0.6), 0.001, 0);
        Laminate laminate = Laminate.of(List.of(known, new Ply(CARBON, 0.001, 0)));
        assertThat(laminate.thermalExpansion()).isEmpty();
        assertThat(laminate.moistureExpansion()).isEmpty();
        assertThat(Laminate.of(List.of(known)).thermalExpansion()).isPresent();
    }

    private static Laminate stack(double... angles) {
        List<Ply> plies = new ArrayList<>();
        for (double angle : angles) {
            plies.add(new Ply(CARBON, 0.00013, angle));
        }
        return Laminate.of(plies);
    }

    private static Laminate each(Laminate laminate, UnaryOperator<Ply> change) {
        return Laminate.of(laminate.plies().stream().map(change).toList());
    }

    private static Laminate reversed(Laminate laminate) {
        List<Ply> plies = new ArrayList<>(laminate.plies());
        Collections.reverse(plies);
        return Laminate.of(plies);
    }

    private static void assertClose(Matrix3 actual, Matrix3 expected, double scale) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertThat(actual.get(i, j)).isCloseTo(expected.get(i, j), within(ROUNDING * scale));
            }
        }
    }

    /** To a tolerance relative to the largest component, or absolute for an expected zero. */
    private static void assertClose(Vector3 actual, Vector3 expected, double tolerance) {
        double scale = Math.max(Math.max(Math.abs(expected.x()), Math.abs(expected.y())), Math.abs(expected.xy()));
        double allowed = tolerance * (scale == 0 ? 1 : scale);
        assertThat(actual.x()).isCloseTo(expected.x(), within(allowed));
        assertThat(actual.y()).isCloseTo(expected.y(), within(allowed));
        assertThat(actual.xy()).isCloseTo(expected.xy(), within(allowed));
    }
}
