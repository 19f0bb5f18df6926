package laminate.theory;

/** A 2×2 matrix; the first index is the row. */
record Matrix2(double m11, double m12, double m21, double m22) {
    static final Matrix2 ZERO = new Matrix2(0, 0, 0, 0);

    Matrix2 plus(Matrix2 o) {
        return new Matrix2(m11 + o.m11, m12 + o.m12, m21 + o.m21, m22 + o.m22);
    }

    Matrix2 minus(Matrix2 o) {
        return plus(o.times(-1));
    }

    Matrix2 times(double k) {
        return new Matrix2(k * m11, k * m12, k * m21, k * m22);
    }

    Matrix2 times(Matrix2 o) {
        return new Matrix2(
                m11 * o.m11 + m12 * o.m21,
                m11 * o.m12 + m12 * o.m22,
                m21 * o.m11 + m22 * o.m21,
                m21 * o.m12 + m22 * o.m22);
    }

    Matrix2 inverse() {
        double determinant = m11 * m22 - m12 * m21;
        return new Matrix2(m22, -m12, -m21, m11).times(Require.finite("inverse of the determinant", 1 / determinant));
    }
}
