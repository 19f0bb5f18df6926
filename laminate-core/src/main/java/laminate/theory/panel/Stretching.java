package laminate.theory.panel;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * The part of the strain energy of a panel that its slopes add, by integration over points. With η = (½ w,x², ½ w,y²,
 * w,x w,y), e and κ the linear strain of the mid-plane and the curvature,
 *
 * <pre>
 *   energy = ∫∫ ηᵀ (A e + B κ) + ½ ηᵀ A η dx dy
 * </pre>
 *
 * <p>Matrices have a row per point (three for x, y, xy) and a column per unknown; those of the slope have columns for
 * the deflection only.
 */
final class Stretching {
    private final int[] deflection;
    /** The unknowns that strain the mid-plane, or bend it where bending couples: all that linearForce has columns for. */
    private final int[] straining;

    private final int points;
    private final double[] weights;
    private final Section section;
    private final List<Kinematics.Term> terms;
    private final PointSums.Unknowns rows;
    private final PointSums.Unknowns deflectionColumns;
    private final Map<Field, PointSums.Unknowns> columns = new EnumMap<>(Field.class);
    /** Weight × (A e + B κ) by the straining unknowns. */
    private final DMatrixRMaj linearForce;

    private final DMatrixRMaj slopeX;
    private final DMatrixRMaj slopeY;

    /** Of the state last given: η, weight × N, and the slopes. */
    private double[] eta;

    private double[] force;
    private double[] wx;
    private double[] wy;

    Stretching(Basis basis, Section section, int[] active, boolean[] characters) {
        deflection = which(basis, active, Field.W::equals);
        straining = which(basis, active, f -> f.isInPlane() || section.isCoupled() && f != Field.W);
        this.section = section;
        terms = basis.kinematics().terms();
        Rule alongX = new Rule(basis.alongX(), isMirrored(basis, characters, 1) || isTurned(basis, characters));
        Rule alongY = new Rule(basis.alongY(), isMirrored(basis, characters, 2));
        points = alongX.size() * alongY.size();
        weights = new double[points];
        linearForce = new DMatrixRMaj(3 * points, straining.length);
        slopeX = new DMatrixRMaj(points, deflection.length);
        slopeY = new DMatrixRMaj(points, deflection.length);
        for (int k = 0; k < points; k++) {
            int kx = k / alongY.size();
            int ky = k % alongY.size();
            weights[k] = alongX.weight[kx] * alongY.weight[ky];
            fill(basis, section, active, k, alongX.values[kx], alongY.values[ky]);
        }
        rows = unknowns(basis, active, deflection, -deflection[0], alongX, alongY);
        deflectionColumns = unknowns(basis, active, deflection, 0, alongX, alongY);
        for (Field field : Field.values()) {
            int[] of = IntStream.of(straining)
                    .filter(i -> basis.unknown(active[i]).field() == field)
                    .toArray();
            if (of.length > 0) {
                columns.put(field, unknowns(basis, active, of, 0, alongX, alongY));
            }
        }
    }

    private static PointSums.Unknowns unknowns(Basis basis, int[] active, int[] of, int shift, Rule x, Rule y) {
        return new PointSums.Unknowns(
                IntStream.of(of).map(i -> i + shift).toArray(),
                IntStream.of(of).map(i -> basis.unknown(active[i]).x()).toArray(),
                IntStream.of(of).map(i -> basis.unknown(active[i]).y()).toArray(),
                x.values,
                y.values);
    }

    private static int[] which(Basis basis, int[] active, Predicate<Field> fields) {
        return IntStream.range(0, active.length)
                .filter(i -> fields.test(basis.unknown(active[i]).field()))
                .toArray();
    }

    /** No state is called up that changes sign when mirrored, so one half stands for both. */
    private static boolean isMirrored(Basis basis, boolean[] characters, int bit) {
        boolean alike = (basis.reversal() & bit) != 0;
        return alike && IntStream.range(0, 4).noneMatch(c -> characters[c] && (c & bit) != 0);
    }

