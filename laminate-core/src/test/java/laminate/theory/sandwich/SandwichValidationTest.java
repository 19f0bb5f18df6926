package laminate.theory.sandwich;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.testing.ReferenceCase;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.beam.Beam;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.BeamSection;
import laminate.theory.beam.Deflection;
import laminate.theory.beam.Strip;
import laminate.theory.beam.StripWidth;
import laminate.theory.beam.Supports;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Sandwich beams and local failures against the worked cases, and against the models their formulas come from. */
class SandwichValidationTest {
    private static final Map<String, Function<ReferenceCase, Map<String, Double>>> SOLUTIONS =
            Map.of("SAN-03", SandwichValidationTest::beam, "SAN-04", SandwichValidationTest::localFailure);
    private static final List<ReferenceCase> CASES = ReferenceCase.load(
            "/reference/laminate-cases.json", SOLUTIONS.keySet().toArray(String[]::new));

    static Stream<Arguments> expectedNumbers() {
        return CASES.stream().flatMap(c -> {
            Map<String, Double> answers = SOLUTIONS.get(c.id()).apply(c);
            return c.expected().stream().map(e -> Arguments.of(c, e, answers));
        });
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(ReferenceCase given, ReferenceCase.Expected expected, Map<String, Double> answers) {
        assertThat(answers).containsKey(expected.name());
        expected.check(answers.get(expected.name()));
    }

    @Test
    void everyNumberOfBothCasesIsThere() {
        assertThat(CASES).flatExtracting(ReferenceCase::expected).hasSize(23);
    }

    private static Map<String, Double> beam(ReferenceCase c) {
        double b = c.input("b_m");
        double t = c.input("tf_m");
        double core = c.input("tc_m");
        double Ef = c.input("Ef_Pa");
        double P = c.input("P_total_N");
        double L = c.input("L_m");
        BendingParts.Layer face = new BendingParts.Layer(Ef, t);
        BendingParts D = BendingParts.of(b, face, new BendingParts.Layer(c.input("Ec_Pa"), core), face);
        double S = SandwichFormulas.shearStiffness(b, c.input("Gc_Pa"), core + t, core);
        Beam beam = new Beam(BeamSection.of(D.total(), S), L, Supports.SIMPLY_SUPPORTED);
        BeamResponse three = beam.under(BeamLoad.threePoint(P, L));
        double M = three.largestMoment().value();
        double V = three.largestShearForce().value();
        double half = core / 2 + t;
        Map<String, Double> answers = new HashMap<>();
        answers.put("D face own axis", D.facesOwnAxis());
        answers.put("D face Steiner", D.facesSteiner());
        answers.put("D core", D.core());
        answers.put("D total", D.total());
        answers.put("shear stiffness b Gc d^2/c", S);
        Deflection w3 = three.largestDeflection();
        answers.put("3-point: bending deflection P L^3/48D", w3.bending());
        answers.put("3-point: shear deflection P L/4S", w3.shear());
        answers.put("3-point: total", w3.total());
        answers.put("3-point: face stress M/(b tf d)", SandwichFormulas.faceStress(M, b, t, core + t));
        answers.put("3-point: outer-fibre stress M Ef z/D", SandwichFormulas.stressAtHeight(M, Ef, half, D.total()));
        answers.put("3-point: core shear V/(b d) = P/((h+c) b)", SandwichFormulas.coreShear(V, b, core + t));
        BeamResponse quarter = beam.under(BeamLoad.fourPoint(P, L, L / 2));
        Deflection w4 = quarter.deflectionAt(L / 2);
        answers.put("4-point quarter-span loads: bending 11 P L^3/768D", w4.bending());
        answers.put("4-point quarter: shear P L/8S", w4.shear());
        answers.put(
                "4-point quarter: face stress", SandwichFormulas.faceStress(quarter.momentAt(L / 2), b, t, core + t));
        Deflection third = beam.under(BeamLoad.fourPoint(P, L, L / 3)).deflectionAt(L / 2);
        answers.put("4-point third-span: bending 23 P L^3/1296D", third.bending());
        answers.put("4-point third-span: shear P L/6S", third.shear());
        Deflection uniform = beam.under(BeamLoad.uniform(2000)).largestDeflection();
        answers.put("uniform 2000 N/m: bending 5 w L^4/384D", uniform.bending());
        answers.put("uniform 2000 N/m: shear w L^2/8S", uniform.shear());
        return answers;
    }

    private static Map<String, Double> localFailure(ReferenceCase c) {
        double Ef = c.input("Ef_Pa");
        double Ec = c.input("Ec_Pa");
        double Gc = c.input("Gc_Pa");
        double t = c.input("tf_m");
        double core = c.input("tc_m");
        return Map.of(
                "wrinkling 0.5 (Ef Ec Gc)^(1/3)",
                Wrinkling.DESIGN.stress(Ef, Ec, Gc),
                "wrinkling 0.91 (Ef Ec Gc)^(1/3) (theory, antisymmetric, thick core)",
                Wrinkling.THEORY.stress(Ef, Ec, Gc),
                "shear crimping load Gc d^2/c",
                SandwichFormulas.crimpingLoad(Gc, core + t, core),
                "shear crimping face stress Gc d^2/(2 tf c)",
                SandwichFormulas.crimpingStress(Gc, core + t, core, 2 * t),
                "dimpling 2 Ef/(1-nu^2) (tf/s)^2: Ef=70e9, nu=0.3, tf=0.5 mm, s=10 mm",
                SandwichFormulas.dimplingStress(70e9, 0.09, 0.0005, 0.01));
    }

    /** The standard's forms of the stresses of SAN-03: h + c = 2 d, so both forms are one. */
    @Test
    void theStandardsFormsAreTheSame() {
        ReferenceCase c = CASES.get(0);
        double b = c.input("b_m");
        double L = c.input("L_m");
        double P = c.input("P_total_N");
        assertThat(AstmC393.MID_SPAN.faceStress(P, L, b, 0.002, 0.02)).isCloseTo(28_409_090, within(10.0));
        assertThat(AstmC393.QUARTER_POINT.faceStress(P, L, b, 0.002, 0.02)).isCloseTo(14_204_550, within(10.0));
        Beam beam = new Beam(BeamSection.rigidInShear(1), L, Supports.SIMPLY_SUPPORTED);
        double third =
                beam.under(BeamLoad.fourPoint(P, L, L / 3)).largestMoment().value();
        assertThat(AstmC393.THIRD_POINT.faceStress(P, L, b, 0.002, 0.02))
                .isCloseTo(SandwichFormulas.faceStress(third, b, 0.002, 0.022), within(1e-3));
        assertThat(AstmC393.coreShear(P, b, 0.002, 0.02)).isCloseTo(227_272.7, within(0.05));
    }

    /**
     * The laminate of SAN-03, Poisson ratios zero: its narrow strip has D exactly, its energy-based shear stiffness is
     * within 1 % of the board's b Gc d²/c, and so is the three-point deflection.
     */
    @Test
    void laminateTheoryGivesTheSameBeam() {
        Lamina face = Lamina.of(20e9, 20e9, 10e9, 0).withTransverseShear(10e9, 10e9);
        Lamina foam = Lamina.of(75e6, 75e6, 28e6, 0).withTransverseShear(28e6, 28e6);
        Laminate laminate =
                Laminate.of(List.of(new Ply(face, 0.002, 0), new Ply(foam, 0.02, 0), new Ply(face, 0.002, 0)));
        BeamSection section = new Strip(laminate, 0.05, StripWidth.NARROW).section();
        assertThat(section.bendingStiffness()).isCloseTo(487.8333, within(5e-5));
        assertThat(section.shearStiffness().orElseThrow()).isCloseTo(33_880, within(0.01 * 33_880));
        double w = new Beam(section, 0.5, Supports.SIMPLY_SUPPORTED)
                .under(BeamLoad.threePoint(500, 0.5))
                .largestDeflection()
                .total();
        assertThat(w).isCloseTo(0.004513861, within(0.005 * 0.004513861));
    }

    /**
     * Hoff and Mautner's model minimised by brute force: a wave of length 2 l in the face that dies away linearly over a
     * depth W of the core, σ = Ef t² p/12 + Ec/(t p W) + Gc W/(3 t) with p = (π/l)².
     */
    @Test
    void wrinklingIsTheMinimumOfTheModelOfHoffAndMautner() {
        double t = 0.002;
        double best = Double.POSITIVE_INFINITY;
        double depth = 0;
        for (int i = 0; i < 1000; i++) {
            double W = 0.001 * Math.pow(100, i / 1000.0);
            for (int j = 0; j < 1000; j++) {
                double p = Math.pow(Math.PI / (0.002 * Math.pow(100, j / 1000.0)), 2);
                double stress = 20e9 * t * t * p / 12 + 75e6 / (t * p * W) + 28e6 * W / (3 * t);
                if (stress < best) {
                    best = stress;
                    depth = W;
                }
            }
        }
        assertThat(Wrinkling.THEORY.stress(20e9, 75e6, 28e6)).isCloseTo(best, within(0.002 * best));
        assertThat(Wrinkling.decayDepth(t, 20e9, 75e6, 28e6)).isCloseTo(depth, within(0.01 * depth));
    }

    /** An infinite beam on springs by its Fourier integral: w(0) = P/π ∫ dk/(EI k⁴ + k₀ b), M(0) = P/π ∫ EI k² …. */
    @Test
    void elasticIndentationIsTheBeamOnSprings() {
        double b = 0.05;
        double t = 0.002;
        double EI = 20e9 * b * t * t * t / 12;
        double k = Indentation.foundationModulus(75e6, 0.02);
        assertThat(k).isEqualTo(3.75e9);
        double beta = Indentation.beta(k, 20e9, t);
        double step = 0.5;
        double w = IntStream.range(0, 200_000)
                .mapToDouble(i -> (i + 0.5) * step)
                .map(x -> step / Math.PI / (EI * Math.pow(x, 4) + k * b))
                .sum();
        double P = Indentation.coreYieldLoad(b, 1.2e6, beta);
        assertThat(k * w * P).isCloseTo(1.2e6, within(1e-4 * 1.2e6));
        double M = IntStream.range(0, 200_000)
                .mapToDouble(i -> (i + 0.5) * step)
                .map(x -> step / Math.PI * EI * x * x / (EI * Math.pow(x, 4) + k * b))
                .sum();
        double stress = 6 * M * P / (b * t * t);
        assertThat(Indentation.faceBendingStress(P, b, t, beta)).isCloseTo(stress, within(0.02 * stress));
    }

    /**
     * Soden's yielded zone is a clamped beam of length 2 λ, pressed down by P at its middle and up by σc b, whose end
     * moments vanish; the face stress under P is then the strength.
     */
    @Test
    void brittleFaceOnAYieldingCoreIsAClampedBeamWithoutEndMoments() {
        double b = 0.05;
        double t = 0.002;
        double sigmaC = 1.2e6;
        double sigmaF = 200e6;
        double Ef = 20e9;
        double P = Indentation.elasticFaceLoad(b, t, sigmaC, sigmaF);
        double span = 2 * 3 * P / (4 * sigmaC * b);
        Beam face = new Beam(BeamSection.rigidInShear(Ef * b * t * t * t / 12), span, Supports.CLAMPED);
        BeamResponse r = face.under(BeamLoad.threePoint(P, span).plus(BeamLoad.uniform(-sigmaC * b)));
        assertThat(r.momentAt(0)).isCloseTo(0, within(1e-9 * P * span));
        assertThat(r.momentAt(span)).isCloseTo(0, within(1e-9 * P * span));
        assertThat(6 * r.momentAt(span / 2) / (b * t * t)).isCloseTo(sigmaF, within(1e-6 * sigmaF));
        double depth = r.deflectionAt(span / 2).total();
        assertThat(Indentation.depth(P, b, t, sigmaC, Ef)).isCloseTo(depth, within(1e-9 * depth));
        assertThat(27 * Math.pow(P, 4) / (512 * Math.pow(sigmaC, 3) * Math.pow(b, 4) * Ef * t * t * t))
                .isCloseTo(depth, within(1e-9 * depth));
    }

    /** Ashby's hinges: the least upper bound of 4 Mp/l + σc b (l + a) over the hinge distance l, Mp = σf b t²/4. */
    @Test
    void hingesStandWhereTheLoadIsLeast() {
        double b = 0.05;
        double t = 0.002;
        double Mp = 200e6 * b * t * t / 4;
        double least = IntStream.range(1, 100_000)
                .mapToDouble(i -> i * 1e-6)
                .map(l -> 4 * Mp / l + 1.2e6 * b * (l + 0.01))
                .min()
                .orElseThrow();
        assertThat(Indentation.plasticHingeLoad(b, t, 1.2e6, 200e6, 0.01)).isCloseTo(least, within(1e-5 * least));
        assertThat(OptionalDouble.of(Indentation.plasticHingeLoad(b, t, 1.2e6, 200e6, 0)))
                .hasValue(1.5 * Indentation.elasticFaceLoad(b, t, 1.2e6, 200e6));
    }
}
