package laminate.theory.panel;

import laminate.theory.Vector3;

/** A state of a panel: the factors of a basis, and with them every field and strain at every point. */
final class PanelState {
    private final Basis basis;
    private final double[] factors;
    private final boolean large;
    private final Vector3 initial;

    /**
     * A state.
     *
     * @param large whether slopes stretch the mid-plane (von Kármán)
     * @param initial strain of the mid-plane on top of that of the fields, the same everywhere
     */
    PanelState(Basis basis, double[] factors, boolean large, Vector3 initial) {
        this.basis = basis;
        this.factors = factors;
        this.large = large;
        this.initial = initial;
    }

    Basis basis() {
        return basis;
    }

    double[] factors() {
        return factors;
    }

    double deflection(double x, double y) {
        double[] alongX = basis.alongX().at(x)[0];
        double[] alongY = basis.alongY().at(y)[0];
        double w = 0;
        for (int i = 0; i < factors.length; i++) {
            Basis.Unknown u = basis.unknown(i);
            if (u.field() == Field.W) {
                w += factors[i] * alongX[u.x()] * alongY[u.y()];
            }
        }
        return w;
    }

    /** Every field with its derivatives at a point: [field][times by x][times by y], up to two in all. */
    double[][][] fields(double x, double y) {
        double[][] alongX = basis.alongX().at(x);
        double[][] alongY = basis.alongY().at(y);
        double[][][] fields = new double[Field.values().length][3][3];
        for (int i = 0; i < factors.length; i++) {
            if (factors[i] == 0) {
                continue;
            }
            Basis.Unknown u = basis.unknown(i);
            double[][] field = fields[u.field().ordinal()];
            for (int dx = 0; dx < 3; dx++) {
                double byX = factors[i] * alongX[dx][u.x()];
                for (int dy = 0; dy < 3 - dx; dy++) {
                    field[dx][dy] += byX * alongY[dy][u.y()];
                }
            }
        }
        return fields;
    }

    /** The rows of strain. */
    double[] strain(double[][][] fields) {
        double[] strain = rows(fields, 0, 0);
        strain[0] += initial.x();
        strain[1] += initial.y();
        strain[2] += initial.xy();
        if (large) {
            double[][] w = fields[Field.W.ordinal()];
            strain[0] += w[1][0] * w[1][0] / 2;
            strain[1] += w[0][1] * w[0][1] / 2;
            strain[2] += w[1][0] * w[0][1];
        }
        return strain;
    }

    /** The rows of strain derived by x. */
    double[] strainByX(double[][][] fields) {
        double[] slope = rows(fields, 1, 0);
        if (large) {
            double[][] w = fields[Field.W.ordinal()];
            slope[0] += w[1][0] * w[2][0];
            slope[1] += w[0][1] * w[1][1];
            slope[2] += w[2][0] * w[0][1] + w[1][0] * w[1][1];
        }
        return slope;
    }

    /** The rows of strain derived by y. */
    double[] strainByY(double[][][] fields) {
        double[] slope = rows(fields, 0, 1);
        if (large) {
            double[][] w = fields[Field.W.ordinal()];
            slope[0] += w[1][0] * w[1][1];
            slope[1] += w[0][1] * w[0][2];
            slope[2] += w[1][1] * w[0][1] + w[1][0] * w[0][2];
        }
        return slope;
    }

    private double[] rows(double[][][] fields, int byX, int byY) {
        double[] rows = new double[Kinematics.ROWS];
        for (Kinematics.Term t : basis.kinematics().terms()) {
            rows[t.row()] += t.factor() * fields[t.field().ordinal()][t.dx() + byX][t.dy() + byY];
        }
        return rows;
    }
}
