package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.theory.Deformation;
import laminate.theory.Laminate;
import laminate.theory.Require;
import laminate.theory.Resultants;
import laminate.theory.TransverseShearStiffness;
import laminate.theory.Vector3;

/**
 * The exact solution of first-order shear theory for a cross-ply panel on hard simple supports that is free to pull in:
 * double sine series (C. L. Navier 1820; for laminates J. N. Reddy 2004, ch. 5 and 6, from memory).
 *
 * <p>It shares with the Ritz solution of {@link PanelBending} nothing but the stiffness of the laminate, and serves to
 * check it. For u = U cos αx sin βy, v = V sin αx cos βy, w = W sin αx sin βy, φx = X cos αx sin βy,
 * φy = Y sin αx cos βy with α = mπ/length, β = nπ/width, each pair m, n has five equations of its own.
 *
 * <p>Range: laminates without entries 16, 26 and 45 (cross-ply, unsymmetric too), all edges hard supported, small
 * deflection.
 */
public final class Navier {
    private final double length;
    private final double width;
    private final Section section;
    private final List<Mode> modes = new ArrayList<>();

    /** One pair m, n: amplitudes U, V, W, X, Y. */
    private record Mode(double alpha, double beta, double[] amplitude) {}

    private Navier(Laminate laminate, double length, double width, TransverseShearStiffness shear) {
        this.length = Require.positive("length", length);
        this.width = Require.positive("width", width);
        section = new Section(laminate, shear);
        if (section.isShearCoupled()) {
            throw new IllegalArgumentException(
                    "Navier's solution holds for laminates without entries 16, 26 and 45, was " + laminate);
        }
    }

    /**
     * Pressure q sin(πx/length) sin(πy/width).
     *
     * @param laminate the laminate
     * @param length size along x (m)
     * @param width size along y (m)
     * @param pressure q in the middle (Pa)
     * @param shear shear stiffness; empty for thin-plate theory, rigid in shear
     * @return the solution
     * @throws IllegalArgumentException if the laminate has entries 16, 26 or 45, or a size is not positive
     */
    public static Navier sinusoidal(
            Laminate laminate, double length, double width, double pressure, Optional<TransverseShearStiffness> shear) {
        Navier navier = start(laminate, length, width, shear);
        navier.add(1, 1, pressure, shear.isEmpty());
        return navier;
    }

    /**
     * Uniform pressure, by its sine series 16 q/(π² m n), m and n odd.
     *
     * @param laminate the laminate
     * @param length size along x (m)
     * @param width size along y (m)
     * @param pressure q (Pa)
     * @param terms greatest m and n
     * @param shear shear stiffness; empty for thin-plate theory, rigid in shear
     * @return the solution
     * @throws IllegalArgumentException if the laminate has entries 16, 26 or 45, or a size is not positive
     */
    public static Navier uniform(
            Laminate laminate,
            double length,
            double width,
            double pressure,
            int terms,
            Optional<TransverseShearStiffness> shear) {
        Navier navier = start(laminate, length, width, shear);
        for (int m = 1; m <= terms; m += 2) {
            for (int n = 1; n <= terms; n += 2) {
                navier.add(m, n, 16 * pressure / (Math.PI * Math.PI * m * n), shear.isEmpty());
            }
        }
        return navier;
    }

    /**
     * A force spread over a rectangle, by its sine series 16 F/(π² m n s t) sin αx sin βy sin(αs/2) sin(βt/2), with s
     * and t the sizes of the rectangle and x, y its centre.
     *
     * @param laminate the laminate
     * @param length size along x (m)
     * @param width size along y (m)
     * @param patch the force; within the panel
     * @param terms greatest m and n; some ten times the side through the size of the patch
     * @param shear shear stiffness; empty for thin-plate theory, rigid in shear
     * @return the solution
     * @throws IllegalArgumentException if the laminate has entries 16, 26 or 45, or a size is not positive
     */
    public static Navier patch(
            Laminate laminate,
            double length,
            double width,
            PanelLoad.Patch patch,
            int terms,
            Optional<TransverseShearStiffness> shear) {
        Navier navier = start(laminate, length, width, shear);
        double force = 16 * patch.force() / (Math.PI * Math.PI * patch.alongX() * patch.alongY());
        for (int m = 1; m <= terms; m++) {
            double alongX = sines(m * Math.PI / length, patch.x(), patch.alongX()) / m;
            for (int n = 1; n <= terms; n++) {
                double alongY = sines(n * Math.PI / width, patch.y(), patch.alongY()) / n;
                navier.add(m, n, force * alongX * alongY, shear.isEmpty());
            }
        }
        return navier;
    }

