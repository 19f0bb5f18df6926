package laminate.theory;

import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/**
 * The law [N; M] + [NT; MT] = [[A, B], [B, D]] [ε0; κ] solved for whichever of each pair is not given.
 *
 * <p>With f the free deformations and p the given ones, K<sub>ff</sub> e<sub>f</sub> = r<sub>f</sub> +
 * r<sub>T,f</sub> − K<sub>fp</sub> e<sub>p</sub>. K<sub>ff</sub> is a principal block of a positive definite matrix, so
 * every choice of controls has exactly one answer.
 */
final class MixedControl {
    private static final LaminateLoad.Term[] TERMS = LaminateLoad.Term.values();
    private static final int PAIRS = 6;

    private final double[][] stiffness = new double[PAIRS][PAIRS];
    private final double[] held;

    MixedControl(Laminate laminate, Resultants held) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                stiffness[i][j] = laminate.membrane().get(i, j);
                stiffness[i][j + 3] = laminate.coupling().get(i, j);
                stiffness[i + 3][j] = laminate.coupling().get(j, i);
                stiffness[i + 3][j + 3] = laminate.bending().get(i, j);
            }
        }
        this.held = array(held.force(), held.moment());
    }

    Deformation deformation(LaminateLoad load) {
        double[] e = new double[PAIRS];
        for (int i = 0; i < PAIRS; i++) {
            e[i] = load.given().getOrDefault(TERMS[i].conjugate(), 0.0);
        }
        int[] free = IntStream.range(0, PAIRS)
                .filter(i -> !load.given().containsKey(TERMS[i].conjugate()))
                .toArray();
        if (free.length > 0) {
            solve(load, free, e);
        }
        return new Deformation(new Vector3(e[0], e[1], e[2]), new Vector3(e[3], e[4], e[5]));
    }

    /** Scaled to ones on the diagonal, as in {@link Compliance}. */
    private void solve(LaminateLoad load, int[] free, double[] e) {
        int n = free.length;
        DMatrixRMaj block = new DMatrixRMaj(n, n);
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                block.set(i, j, stiffness[free[i]][free[j]] / scale(free[i]) / scale(free[j]));
            }
            double resultant = load.given().getOrDefault(TERMS[free[i]], 0.0);
            right[i] = (resultant + held[free[i]] - times(free[i], e)) / scale(free[i]);
        }
        DMatrixRMaj inverse = Compliance.inverse(block);
        for (int i = 0; i < n; i++) {
            int row = i;
            e[free[i]] = CompensatedSum.of(n, j -> inverse.get(row, j) * right[j]) / scale(free[i]);
        }
    }

    private double scale(int i) {
        return Math.sqrt(stiffness[i][i]);
    }

    private double times(int row, double[] e) {
        return CompensatedSum.of(PAIRS, j -> stiffness[row][j] * e[j]);
    }

    /** The given resultants as given, the others from the law. */
    Resultants resultants(LaminateLoad load, Deformation deformation) {
        double[] e = array(deformation.strain(), deformation.curvature());
        double[] r = new double[PAIRS];
        for (int i = 0; i < PAIRS; i++) {
            r[i] = load.given().containsKey(TERMS[i].conjugate())
                    ? times(i, e) - held[i]
                    : load.given().getOrDefault(TERMS[i], 0.0);
        }
        return new Resultants(new Vector3(r[0], r[1], r[2]), new Vector3(r[3], r[4], r[5]));
    }

    private static double[] array(Vector3 first, Vector3 second) {
        return new double[] {first.x(), first.y(), first.xy(), second.x(), second.y(), second.xy()};
    }
}
