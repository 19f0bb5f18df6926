package laminate.theory.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import laminate.theory.Angle;
import laminate.theory.Deformation;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.Resultants;
import laminate.theory.Vector3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Local failures of a laminate's faces and core: the right moduli in the right direction, and true reserve factors. */
class LocalChecksTest {
    private static final double E1 = 40e9;
    private static final double E2 = 10e9;
    private static final Lamina UD = Lamina.of(E1, E2, 4e9, 0.28);
    private static final Lamina CELLS = Lamina.of(1e6, 1e6, 1e5, 0.2).withTransverseShear(60e6, 30e6);
    private static final double EZ = 150e6;

    private static LocalChecks checks(double faceAngle, double coreAngle) {
        Laminate laminate = Laminate.of(List.of(
                new Ply(UD, 0.001, faceAngle), new Ply(CELLS, 0.012, coreAngle), new Ply(UD, 0.0015, faceAngle)));
        Sandwich sandwich = Sandwich.withCore(laminate, 1, 1);
        SandwichCore core =
                SandwichCore.of(sandwich.core(), EZ).withCellSize(0.006).withCompressiveStrength(2e6);
        return new LocalChecks(sandwich, core);
    }

    /** Stress, direction of compression relative to the fibre: along, across, and in shear of either sign at ±45°. */
    @ParameterizedTest
    @CsvSource({
        "0, -80e6, 0, 0, 80e6, 40e9, 60e6",
        "0, 0, -80e6, 0, 80e6, 10e9, 30e6",
        "0, 50e6, -80e6, 0, 80e6, 10e9, 30e6",
        "0, -80e6, 60e6, 0, 80e6, 40e9, 60e6",
        "0, -80e6, -30e6, 0, 80e6, 40e9, 60e6",
        "45, 0, 0, 80e6, 80e6, 10e9, 45e6",
        "45, 0, 0, -80e6, 80e6, 40e9, 45e6",
        "90, -80e6, 0, 0, 80e6, 10e9, 60e6",
        // Both ways compressed: the lesser stress across the fibre and the weak way of the core comes first, or does
        // not.
        "0, -80e6, -70e6, 0, 70e6, 10e9, 30e6",
        "0, -80e6, -41e6, 0, 41e6, 10e9, 30e6",
        "0, -80e6, -39e6, 0, 80e6, 40e9, 60e6",
        "0, -80e6, -80e6, 0, 80e6, 10e9, 30e6",
    })
    void theModuliAreThoseAlongTheCompression(
            double angle, double x, double y, double xy, double size, double Ef, double Gc) {
        Vector3 stress = new Vector3(x, y, xy);
        LocalCheck check = checks(angle, 0)
                .wrinkling(Face.MOULD_FACE, stress, Wrinkling.DESIGN)
                .orElseThrow();
        double capacity = 0.5 * Math.cbrt(Ef * EZ * Gc);
        assertThat(check.demand()).isCloseTo(size, within(1e-6 * size));
        assertThat(check.capacity()).isCloseTo(capacity, within(1e-9 * capacity));
        assertThat(check.reserveFactor()).isCloseTo(capacity / size, within(1e-9 * capacity / size));
        assertThat(check.mode()).isEqualTo(LocalMode.WRINKLING);
        assertThat(check.face()).contains(Face.MOULD_FACE);
    }

    @Test
    void theoryByNameIsHigher() {
        Vector3 stress = new Vector3(-1e6, 0, 0);
        double design = checks(0, 0)
                .wrinkling(Face.MOULD_FACE, stress, Wrinkling.DESIGN)
                .orElseThrow()
                .reserveFactor();
        double theory = checks(0, 0)
                .wrinkling(Face.MOULD_FACE, stress, Wrinkling.THEORY)
                .orElseThrow()
                .reserveFactor();
        assertThat(theory / design).isCloseTo(1.82, within(1e-12));
    }

