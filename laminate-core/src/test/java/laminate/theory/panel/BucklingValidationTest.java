package laminate.theory.panel;

import static laminate.theory.panel.Panels.CLAMPED;
import static laminate.theory.panel.Panels.SIMPLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.stream.IntStream;
import laminate.testing.ReferenceCase;
import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import laminate.theory.TransverseShearStiffness;
import org.ejml.data.DMatrixRMaj;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Buckling of panels against tables, closed forms and an independent eigenvalue solver. */
class BucklingValidationTest {
    private static final Laminate SOLID = Panels.isotropic(1e10, 0.3, 0.001);
    private static final PanelLoad.EdgeForces PUSH = new PanelLoad.EdgeForces(-1, 0, 0);

    /** k of Ncr = k π² D/b² for width 1. */
    private static double k(double ratio, Edges edges, PanelLoad.EdgeForces forces) {
        double factor = PanelBuckling.of(Panel.of(SOLID, ratio, 1, edges), forces)
                .factor()
                .orElseThrow();
        return factor / (Math.PI * Math.PI * SOLID.bending().m11());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void uniaxialIsAsTabulatedByTimoshenko(int row) {
        ReferenceCase.Table table = Panels.reference("BUK-01").tables().get(0);
        double ours = k(table.number(row, "a/b"), SIMPLE, PUSH);
        assertThat(ours).isCloseTo(table.number(row, "k exact"), withinPercentage(0.05));
    }

    /**
     * Timoshenko and Gere 1961, from memory: 9.34 and 14.71 in shear (9.325 and 14.64 by later, finer solutions), 2 in
     * biaxial compression (5.30 clamped), 10.07 uniaxial clamped.
     */
    @ParameterizedTest
    @CsvSource({
        "SIMPLY_SUPPORTED, 0, 0, 1, 9.325",
        "SIMPLY_SUPPORTED, -1, -1, 0, 2",
        "CLAMPED, 0, 0, 1, 14.64",
        "CLAMPED, -1, 0, 0, 10.07",
        "CLAMPED, -1, -1, 0, 5.304"
    })
    void squarePlateIsAsInTheLiterature(Edge edge, double nx, double ny, double nxy, double expected) {
        assertThat(k(1, Edges.all(edge), new PanelLoad.EdgeForces(nx, ny, nxy)))
                .isCloseTo(expected, withinPercentage(0.1));
    }

    /**
     * Specially orthotropic, simply supported, rigid in shear: N = π² [D11 m⁴/a⁴ + 2 (D12 + 2 D66) m² n²/a²b² + D22
     * n⁴/b⁴] / (m²/a² + r n²/b²), r = Ny/Nx (Whitney 1987, from memory).
     */
    @ParameterizedTest
    @CsvSource({"0.6, 0", "1.5, 0", "1.5, 0.5", "2.5, 1", "1, -0.3"})
    void crossPlyIsAsByClosedForm(double a, double r) {
        Laminate laminate = Panels.plies(Panels.ROVING, 0.0002, 0, 90, 0);
        double exact = Double.POSITIVE_INFINITY;
        for (int m = 1; m < 8; m++) {
            for (int n = 1; n < 8; n++) {
                double load = crossPly(laminate.bending(), m / a, n, r);
                exact = load > 0 ? Math.min(exact, load) : exact;
            }
        }
        double ours = PanelBuckling.of(Panel.of(laminate, a, 1, SIMPLE), new PanelLoad.EdgeForces(-1, -r, 0))
                .factor()
                .orElseThrow();
        assertThat(ours).isCloseTo(exact, withinPercentage(0.05));
    }

    private static double crossPly(Matrix3 d, double x, double y, double r) {
        double bending =
                d.m11() * Math.pow(x, 4) + 2 * (d.m12() + 2 * d.m66()) * x * x * y * y + d.m22() * Math.pow(y, 4);
        return Math.PI * Math.PI * bending / (x * x + r * y * y);
    }

    /** A sandwich column of infinite bending stiffness shears off at N = the shear stiffness. */
    @Test
    void veryShortSandwichBucklesAtItsShearStiffness() {
        Laminate sandwich = Panels.sandwich();
        Edges strip = new Edges(Edge.SIMPLY_SUPPORTED, Edge.SIMPLY_SUPPORTED, Edge.FREE, Edge.FREE);
        double shear = TransverseShearStiffness.of(sandwich).xx();
        double factor = PanelBuckling.of(Panel.of(sandwich, 0.02, 0.02, strip), PUSH)
                .factor()
                .orElseThrow();
        assertThat(factor).isCloseTo(shear, withinPercentage(1));
        assertThat(factor).isLessThan(shear);
    }

    /** The eigenvalues of K⁻¹ G by a general-purpose library. */
    @ParameterizedTest
    @CsvSource({"-1, 0, 0", "-1, 0.4, 0.7", "0, 0, -1", "0.5, -1, 0.2"})
    void agreesWithAGeneralEigenvalueSolver(double nx, double ny, double nxy) {
        Laminate laminate = Panels.unsymmetric();
        Section section = new Section(laminate, TransverseShearStiffness.of(laminate));
        PanelLoad.EdgeForces forces = new PanelLoad.EdgeForces(nx, ny, nxy);
        Basis basis = Basis.of(Panel.of(laminate, 0.5, 0.4, CLAMPED), Kinematics.FIRST_ORDER, new Orders(4, 4), true);
        int[] all = IntStream.range(0, basis.size()).toArray();
        RealMatrix stiffness =
                copy(Form.strainEnergy(basis.kinematics(), section).matrix(basis, all));
        RealMatrix shortening = copy(Form.shortening(forces).matrix(basis, all));
        RealMatrix lower = new CholeskyDecomposition(stiffness).getL();
        RealMatrix inverse = new LUDecomposition(lower).getSolver().getInverse();
        RealMatrix pencil = inverse.multiply(shortening.scalarMultiply(-1)).multiply(inverse.transpose());
        RealMatrix symmetric = pencil.add(pencil.transpose()).scalarMultiply(0.5);
        double largest = Arrays.stream(new EigenDecompositionSymmetric(symmetric).getEigenvalues())
                .max()
                .orElseThrow();
        double ours =
                BucklingMode.lowest(basis, all, section, forces).orElseThrow().factor();
        assertThat(ours).isCloseTo(1 / largest, withinPercentage(1e-6));
    }

    private static RealMatrix copy(DMatrixRMaj m) {
        RealMatrix copy = new Array2DRowRealMatrix(m.getNumRows(), m.getNumCols());
        for (int i = 0; i < m.getNumRows(); i++) {
            for (int j = 0; j < m.getNumCols(); j++) {
                copy.setEntry(i, j, m.get(i, j));
            }
        }
        return copy;
    }

    @Test
    void tensionBucklesNothing() {
        PanelBuckling pulled = PanelBuckling.of(Panel.of(SOLID, 1, 1, SIMPLE), new PanelLoad.EdgeForces(1, 0.5, 0));
        assertThat(pulled.factor()).isEmpty();
        assertThat(pulled.mode(0.5, 0.5)).isEmpty();
    }

    @Test
    void longPlateBucklesInHalfWavesAsLongAsItIsWide() {
        PanelBuckling panel = PanelBuckling.of(Panel.of(SOLID, 3, 1, SIMPLE), PUSH);
        double sign = Math.signum(panel.mode(0.5, 0.5).orElseThrow());
        assertThat(sign * panel.mode(0.5, 0.5).orElseThrow()).isCloseTo(1, offset(0.01));
        assertThat(sign * panel.mode(1.5, 0.5).orElseThrow()).isCloseTo(-1, offset(0.01));
        assertThat(panel.mode(1, 0.5).orElseThrow()).isCloseTo(0, offset(0.01));
        assertThat(panel.change()).isLessThanOrEqualTo(PanelBuckling.TOLERANCE);
        assertThat(panel.order()).isBetween(8, 18);
    }

    /** Symmetric angle-ply: shear that runs with the bending-twisting coupling buckles earlier than against it. */
    @Test
    void signOfShearMattersWhereTheLaminateTwists() {
        Laminate twisting = Panels.twisting();
        double plus = shear(twisting, 1);
        double minus = shear(twisting, -1);
        double mirrored = shear(Panels.plies(Panels.ROVING, 0.001, -30, 30, 30, -30), -1);
        assertThat(plus / minus)
                .satisfiesAnyOf(
                        r -> assertThat(r).isGreaterThan(1.1),
                        r -> assertThat(r).isLessThan(0.9));
        assertThat(mirrored).isCloseTo(plus, withinPercentage(1e-6));
        Laminate crossPly = Panels.plies(Panels.ROVING, 0.001, 0, 90, 90, 0);
        assertThat(shear(crossPly, -1)).isCloseTo(shear(crossPly, 1), withinPercentage(1e-6));
    }

    private static double shear(Laminate laminate, double nxy) {
        return PanelBuckling.of(Panel.of(laminate, 0.6, 0.4, SIMPLE), new PanelLoad.EdgeForces(0, 0, nxy))
                .factor()
                .orElseThrow();
    }
}
