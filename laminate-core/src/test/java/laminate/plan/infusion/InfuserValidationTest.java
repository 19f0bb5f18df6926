package laminate.plan.infusion;

import static laminate.plan.infusion.Plans.given;
import static laminate.plan.infusion.Plans.infused;
import static laminate.plan.infusion.Plans.preform;
import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.ReferenceCase.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import laminate.material.Property;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.part.infusion.ResinViscosity;
import laminate.part.infusion.StripTest;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.flow.Drive;
import laminate.process.flow.FlowMesh;
import laminate.testing.Json;
import laminate.testing.TestMaterials;
import laminate.testing.TestParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The flow cases, worked by quadrature, step-by-step integration and simulation, all the way through a part's plan. */
class InfuserValidationTest {
    /** Values of the file carry 8 digits at most. */
    private static final double EIGHT_DIGITS = 5e-8;

    /** The inputs of a case. */
    private record In(Map<String, Object> map) {
        double n(String name) {
            return (Double) map.get(name);
        }

        double n(String name, int i) {
            return numbers(map.get(name)).get(i);
        }

        InfusionPlan plan(InfusionPath path, Preform preform) {
            return InfusionPlan.of(path, n("dP"), preform).withViscosity(ResinViscosity.constant(n("mu")));
        }
    }

    private static Map<String, Double> answers(String id, In in) {
        return switch (id) {
            case "flow-1d", "flow-1d-half" -> Map.of("t_s", time(line(in, "L")));
            case "k-from-strip" -> Map.of("K", ofStrip(in));
            case "flow-1d-gravity" -> Map.of("t_s", straightUp(in));
            case "flow-1d-rising-viscosity" -> risingViscosity(in);
            case "flow-radial" -> Map.of("t_s", time(in.plan(centre(in, "R"), bed(in, "K"))));
            case "flow-radial-aniso" ->
                Map.of("t_s", time(in.plan(centre(in, "a"), Plans.withAcross(bed(in, "K1"), in.n("K2")))));
            case "flow-through-thickness" -> Map.of("t_s", throughThickness(in));
            case "flow-keff" -> uniform(in);
            case "flow-mesh-lag", "flow-mesh-lag-c" -> underMesh(in);
            case "flow-compaction-woven", "flow-compaction-mat" -> softBag(in);
            case "hose-poiseuille" -> Map.of("Q_m3s", throughHose(in));
            case "kozeny-scale" -> Map.of("K2", scaled(in));
            default -> Map.of();
        };
    }

    private static double time(InfusionPlan plan) {
        return infused(plan, given(0.004)).fill().time().orElseThrow();
    }

    private static Preform bed(In in, String permeability) {
        return preform(in.n(permeability)).withPorosity(in.n("phi"));
    }

    private static InfusionPlan line(In in, String length) {
        return in.plan(InfusionPath.line(in.n(length)), bed(in, "K"));
    }

    private static InfusionPath centre(In in, String radius) {
        return InfusionPath.centre(in.n("r0"), in.n(radius) - in.n("r0"));
    }

    private static double ofStrip(In in) {
        Preform tested = Preform.of(new PermeabilitySource.Tested(StripTest.of(in.n("L"), in.n("t"))))
                .withPorosity(in.n("phi"));
        Infusion infusion = infused(in.plan(InfusionPath.line(1), tested), given(0.004));
        return infusion.figures().permeability().value();
    }

    /** Density and gravity count as a product; the case rounds gravity to 9.81 m/s². */
    private static double straightUp(In in) {
        double density = in.n("rho") * in.n("g") / Drive.GRAVITY;
        LayUp layUp = TestParts.layUp(
                Process.INFUSION, TestMaterials.with(TestMaterials.VINYLESTER, Property.DENSITY_LIQUID, density));
        InfusionPath up = new InfusionPath(FeedKind.LINE, in.n("L"), OptionalDouble.empty(), in.n("L"));
        return infused(in.plan(up, preform(in.n("K"))), Plans.roving(layUp))
                .fill()
                .time()
                .orElseThrow();
    }

    private static Map<String, Double> risingViscosity(In in) {
        InfusionPlan plan = InfusionPlan.of(InfusionPath.line(in.n("L")), in.n("dP"), bed(in, "K"));
        InfusionPlan rising = plan.withViscosity(Plans.rising(in.n("mu0"), in.n("tau")));
        return Map.of(
                "t0_s",
                time(plan.withViscosity(ResinViscosity.constant(in.n("mu0")))),
                "t_s",
                time(rising),
                "L_max_m",
                greatestLength(rising));
    }

    /** Found from outside, as the length between one that fills and one that never does. */
    private static double greatestLength(InfusionPlan rising) {
        double fills = 0.5;
        double never = 5;
        while (never - fills > 1e-9) {
            double length = (fills + never) / 2;
            InfusionPlan tried = Plans.with(rising, InfusionPath.line(length));
            if (infused(tried, given(0.004)).fill().time().isPresent()) {
                fills = length;
            } else {
                never = length;
            }
        }
        return fills;
    }

    private static double throughThickness(In in) {
        InfusionPlan plan = in.plan(InfusionPath.line(1), bed(in, "Kz").withThroughPermeability(in.n("Kz")));
        return infused(plan, given(in.n("h"))).fill().throughTime().orElseThrow();
    }

    private static Map<String, Double> uniform(In in) {
        InfusionPlan plan = in.plan(
                        InfusionPath.line(in.n("L")), preform(in.n("K", 1)).withPorosity(in.n("phi", 1)))
                .withMesh(new FlowMesh(in.n("h", 0), in.n("K", 0), in.n("phi", 0)));
        Infusion infusion = infused(plan, given(in.n("h", 1)));
        return Map.of(
                "Keff", infusion.figures().effectivePermeability(),
                "phieff", infusion.figures().effectivePorosity(),
                "t_s", infusion.fill().time().orElseThrow());
    }

