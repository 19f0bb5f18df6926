package laminate.theory.panel;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;

/**
 * Integrals ∫∫ g(x, y) ∂l ∂r dx dy for all pairs of unknowns l and r of two fields, g given at points. As functions are
 * products of one of x and one of y, points are summed along y first and along x then (sum factorisation; S. A. Orszag,
 * J. Comput. Phys. 37 (1980) 70, from memory), which costs a tenth and less of a sum over all points for each pair.
 */
final class PointSums {
    private PointSums() {}

    /** Functions at the points along one side: [derivative][point][function]. */
    record Values(double[][][] at) {
        /** Of some functions alone. */
        static Values of(double[][][] byPoint, int[] functions) {
            double[][][] at = new double[2][byPoint.length][];
            for (int d = 0; d < 2; d++) {
                for (int k = 0; k < byPoint.length; k++) {
                    double[] all = byPoint[k][d];
                    at[d][k] = IntStream.of(functions).mapToDouble(f -> all[f]).toArray();
                }
            }
            return new Values(at);
        }
    }

    /** Unknowns of one field: rows or columns of a matrix, and which functions they are products of. */
    static final class Unknowns {
        private final int[] index;
        private final int[] x;
        private final int[] y;
        private final Values alongX;
        private final Values alongY;

        /**
         * Some unknowns.
         *
         * @param index row or column of each
         * @param functionsX function along x of each, and along y
         * @param pointsX values at the points along x, [point][derivative][function], and along y
         */
        Unknowns(int[] index, int[] functionsX, int[] functionsY, double[][][] pointsX, double[][][] pointsY) {
            this.index = index;
            int[] xs = IntStream.of(functionsX).distinct().sorted().toArray();
            int[] ys = IntStream.of(functionsY).distinct().sorted().toArray();
            x = IntStream.of(functionsX).map(f -> Arrays.binarySearch(xs, f)).toArray();
            y = IntStream.of(functionsY).map(f -> Arrays.binarySearch(ys, f)).toArray();
            alongX = Values.of(pointsX, xs);
            alongY = Values.of(pointsY, ys);
        }

        private double[][] x(int derivatives) {
            return alongX.at()[derivatives];
        }

        private double[][] y(int derivatives) {
            return alongY.at()[derivatives];
        }
    }

    /**
     * Adds the integrals to a matrix.
     *
     * @param g [point along x × number along y + point along y], weight included
     * @param left unknowns of the rows, each derived leftX times by x and leftY times by y
     */
    static void add(
            DMatrixRMaj matrix,
            double[] g,
            Unknowns left,
            int leftX,
            int leftY,
            Unknowns right,
            int rightX,
            int rightY) {
        double[][] sums = sums(g, left.x(leftX), left.y(leftY), right.x(rightX), right.y(rightY));
        int columnsX = right.x(0)[0].length;
        int columnsY = right.y(0)[0].length;
        for (int i = 0; i < left.index.length; i++) {
            for (int j = 0; j < right.index.length; j++) {
                double sum = sums[left.x[i] * columnsX + right.x[j]][left.y[i] * columnsY + right.y[j]];
                matrix.add(left.index[i], right.index[j], sum);
            }
        }
    }

    private static double[][] sums(double[] g, double[][] lx, double[][] ly, double[][] rx, double[][] ry) {
        int columns = rx[0].length;
        double[][] sums = new double[lx[0].length * columns][ly[0].length * ry[0].length];
        for (int k = 0; k < lx.length; k++) {
            double[] line = alongY(g, k * ly.length, ly, ry);
            for (int i = 0; i < lx[k].length; i++) {
                for (int j = 0; j < columns; j++) {
                    addTo(sums[i * columns + j], lx[k][i] * rx[k][j], line);
                }
            }
        }
        return sums;
    }

    private static double[] alongY(double[] g, int from, double[][] ly, double[][] ry) {
        int columns = ry[0].length;
        double[] line = new double[ly[0].length * columns];
        for (int k = 0; k < ly.length; k++) {
            for (int i = 0; i < ly[k].length; i++) {
                double scaled = g[from + k] * ly[k][i];
                for (int j = 0; j < columns; j++) {
                    line[i * columns + j] += scaled * ry[k][j];
                }
            }
        }
        return line;
    }

    private static void addTo(double[] sum, double factor, double[] addend) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * addend[i];
        }
    }
}
