package laminate.process.flow;

import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.ReferenceCase.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import laminate.testing.Json;
import laminate.theory.Mixture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Flow, compaction and permeability against cases worked by quadrature, step-by-step integration and simulation. */
class FlowValidationTest {
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
    }

    private static Map<String, Double> answers(String id, In in) {
        return switch (id) {
            case "flow-1d", "flow-1d-half" ->
                Map.of("t_s", Darcy.lineTime(in.n("phi"), in.n("mu"), in.n("L"), in.n("K"), in.n("dP")));
            case "k-from-strip" ->
                Map.of("K", Darcy.stripPermeability(in.n("phi"), in.n("mu"), in.n("L"), in.n("dP"), in.n("t")));
            case "flow-1d-gravity" -> Map.of("t_s", straightUp(in));
            case "flow-1d-rising-viscosity" -> risingViscosity(in);
            case "flow-radial" ->
                Map.of("t_s", Darcy.centreTime(in.n("phi"), in.n("mu"), in.n("R"), in.n("r0"), in.n("K"), in.n("dP")));
            case "flow-radial-aniso" -> anisotropic(in);
            case "flow-through-thickness" ->
                Map.of("t_s", Darcy.throughThicknessTime(in.n("phi"), in.n("mu"), in.n("h"), in.n("Kz"), in.n("dP")));
            case "flow-keff" -> uniform(in);
            case "flow-mesh-lag", "flow-mesh-lag-c" -> underMesh(in);
            case "flow-compaction-woven", "flow-compaction-mat" -> softBag(in);
            case "hose-poiseuille" -> Map.of("Q_m3s", Hose.flowRate(in.n("d"), in.n("L"), in.n("mu"), in.n("dP")));
            case "gebart" -> gebart(in);
            case "kozeny-scale" -> Map.of("K2", Permeability.scaled(in.n("K1"), in.n("V1"), in.n("V2")));
            case "compaction-power" -> compaction(in);
            case "compaction-b-from-two" ->
                Map.of("b", Compaction.exponent(in.n("V1"), in.n("P1"), in.n("V2"), in.n("P2")));
            case "cv-K-from-Vf" ->
                Map.of(
                        "sens",
                        Permeability.sensitivity(in.n("V")),
                        "cv_K",
                        Permeability.variation(in.n("V"), in.n("cv_V")));
            default -> Map.of();
        };
    }

    private static double straightUp(In in) {
        double gamma = in.n("rho") * in.n("g");
        return Darcy.riseTime(in.n("phi"), in.n("mu"), in.n("L"), in.n("K"), in.n("dP"), gamma)
                .orElseThrow();
    }

    private static Map<String, Double> risingViscosity(In in) {
        double t0 = Darcy.lineTime(in.n("phi"), in.n("mu0"), in.n("L"), in.n("K"), in.n("dP"));
        return Map.of(
                "t0_s", t0,
                "t_s", Darcy.risingViscosityTime(t0, in.n("tau")).orElseThrow(),
                "L_max_m", Darcy.greatestLineLength(in.n("phi"), in.n("mu0"), in.n("tau"), in.n("K"), in.n("dP")));
    }

    private static Map<String, Double> anisotropic(In in) {
        Anisotropy bed = new Anisotropy(in.n("K1"), in.n("K2"));
        double R = bed.equivalentRadius(in.n("a"));
        return Map.of(
                "Ke", bed.effective(),
                "R_equiv", R,
                "b", bed.axisAcross(in.n("a")),
                "t_s", Darcy.centreTime(in.n("phi"), in.n("mu"), R, in.n("r0"), bed.effective(), in.n("dP")));
    }

    private static Map<String, Double> uniform(In in) {
        FlowMesh mesh = new FlowMesh(in.n("h", 0), in.n("K", 0), in.n("phi", 0));
        FlowSegment both =
                new MeshedLaminate(mesh, in.n("h", 1), in.n("K", 1), 1e-12, in.n("phi", 1)).segment(in.n("L"));
        return Map.of(
                "Keff", both.permeability(),
                "phieff", both.porosity(),
                "t_s", Darcy.seriesTime(List.of(both), in.n("mu"), in.n("dP")));
    }

    private static Map<String, Double> underMesh(In in) {
        MeshedLaminate stack = meshed(in);
        return Map.of(
                "lag_m", stack.lag(),
                "t_d_s", Darcy.throughThicknessTime(in.n("phi2"), in.n("mu"), in.n("h2"), in.n("Kz"), in.n("dP")),
                "t_mesh_front_s", stack.meshFrontTime(in.n("L"), in.n("mu"), in.n("dP")),
                "t_uniform_fill_s", Darcy.seriesTime(List.of(stack.segment(in.n("L"))), in.n("mu"), in.n("dP")));
    }

    private static MeshedLaminate meshed(In in) {
        FlowMesh mesh = new FlowMesh(in.n("h1"), in.n("K_mesh"), in.n("phi1"));
        return new MeshedLaminate(mesh, in.n("h2"), in.n("Kx"), in.n("Kz"), in.n("phi2"));
    }

    private static Map<String, Double> softBag(In in) {
        double V1 = in.n("V1");
        double K1 = in.n("c") * Math.pow(1 - V1, 3) / (V1 * V1);
        SoftBag bed = new SoftBag(V1, in.n("b"), in.n("s0"), K1, 0.003, Optional.empty());
        RisingViscosity mu = RisingViscosity.constant(in.n("mu"));
        double Pa = in.n("Pa");
        return Map.of(
                "t_s", Filling.softBag(bed, in.n("L"), Pa, mu).fillTime().orElseThrow(),
                "t_rigid_s", Darcy.seriesTime(List.of(bed.rigid(in.n("L"))), in.n("mu"), Pa),
                "ratio", bed.shareOfRigidTime(Pa));
    }

    private static Map<String, Double> gebart(In in) {
        return Map.of(
                "K_par_quad", Gebart.SQUARE.along(in.n("R"), in.n("V")),
                "K_par_hex", Gebart.HEXAGONAL.along(in.n("R"), in.n("V")),
                "K_perp_quad", Gebart.SQUARE.across(in.n("R"), in.n("V")),
                "K_perp_hex", Gebart.HEXAGONAL.across(in.n("R"), in.n("V")));
    }

    private static Map<String, Double> compaction(In in) {
        double V = new Compaction(in.n("V_ref"), in.n("P_ref"), in.n("b")).at(in.n("P"));
        return Map.of("Vf", V, "h_m", Mixture.thickness(in.n("n") * in.n("w"), V, in.n("rho_f")));
    }

    static Stream<Arguments> expectedNumbers() {
        return cases().stream().flatMap(c -> {
            String id = (String) c.get("id");
            Map<String, Double> answers = answers(id, new In(map(c.get("inputs"))));
            assertThat(answers.keySet()).as(id).isEqualTo(map(c.get("expected")).keySet());
            return map(c.get("expected")).entrySet().stream()
                    .map(e -> Arguments.of(
                            id + " " + e.getKey(), e.getValue(), answers.get(e.getKey()), c.get("rel_tol")));
        });
    }

    private static List<Map<String, Object>> cases() {
        return maps(Json.resource("/reference/flow-cases.json").get("cases"));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(String name, double expected, double actual, double tolerance) {
        assertThat(actual / expected).isCloseTo(1, within(Math.max(tolerance, EIGHT_DIGITS)));
    }

    @Test
    void everyCaseIsThere() {
        assertThat(cases()).hasSize(19);
        assertThat(expectedNumbers()).hasSize(41);
    }

    /** Two stacks under mesh in a control-volume simulation of 200 by 16 cells: front of the mesh, full, lag. */
    @ParameterizedTest
    @CsvSource({"flow-mesh-lag, 806, 889, 0.105, 0.25", "flow-mesh-lag-c, 3142, 3840, 0.360, 0.14"})
    void meshAgreesWithTheSimulation(String id, double meshFront, double full, double lag, double mostAbove) {
        Map<String, Object> given =
                cases().stream().filter(c -> c.get("id").equals(id)).findFirst().orElseThrow();
        In in = new In(map(given.get("inputs")));
        MeshedLaminate stack = meshed(in);
        assertThat(stack.meshFrontTime(in.n("L"), in.n("mu"), in.n("dP")) / meshFront)
                .isCloseTo(1, within(0.015));
        assertThat(Darcy.seriesTime(List.of(stack.segment(in.n("L"))), in.n("mu"), in.n("dP")) / full)
                .isCloseTo(1, within(0.016));
        assertThat(stack.lag() / lag).isBetween(1.0, 1 + mostAbove);
    }

    /** The moving-grid simulation of the soft woven bed; it differs from the similarity solution by its grid. */
    @Test
    void softBagAgreesWithTheMovingGrid() {
        SoftBag woven = new SoftBag(0.5, 0.07, 2000, 1e-10, 0.003, Optional.empty());
        Filling filling = Filling.softBag(woven, 1, 95e3, RisingViscosity.constant(0.2));
        assertThat(filling.fillTime().orElseThrow() / 3776.9).isCloseTo(1, within(1e-3));
    }

    /** More rests on the fibres at the feed: s0 = 10 kPa gives 0.77 of the rigid time for the woven, 0.58 for the mat. */
    @ParameterizedTest
    @CsvSource({"0.50, 0.07, 0.77", "0.28, 0.20, 0.58"})
    void aGreaterLeastPressureSlowsTheFilling(double V1, double b, double share) {
        SoftBag bed = new SoftBag(V1, b, 10e3, 1e-10, 0.003, Optional.empty());
        assertThat(bed.shareOfRigidTime(95e3)).isCloseTo(share, within(0.005));
    }

    /** Half a metre at 1e-9 m², then half a metre at 1e-10 m²: 1789 s. */
    @Test
    void bedsInSeries() {
        List<FlowSegment> beds = List.of(new FlowSegment(0.5, 1e-9, 0.8), new FlowSegment(0.5, 1e-10, 0.5));
        assertThat(Darcy.seriesTime(beds, 0.2, 95e3)).isCloseTo(1789, within(0.5));
    }

    /** A disc fills some 6.8 times as fast from its rim as from its centre: 656 s against 4490 s. */
    @Test
    void rimFeed() {
        double rim = Darcy.rimTime(0.5, 0.2, 0.5, 0.01, 1e-10, 95e3);
        assertThat(rim).isCloseTo(656, within(0.5));
        assertThat(Darcy.centreTime(0.5, 0.2, 0.5, 0.01, 1e-10, 95e3) / rim).isCloseTo(6.8, within(0.05));
    }
}
