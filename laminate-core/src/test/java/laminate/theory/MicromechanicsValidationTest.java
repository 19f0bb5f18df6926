package laminate.theory;

import static laminate.testing.ReferenceCase.byId;
import static laminate.testing.ReferenceCase.checkValue;
import static laminate.testing.ReferenceCase.map;
import static laminate.theory.UnidirectionalFormulas.fibreLoadShare;
import static laminate.theory.UnidirectionalFormulas.halpinTsai;
import static laminate.theory.UnidirectionalFormulas.inverseRuleOfMixtures;
import static laminate.theory.UnidirectionalFormulas.ruleOfMixtures;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import laminate.testing.ReferenceCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Micromechanics and random mat against the worked cases of the literature, MIC. */
class MicromechanicsValidationTest {
    private static final List<ReferenceCase> CASES = ReferenceCase.load("/reference/laminate-cases.json", "MIC");
    private static final Map<String, Function<ReferenceCase, Answers>> SOLUTIONS = Map.of(
            "MIC-01",
            MicromechanicsValidationTest::glassEpoxy,
            "MIC-02",
            MicromechanicsValidationTest::ruleOfMixturesWithHybrid,
            "MIC-03",
            c -> new Answers(),
            "MIC-04",
            c -> new Answers());

    static Stream<Arguments> expectedNumbers() {
        return Answers.toExpected(CASES, SOLUTIONS);
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(ReferenceCase given, ReferenceCase.Expected expected, Answers answers) {
        expected.check(answers.get(expected.name()));
    }

    @Test
    void everyCaseOfTheGroupIsThere() {
        assertThat(CASES).extracting(ReferenceCase::id).containsExactlyInAnyOrderElementsOf(SOLUTIONS.keySet());
        assertThat(CASES).flatExtracting(ReferenceCase::expected).hasSize(16);
    }

    /** Kaw 2006, ch. 3: glass/epoxy with Vf = 0.70. The lamina of each model is checked beside the single formulas. */
    private static Answers glassEpoxy(ReferenceCase c) {
        double Vf = c.input("Vf");
        FibreProperties fibre = FibreProperties.isotropic(c.input("Ef"), c.input("nu_f"))
                .withExpansion(c.input("alpha_f"), c.input("alpha_f"));
        MatrixProperties matrix =
                MatrixProperties.of(c.input("Em"), c.input("nu_m")).withExpansion(c.input("alpha_m"));
        double psi = Mixture.fibreMassFraction(Vf, c.input("rho_f"), c.input("rho_m"), 0);
        Lamina halpinTsai = Micromechanics.HALPIN_TSAI.lamina(fibre, matrix, Vf, 0);
        Lamina mixtures = Micromechanics.RULE_OF_MIXTURES.lamina(fibre, matrix, Vf, 0);
        Expansion expansion = halpinTsai.thermalExpansion().orElseThrow();
        return new Answers()
                .put("density", Mixture.density(psi, c.input("rho_f"), c.input("rho_m"), 0))
                .put("fibre mass fraction", psi)
                .put("matrix mass fraction", 1 - psi)
                .put("E1 rule of mixtures", halpinTsai.E1())
                .put("fibre load share", fibreLoadShare(fibre.E1(), matrix.E(), Vf))
                .put("E2 inverse rule of mixtures", mixtures.E2())
                .put("nu12", halpinTsai.nu12())
                .put("G12 inverse rule of mixtures", mixtures.G12())
                .put("E2 Halpin-Tsai xi=2", halpinTsai.E2())
                .put("G12 Halpin-Tsai xi=1", halpinTsai.G12())
                .put("G12 Halpin-Tsai xi=1+40Vf^10", halpinTsai(fibre.G12(), matrix.G(), Vf, 1 + 40 * Math.pow(Vf, 10)))
                .put("alpha1", expansion.along())
                .put("alpha2 (Schapery)", expansion.across());
    }

    /** Two printed results; the hybrid's fibres are first mixed among themselves, then with the matrix. */
    private static Answers ruleOfMixturesWithHybrid(ReferenceCase c) {
        Map<String, Object> a = map(c.inputs().get("a"));
        Map<String, Object> b = map(c.inputs().get("b"));
        double fibres = number(b, "V1") + number(b, "V2");
        double mixed = ruleOfMixtures(number(b, "Ef1"), number(b, "Ef2"), number(b, "V1") / fibres);
        return new Answers()
                .put("(a) E1", ruleOfMixtures(number(a, "Ef"), number(a, "Em"), number(a, "Vf")))
                .put("(a) E2 inverse rule", inverseRuleOfMixtures(number(a, "Ef"), number(a, "Em"), number(a, "Vf")))
                .put("(b) E1 hybrid (matrix 0.40)", ruleOfMixtures(mixed, number(b, "Em"), fibres));
    }

    private static double number(Map<String, Object> map, String key) {
        return (Double) map.get(key);
    }

    /** Chopped strand mat at three glass contents: fibre content, thickness, and moduli by three rules. */
    @ParameterizedTest
    @MethodSource("rowsOfRandomMat")
    void randomMatByThreeRules(int row, ReferenceCase c) {
        ReferenceCase.Table table = c.tables().get(0);
        FibreProperties fibre = FibreProperties.isotropic(c.input("Ef"), c.input("nu_f"));
        MatrixProperties matrix = MatrixProperties.of(c.input("Em"), c.input("nu_m"));
        double psi = table.number(row, "glass mass fraction");
        double Vf = Mixture.fibreVolumeFraction(psi, c.input("rho_f"), c.input("rho_m"), 0);
        Lamina ud = Micromechanics.HALPIN_TSAI.lamina(fibre, matrix, Vf, 0);
        Lamina average = mat(RandomMat.EXACT_AVERAGE, fibre, matrix, Vf);
        Lamina tsaiPagano = mat(RandomMat.TSAI_PAGANO, fibre, matrix, Vf);
        double thickness = Mixture.thickness(c.input("areal_mass_kg_m2"), psi, c.input("rho_f"), c.input("rho_m"), 0);
        Answers answers = new Answers()
                .put("Vf", Vf)
                .put("rho_kg_m3", Mixture.density(psi, c.input("rho_f"), c.input("rho_m"), 0))
                .put("t_mm for 450 g/m2", 1000 * thickness)
                .put("E1_Pa", ud.E1())
                .put("E2_Pa", ud.E2())
                .put("G12_Pa", ud.G12())
                .put("nu12", ud.nu12())
                .put("E Tsai-Pagano", tsaiPagano.E1())
                .put("G Tsai-Pagano", tsaiPagano.G12())
                .put("E average (U1^2-U4^2)/U1", average.E1())
                .put("nu average U4/U1", average.nu12())
                .put("G average", average.G12())
                .put("E Manera", mat(RandomMat.MANERA, fibre, matrix, Vf).E1());
        table.columns().stream().skip(1).forEach(name -> checkValue(name, answers.get(name), table.number(row, name)));
    }

    private static Lamina mat(RandomMat rule, FibreProperties fibre, MatrixProperties matrix, double Vf) {
        return rule.lamina(Micromechanics.HALPIN_TSAI, fibre, matrix, Vf, 0);
    }

    static Stream<Arguments> rowsOfRandomMat() {
        return byId(CASES, "MIC-03").rowsOfTheFirstTable();
    }

    /** Typical marine laminates of Smith 1990 (from memory), tier C: a band of 25 % for density and modulus. */
    @Test
    void typicalMarineLaminatesLieInTheBand() {
        ReferenceCase c = byId(CASES, "MIC-04");
        Map<String, Object> given = map(c.inputs().get("check_inputs"));
        FibreProperties fibre = FibreProperties.isotropic(number(given, "Ef"), 0.22);
        MatrixProperties matrix = MatrixProperties.of(number(given, "Em"), 0.35);
        ReferenceCase.Table table = c.tables().get(0);
        for (int row = 0; row < 3; row++) {
            double Vf = table.number(row, "Vf");
            Lamina ud = Micromechanics.HALPIN_TSAI.lamina(fibre, matrix, Vf, 0);
            Lamina laid = List.of(RandomMat.average(ud), Woven.crossed(ud, 0.5, 1), ud)
                    .get(row);
            double psi = Mixture.fibreMassFraction(Vf, number(given, "rho_f"), number(given, "rho_m"), 0);
            double density = Mixture.density(psi, number(given, "rho_f"), number(given, "rho_m"), 0);
            assertThat(density / table.number(row, "density_kg_m3")).isCloseTo(1, within(0.25));
            assertThat(density).isCloseTo(table.number(row, "mixture density"), within(0.05));
            assertThat(laid.E1() / table.number(row, "E_Pa")).isCloseTo(1, within(0.25));
        }
    }
}