    @Test
    void aTwoLayerFaceHeldFlatHasTheModulusOfItsMembrane() {
        Lamina soft = Lamina.isotropic(8e9, 0);
        Lamina stiff = Lamina.isotropic(20e9, 0);
        Laminate laminate = Laminate.of(List.of(
                new Ply(soft, 0.001, 0), new Ply(stiff, 0.003, 0), new Ply(CELLS, 0.012, 0), new Ply(UD, 0.001, 0)));
        LocalChecks checks = new LocalChecks(Sandwich.withCore(laminate, 2, 2), SandwichCore.of(0.012, EZ, 50e6));
        LocalCheck check = checks.wrinkling(Face.MOULD_FACE, new Vector3(-1e6, 0, 0), Wrinkling.DESIGN)
                .orElseThrow();
        double Ef = (8e9 * 0.001 + 20e9 * 0.003) / 0.004;
        assertThat(check.capacity()).isCloseTo(0.5 * Math.cbrt(Ef * EZ * 50e6), within(1.0));
    }

    /** Sandwich and stress turned together: the same reserve. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 17, 45, 90, 120, 180, -60})
    void turningAllTogetherChangesNothing(double turn) {
        Vector3 stress = new Vector3(-40e6, 10e6, 25e6);
        Vector3 turned = Angle.ofDegrees(turn).stressFromPly(stress);
        LocalChecks still = checks(20, 70);
        LocalChecks moved = checks(20 + turn, 70 + turn);
        double wrinkling = still.wrinkling(Face.INNER_FACE, stress, Wrinkling.DESIGN)
                .orElseThrow()
                .reserveFactor();
        assertThat(moved.wrinkling(Face.INNER_FACE, turned, Wrinkling.DESIGN)
                        .orElseThrow()
                        .reserveFactor())
                .isCloseTo(wrinkling, within(1e-9 * wrinkling));
        double dimpling = still.dimpling(Face.INNER_FACE, stress).orElseThrow().reserveFactor();
        assertThat(moved.dimpling(Face.INNER_FACE, turned).orElseThrow().reserveFactor())
                .isCloseTo(dimpling, within(1e-9 * dimpling));
        double crimping = still.shearCrimping(stress).orElseThrow().reserveFactor();
        assertThat(moved.shearCrimping(turned).orElseThrow().reserveFactor())
                .isCloseTo(crimping, within(1e-9 * crimping));
    }

    @Test
    void dimplingTakesTheThicknessOfItsFaceAndTheCell() {
        Vector3 stress = new Vector3(-30e6, 0, 0);
        double poisson = 0.28 * 0.28 * E2 / E1;
        double capacity = 2 * E1 / (1 - poisson) * Math.pow(0.0015 / 0.006, 2);
        LocalCheck inner = checks(0, 0).dimpling(Face.INNER_FACE, stress).orElseThrow();
        assertThat(inner.capacity()).isCloseTo(capacity, within(1e-9 * capacity));
        assertThat(inner.reserveFactor()).isCloseTo(capacity / 30e6, within(1e-6));
        double thin =
                checks(0, 0).dimpling(Face.MOULD_FACE, stress).orElseThrow().capacity();
        assertThat(capacity / thin).isCloseTo(2.25, within(1e-9));
        LocalChecks foam = new LocalChecks(checks(0, 0).sandwich(), SandwichCore.of(0.012, EZ, 50e6));
        assertThat(foam.dimpling(Face.INNER_FACE, stress)).isEmpty();
    }

    /** A load so small that no number holds its reserve is none; nor is what rounding leaves of one along a direction. */
    @Test
    void nextToNoLoadGivesNoCheck() {
        LocalChecks checks = checks(0, 0);
        assertThat(checks.wrinkling(Face.MOULD_FACE, new Vector3(-1e-301, 0, 0), Wrinkling.DESIGN))
                .isEmpty();
        assertThat(checks.bearing(1e-308)).isEmpty();
        assertThat(checks.indentation(Face.MOULD_FACE, 1e-307, 1e8)).isEmpty();
        Vector3 pulled = Angle.ofDegrees(31).stressFromPly(new Vector3(50e6, 0, 0));
        assertThat(checks.wrinkling(Face.MOULD_FACE, pulled, Wrinkling.DESIGN)).isEmpty();
    }

