package laminate.theory.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.testing.ReferenceCase;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.TransverseShearStiffness;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Exact elasticity, first against the published tables, then as the measure of panel theory. The errors asserted here
 * are those stated at {@link PanelBending}.
 */
class ElasticityValidationTest {
    private static final double ROUNDED = 2e-5;

    private static ExactElasticity.Sheet ply(double thickness, boolean across) {
        return ExactElasticity.Sheet.of(
                thickness,
                across ? new double[] {1, 25, 1} : new double[] {25, 1, 1},
                across ? 0.25 / 25 : 0.25,
                0.25,
                0.25,
                0.5,
                across ? 0.2 : 0.5,
                across ? 0.5 : 0.2);
    }

    /** Pagano's ν13 = 0.25 is by E1; across, ν of xz is his ν23 and ν of yz his ν13. */
    private static List<ExactElasticity.Sheet> crossPly(double h) {
        return List.of(ply(h / 4, false), ply(h / 4, true), ply(h / 4, true), ply(h / 4, false));
    }

    private static List<ExactElasticity.Sheet> sandwich(double h) {
        ExactElasticity.Sheet core =
                ExactElasticity.Sheet.of(0.8 * h, new double[] {0.04, 0.04, 0.5}, 0.25, 0.02, 0.02, 0.016, 0.06, 0.06);
        return List.of(ply(h / 10, false), core, ply(h / 10, false));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void elasticityReproducesPaganosCrossPly(int row) {
        ReferenceCase.Table table = Panels.reference("PLT-06").tables().get(0);
        double h = 1 / table.number(row, "a/h");
        ExactElasticity exact = new ExactElasticity(crossPly(h), Math.PI, Math.PI, 1);
        check(table, row, "w", 100 * h * h * h * exact.deflection(0));
        check(table, row, "sx top", h * h * exact.stress(0, 3, h / 2));
        check(table, row, "sx bot", h * h * exact.stress(0, 0, -h / 2));
        check(table, row, "sy +h/4", h * h * exact.stress(1, 2, h / 4));
        check(table, row, "sy -h/4", h * h * exact.stress(1, 1, -h / 4));
        check(table, row, "txz", h * exact.shearX(0));
        check(table, row, "tyz", h * exact.shearY(0));
        check(table, row, "txy top", h * h * exact.shearXY(3, h / 2));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void elasticityReproducesCylindricalBending(int row) {
        ReferenceCase.Table table = Panels.reference("PLT-06").tables().get(1);
        double h = 1 / table.number(row, "S");
        List<ExactElasticity.Sheet> plies = List.of(ply(h / 3, false), ply(h / 3, true), ply(h / 3, false));
        ExactElasticity exact = new ExactElasticity(plies, Math.PI, 0, 1);
        check(table, row, "wbar", 100 * h * h * h * exact.deflection(0));
        check(table, row, "sx top/q0", exact.stress(0, 2, h / 2));
        check(table, row, "sx bottom/q0", exact.stress(0, 0, -h / 2));
        check(table, row, "txz(z=0)/q0", exact.shearX(0));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void elasticityReproducesPaganosSandwich(int row) {
        ReferenceCase.Table table = Panels.reference("PLT-07").tables().get(0);
        double h = 1 / table.number(row, "a/h");
        ExactElasticity exact = new ExactElasticity(sandwich(h), Math.PI, Math.PI, 1);
        check(table, row, "w", 100 * h * h * h * exact.deflection(0));
        check(table, row, "sx top", h * h * exact.stress(0, 2, h / 2));
        check(table, row, "sx bot", h * h * exact.stress(0, 0, -h / 2));
        check(table, row, "sy top", h * h * exact.stress(1, 2, h / 2));
        check(table, row, "txz z=0", h * exact.shearX(0));
        check(table, row, "tyz z=0", h * exact.shearY(0));
        check(table, row, "txy bot", h * h * exact.shearXY(0, -h / 2));
    }

    private static void check(ReferenceCase.Table table, int row, String column, double actual) {
        double expected = table.number(row, column);
        assertThat(actual).as(column).isCloseTo(expected, offset(ROUNDED * Math.max(1, Math.abs(expected))));
    }

    /** Deflection of panel theory over that of elasticity, less 1, in per cent. */
    private static double error(Laminate laminate, List<ExactElasticity.Sheet> sheets) {
        Optional<TransverseShearStiffness> shear = Optional.of(TransverseShearStiffness.of(laminate));
        double panel = Navier.sinusoidal(laminate, 1, 1, 1, shear).at(0.5, 0.5).deflection();
        return 100 * (panel / new ExactElasticity(sheets, Math.PI, Math.PI, 1).deflection(0) - 1);
    }

    @ParameterizedTest
    @CsvSource({"4, 7.86", "10, 1.05", "20, 0.17", "50, 0.02", "100, 0.00"})
    void panelTheoryOnPaganosCrossPlyErrsAsStated(double ratio, double percent) {
        double h = 1 / ratio;
        Laminate laminate = Panels.plies(Panels.STRONGLY_DIRECTED, h / 4, 0, 90, 90, 0);
        assertThat(error(laminate, crossPly(h))).isCloseTo(percent, offset(0.006));
    }

    @ParameterizedTest
    @CsvSource({"4, 3.22", "10, 0.48", "20, 0.08", "50, 0.01", "100, 0.00"})
    void panelTheoryOnPaganosSandwichErrsAsStated(double ratio, double percent) {
        double h = 1 / ratio;
        Lamina core = Lamina.of(0.04, 0.04, 0.016, 0.25).withTransverseShear(0.06, 0.06);
        Laminate laminate = Laminate.of(List.of(
                new Ply(Panels.STRONGLY_DIRECTED, h / 10, 0),
                new Ply(core, 0.8 * h, 0),
                new Ply(Panels.STRONGLY_DIRECTED, h / 10, 0)));
        assertThat(error(laminate, sandwich(h))).isCloseTo(percent, offset(0.006));
    }

    /** Srinivas and Rao's sandwich, 0.1 of skin on either side, uniform pressure as a sine series. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void elasticityReproducesSrinivasAndRao(int row) {
        ReferenceCase c = Panels.reference("PLT-08");
        ReferenceCase.Table table = c.tables().get(0);
        double ratio = table.number(row, "R");
        Map<String, Object> given = ReferenceCase.map(c.inputs().get("core_C_over_C11"));
        double[] core = List.of("C11", "C12", "C13", "C22", "C23", "C33", "C44", "C55", "C66").stream()
                .mapToDouble(name -> (Double) given.get(name))
                .toArray();
        double[] skin = java.util.Arrays.stream(core).map(x -> ratio * x).toArray();
        List<ExactElasticity.Sheet> sheets = List.of(
                new ExactElasticity.Sheet(0.1, skin),
                new ExactElasticity.Sheet(0.8, core),
                new ExactElasticity.Sheet(0.1, skin));
        double w = 0;
        for (int m = 1; m <= 15; m += 2) {
            for (int n = 1; n <= 15; n += 2) {
                double q = 16 / (Math.PI * Math.PI * m * n) * (m / 2 % 2 == n / 2 % 2 ? 1 : -1);
                w += new ExactElasticity(sheets, m * Math.PI / 10, n * Math.PI / 10, q).deflection(0);
            }
        }
        assertThat(w).isCloseTo(table.number(row, "w 3-D"), withinPercentage(0.01));
    }
}