    private static double sines(double alpha, double centre, double size) {
        return Math.sin(alpha * centre) * Math.sin(alpha * size / 2);
    }

    /** Thin theory uses the shear stiffness of the laminate only to fill its place. */
    private static Navier start(
            Laminate laminate, double length, double width, Optional<TransverseShearStiffness> shear) {
        return new Navier(laminate, length, width, shear.orElseGet(() -> TransverseShearStiffness.of(laminate)));
    }

    private void add(int m, int n, double pressure, boolean thin) {
        double alpha = m * Math.PI / length;
        double beta = n * Math.PI / width;
        double[][] rows = thin ? thinRows(alpha, beta) : rows(alpha, beta);
        int size = rows[0].length;
        double[][] stiffness = new double[size][size + 1];
        for (int i = 0; i < Kinematics.ROWS; i++) {
            for (int j = 0; j < Kinematics.ROWS; j++) {
                for (int a = 0; a < size; a++) {
                    for (int b = 0; b < size; b++) {
                        stiffness[a][b] += rows[i][a] * section.get(i, j) * rows[j][b];
                    }
                }
            }
        }
        stiffness[2][size] = pressure;
        double[] solved = eliminate(stiffness);
        double[] all =
                thin ? new double[] {solved[0], solved[1], solved[2], -alpha * solved[2], -beta * solved[2]} : solved;
        modes.add(new Mode(alpha, beta, all));
    }

    /** Rows of strain by U, V, W, X, Y; the trigonometric factors are left out, as all have the same mean square. */
    private static double[][] rows(double alpha, double beta) {
        return new double[][] {
            {-alpha, 0, 0, 0, 0},
            {0, -beta, 0, 0, 0},
            {beta, alpha, 0, 0, 0},
            {0, 0, 0, -alpha, 0},
            {0, 0, 0, 0, -beta},
            {0, 0, 0, beta, alpha},
            {0, 0, alpha, 1, 0},
            {0, 0, beta, 0, 1}
        };
    }

    /** X = −α W and Y = −β W put in: rows by U, V, W. */
    private static double[][] thinRows(double alpha, double beta) {
        return new double[][] {
            {-alpha, 0, 0},
            {0, -beta, 0},
            {beta, alpha, 0},
            {0, 0, alpha * alpha},
            {0, 0, beta * beta},
            {0, 0, -2 * alpha * beta},
            {0, 0, 0},
            {0, 0, 0}
        };
    }

    /** Gauss's elimination; the matrix is positive definite, so no rows are exchanged. */
    private static double[] eliminate(double[][] m) {
        int n = m.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double factor = m[i][k] / m[k][k];
                for (int j = k; j <= n; j++) {
                    m[i][j] -= factor * m[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            x[i] = m[i][n];
            for (int j = i + 1; j < n; j++) {
                x[i] -= m[i][j] * x[j];
            }
            x[i] /= m[i][i];
        }
        return x;
    }

    /**
     * Everything at a point. Under thin-plate theory the shear forces are left at zero.
     *
     * @param x place along the length (m)
     * @param y place along the width (m)
     * @return the point
     */
    public PanelPoint at(double x, double y) {
        double[] strain = new double[Kinematics.ROWS];
        double deflection = 0;
        for (Mode mode : modes) {
            double sx = Math.sin(mode.alpha() * x);
            double cx = Math.cos(mode.alpha() * x);
            double sy = Math.sin(mode.beta() * y);
            double cy = Math.cos(mode.beta() * y);
            double[] shape = {sx * sy, sx * sy, cx * cy, sx * sy, sx * sy, cx * cy, cx * sy, sx * cy};
            double[][] rows = rows(mode.alpha(), mode.beta());
            for (int i = 0; i < Kinematics.ROWS; i++) {
                for (int a = 0; a < mode.amplitude().length; a++) {
                    strain[i] += rows[i][a] * mode.amplitude()[a] * shape[i];
                }
            }
            deflection += mode.amplitude()[2] * sx * sy;
        }
        return point(x, y, deflection, strain);
    }

    private PanelPoint point(double x, double y, double deflection, double[] e) {
        double[] r = section.times(e);
        return new PanelPoint(
                x,
                y,
                deflection,
                new Deformation(new Vector3(e[0], e[1], e[2]), new Vector3(e[3], e[4], e[5])),
                new Resultants(new Vector3(r[0], r[1], r[2]), new Vector3(r[3], r[4], r[5])),
                r[6],
                r[7]);
    }
}
