package laminate.theory.panel;

/**
 * A symmetric positive definite matrix of which each row is kept from its first entry to the diagonal, and its
 * Cholesky decomposition, which fills nothing in before the first entry (A. George and J. W. H. Liu, <i>Computer
 * Solution of Large Sparse Positive Definite Systems</i>, 1981, from memory). The hierarchical polynomials couple
 * near neighbours only, so this is several times quicker than a full matrix.
 */
final class Envelope {
    private final double[][] rows;
    private final int[] first;

    /**
     * A matrix.
     *
     * @param rows row i from column first[i] to the diagonal; taken over
     */
    Envelope(double[][] rows, int[] first) {
        this.rows = rows;
        this.first = first;
    }

    /**
     * Solves matrix × x = right. Afterwards the matrix holds its decomposition.
     *
     * @param right taken over for x
     * @throws IllegalArgumentException if the matrix is not positive definite to working precision
     */
    double[] solve(double[] right) {
        decompose();
        forward(right);
        backward(right);
        return right;
    }

    /** Of the decomposition L Lᵀ, L⁻¹ × right in place. */
    void forward(double[] right) {
        for (int i = 0; i < right.length; i++) {
            double[] row = rows[i];
            int from = first[i];
            right[i] = (right[i] - dot(row, 0, right, from, i - from)) / row[i - from];
        }
    }

    /** Of the decomposition L Lᵀ, L⁻ᵀ × right in place. */
    void backward(double[] right) {
        for (int i = right.length - 1; i >= 0; i--) {
            double[] row = rows[i];
            int from = first[i];
            right[i] /= row[i - from];
            for (int j = from; j < i; j++) {
                right[j] -= row[j - from] * right[i];
            }
        }
    }

    /**
     * Decomposes the matrix in place.
     *
     * @throws IllegalArgumentException if it is not positive definite to working precision
     */
    void decompose() {
        for (int i = 0; i < rows.length; i++) {
            double[] row = rows[i];
            int from = first[i];
            double diagonal = row[i - from];
            for (int j = from; j < i; j++) {
                int common = Math.max(from, first[j]);
                double[] other = rows[j];
                double sum = dot(row, common - from, other, common - first[j], j - common);
                row[j - from] = (row[j - from] - sum) / other[j - first[j]];
            }
            double pivot = diagonal - dot(row, 0, row, 0, i - from);
            if (!(pivot > 1e-14 * diagonal)) {
                throw new IllegalArgumentException("the stiffness of the panel is singular to working precision: pivot "
                        + pivot + " of " + diagonal);
            }
            row[i - from] = Math.sqrt(pivot);
        }
    }

    /** Four sums side by side, which a processor adds at the same time. */
    static double dot(double[] a, int fromA, double[] b, int fromB, int count) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int k = 0;
        for (; k + 3 < count; k += 4) {
            s0 += a[fromA + k] * b[fromB + k];
            s1 += a[fromA + k + 1] * b[fromB + k + 1];
            s2 += a[fromA + k + 2] * b[fromB + k + 2];
            s3 += a[fromA + k + 3] * b[fromB + k + 3];
        }
        for (; k < count; k++) {
            s0 += a[fromA + k] * b[fromB + k];
        }
        return s0 + s1 + (s2 + s3);
    }
}