    /** Half a turn leaves every state as it is. */
    private static boolean isTurned(Basis basis, boolean[] characters) {
        return basis.reversal() == 3 && !characters[1] && !characters[2];
    }

    /** Points, weights and function values along one side; of mirrored halves the points of one, which count twice. */
    private static final class Rule {
        private final double[] weight;
        private final double[][][] values;

        Rule(Line shapes, boolean half) {
            Gauss gauss = Gauss.on(0, shapes.length(), (3 * shapes.order() + 3) / 2);
            int count = half ? (gauss.size() + 1) / 2 : gauss.size();
            weight = new double[count];
            values = new double[count][][];
            for (int k = 0; k < count; k++) {
                boolean twice = half && k != gauss.size() - 1 - k;
                weight[k] = gauss.weight(k) * (twice ? 2 : 1);
                values[k] = shapes.at(gauss.point(k));
            }
        }

        int size() {
            return weight.length;
        }
    }

    private void fill(Basis basis, Section section, int[] active, int k, double[][] x, double[][] y) {
        for (int i = 0; i < straining.length; i++) {
            Basis.Unknown u = basis.unknown(active[straining[i]]);
            for (Kinematics.Term t : basis.kinematics().terms()) {
                if (t.field() == u.field() && t.row() < 6) {
                    double strain = weights[k] * t.factor() * x[t.dx()][u.x()] * y[t.dy()][u.y()];
                    for (int r = 0; r < 3; r++) {
                        linearForce.add(3 * k + r, i, section.get(r, t.row()) * strain);
                    }
                }
            }
        }
        for (int i = 0; i < deflection.length; i++) {
            Basis.Unknown u = basis.unknown(active[deflection[i]]);
            slopeX.set(k, i, x[1][u.x()] * y[0][u.y()]);
            slopeY.set(k, i, x[0][u.x()] * y[1][u.y()]);
        }
    }

    /** Takes a state. */
    void at(DMatrixRMaj a) {
        wx = slopes(slopeX, a);
        wy = slopes(slopeY, a);
        eta = eta(wx, wy);
        force = forces(a, eta);
    }

    private double[] slopes(DMatrixRMaj slope, DMatrixRMaj a) {
        DMatrixRMaj values = new DMatrixRMaj(points, 1);
        CommonOps_DDRM.mult(slope, part(a, deflection), values);
        return values.data;
    }

    private static DMatrixRMaj part(DMatrixRMaj a, int[] which) {
        return new DMatrixRMaj(IntStream.of(which).mapToDouble(a::get).toArray());
    }

    private static double[] eta(double[] wx, double[] wy) {
        double[] eta = new double[3 * wx.length];
        for (int k = 0; k < wx.length; k++) {
            eta[3 * k] = wx[k] * wx[k] / 2;
            eta[3 * k + 1] = wy[k] * wy[k] / 2;
            eta[3 * k + 2] = wx[k] * wy[k];
        }
        return eta;
    }

    /** Weight × N = weight × (A (e + η) + B κ). */
    private double[] forces(DMatrixRMaj a, double[] eta) {
        DMatrixRMaj forces = new DMatrixRMaj(3 * points, 1);
        CommonOps_DDRM.mult(linearForce, part(a, straining), forces);
        for (int k = 0; k < points; k++) {
            for (int r = 0; r < 3; r++) {
                forces.add(3 * k + r, 0, weights[k] * membraneForce(eta, k, r));
            }
        }
        return forces.data;
    }

    private double membraneForce(double[] strain, int k, int r) {
        return section.get(r, 0) * strain[3 * k]
                + section.get(r, 1) * strain[3 * k + 1]
                + section.get(r, 2) * strain[3 * k + 2];
    }

    /** The energy of another state. */
    double energy(DMatrixRMaj a) {
        double[] other = eta(slopes(slopeX, a), slopes(slopeY, a));
        double[] n = forces(a, other);
        double energy = 0;
        for (int k = 0; k < points; k++) {
            for (int r = 0; r < 3; r++) {
                energy += other[3 * k + r] * (n[3 * k + r] - weights[k] * membraneForce(other, k, r) / 2);
            }
        }
        return energy;
    }

