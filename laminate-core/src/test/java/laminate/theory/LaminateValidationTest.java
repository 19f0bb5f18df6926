package laminate.theory;

import static laminate.testing.ReferenceCase.byId;
import static laminate.testing.ReferenceCase.checkValue;
import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.ReferenceCase.numbers;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import laminate.testing.Printed;
import laminate.testing.ReferenceCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Lamina and laminate against the worked cases of the literature, CLT and THM, every expected number. */
class LaminateValidationTest {
    private static final List<ReferenceCase> CASES = ReferenceCase.load("/reference/laminate-cases.json", "CLT", "THM");
    private static final Map<String, Function<ReferenceCase, Answers>> SOLUTIONS = Map.of(
            "CLT-01", LaminateValidationTest::laminaAndInvariants,
            "CLT-02", LaminateValidationTest::offAxisTension,
            "CLT-03", LaminateValidationTest::loadedLaminate,
            "CLT-04", LaminateValidationTest::quasiIsotropic,
            "CLT-05", LaminateValidationTest::constantsAndExpansion,
            "CLT-06", LaminateValidationTest::unitBendingAndShear,
            "CLT-07", LaminateValidationTest::loadedLaminate,
            "THM-02", LaminateValidationTest::residualStress);

    static Stream<Arguments> expectedNumbers() {
        return Answers.toExpected(CASES, SOLUTIONS);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(ReferenceCase given, ReferenceCase.Expected expected, Answers answers) {
        expected.check(answers.get(expected.name()));
    }

    @Test
    void everyCaseOfTheGroupsIsThere() {
        assertThat(CASES).extracting(ReferenceCase::id).containsExactlyInAnyOrderElementsOf(SOLUTIONS.keySet());
        assertThat(CASES).allMatch(c -> !c.status().isBlank() && !c.source().isBlank());
        assertThat(CASES).flatExtracting(ReferenceCase::expected).hasSize(207);
    }

    /** Kaw 2006, example 4.3: stresses of [0/30/−45] under Nx = Ny = 1000 N/m at the faces and middle of each ply. */
    @ParameterizedTest
    @MethodSource("rowsOfTheThreePlyLaminate")
    void plyStressesOfTheThreePlyLaminate(int row, ReferenceCase given) {
        ReferenceCase.Table table = given.tables().get(0);
        Ply ply = laminate(given).plies().get((int) table.number(row, "ply") - 1);
        Vector3 strain = deformation(given).at(table.number(row, "z_m"));
        Vector3 stress = ply.stress(strain);
        Vector3 along = ply.angle().stressToPly(stress);
        checkValue("eps_x", strain.x(), table.number(row, "eps_x"));
        checkValue("eps_y", strain.y(), table.number(row, "eps_y"));
        checkValue("gamma_xy", strain.xy(), table.number(row, "gamma_xy"));
        checkValue("sig_x", stress.x(), table.number(row, "sig_x_Pa"));
        checkValue("sig_y", stress.y(), table.number(row, "sig_y_Pa"));
        checkValue("tau_xy", stress.xy(), table.number(row, "tau_xy_Pa"));
        checkValue("sig_1", along.x(), table.number(row, "sig_1_Pa"));
        checkValue("sig_2", along.y(), table.number(row, "sig_2_Pa"));
        checkValue("tau_12", along.xy(), table.number(row, "tau_12_Pa"));
        String remembered = (String) table.cell(row, "remembered print of sig_xy");
        if (!remembered.isEmpty()) {
            String[] figures = remembered.split(", ");
            Printed.parse(figures[0]).check("sig_x", stress.x(), 0);
            Printed.parse(figures[1]).check("sig_y", stress.y(), 0);
            Printed.parse(figures[2]).check("tau_xy", stress.xy(), 0);
        }
    }

    static Stream<Arguments> rowsOfTheThreePlyLaminate() {
        return byId(CASES, "CLT-03").rowsOfTheFirstTable();
    }

    /** Stresses at the faces of each ply of a foam sandwich with unequal skins, computed independently. */
    @ParameterizedTest
    @MethodSource("rowsOfTheSandwich")
    void plyStressesOfTheSandwich(int row, ReferenceCase given) {
        ReferenceCase.Table table = given.tables().get(0);
        Vector3 stress =
                laminate(given).plies().get(row / 2).stress(deformation(given).at(table.number(row, "z_m")));
        checkValue("sig_x", stress.x(), table.number(row, "sig_x_Pa"));
        checkValue("sig_y", stress.y(), table.number(row, "sig_y_Pa"));
    }

    static Stream<Arguments> rowsOfTheSandwich() {
        return byId(CASES, "CLT-07").rowsOfTheFirstTable();
    }

    private static Answers laminaAndInvariants(ReferenceCase c) {
        ReducedStiffness q = lamina(map(c.inputs().get("material"))).reducedStiffness();
        Matrix3 s = q.compliance();
        Invariants u = q.invariants();
        Answers answers = new Answers().put("Q", q.matrix()).put("S", s);
        answers.put("U1", u.U1())
                .put("U2", u.U2())
                .put("U3", u.U3())
                .put("U4", u.U4())
                .put("U5", u.U5());
        answers.put("Qbar(30deg)_", q.rotatedBy(30).matrix());
        answers.put("Qbar(-45deg)_", q.rotatedBy(-45).matrix());
        Matrix3 turned = q.rotatedBy(60).compliance();
        answers.put("Sbar(60deg)_", turned);
        Vector3 stress = vector(c.inputs().get("stress_xy_Pa"));
        Vector3 strain = turned.times(stress);
        Angle sixty = Angle.ofDegrees(60);
        answers.put("eps_x", "eps_y", "gamma_xy", strain);
        answers.put("eps_1", "eps_2", "gamma_12", sixty.strainToPly(strain));
        answers.put("sigma_1", "sigma_2", "tau_12", sixty.stressToPly(stress));
        EngineeringConstants constants = EngineeringConstants.of(turned);
        return answers.put("Ex(60deg)", constants.Ex())
                .put("Ey(60deg)", constants.Ey())
                .put("Gxy(60deg)", constants.Gxy())
                .put("nu_xy(60deg)", constants.nuxy());
    }

    private static Answers offAxisTension(ReferenceCase c) {
        Angle angle = Angle.ofDegrees(c.input("theta_deg"));
        Vector3 stress = vector(c.inputs().get("stress_xy_Pa"));
        Vector3 strain = lamina(map(c.inputs().get("material")))
                .reducedStiffness()
                .rotatedBy(angle)
                .compliance()
                .times(stress);
        return new Answers()
                .put("eps_x", "eps_y", "gamma_xy", strain)
                .put("u_y at (1,1) = eps_y+gamma_xy", strain.y() + strain.xy())
                .put("sigma_1", "sigma_2", "tau_12", angle.stressToPly(stress));
    }

    private static Answers loadedLaminate(ReferenceCase c) {
        Laminate laminate = laminate(c);
        Compliance inverse = laminate.compliance();
        Deformation deformation = deformation(c);
        return stiffness("", laminate)
                .put("A*", inverse.a())
                .put("B*", inverse.b())
                .put("D*", inverse.d())
                .put("eps0_x", "eps0_y", "gamma0_xy", deformation.strain())
                .put("kappa_x", "kappa_y", "kappa_xy", deformation.curvature());
    }

    private static Answers quasiIsotropic(ReferenceCase c) {
        Lamina lamina = lamina(map(c.inputs().get("material")));
        List<Map<String, Object>> given = maps(c.inputs().get("laminates"));
        Laminate three = stack(lamina, given.get(0));
        Laminate eight = stack(lamina, given.get(1));
        Answers answers = stiffness("[0/60/-60]_", three);
        stiffness(answers, "[0/45/-45/90]s_", eight);
        constants(answers, three.inPlaneRestrained(), "");
        constants(answers, eight.inPlane(), " [0/45/-45/90]s");
        Matrix3 perThickness = eight.membrane().times(1 / eight.thickness());
        return answers.put("A11/h [0/45/-45/90]s", perThickness.m11())
                .put("A12/h", perThickness.m12())
                .put("A66/h", perThickness.m66());
    }

    private static void constants(Answers answers, EngineeringConstants constants, String suffix) {
        answers.put("Ex" + suffix, constants.Ex());
        answers.put("nu_xy" + suffix, constants.nuxy());
        answers.put("Gxy" + suffix, constants.Gxy());
    }

    private static Laminate stack(Lamina lamina, Map<String, Object> given) {
        double t = (Double) given.get("t_ply_m");
        return Laminate.of(numbers(given.get("plies_deg")).stream()
                .map(angle -> new Ply(lamina, t, angle))
                .toList());
    }

    private static Answers constantsAndExpansion(ReferenceCase c) {
        Laminate laminate = laminate(c);
        EngineeringConstants inPlane = laminate.inPlane();
        EngineeringConstants flexural = laminate.flexural();
        Vector3 alpha = laminate.thermalExpansion().orElseThrow().strain();
        Vector3 beta = laminate.moistureExpansion().orElseThrow().strain();
        Answers answers = new Answers();
        constants(answers, inPlane, "");
        return answers.put("Ey", inPlane.Ey())
                .put("nu_yx", inPlane.nuyx())
                .put("Ex_flex", flexural.Ex())
                .put("Ey_flex", flexural.Ey())
                .put("Gxy_flex", flexural.Gxy())
                .put("nu_xy_flex", flexural.nuxy())
                .put("nu_yx_flex", flexural.nuyx())
                .put("alpha_x", alpha.x())
                .put("alpha_y", alpha.y())
                .put("beta_x", beta.x())
                .put("beta_y", beta.y());
    }

    /** Cylindrical bending: the other curvature is held at zero, so κx = Mx/D11. */
    private static Answers unitBendingAndShear(ReferenceCase c) {
        Laminate laminate = laminate(c);
        double half = laminate.thickness() / 2;
        Matrix3 d = laminate.bending();
        Deformation alongX = new Deformation(Vector3.ZERO, new Vector3(1 / d.m11(), 0, 0));
        Deformation alongY = new Deformation(Vector3.ZERO, new Vector3(0, 1 / d.m22(), 0));
        Ply outer = laminate.plies().get(0);
        Ply inner = laminate.plies().get(1);
        return stiffness("", laminate)
                .put(
                        "Mx=1 N: sig_x, z=-h/2 (ply 1)",
                        outer.stress(alongX.at(-half)).x())
                .put(
                        "Mx=1 N: sig_x, z=-h/4 in ply 2",
                        inner.stress(alongX.at(-half / 2)).x())
                .put(
                        "My=1 N: sig_y, z=-h/2 (ply 1)",
                        outer.stress(alongY.at(-half)).y())
                .put(
                        "My=1 N: sig_y, z=-h/4 in ply 2",
                        inner.stress(alongY.at(-half / 2)).y())
                .put("Qx=1 N/mm: tau_xz, z=-h/4", EquilibriumShear.alongX(laminate, 1000, -half / 2))
                .put("Qx=1 N/mm: tau_xz, z=0", EquilibriumShear.alongX(laminate, 1000, 0))
                .put("Qy=1 N/mm: tau_yz, z=-h/4", EquilibriumShear.alongY(laminate, 1000, -half / 2))
                .put("Qy=1 N/mm: tau_yz, z=0", EquilibriumShear.alongY(laminate, 1000, 0));
    }

    private static Answers residualStress(ReferenceCase c) {
        Lamina lamina = lamina(map(c.inputs().get("material")));
        Laminate laminate = stack(lamina, c.inputs());
        double dT = c.input("dT_K");
        Vector3 alpha = laminate.thermalExpansion().orElseThrow().strain();
        Vector3 zero = residual(laminate.plies().get(0), alpha, dT);
        Vector3 ninety = residual(laminate.plies().get(1), alpha, dT);
        ReducedStiffness q = lamina.reducedStiffness();
        Expansion free = lamina.thermalExpansion().orElseThrow();
        double closedForm = (q.Q11() * q.Q22() - q.Q12() * q.Q12())
                * (free.across() - free.along())
                * Math.abs(dT)
                / (q.Q11() + q.Q22() + 2 * q.Q12());
        checkValue("alpha_y", alpha.y(), alpha.x());
        return new Answers()
                .put("NT_x", laminate.thermalResultants().orElseThrow().force().x() * dT)
                .put("eps0_x", alpha.x() * dT)
                .put("laminate alpha_x=alpha_y", alpha.x())
                .put("sigma_1 (0 deg ply)", zero.x())
                .put("sigma_2 (0 deg ply)", zero.y())
                .put("sigma_1 (90 deg ply)", ninety.x())
                .put("sigma_2 (90 deg ply)", ninety.y())
                .put("closed form sigma_2 = (Q11 Q22-Q12^2)(a2-a1)|dT|/(Q11+Q22+2 Q12)", closedForm);
    }

    private static Vector3 residual(Ply ply, Vector3 alpha, double dT) {
        Vector3 mechanical = alpha.minus(ply.thermalExpansion().orElseThrow()).times(dT);
        return ply.angle().stressToPly(ply.stress(mechanical));
    }

    private static Answers stiffness(String suffix, Laminate laminate) {
        return stiffness(new Answers(), suffix, laminate);
    }

    private static Answers stiffness(Answers answers, String suffix, Laminate laminate) {
        return answers.put("A" + suffix, laminate.membrane())
                .put("B" + suffix, laminate.coupling())
                .put("D" + suffix, laminate.bending());
    }

    private static Deformation deformation(ReferenceCase c) {
        return laminate(c)
                .deformationUnder(new Resultants(
                        vector(c.inputs().get("N_N_per_m")), vector(c.inputs().get("M_N"))));
    }

    private static Laminate laminate(ReferenceCase c) {
        List<Ply> plies = new ArrayList<>();
        for (Map<String, Object> ply : maps(c.inputs().get("plies"))) {
            Object material = ply.containsKey("material")
                    ? map(c.inputs().get("materials")).get((String) ply.get("material"))
                    : c.inputs().get("material");
            plies.add(new Ply(lamina(map(material)), (Double) ply.get("t_m"), (Double) ply.get("theta_deg")));
        }
        return Laminate.of(plies);
    }

    private static Lamina lamina(Map<String, Object> m) {
        Lamina lamina =
                Lamina.of((Double) m.get("E1"), (Double) m.get("E2"), (Double) m.get("G12"), (Double) m.get("nu12"));
        if (m.containsKey("alpha1")) {
            lamina = lamina.withExpansion((Double) m.get("alpha1"), (Double) m.get("alpha2"));
        }
        if (m.containsKey("beta1")) {
            lamina = lamina.withMoistureExpansion((Double) m.get("beta1"), (Double) m.get("beta2"));
        }
        return lamina;
    }

    private static Vector3 vector(Object json) {
        List<Double> v = numbers(json);
        return new Vector3(v.get(0), v.get(1), v.get(2));
    }
}
