package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Exact three-dimensional elasticity of a simply supported cross-ply plate under a sinusoidal pressure on its top face
 * (N. J. Pagano, J. Compos. Mater. 4 (1970) 20, from memory), written as a first-order system in z.
 *
 * <p>With u = U cos αx sin βy, v = V sin αx cos βy, w = W sin αx sin βy, σz = Z sin sin, τxz = X cos sin, τyz = Y sin
 * cos, the state s = (U, V, W, Z, X, Y) follows s' = A s in each ply, so that it is carried from face to face by
 * products of exponentials. X, Y, Z vanish at the lower face, X, Y at the upper, where Z is the pressure.
 */
final class ExactElasticity {
    private final List<Sheet> sheets;
    private final double alpha;
    private final double beta;
    private final double thickness;
    private final RealVector bottom;

    /** A homogeneous orthotropic sheet; stiffness in the order 11, 12, 13, 22, 23, 33, 44 (yz), 55 (xz), 66 (xy). */
    record Sheet(double thickness, double... c) {
        /** From moduli along x, y, z. */
        static Sheet of(
                double thickness,
                double[] modulus,
                double nuxy,
                double nuxz,
                double nuyz,
                double gxy,
                double gxz,
                double gyz) {
            double[][] s = {
                {1 / modulus[0], -nuxy / modulus[0], -nuxz / modulus[0]},
                {-nuxy / modulus[0], 1 / modulus[1], -nuyz / modulus[1]},
                {-nuxz / modulus[0], -nuyz / modulus[1], 1 / modulus[2]}
            };
            RealMatrix c =
                    new LUDecomposition(new Array2DRowRealMatrix(s)).getSolver().getInverse();
            return new Sheet(
                    thickness,
                    c.getEntry(0, 0),
                    c.getEntry(0, 1),
                    c.getEntry(0, 2),
                    c.getEntry(1, 1),
                    c.getEntry(1, 2),
                    c.getEntry(2, 2),
                    gyz,
                    gxz,
                    gxy);
        }

        RealMatrix system(double alpha, double beta) {
            double c13 = c[2];
            double c23 = c[4];
            double c33 = c[5];
            double[] wz = {c13 * alpha / c33, c23 * beta / c33, 0, 1 / c33, 0, 0};
            double[][] a = new double[6][6];
            a[0] = new double[] {0, 0, -alpha, 0, 1 / c[7], 0};
            a[1] = new double[] {0, 0, -beta, 0, 0, 1 / c[6]};
            a[2] = wz;
            a[3] = new double[] {0, 0, 0, 0, alpha, beta};
            double[] sx = stress(0, alpha, beta);
            double[] sy = stress(1, alpha, beta);
            for (int i = 0; i < 6; i++) {
                double shear = i == 0 ? c[8] * beta : i == 1 ? c[8] * alpha : 0;
                a[4][i] = -alpha * sx[i] + beta * shear;
                a[5][i] = -beta * sy[i] + alpha * shear;
            }
            return new Array2DRowRealMatrix(a);
        }

        /** σx (0) or σy (1) by the state. */
        double[] stress(int direction, double alpha, double beta) {
            double cx = direction == 0 ? c[0] : c[1];
            double cy = direction == 0 ? c[1] : c[3];
            double cz = direction == 0 ? c[2] : c[4];
            double inverse = cz / c[5];
            return new double[] {
                -cx * alpha + inverse * c[2] * alpha, -cy * beta + inverse * c[4] * beta, 0, inverse, 0, 0
            };
        }
    }

    ExactElasticity(List<Sheet> sheets, double alpha, double beta, double pressure) {
        this.sheets = new ArrayList<>(sheets);
        this.alpha = alpha;
        this.beta = beta;
        thickness = sheets.stream().mapToDouble(Sheet::thickness).sum();
        RealMatrix all = MatrixUtils.createRealIdentityMatrix(6);
        for (Sheet s : sheets) {
            all = exponential(s.system(alpha, beta).scalarMultiply(s.thickness()))
                    .multiply(all);
        }
        RealVector uvw = new LUDecomposition(all.getSubMatrix(3, 5, 0, 2))
                .getSolver()
                .solve(new ArrayRealVector(new double[] {pressure, 0, 0}));
        bottom = uvw.append(new ArrayRealVector(3));
    }

    /** Taylor's series of a matrix halved until it is small, then squared back. */
    private static RealMatrix exponential(RealMatrix a) {
        int halvings = Math.max(0, Math.getExponent(a.getNorm1()) + 4);
        RealMatrix small = a.scalarMultiply(Math.pow(2, -halvings));
        RealMatrix sum = MatrixUtils.createRealIdentityMatrix(a.getRowDimension());
        RealMatrix power = sum;
        for (int n = 1; n <= 14; n++) {
            power = power.multiply(small).scalarMultiply(1.0 / n);
            sum = sum.add(power);
        }
        for (int i = 0; i < halvings; i++) {
            sum = sum.multiply(sum);
        }
        return sum;
    }

    /** U, V, W, Z, X, Y at a height from mid-plane. */
    private RealVector state(double z) {
        RealVector state = bottom;
        double left = z + thickness / 2;
        for (Sheet s : sheets) {
            double step = Math.min(left, s.thickness());
            if (step > 0) {
                state = exponential(s.system(alpha, beta).scalarMultiply(step)).operate(state);
            }
            left -= s.thickness();
        }
        return state;
    }

    double deflection(double z) {
        return state(z).getEntry(2);
    }

    double shearX(double z) {
        return state(z).getEntry(4);
    }

    double shearY(double z) {
        return state(z).getEntry(5);
    }

    /** σx (0) or σy (1) in a sheet given by its number. */
    double stress(int direction, int sheet, double z) {
        RealVector by = new ArrayRealVector(sheets.get(sheet).stress(direction, alpha, beta));
        return by.dotProduct(state(z));
    }

    /** τxy at a corner. */
    double shearXY(int sheet, double z) {
        RealVector state = state(z);
        return sheets.get(sheet).c()[8] * (beta * state.getEntry(0) + alpha * state.getEntry(1));
    }
}
