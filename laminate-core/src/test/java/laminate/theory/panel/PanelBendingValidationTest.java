package laminate.theory.panel;

import static laminate.theory.panel.Panels.CLAMPED;
import static laminate.theory.panel.Panels.SIMPLE;
import static laminate.theory.panel.Panels.pressure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import laminate.testing.Printed;
import laminate.testing.ReferenceCase;
import laminate.theory.EquilibriumShear;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Matrix3;
import laminate.theory.Ply;
import laminate.theory.ReducedStiffness;
import laminate.theory.TransverseShearStiffness;
import laminate.theory.Vector3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Bending of panels against tables, series and finite elements. */
class PanelBendingValidationTest {
    /** A thousandth of the span: what shear adds is below 10⁻⁵. */
    private static final double THIN = 0.001;

    private static final double E = 1e10;
    private static final double D = E * THIN * THIN * THIN / 12 / (1 - 0.09);

    /** The short side of the tables is ours along y, so their Mx is our My. */
    private static PanelBending solid(double ratio, Edges edges) {
        return PanelBending.of(Panel.of(Panels.isotropic(E, 0.3, THIN), ratio, 1, edges), pressure(1));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 2, 5, 10, 11, 13})
    void simplySupportedSolidPlateIsAsTabulatedByTimoshenko(int row) {
        ReferenceCase.Table table = Panels.reference("PLT-01").tables().get(0);
        double ratio = table.number(row, "b/a");
        PanelBending panel = solid(ratio, SIMPLE);
        Vector3 moment = panel.response().at(ratio / 2, 0.5).resultants().moment();
        assertThat(panel.deflection() * D).isCloseTo(table.number(row, "alpha exact"), withinPercentage(0.1));
        assertThat(moment.y()).isCloseTo(table.number(row, "beta exact"), withinPercentage(0.2));
        assertThat(moment.x()).isCloseTo(table.number(row, "beta1 exact"), withinPercentage(0.2));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 5, 8, 10})
    void clampedSolidPlateIsAsTabulatedByTimoshenko(int row) {
        ReferenceCase.Table table = Panels.reference("PLT-02").tables().get(0);
        double ratio = table.number(row, "b/a");
        PanelBending panel = solid(ratio, CLAMPED);
        PanelResponse r = panel.response();
        Vector3 centre = r.at(ratio / 2, 0.5).resultants().moment();
        assertThat(panel.deflection() * D).isCloseTo(table.number(row, "w exact"), withinPercentage(0.1));
        assertThat(r.at(ratio / 2, 0).resultants().moment().y())
                .isCloseTo(table.number(row, "Mx edge exact"), withinPercentage(0.3));
        assertThat(r.at(0, 0.5).resultants().moment().x())
                .isCloseTo(table.number(row, "My edge exact"), withinPercentage(0.3));
        assertThat(centre.y()).isCloseTo(table.number(row, "Mx centre exact"), withinPercentage(0.3));
        assertThat(centre.x()).isCloseTo(table.number(row, "My centre exact"), withinPercentage(0.3));
    }

    /** Timoshenko and Woinowsky-Krieger 1959, table 8 (from memory): greatest shear force 0.338 q a of a square plate. */
    @Test
    void shearForceAtTheEdgeIsAsTabulated() {
        assertThat(solid(1, SIMPLE).response().at(0, 0.5).Qx()).isCloseTo(0.338, withinPercentage(0.5));
    }

    /** The same table of clamped plates: a free edge opposite a clamped one is a cantilever, q L⁴/8D and q L²/2. */
    @Test
    void cantileverStripWithoutPoissonEffectIsABeam() {
        Laminate strip = Panels.isotropic(E, 0, THIN);
        Edges edges = new Edges(Edge.CLAMPED, Edge.FREE, Edge.FREE, Edge.FREE);
        PanelBending beam = PanelBending.of(Panel.of(strip, 1, 0.5, edges), pressure(1));
        double stiffness = E * THIN * THIN * THIN / 12;
        assertThat(beam.deflection() * stiffness).isCloseTo(1.0 / 8, withinPercentage(0.01));
        PanelPoint root = beam.response().at(0, 0.25);
        assertThat(root.resultants().moment().x()).isCloseTo(-0.5, withinPercentage(0.1));
        assertThat(root.Qx()).isCloseTo(1, withinPercentage(0.5));
    }

    @Test
    void crossPlyOfReddyIsAsPrinted() {
        ReferenceCase c = Panels.reference("PLT-03");
        Lamina lamina = Panels.lamina(ReferenceCase.map(c.inputs().get("material")));
        Laminate laminate = Panels.plies(lamina, 0.025, 0, 90, 90, 0);
        TransverseShearStiffness fiveSixths = TransverseShearStiffness.summed(laminate, c.input("shear_correction"));
        PanelBending panel = PanelBending.of(Panel.of(laminate, 10, 10, SIMPLE), pressure(1), fiveSixths);
        assertThat(panel.deflection()).isCloseTo(Panels.expected(c, "w centre, FSDT (K=5/6)"), withinPercentage(0.05));
        assertThat(panel.bendingDeflection()).isCloseTo(Panels.expected(c, "w centre, CLPT"), withinPercentage(0.05));
        Printed.parse("0.0683").check("w centre", panel.deflection(), 0.001);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17})
    void crossPliesAreAsByNavier(int row) {
        ReferenceCase.Table table = Panels.reference("PLT-05").tables().get(0);
        boolean thin = table.cell(row, "a/h").equals("CLPT");
        double h = thin ? 0.01 : 1 / table.number(row, "a/h");
        double[] angles = angles((String) table.cell(row, "lay-up"));
        Laminate laminate = Panels.plies(Panels.STRONGLY_DIRECTED, h / angles.length, angles);
        TransverseShearStiffness fiveSixths = TransverseShearStiffness.summed(laminate, 5.0 / 6);
        Optional<TransverseShearStiffness> shear = thin ? Optional.empty() : Optional.of(fiveSixths);
        double scale = 100 * h * h * h;
        PanelPoint sine = Navier.sinusoidal(laminate, 1, 1, 1, shear).at(0.5, 0.5);
        double uniform =
                Navier.uniform(laminate, 1, 1, 1, 99, shear).at(0.5, 0.5).deflection();
        assertThat(sine.deflection() * scale).isCloseTo(table.number(row, "sinusoidal"), withinPercentage(0.002));
        assertThat(uniform * scale).isCloseTo(table.number(row, "uniform"), withinPercentage(0.002));
        if (!thin) {
            double face = stress(laminate, angles.length - 1, sine, h / 2).x() * h * h;
            assertThat(face).isCloseTo(table.number(row, "sxbar sinusoidal"), withinPercentage(0.002));
        }
        PanelBending ritz = PanelBending.of(Panel.of(laminate, 1, 1, SIMPLE), pressure(1), fiveSixths);
        double ours = thin ? ritz.bendingDeflection() : ritz.deflection();
        assertThat(ours * scale).isCloseTo(table.number(row, "uniform"), withinPercentage(0.05));
    }

    private static double[] angles(String layUp) {
        return List.of(layUp.split("/")).stream()
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Vector3 stress(Laminate laminate, int ply, PanelPoint point, double z) {
        return laminate.plies().get(ply).stress(point.deformation().at(z));
    }

    /** Srinivas and Rao 1970; the case states stiffnesses, of which the skin's are R times the core's. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void orthotropicSandwichIsWithinAQuarterPercentOfElasticity(int row) {
        ReferenceCase c = Panels.reference("PLT-08");
        ReferenceCase.Table table = c.tables().get(0);
        double ratio = table.number(row, "R");
        Lamina core = core(ReferenceCase.map(c.inputs().get("core_plane_stress")));
        Laminate laminate = Laminate.of(List.of(
                new Ply(core.scaledBy(ratio), 0.1, 0), new Ply(core, 0.8, 0), new Ply(core.scaledBy(ratio), 0.1, 0)));
        PanelBending panel = PanelBending.of(Panel.of(laminate, 10, 10, SIMPLE), pressure(1));
        assertThat(panel.deflection())
                .isCloseTo(table.number(row, "w FSDT (energy shear stiffness)"), withinPercentage(0.05));
        assertThat(panel.bendingDeflection()).isCloseTo(table.number(row, "w CLPT"), withinPercentage(0.05));
        assertThat(panel.deflection()).isCloseTo(table.number(row, "w 3-D"), withinPercentage(0.25));
        double face = stress(laminate, 2, panel.response().at(5, 5), 0.5).x();
        assertThat(face).isCloseTo(table.number(row, "sx outer FSDT"), withinPercentage(0.2));
    }

    private static Lamina core(Map<String, Object> q) {
        double q12 = (Double) q.get("Q12");
        double q22 = (Double) q.get("Q22");
        double q11 = (Double) q.get("Q11");
        return Lamina.of(q11 - q12 * q12 / q22, q22 - q12 * q12 / q11, (Double) q.get("Q66"), q12 / q22)
                .withTransverseShear((Double) q.get("G13"), (Double) q.get("G23"));
    }

    @Test
    void plateWithComputedShearFactorIsAsInTheManual() {
        ReferenceCase c = Panels.reference("PLT-09");
        Lamina lamina = Panels.lamina(ReferenceCase.map(c.inputs().get("material")));
        Laminate laminate =
                Laminate.of(List.of(new Ply(lamina, 0.025, 0), new Ply(lamina, 0.05, 90), new Ply(lamina, 0.025, 0)));
        TransverseShearStiffness energy = TransverseShearStiffness.of(laminate);
        TransverseShearStiffness sum = TransverseShearStiffness.summed(laminate, 1);
        Navier panel = Navier.sinusoidal(laminate, 1, 1, c.input("q0"), Optional.of(energy));
        PanelPoint centre = panel.at(0.5, 0.5);
        Navier fiveSixths = Navier.sinusoidal(
                laminate, 1, 1, c.input("q0"), Optional.of(TransverseShearStiffness.summed(laminate, 5.0 / 6)));
        Map<String, Double> ours = Map.of(
                "shear correction k^2 x (energy, cylindrical bending)", energy.xx() / sum.xx(),
                "shear correction k^2 y", energy.yy() / sum.yy(),
                "w centre", centre.deflection(),
                "sig_x centre z=h/2", stress(laminate, 2, centre, 0.05).x(),
                "sig_y centre z=h/4 in 90 ply",
                        stress(laminate, 1, centre, 0.025).y(),
                "tau_xz mid-edge z=0",
                        EquilibriumShear.alongX(laminate, panel.at(0, 0.5).Qx(), 0),
                "w with K=5/6", fiveSixths.at(0.5, 0.5).deflection());
        assertThat(c.expected()).hasSize(ours.size()).allSatisfy(e -> e.check(ours.get(e.name())));
    }

    /**
     * The case's first-order figure takes the shear stress of a moment Mx alone, ours that of a curvature κx alone
     * (cylindrical bending, as PLT-09 wants): 0.05 % apart on this laminate, and ours the nearer to the bricks.
     */
    @ParameterizedTest
    @CsvSource({"FEA-01, SIMPLY_SUPPORTED, 1.0, 0.06, 0.05", "FEA-02, CLAMPED, 3.5, 0.2, 0.1"})
    void sandwichPanelIsNearTheBricks(String id, Edge edge, double bricks, double firstOrder, double thin) {
        ReferenceCase c = Panels.reference(id);
        Panel panel = Panel.of(Panels.laminate(c), c.input("a_m"), c.input("b_m"), Edges.all(edge));
        PanelBending ours = PanelBending.of(panel, pressure(c.input("q_Pa")));
        assertThat(ours.deflection()).isCloseTo(Panels.expected(c, "w centre, bricks"), withinPercentage(bricks));
        assertThat(ours.deflection())
                .isCloseTo(
                        Panels.expected(c, "w centre, first-order shear with energy-based shear stiffness"),
                        withinPercentage(firstOrder));
        assertThat(ours.bendingDeflection())
                .isCloseTo(Panels.expected(c, "w centre, thin-plate theory"), withinPercentage(thin));
        assertThat(ours.shearDeflection() + ours.bendingDeflection()).isEqualTo(ours.deflection());
    }

    /** The figure that a report on a sandwich quotes. */
    @Test
    void softEdgesGiveNineToTwelvePercentMoreOnASandwich() {
        Laminate sandwich = Panels.laminate(Panels.reference("FEA-01"));
        double hard = PanelBending.of(Panel.of(sandwich, 0.6, 0.4, SIMPLE), pressure(1))
                .deflection();
        double soft = PanelBending.of(Panel.of(sandwich, 0.6, 0.4, Panels.SOFT), pressure(1))
                .deflection();
        assertThat(soft / hard).isBetween(1.09, 1.12);
    }

    /**
     * The figure of FEA-01 for first-order shear theory comes out within its own tolerance where the shear stress is taken
     * from a moment in one direction alone, σ = Q̄ D⁻¹ M, free to curve in the other. The library holds the other curvature
     * back, which lies nearer the bricks, and by which PLT-09 is printed.
     */
    @Test
    void sandwichOfCaseFea01ByOneMomentAlone() {
        ReferenceCase c = Panels.reference("FEA-01");
        Laminate laminate = Panels.laminate(c);
        Matrix3 d = laminate.bending().inverse();
        double xx = 1 / shearCompliance(laminate, q -> q.Q11() * d.m11() + q.Q12() * d.m12(), Lamina::G13);
        double yy = 1 / shearCompliance(laminate, q -> q.Q22() * d.m22() + q.Q12() * d.m12(), Lamina::G23);
        Panel panel = Panel.of(laminate, c.input("a_m"), c.input("b_m"), SIMPLE);
        PanelBending bending =
                PanelBending.of(panel, pressure(c.input("q_Pa")), new TransverseShearStiffness(xx, 0, yy));
        assertThat(bending.deflection())
                .isCloseTo(
                        Panels.expected(c, "w centre, first-order shear with energy-based shear stiffness"),
                        withinPercentage(0.05));
    }

    /** ∫ τ²/G dz for a unit force, τ = −∫ s ζ dζ with s the stress by height, by the trapezium rule on fine slices. */
    private static double shearCompliance(
            Laminate laminate, ToDoubleFunction<ReducedStiffness> stressByHeight, ToDoubleFunction<Lamina> modulus) {
        double[] z = laminate.interfaces();
        double tau = 0;
        double energy = 0;
        for (int i = 0; i + 1 < z.length; i++) {
            Ply ply = laminate.plies().get(i);
            double s = stressByHeight.applyAsDouble(ply.stiffness());
            int slices = 2000;
            double h = (z[i + 1] - z[i]) / slices;
            for (int k = 0; k < slices; k++) {
                double next = tau - s * h * (z[i] + (k + 0.5) * h);
                energy += h * (tau * tau + next * next) / 2 / modulus.applyAsDouble(ply.lamina());
                tau = next;
            }
        }
        return energy;
    }
}
