package laminate.theory.panel;

import java.util.Optional;
import java.util.stream.IntStream;
import laminate.theory.Vector3;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.decomposition.TriangularSolver_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The lowest factor λ > 0 and its shape in K a + λ G a = 0, with K the stiffness and G the work of the forces on the
 * shortening by deflection.
 *
 * <p>Only the deflections take part in G. With the unknowns ordered so that they come last, the last block L of the
 * Cholesky decomposition of K is that of the stiffness with all else relaxed, and the eigenvalues of −L⁻¹ G L⁻ᵀ are
 * 1/λ.
 *
 * @param factor λ
 * @param state the shape, largest deflection 1
 */
record BucklingMode(double factor, PanelState state) {
    /** An eigenvalue below this share of the largest one is rounding. */
    private static final double ROUNDING = 1e-10;

    /** The lowest mode among some of the unknowns of a basis; empty if the forces buckle none. */
    static Optional<BucklingMode> lowest(Basis basis, int[] group, Section section, PanelLoad.EdgeForces forces) {
        int[] deflections = of(basis, group, true);
        if (deflections.length == 0) {
            return Optional.empty();
        }
        int[] others = of(basis, group, false);
        int[] all = IntStream.concat(IntStream.of(others), IntStream.of(deflections))
                .toArray();
        DMatrixRMaj lower =
                decomposition(Form.strainEnergy(basis.kinematics(), section).matrix(basis, all));
        DMatrixRMaj last = CommonOps_DDRM.extract(lower, others.length, all.length, others.length, all.length);
        DMatrixRMaj pencil = pencil(last, Form.shortening(forces).matrix(basis, deflections));
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(deflections.length, true, true);
        if (!eigen.decompose(pencil)) {
            throw new IllegalArgumentException("the buckling of the panel was not found");
        }
        return largest(eigen).map(i -> {
            double[] tail = eigen.getEigenVector(i).data.clone();
            double[] mode = new double[all.length];
            System.arraycopy(tail, 0, mode, others.length, tail.length);
            TriangularSolver_DDRM.solveTranL(lower.data, mode, all.length);
            return new BucklingMode(1 / eigen.getEigenvalue(i).getReal(), state(basis, all, mode));
        });
    }

    private static int[] of(Basis basis, int[] group, boolean deflection) {
        return IntStream.of(group)
                .filter(i -> (basis.unknown(i).field() == Field.W) == deflection)
                .toArray();
    }

    private static DMatrixRMaj decomposition(DMatrixRMaj stiffness) {
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(stiffness.getNumRows(), true);
        if (!cholesky.decompose(stiffness)) {
            throw new IllegalArgumentException("the stiffness of the panel is singular to working precision");
        }
        return cholesky.getT(null);
    }

    /** −L⁻¹ G L⁻ᵀ. */
    private static DMatrixRMaj pencil(DMatrixRMaj lower, DMatrixRMaj shortening) {
        DMatrixRMaj inverse = new DMatrixRMaj(lower.getNumRows(), lower.getNumCols());
        CommonOps_DDRM.setIdentity(inverse);
        solveLower(lower, inverse);
        DMatrixRMaj half = new DMatrixRMaj(lower.getNumRows(), lower.getNumCols());
        DMatrixRMaj pencil = half.createLike();
        CommonOps_DDRM.mult(inverse, shortening, half);
        CommonOps_DDRM.multTransB(-1, half, inverse, pencil);
        CommonOps_DDRM.symmLowerToFull(pencil);
        return pencil;
    }

    private static void solveLower(DMatrixRMaj lower, DMatrixRMaj right) {
        for (int i = 0; i < lower.getNumRows(); i++) {
            for (int k = 0; k <= i; k++) {
                double factor = k == i ? 1 / lower.get(i, i) : -lower.get(i, k);
                for (int j = 0; j < right.getNumCols(); j++) {
                    double entry = k == i ? right.get(i, j) * factor : right.get(i, j) + factor * right.get(k, j);
                    right.set(i, j, entry);
                }
            }
        }
    }

    /** The number of the largest eigenvalue, if it is positive. */
    private static Optional<Integer> largest(EigenDecomposition_F64<DMatrixRMaj> eigen) {
        int best = 0;
        double size = 0;
        for (int i = 0; i < eigen.getNumberOfEigenvalues(); i++) {
            double value = eigen.getEigenvalue(i).getReal();
            size = Math.max(size, Math.abs(value));
            best = value > eigen.getEigenvalue(best).getReal() ? i : best;
        }
        boolean positive = eigen.getEigenvalue(best).getReal() > ROUNDING * size;
        return positive ? Optional.of(best) : Optional.empty();
    }

    private static PanelState state(Basis basis, int[] unknowns, double[] mode) {
        double[] factors = new double[basis.size()];
        for (int i = 0; i < unknowns.length; i++) {
            factors[unknowns[i]] = mode[i];
        }
        PanelState state = new PanelState(basis, factors, false, Vector3.ZERO);
        double[] peak = new DeflectionPeak(state).place();
        double largest = state.deflection(peak[0], peak[1]);
        for (int i = 0; i < factors.length; i++) {
            factors[i] /= largest;
        }
        return new PanelState(basis, factors, false, Vector3.ZERO);
    }
}