    /** Takes the derivative of the energy of the state from a residual: ∫ (∂η)ᵀ N + (A ∂e + B ∂κ)ᵀ η. */
    void subtractForce(DMatrixRMaj residual) {
        DMatrixRMaj byStraining = new DMatrixRMaj(straining.length, 1);
        CommonOps_DDRM.multTransA(linearForce, DMatrixRMaj.wrap(eta.length, 1, eta), byStraining);
        for (int i = 0; i < straining.length; i++) {
            residual.add(straining[i], 0, -byStraining.get(i));
        }
        DMatrixRMaj alongX = new DMatrixRMaj(points, 1);
        DMatrixRMaj alongY = new DMatrixRMaj(points, 1);
        for (int k = 0; k < points; k++) {
            alongX.set(k, force[3 * k] * wx[k] + force[3 * k + 2] * wy[k]);
            alongY.set(k, force[3 * k + 1] * wy[k] + force[3 * k + 2] * wx[k]);
        }
        DMatrixRMaj byDeflection = new DMatrixRMaj(deflection.length, 1);
        CommonOps_DDRM.multTransA(slopeX, alongX, byDeflection);
        CommonOps_DDRM.multAddTransA(slopeY, alongY, byDeflection);
        for (int i = 0; i < deflection.length; i++) {
            residual.add(deflection[i], 0, -byDeflection.get(i));
        }
    }

    /**
     * The second derivative of the energy of the state: rows of the deflections, columns of all unknowns.
     *
     * @param others number of the unknowns before the deflections
     */
    DMatrixRMaj stiffness(int others) {
        DMatrixRMaj added = new DMatrixRMaj(deflection.length, others + deflection.length);
        for (Map.Entry<Field, PointSums.Unknowns> column : columns.entrySet()) {
            for (Kinematics.Term t : terms) {
                if (t.field() == column.getKey() && t.row() < 6) {
                    addMixed(added, t, column.getValue());
                }
            }
        }
        addPure(added, 0, 0);
        addPure(added, 0, 1);
        addPure(added, 1, 0);
        addPure(added, 1, 1);
        return added;
    }

    /** ∫ (∂η)ᵀ (A ∂e + B ∂κ) for one term of the linear strain. */
    private void addMixed(DMatrixRMaj added, Kinematics.Term t, PointSums.Unknowns columns) {
        double[] byX = new double[points];
        double[] byY = new double[points];
        for (int k = 0; k < points; k++) {
            double scale = weights[k] * t.factor();
            double nxy = scale * section.get(2, t.row());
            byX[k] = scale * section.get(0, t.row()) * wx[k] + nxy * wy[k];
            byY[k] = scale * section.get(1, t.row()) * wy[k] + nxy * wx[k];
        }
        PointSums.add(added, byX, rows, 1, 0, columns, t.dx(), t.dy());
        PointSums.add(added, byY, rows, 0, 1, columns, t.dx(), t.dy());
    }

    /** ∫ (∂η)ᵀ A ∂η + N ∂²η for slopes along x (0) or y (1) left and right. */
    private void addPure(DMatrixRMaj added, int left, int right) {
        double[] g = new double[points];
        int row = left == right ? left : 2;
        for (int k = 0; k < points; k++) {
            double[] l = etaBySlope(left, k);
            double[] r = etaBySlope(right, k);
            double sum = 0;
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    sum += l[i] * section.get(i, j) * r[j];
                }
            }
            g[k] = weights[k] * sum + force[3 * k + row];
        }
        PointSums.add(added, g, rows, 1 - left, left, deflectionColumns, 1 - right, right);
    }

    private double[] etaBySlope(int alongY, int k) {
        return alongY == 0 ? new double[] {wx[k], 0, wy[k]} : new double[] {0, wy[k], wx[k]};
    }
}
