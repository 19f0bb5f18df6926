package laminate.theory.panel;

import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Newton's step of a panel of large deflection. Only the rows of the deflections change from step to step: the block of
 * all other unknowns is decomposed once, and each step solves for the deflections alone (Schur complement).
 */
final class Newton {
    private final int others;
    private final int deflections;
    private final Envelope decomposed;
    private final DMatrixRMaj linear;
    private final DMatrixRMaj bending;
    private boolean stable;

    /**
     * A panel.
     *
     * @param others number of the unknowns other than deflections, which come first
     * @param decomposed the decomposition of their block
     * @param bending strain energy of small deflection
     * @param linear the same with the work of forces in the plane
     */
    Newton(int others, Envelope decomposed, DMatrixRMaj bending, DMatrixRMaj linear) {
        this.others = others;
        this.decomposed = decomposed;
        this.bending = bending;
        this.linear = linear;
        deflections = linear.getNumRows() - others;
    }

    /**
     * The step against a residual.
     *
     * @param added what large deflection adds to the rows of the deflections
     */
    DMatrixRMaj step(DMatrixRMaj added, DMatrixRMaj residual) {
        double[][] columns = columns(linear, added);
        DMatrixRMaj schur = schur(linear, added, columns);
        double[] head = IntStream.range(0, others).mapToDouble(residual::get).toArray();
        decomposed.forward(head);
        DMatrixRMaj tail = new DMatrixRMaj(deflections, 1);
        for (int i = 0; i < deflections; i++) {
            tail.set(i, residual.get(others + i) - Envelope.dot(columns[i], 0, head, 0, others));
        }
        DMatrixRMaj moved = solve(schur, tail);
        for (int i = 0; i < deflections; i++) {
            for (int k = 0; k < others; k++) {
                head[k] -= columns[i][k] * moved.get(i);
            }
        }
        decomposed.backward(head);
        return new DMatrixRMaj(IntStream.range(0, others + deflections)
                .mapToDouble(i -> i < others ? head[i] : moved.get(i - others))
                .toArray());
    }

    /** Whether the last matrix was positive definite, so that the state rests in a minimum. */
    boolean isStable() {
        return stable;
    }

    /** L⁻¹ × the columns that couple a deflection with the others. */
    private double[][] columns(DMatrixRMaj fixed, DMatrixRMaj added) {
        double[][] columns = new double[deflections][others];
        for (int i = 0; i < deflections; i++) {
            for (int k = 0; k < others; k++) {
                columns[i][k] = fixed.get(others + i, k) + (added == null ? 0 : added.get(i, k));
            }
            decomposed.forward(columns[i]);
        }
        return columns;
    }

    private DMatrixRMaj schur(DMatrixRMaj fixed, DMatrixRMaj added, double[][] columns) {
        DMatrixRMaj schur = new DMatrixRMaj(deflections, deflections);
        for (int i = 0; i < deflections; i++) {
            for (int j = 0; j <= i; j++) {
                double entry = fixed.get(others + i, others + j) + (added == null ? 0 : added.get(i, others + j));
                entry -= Envelope.dot(columns[i], 0, columns[j], 0, others);
                schur.set(i, j, entry);
                schur.set(j, i, entry);
            }
        }
        return schur;
    }

    /** Solves; the matrix is lifted by that of small deflection until it is positive definite. */
    private DMatrixRMaj solve(DMatrixRMaj schur, DMatrixRMaj right) {
        DMatrixRMaj solution = new DMatrixRMaj(deflections, 1);
        stable = true;
        for (double lift = 0.1; ; lift *= 10) {
            LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(deflections);
            if (solver.setA(schur.copy())) {
                solver.solve(right, solution);
                return solution;
            }
            stable = false;
            CommonOps_DDRM.addEquals(schur, lift, schur(bending, null, columns(bending, null)));
        }
    }
}