    /** The cells shear half as stiff across: 60 and 30 MPa. */
    @ParameterizedTest
    @CsvSource({"-1e5, -0.51e5, 0.51e5, 30e6", "-1e5, -0.49e5, 1e5, 60e6", "-1e5, 2e5, 1e5, 60e6"})
    void shearCrimpingMindsBothDirections(double x, double y, double demand, double G) {
        LocalCheck check = checks(0, 0).shearCrimping(new Vector3(x, y, 0)).orElseThrow();
        assertThat(check.demand()).isCloseTo(demand, within(1e-6));
        assertThat(check.capacity()).isCloseTo(G * 0.01325 * 0.01325 / 0.012, within(1e-3));
    }

    @Test
    void shearCrimpingIsTheForceOfBothFaces() {
        double d = 0.012 + 0.00125;
        LocalCheck along = checks(0, 0).shearCrimping(new Vector3(-50e3, 0, 0)).orElseThrow();
        assertThat(along.capacity()).isCloseTo(60e6 * d * d / 0.012, within(1e-3));
        assertThat(along.reserveFactor()).isCloseTo(60e6 * d * d / 0.012 / 50e3, within(1e-9));
        LocalCheck across = checks(0, 0).shearCrimping(new Vector3(0, -50e3, 0)).orElseThrow();
        assertThat(along.capacity() / across.capacity()).isCloseTo(2, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1e6, 0, 0", "1e6, 2e6, 1e6", "0, 0, 0"})
    void nothingFailsWithoutCompression(double x, double y, double xy) {
        Vector3 stress = new Vector3(x, y, xy);
        assertThat(checks(0, 0).wrinkling(Face.MOULD_FACE, stress, Wrinkling.DESIGN))
                .isEmpty();
        assertThat(checks(0, 0).dimpling(Face.MOULD_FACE, stress)).isEmpty();
        assertThat(checks(0, 0).shearCrimping(stress)).isEmpty();
    }

    private static Deformation bentBy(LocalChecks checks, double Mx, double My) {
        return checks.sandwich().laminate().deformationUnder(new Resultants(Vector3.ZERO, new Vector3(Mx, My, 0)));
    }

    /** Bent one way: M²/(d D), D the flexural rigidity that gives the curvature. Own bending of faces is the difference. */
    @Test
    void flexuralCrushingIsTheFormulaOfTheBoard() {
        LocalChecks checks = checks(0, 0);
        Deformation bent = bentBy(checks, 400, 0);
        double D = 400 / bent.curvature().x();
        double expected =
                SandwichFormulas.flexuralCrushing(400, checks.sandwich().faceDistance(), D);
        LocalCheck check = checks.flexuralCrushing(bent).orElseThrow();
        assertThat(check.demand()).isCloseTo(expected, within(0.02 * expected));
        assertThat(check.capacity()).isEqualTo(2e6);
        LocalCheck other = checks.flexuralCrushing(bentBy(checks, -400, 0)).orElseThrow();
        assertThat(other.demand()).isCloseTo(check.demand(), within(1e-9 * check.demand()));
        double both =
                checks.flexuralCrushing(bentBy(checks, 0, 400)).orElseThrow().demand();
        assertThat(both).isGreaterThan(3 * expected);
    }

    /** A twist is bending of opposite sign along the diagonals: the faces press on the core there too. */
    @Test
    void twistPressesOnTheCore() {
        LocalChecks checks = checks(0, 0);
        for (double Mxy : new double[] {100, -100}) {
            Deformation twisted =
                    checks.sandwich().laminate().deformationUnder(new Resultants(Vector3.ZERO, new Vector3(0, 0, Mxy)));
            double d = checks.sandwich().faceDistance();
            double expected = 100 / d * Math.abs(twisted.curvature().xy());
            assertThat(checks.flexuralCrushing(twisted).orElseThrow().demand())
                    .isCloseTo(expected, within(0.02 * expected));
        }
    }

    /** The load times the reserve factor reaches the strength, though the demand grows with its square. */
    @Test
    void theReserveOfCrushingMultipliesTheLoad() {
        LocalChecks checks = checks(0, 0);
        LocalCheck check = checks.flexuralCrushing(bentBy(checks, 400, 100)).orElseThrow();
        double R = check.reserveFactor();
        LocalCheck scaled =
                checks.flexuralCrushing(bentBy(checks, 400 * R, 100 * R)).orElseThrow();
        assertThat(scaled.demand()).isCloseTo(2e6, within(1.0));
        assertThat(scaled.reserveFactor()).isCloseTo(1, within(1e-9));
    }

    /** Pulled while bent: only the face on the hollow side is pressed less; pulled flat, nothing presses. */
    @Test
    void theFaceThatPressesHarderCounts() {
        LocalChecks checks = checks(0, 0);
        Deformation bent = bentBy(checks, 400, 0);
        Deformation pulled = new Deformation(bent.strain().plus(new Vector3(1e-3, 0, 0)), bent.curvature());
        Deformation pushed = new Deformation(bent.strain().minus(new Vector3(1e-3, 0, 0)), bent.curvature());
        double plain = checks.flexuralCrushing(bent).orElseThrow().demand();
        Vector3 stress = UD.reducedStiffness().times(new Vector3(1e-3, 0, 0));
        double extraInner = 0.0015
                * (stress.x() * bent.curvature().x()
                        + stress.y() * bent.curvature().y());
        double extraMould = extraInner * 0.001 / 0.0015;
        assertThat(checks.flexuralCrushing(pulled).orElseThrow().demand())
                .isCloseTo(plain + extraInner, within(0.01 * plain));
        assertThat(checks.flexuralCrushing(pushed).orElseThrow().demand())
                .isCloseTo(plain + extraMould, within(0.01 * plain));
        Deformation flat = new Deformation(new Vector3(1e-3, 0, 0), Vector3.ZERO);
        assertThat(checks.flexuralCrushing(flat)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5e6, -0.5e6})
    void bearing(double pressure) {
        LocalCheck check = checks(0, 0).bearing(pressure).orElseThrow();
        assertThat(check.reserveFactor()).isEqualTo(4);
        assertThat(checks(0, 0).bearing(0)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void indentation(Face face) {
        double t = face == Face.MOULD_FACE ? 0.001 : 0.0015;
        LocalCheck check = checks(0, 0).indentation(face, -5000, 300e6).orElseThrow();
        double capacity = 4.0 / 3 * t * Math.sqrt(2e6 * 300e6);
        assertThat(check.capacity()).isCloseTo(capacity, within(1e-9 * capacity));
        assertThat(check.reserveFactor()).isCloseTo(capacity / 5000, within(1e-9));
        assertThat(check.face()).contains(face);
        assertThat(checks(0, 0).indentation(face, 0, 300e6)).isEmpty();
    }

    @Test
    void withoutTheStrengthOfTheCoreThereIsNoCheckOfIt() {
        LocalChecks full = checks(0, 0);
        LocalChecks unknown = new LocalChecks(full.sandwich(), SandwichCore.of(0.012, EZ, 50e6));
        assertThat(unknown.bearing(1)).isEmpty();
        assertThat(unknown.indentation(Face.INNER_FACE, 1, 1)).isEmpty();
        assertThat(unknown.flexuralCrushing(bentBy(full, 400, 0))).isEmpty();
    }

    @Test
    void whatIsRefused() {
        LocalChecks checks = checks(0, 0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LocalChecks(checks.sandwich(), SandwichCore.of(0.013, 1, 1)))
                .withMessageContaining("0.013");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> checks.bearing(Double.NaN))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> checks.indentation(Face.INNER_FACE, Double.NaN, 1))
                .withMessageContaining("NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> checks.indentation(Face.INNER_FACE, 1, -1))
                .withMessageContaining("-1.0");
    }

    @Test
    void namesInFiles() {
        assertThat(LocalMode.values())
                .extracting(LocalMode::id)
                .containsExactly(
                        "wrinkling", "dimpling", "shear_crimping", "flexural_crushing", "bearing", "indentation");
    }
}
