package laminate.theory;

import java.util.Objects;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.NormOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * The inverse of the 6×6 laminate stiffness, [ε0; κ] = [[a, b], [bᵀ, d]] [N; M]: the laminate free to couple.
 *
 * @param a strain from force (m/N), symmetric
 * @param b strain from moment (1/N): row strain, column moment; in general not symmetric
 * @param d curvature from moment (1/(N·m)), symmetric
 */
public record Compliance(Matrix3 a, Matrix3 b, Matrix3 d) {
    /** Beyond this condition number of the scaled stiffness fewer than four digits would be left. */
    private static final double WORST_CONDITION = 1e12;

    /**
     * Checks that all are there.
     *
     * @param a strain from force (m/N), symmetric
     * @param b strain from moment (1/N): row strain, column moment; in general not symmetric
     * @param d curvature from moment (1/(N·m)), symmetric
     */
    public Compliance {
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
        Objects.requireNonNull(d, "d");
    }

    /**
     * Inverts the stiffness [[A, B], [B, D]].
     *
     * <p>Membrane and bending stiffness have different units and sizes, so each row and column is first divided by the
     * root of its diagonal: the matrix inverted is a pure number with ones on the diagonal, and a Cholesky
     * decomposition keeps exact zeros where a laminate does not couple.
     *
     * @param A membrane stiffness (N/m), symmetric
     * @param B coupling stiffness (N), symmetric
     * @param D bending stiffness (N·m), symmetric
     * @return the compliance
     * @throws IllegalArgumentException if the stiffness is singular, or so nearly that its inverse means nothing
     */
    public static Compliance of(Matrix3 A, Matrix3 B, Matrix3 D) {
        double[] scale = scale(A, D);
        DMatrixRMaj stiffness = new DMatrixRMaj(6, 6);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                stiffness.set(i, j, A.get(i, j) / scale[i] / scale[j]);
                stiffness.set(i, j + 3, B.get(i, j) / scale[i] / scale[j + 3]);
                stiffness.set(i + 3, j, B.get(j, i) / scale[i + 3] / scale[j]);
                stiffness.set(i + 3, j + 3, D.get(i, j) / scale[i + 3] / scale[j + 3]);
            }
        }
        DMatrixRMaj inverse = inverse(stiffness);
        return new Compliance(
                symmetricBlock(inverse, 0, scale), couplingBlock(inverse, scale), symmetricBlock(inverse, 3, scale));
    }

    private static double[] scale(Matrix3 A, Matrix3 D) {
        double[] diagonal = {A.m11(), A.m22(), A.m66(), D.m11(), D.m22(), D.m66()};
        for (int i = 0; i < diagonal.length; i++) {
            diagonal[i] = Math.sqrt(Require.positive("diagonal of the laminate stiffness", diagonal[i]));
        }
        return diagonal;
    }

    /** Inverse of a stiffness with ones on its diagonal. */
    static DMatrixRMaj inverse(DMatrixRMaj stiffness) {
        int size = stiffness.getNumRows();
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(size);
        DMatrixRMaj inverse = new DMatrixRMaj(size, size);
        double condition = Double.POSITIVE_INFINITY;
        if (solver.setA(stiffness.copy())) {
            solver.invert(inverse);
            condition = NormOps_DDRM.inducedP1(stiffness) * NormOps_DDRM.inducedP1(inverse);
        }
        if (!(condition <= WORST_CONDITION)) {
            throw new IllegalArgumentException("laminate stiffness is singular to working precision: condition number "
                    + condition + ", at most " + WORST_CONDITION + " is accepted");
        }
        return inverse;
    }

    private static Matrix3 symmetricBlock(DMatrixRMaj m, int at, double[] scale) {
        return Matrix3.symmetric(
                entry(m, at, at, scale),
                entry(m, at, at + 1, scale),
                entry(m, at + 1, at + 1, scale),
                entry(m, at, at + 2, scale),
                entry(m, at + 1, at + 2, scale),
                entry(m, at + 2, at + 2, scale));
    }

    private static Matrix3 couplingBlock(DMatrixRMaj m, double[] scale) {
        return new Matrix3(
                entry(m, 0, 3, scale),
                entry(m, 0, 4, scale),
                entry(m, 0, 5, scale),
                entry(m, 1, 3, scale),
                entry(m, 1, 4, scale),
                entry(m, 1, 5, scale),
                entry(m, 2, 3, scale),
                entry(m, 2, 4, scale),
                entry(m, 2, 5, scale));
    }

    private static double entry(DMatrixRMaj m, int row, int column, double[] scale) {
        return m.get(row, column) / scale[row] / scale[column];
    }

    /**
     * The deformation under forces and moments.
     *
     * @param load N and M
     * @return ε0 = a N + b M, κ = bᵀ N + d M
     */
    public Deformation times(Resultants load) {
        return new Deformation(
                a.times(load.force()).plus(b.times(load.moment())),
                b.transposed().times(load.force()).plus(d.times(load.moment())));
    }
}