    private static Map<String, Double> underMesh(In in) {
        Preform bed = preform(in.n("Kx")).withPorosity(in.n("phi2")).withThroughPermeability(in.n("Kz"));
        InfusionPlan plan = in.plan(InfusionPath.line(in.n("L")), bed)
                .withMesh(new FlowMesh(in.n("h1"), in.n("K_mesh"), in.n("phi1")));
        Fill fill = infused(plan, given(in.n("h2"))).fill();
        return Map.of(
                "lag_m", fill.lag().orElseThrow(),
                "t_d_s", fill.throughTime().orElseThrow(),
                "t_mesh_front_s", fill.meshTime().orElseThrow(),
                "t_uniform_fill_s", fill.time().orElseThrow());
    }

    private static Map<String, Double> softBag(In in) {
        double fibre = in.n("V1");
        double permeability = in.n("c") * Math.pow(1 - fibre, 3) / (fibre * fibre);
        Preform rigid = preform(permeability).withPorosity(1 - fibre);
        Preform soft = Plans.with(rigid, new BedCompaction(in.n("b"), OptionalDouble.of(in.n("s0"))));
        InfusionPlan plan = InfusionPlan.of(InfusionPath.line(in.n("L")), in.n("Pa"), soft)
                .withViscosity(ResinViscosity.constant(in.n("mu")));
        double time = time(plan);
        double timeRigid = time(Plans.with(plan, rigid));
        return Map.of("t_s", time, "t_rigid_s", timeRigid, "ratio", time / timeRigid);
    }

    /** Flow in proportion to the pressure lost. */
    private static double throughHose(In in) {
        InfusionPlan plan = Plans.metre()
                .withViscosity(ResinViscosity.constant(in.n("mu")))
                .withLines(Plans.hose(in.n("d"), in.n("L")));
        HoseLoss hose = infused(plan, Plans.roving()).hose().orElseThrow();
        return hose.flow() / hose.pressure() * in.n("dP");
    }

    private static double scaled(In in) {
        PermeabilitySource measured = new PermeabilitySource.Given(in.n("K1"), OptionalDouble.of(in.n("V1")));
        Preform bed = Preform.of(measured).withPorosity(1 - in.n("V2"));
        InfusionPlan plan =
                InfusionPlan.of(InfusionPath.line(1), Plans.PRESSURE, bed).withViscosity(ResinViscosity.constant(0.2));
        return infused(plan, given(0.004)).figures().permeability().value();
    }

    static Stream<Arguments> cases() {
        List<Map<String, Object>> cases =
                maps(Json.resource("/reference/flow-cases.json").get("cases"));
        return cases.stream()
                .filter(each -> !answers((String) each.get("id"), new In(map(each.get("inputs"))))
                        .isEmpty())
                .map(each -> Arguments.of(each.get("id"), each));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aPlanComesToWhatTheCaseSays(String id, Map<String, Object> reference) {
        Map<String, Double> answers = answers(id, new In(map(reference.get("inputs"))));
        double tolerance = Math.max(EIGHT_DIGITS, (Double) reference.get("rel_tol"));
        Map<String, Object> expected = map(reference.get("expected"));
        for (Map.Entry<String, Double> answer : answers.entrySet()) {
            double value = (Double) expected.get(answer.getKey());
            assertThat(answer.getValue()).as(answer.getKey()).isCloseTo(value, within(tolerance * Math.abs(value)));
        }
    }

    @Test
    void everyFlowCaseIsAnswered() {
        assertThat(cases().map(each -> (String) each.get()[0]))
                .contains(
                        "flow-1d",
                        "flow-1d-half",
                        "k-from-strip",
                        "flow-1d-gravity",
                        "flow-1d-rising-viscosity",
                        "flow-radial",
                        "flow-radial-aniso",
                        "flow-through-thickness",
                        "flow-keff",
                        "flow-mesh-lag",
                        "flow-mesh-lag-c",
                        "flow-compaction-woven",
                        "flow-compaction-mat",
                        "hose-poiseuille",
                        "kozeny-scale");
    }

    /** A metre at 950 mbar, 50 % porosity, 0.2 Pa·s and 1e-10 m²: 5263.16 s, with the porosity from the layers. */
    @Test
    void aMetreOfWovenRovingFillsInEightyEightMinutes() {
        Infusion infusion = infused(Plans.metre(), Plans.roving());
        assertThat(infusion.fill().time().orElseThrow()).isCloseTo(5263.1579, within(1e-4));
        assertThat(infusion.figures().porosity().source()).contains("layers");
    }

    /** A mesh of 1 mm, 3e-9 m² and 85 % on 4 mm: 6.8e-10 m², 882.35 s and a lag of 129 mm. */
    @Test
    void aMeshOnFourMillimetresFillsSixTimesAsFast() {
        InfusionPlan plan = Plans.with(
                        Plans.metre(), preform(1e-10).withPorosity(0.5).withThroughPermeability(1e-12))
                .withViscosity(ResinViscosity.constant(0.2))
                .withMesh(new FlowMesh(0.001, 3e-9, 0.85));
        Infusion infusion = infused(plan, given(0.004));
        assertThat(infusion.figures().effectivePermeability()).isCloseTo(6.8e-10, within(1e-18));
        assertThat(infusion.fill().time().orElseThrow()).isCloseTo(882.35294, within(1e-5));
        assertThat(infusion.fill().lag().orElseThrow()).isCloseTo(0.12912284, within(1e-8));
    }
}
