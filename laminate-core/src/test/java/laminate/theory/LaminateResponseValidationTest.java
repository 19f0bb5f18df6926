package laminate.theory;

import static laminate.testing.ReferenceCase.checkValue;
import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.ReferenceCase.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import laminate.testing.ReferenceCase;
import laminate.theory.LaminateLoad.Term;
import org.junit.jupiter.api.Test;

/** The response to a load against worked cases: forces, held curvatures, shear, cooling. */
class LaminateResponseValidationTest {

    /** Kaw 2006, example 4.3: [0/30/−45] under Nx = Ny = 1000 N/m, strains and stresses of the nine points. */
    @Test
    void threePlyLaminateUnderBiaxialForce() {
        ReferenceCase c = load("CLT-03");
        List<Double> n = numbers(c.inputs().get("N_N_per_m"));
        LaminateResponse response = laminate(c)
                .responseTo(LaminateLoad.of(new Resultants(new Vector3(n.get(0), n.get(1), n.get(2)), Vector3.ZERO)));
        ReferenceCase.Table table = c.tables().get(0);
        assertThat(response.points()).hasSameSizeAs(table.rows());
        for (int i = 0; i < response.points().size(); i++) {
            PlyPoint point = response.points().get(i);
            assertThat(point.ply() + 1).isEqualTo((int) table.number(i, "ply"));
            assertThat(point.at().ordinal())
                    .isEqualTo(List.of("top", "middle", "bottom").indexOf((String) table.cell(i, "where")));
            assertThat(point.z()).isCloseTo(table.number(i, "z_m"), within(1e-9));
            checkValue("eps_x", point.strain().x(), table.number(i, "eps_x"));
            checkValue("sig_x", point.stress().x(), table.number(i, "sig_x_Pa"));
            checkValue("sig_y", point.stress().y(), table.number(i, "sig_y_Pa"));
            checkValue("tau_xy", point.stress().xy(), table.number(i, "tau_xy_Pa"));
            checkValue("sig_1", point.plyStress().x(), table.number(i, "sig_1_Pa"));
            checkValue("sig_2", point.plyStress().y(), table.number(i, "sig_2_Pa"));
            checkValue("tau_12", point.plyStress().xy(), table.number(i, "tau_12_Pa"));
            Vector3 strain = Angle.ofDegrees(table.number(i, "theta_deg"))
                    .strainToPly(new Vector3(
                            table.number(i, "eps_x"), table.number(i, "eps_y"), table.number(i, "gamma_xy")));
            assertThat(point.plyStrain().x()).isCloseTo(strain.x(), within(1e-11));
            assertThat(point.plyStrain().xy()).isCloseTo(strain.xy(), within(1e-11));
        }
    }

    /** [0/90/0] under a unit moment with the other curvatures held, and under unit shear forces. */
    @Test
    void cylindricalBendingAndShear() {
        ReferenceCase c = load("CLT-06");
        Laminate laminate = laminate(c);
        LaminateResponse x = laminate.responseTo(LaminateLoad.NONE
                .with(Term.MX, 1)
                .with(Term.KAPPA_Y, 0)
                .with(Term.KAPPA_XY, 0)
                .withShear(1000, 0));
        LaminateResponse y = laminate.responseTo(LaminateLoad.NONE
                .with(Term.MY, 1)
                .with(Term.KAPPA_X, 0)
                .with(Term.KAPPA_XY, 0)
                .withShear(0, 1000));
        check(c, "Mx=1 N: sig_x, z=-h/2 (ply 1)", x.points().get(0).stress().x());
        check(c, "Mx=1 N: sig_x, z=-h/4 in ply 2", x.points().get(3).stress().x());
        check(c, "My=1 N: sig_y, z=-h/2 (ply 1)", y.points().get(0).stress().y());
        check(c, "My=1 N: sig_y, z=-h/4 in ply 2", y.points().get(3).stress().y());
        check(c, "Qx=1 N/mm: tau_xz, z=-h/4", x.points().get(2).shear().xz());
        check(c, "Qx=1 N/mm: tau_xz, z=-h/4", x.points().get(3).shear().xz());
        check(c, "Qx=1 N/mm: tau_xz, z=0", x.points().get(4).shear().xz());
        check(c, "Qy=1 N/mm: tau_yz, z=-h/4", y.points().get(3).shear().yz());
        check(c, "Qy=1 N/mm: tau_yz, z=0", y.points().get(4).shear().yz());
        assertThat(y.points().get(4).plyShear().xz())
                .as("direction 1 of the 90° ply lies along y")
                .isEqualTo(y.points().get(4).shear().yz());
        assertThat(x.resultants().moment().y())
                .isCloseTo(laminate.bending().m12() / laminate.bending().m11(), within(1e-12));
    }

    /** Cooling of a cross-ply, Soden et al. 1998 lamina: equal and opposite residual stress. */
    @Test
    void coolingOfACrossPly() {
        ReferenceCase c = load("THM-02");
        Map<String, Object> m = map(c.inputs().get("material"));
        double t = c.input("t_ply_m");
        Laminate laminate = Laminate.of(numbers(c.inputs().get("plies_deg")).stream()
                .map(angle -> new Ply(lamina(m), t, angle))
                .toList());
        LaminateResponse response = laminate.responseTo(LaminateLoad.NONE.withTemperatureChange(c.input("dT_K")));
        check(c, "eps0_x", response.deformation().strain().x());
        check(c, "sigma_1 (0 deg ply)", response.points().get(0).plyStress().x());
        check(c, "sigma_2 (0 deg ply)", response.points().get(2).plyStress().y());
        check(c, "sigma_1 (90 deg ply)", response.points().get(3).plyStress().x());
        check(c, "sigma_2 (90 deg ply)", response.points().get(4).plyStress().y());
        LaminateResponse held = laminate.responseTo(LaminateLoad.NONE
                .withTemperatureChange(c.input("dT_K"))
                .with(Term.EPS_X, 0)
                .with(Term.EPS_Y, 0)
                .with(Term.GAMMA_XY, 0));
        check(c, "NT_x", -held.resultants().force().x());
    }

    private static void check(ReferenceCase c, String name, double actual) {
        c.expected().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow()
                .check(actual);
    }

    private static ReferenceCase load(String id) {
        return ReferenceCase.load("/reference/laminate-cases.json", id).get(0);
    }

    private static Laminate laminate(ReferenceCase c) {
        Lamina lamina = lamina(map(c.inputs().get("material")));
        return Laminate.of(maps(c.inputs().get("plies")).stream()
                .map(ply -> new Ply(lamina, (Double) ply.get("t_m"), (Double) ply.get("theta_deg")))
                .toList());
    }

    private static Lamina lamina(Map<String, Object> m) {
        Lamina lamina =
                Lamina.of((Double) m.get("E1"), (Double) m.get("E2"), (Double) m.get("G12"), (Double) m.get("nu12"));
        return m.containsKey("alpha1")
                ? lamina.withExpansion((Double) m.get("alpha1"), (Double) m.get("alpha2"))
                : lamina;
    }
}
