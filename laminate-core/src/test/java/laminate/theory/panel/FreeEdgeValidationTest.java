package laminate.theory.panel;

import static laminate.theory.panel.Panels.pressure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Thin isotropic plates with free edges, ν = 0.3, uniform pressure, against Timoshenko and Woinowsky-Krieger 1959 (from
 * memory). The free edge is y = width and of length a; its supports are as listed.
 */
class FreeEdgeValidationTest {
    private static final double E = 1e10;
    private static final double H = 0.001;
    private static final double D = E * H * H * H / 12 / (1 - 0.09);

    private static PanelBending plate(double ratio, Edge sides, Edge opposite) {
        Edges edges = new Edges(sides, sides, opposite, Edge.FREE);
        return PanelBending.of(Panel.of(Panels.isotropic(E, 0.3, H), 1, ratio, edges), pressure(1));
    }

    /** Three edges simply supported: w = α q a⁴/D and Mx = β q a² in the middle of the free edge, b/a as listed. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.00710, 0.060", "1, 0.01286, 0.112", "1.5, 0.01462, 0.128", "2, 0.01507, 0.132"})
    void threeEdgesSimplySupported(double ratio, double alpha, double beta) {
        PanelBending plate = plate(ratio, Edge.SIMPLY_SUPPORTED, Edge.SIMPLY_SUPPORTED);
        PanelPoint middle = plate.response().at(0.5, ratio);
        assertThat(middle.deflection() * D).isCloseTo(alpha, withinPercentage(0.3));
        assertThat(plate.response().mostDeflected().y()).isCloseTo(ratio, offset(1e-9));
        assertThat(middle.resultants().moment().x()).isCloseTo(beta, withinPercentage(1));
    }

    /** Sides simply supported, clamped opposite the free edge, square: w, Mx of the free edge and My of the clamped. */
    @Test
    void clampedOppositeTheFreeEdge() {
        PanelResponse r = plate(1, Edge.SIMPLY_SUPPORTED, Edge.CLAMPED).response();
        assertThat(r.deflection(0.5, 1) * D).isCloseTo(0.0113, withinPercentage(0.6));
        assertThat(r.at(0.5, 1).resultants().moment().x()).isCloseTo(0.0972, withinPercentage(0.6));
        assertThat(r.at(0.5, 0).resultants().moment().y()).isCloseTo(-0.119, withinPercentage(0.6));
    }

    /** Square cantilever: 0.129 q a⁴/D in the middle of the end; the root carries q a²/2 in the mean over its width. */
    @Test
    void squareCantilever() {
        PanelResponse r = plate(1, Edge.FREE, Edge.CLAMPED).response();
        assertThat(r.deflection(0.5, 1) * D).isCloseTo(0.129, withinPercentage(0.5));
        Gauss line = Gauss.on(0, 1, 16);
        double root = 0;
        for (int k = 0; k < line.size(); k++) {
            root += line.weight(k)
                    * r.at(line.point(k), 0).resultants().moment().y();
        }
        assertThat(root).isCloseTo(-0.5, withinPercentage(1));
    }

    /** M. Lévy's series (1899) for simply supported sides, summed here on its own: w in the middle of the free edge, My opposite. */
    @ParameterizedTest
    @CsvSource({"0.5, SIMPLY_SUPPORTED", "1, SIMPLY_SUPPORTED", "2, SIMPLY_SUPPORTED", "0.5, CLAMPED", "1, CLAMPED"})
    void levySeries(double ratio, Edge opposite) {
        PanelResponse ours = plate(ratio, Edge.SIMPLY_SUPPORTED, opposite).response();
        double deflection = 0;
        double moment = 0;
        for (int m = 1; m <= 49; m += 2) {
            double[] term = levyTerm(m * Math.PI, ratio, opposite == Edge.CLAMPED);
            deflection += Math.sin(m * Math.PI / 2) * term[0];
            moment += Math.sin(m * Math.PI / 2) * term[1];
        }
        assertThat(ours.deflection(0.5, ratio) * D).isCloseTo(deflection, withinPercentage(0.05));
        assertThat(ours.at(0.5, 0).resultants().moment().y())
                .isCloseTo(moment, offset(opposite == Edge.CLAMPED ? 3e-4 : 2e-3));
    }

    /**
     * Y(b) and −Y''(0) of w = Y(y) sin αx: 4 (qα⁻⁵)/D and four decaying functions whose factors fit w = 0 and w,yy = 0 or w,y = 0
     * at y = 0, w,yy + ν w,xx = 0 and w,yyy + (2 − ν) w,xxy = 0 at y = b.
     */
    private static double[] levyTerm(double alpha, double b, boolean clamped) {
        double particular = 4 / Math.pow(alpha, 5);
        double[][] near = decaying(alpha, 0, b);
        double[][] far = decaying(alpha, b, b);
        double[][] m = new double[4][4];
        for (int f = 0; f < 4; f++) {
            m[0][f] = near[0][f];
            m[1][f] = near[clamped ? 1 : 2][f];
            m[2][f] = far[2][f] - 0.3 * far[0][f];
            m[3][f] = far[3][f] - 1.7 * far[1][f];
        }
        double[] right = {-particular, 0, 0.3 * particular, 0};
        RealVector factors =
                new LUDecomposition(new Array2DRowRealMatrix(m)).getSolver().solve(new ArrayRealVector(right));
        double end = particular + factors.dotProduct(new ArrayRealVector(far[0]));
        return new double[] {end, -alpha * alpha * factors.dotProduct(new ArrayRealVector(near[2]))};
    }

    /** e⁻ˢ, s e⁻ˢ with s = αy, and the same from the other end; derivatives 0 to 3 by y, in units of α. */
    private static double[][] decaying(double alpha, double y, double b) {
        double[][] values = new double[4][4];
        for (int end = 0; end < 2; end++) {
            double s = alpha * (end == 0 ? y : b - y);
            for (int d = 0; d < 4; d++) {
                double sign = end == 0 && d % 2 == 1 ? -1 : 1;
                values[d][2 * end] = sign * Math.exp(-s);
                values[d][2 * end + 1] = sign * (s - d) * Math.exp(-s);
            }
        }
        return values;
    }

    /** No moment across a free edge. */
    @Test
    void freeEdgeCarriesNoMomentAcross() {
        PanelResponse r = plate(1, Edge.SIMPLY_SUPPORTED, Edge.SIMPLY_SUPPORTED).response();
        for (double x : new double[] {0.2, 0.5, 0.8}) {
            assertThat(r.at(x, 1).resultants().moment().y()).isCloseTo(0, offset(0.01 * 0.112));
        }
    }
}
