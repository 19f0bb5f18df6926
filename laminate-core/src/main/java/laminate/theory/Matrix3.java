package laminate.theory;

/**
 * A 3×3 matrix that links in-plane vectors, with the indices of plane stress: 1 (x), 2 (y), 6 (shear).
 *
 * <p>A, B, D and their symmetric inverses have m21 = m12, m61 = m16, m62 = m26; the coupling block of an inverse has
 * not.
 *
 * @param m11 row x, column x
 * @param m12 row x, column y
 * @param m16 row x, column shear
 * @param m21 row y, column x
 * @param m22 row y, column y
 * @param m26 row y, column shear
 * @param m61 row shear, column x
 * @param m62 row shear, column y
 * @param m66 row shear, column shear
 */
public record Matrix3(
        double m11, double m12, double m16, double m21, double m22, double m26, double m61, double m62, double m66) {

    /**
     * Checks the entries; a negative zero becomes zero.
     *
     * @param m11 row x, column x
     * @param m12 row x, column y
     * @param m16 row x, column shear
     * @param m21 row y, column x
     * @param m22 row y, column y
     * @param m26 row y, column shear
     * @param m61 row shear, column x
     * @param m62 row shear, column y
     * @param m66 row shear, column shear
     * @throws IllegalArgumentException if one is not finite
     */
    public Matrix3 {
        m11 = entry(m11);
        m12 = entry(m12);
        m16 = entry(m16);
        m21 = entry(m21);
        m22 = entry(m22);
        m26 = entry(m26);
        m61 = entry(m61);
        m62 = entry(m62);
        m66 = entry(m66);
    }

    private static double entry(double value) {
        return Require.finite("matrix entry", value) + 0.0;
    }

    /**
     * A symmetric matrix from its six different entries.
     *
     * @param m11 row x, column x
     * @param m12 row x, column y
     * @param m22 row y, column y
     * @param m16 row x, column shear
     * @param m26 row y, column shear
     * @param m66 row shear, column shear
     * @return the matrix
     */
    public static Matrix3 symmetric(double m11, double m12, double m22, double m16, double m26, double m66) {
        return new Matrix3(m11, m12, m16, m12, m22, m26, m16, m26, m66);
    }

    /**
     * One entry by its place.
     *
     * @param row 0 (x), 1 (y) or 2 (shear)
     * @param column 0 (x), 1 (y) or 2 (shear)
     * @return the entry
     * @throws IndexOutOfBoundsException if there is no such row or column
     */
    public double get(int row, int column) {
        return rows()[row][column];
    }

    /**
     * The entries as a fresh array of rows.
     *
     * @return three rows of three; the caller's own
     */
    public double[][] rows() {
        return new double[][] {{m11, m12, m16}, {m21, m22, m26}, {m61, m62, m66}};
    }

    /**
     * The product with a vector.
     *
     * @param v the vector
     * @return this matrix times the vector
     */
    public Vector3 times(Vector3 v) {
        return new Vector3(
                m11 * v.x() + m12 * v.y() + m16 * v.xy(),
                m21 * v.x() + m22 * v.y() + m26 * v.xy(),
                m61 * v.x() + m62 * v.y() + m66 * v.xy());
    }

    /**
     * A multiple of this matrix.
     *
     * @param k the factor
     * @return every entry times the factor
     */
    public Matrix3 times(double k) {
        return new Matrix3(k * m11, k * m12, k * m16, k * m21, k * m22, k * m26, k * m61, k * m62, k * m66);
    }

    /**
     * The matrix with rows and columns exchanged.
     *
     * @return the transpose
     */
    public Matrix3 transposed() {
        return new Matrix3(m11, m21, m61, m12, m22, m62, m16, m26, m66);
    }

    /**
     * The inverse, by cofactors.
     *
     * @return the inverse
     * @throws IllegalArgumentException if the matrix is singular
     */
    public Matrix3 inverse() {
        double c11 = m22 * m66 - m26 * m62;
        double c12 = m26 * m61 - m21 * m66;
        double c16 = m21 * m62 - m22 * m61;
        double determinant = m11 * c11 + m12 * c12 + m16 * c16;
        if (determinant == 0 || !Double.isFinite(1 / determinant)) {
            throw new IllegalArgumentException("matrix is singular and has no inverse: " + this);
        }
        return new Matrix3(
                        c11,
                        m16 * m62 - m12 * m66,
                        m12 * m26 - m16 * m22,
                        c12,
                        m11 * m66 - m16 * m61,
                        m16 * m21 - m11 * m26,
                        c16,
                        m12 * m61 - m11 * m62,
                        m11 * m22 - m12 * m21)
                .times(1 / determinant);
    }

    /**
     * The largest magnitude among the entries, by which a difference is judged small.
     *
     * @return the scale of the matrix, at least 0
     */
    public double scale() {
        double largest = 0;
        for (double[] row : rows()) {
            for (double entry : row) {
                largest = Math.max(largest, Math.abs(entry));
            }
        }
        return largest;
    }
}
