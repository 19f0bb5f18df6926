package laminate.theory.panel;

import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import laminate.theory.TransverseShearStiffness;
import laminate.theory.Vector3;

/** Stiffness of a laminate in the rows of {@link Kinematics}: [N; M; Q] = C [ε; κ; γ]. */
final class Section {
    private final double[][] stiffness = new double[Kinematics.ROWS][Kinematics.ROWS];
    private final boolean coupled;
    private final Laminate laminate;

    Section(Laminate laminate, TransverseShearStiffness shear) {
        this.laminate = laminate;
        coupled = laminate.isCoupled();
        put(laminate.membrane(), 0, 0);
        put(laminate.bending(), 3, 3);
        if (coupled) {
            put(laminate.coupling(), 0, 3);
            put(laminate.coupling(), 3, 0);
        }
        stiffness[6][6] = shear.xx();
        stiffness[6][7] = shear.xy();
        stiffness[7][6] = shear.xy();
        stiffness[7][7] = shear.yy();
    }

    private void put(Matrix3 m, int row, int column) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                stiffness[row + i][column + j] = m.get(i, j);
            }
        }
    }

    double get(int row, int column) {
        return stiffness[row][column];
    }

    /** Whether bending stretches the mid-plane. */
    boolean isCoupled() {
        return coupled;
    }

    /** Whether shear couples with stretching along x or y anywhere: entries 16, 26 of A, B, D or 45. */
    boolean isShearCoupled() {
        boolean zero = stiffness[6][7] == 0;
        for (int row = 0; row < 6; row += 3) {
            for (int column = 0; column < 6; column += 3) {
                zero &= stiffness[row][column + 2] == 0 && stiffness[row + 1][column + 2] == 0;
            }
        }
        return !zero;
    }

    /** The strain of the mid-plane, A⁻¹ N, by which forces in the plane stretch the panel while it is held flat. */
    Vector3 strainOf(PanelLoad.EdgeForces n) {
        return laminate.membrane().inverse().times(new Vector3(n.Nx(), n.Ny(), n.Nxy()));
    }

    /** The moments B ε that hold a strained panel flat; zero where bending and stretching do not couple. */
    Vector3 momentOf(Vector3 strain) {
        return coupled ? laminate.coupling().times(strain) : Vector3.ZERO;
    }

    /** Resultants from strain: N, M, Q. */
    double[] times(double[] strain) {
        double[] resultants = new double[Kinematics.ROWS];
        for (int i = 0; i < Kinematics.ROWS; i++) {
            for (int j = 0; j < Kinematics.ROWS; j++) {
                resultants[i] += stiffness[i][j] * strain[j];
            }
        }
        return resultants;
    }
}
