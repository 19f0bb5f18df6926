package laminate.theory;

import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.ReferenceCase.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import laminate.testing.Json;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Mixture laws, and moduli of mat and woven roving at a glass content, against worked cases and ISO 12215-5. */
class MixtureValidationTest {
    private static final Map<String, Function<Map<String, Object>, Answers>> SOLUTIONS = Map.of(
            "void-from-density", MixtureValidationTest::voids,
            "modulus-knockdown-csm", MixtureValidationTest::mat,
            "modulus-knockdown-wr", MixtureValidationTest::wovenRoving,
            "layer-thickness", MixtureValidationTest::thickness,
            "resin-glass-workshop", MixtureValidationTest::workshop,
            "resin-glass-ratio", MixtureValidationTest::ratio);

    static Stream<Arguments> expectedNumbers() {
        return maps(Json.resource("/reference/mixture-cases.json").get("cases")).stream()
                .flatMap(c -> map(c.get("expected")).entrySet().stream()
                        .flatMap(e -> values(e.getKey(), e.getValue()))
                        .map(e -> Arguments.of(c.get("id"), e.getKey(), e.getValue(), c)));
    }

    private static Stream<Map.Entry<String, Double>> values(String name, Object value) {
        if (value instanceof Double number) {
            return Stream.of(Map.entry(name, number));
        }
        List<Double> list = numbers(value);
        return Stream.iterate(0, i -> i < list.size(), i -> i + 1)
                .map(i -> Map.entry(name + "[" + i + "]", list.get(i)));
    }

    @ParameterizedTest(name = "{0} {1} = {2}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(String id, String name, double expected, Map<String, Object> given) {
        double actual = SOLUTIONS.get(id).apply(map(given.get("inputs"))).get(name);
        double tolerance = (Double) given.get("rel_tol");
        assertThat(actual).isCloseTo(expected, within(tolerance * Math.abs(expected)));
    }

    @Test
    void everyCaseIsThere() {
        assertThat(expectedNumbers().map(a -> a.get()[0]).distinct())
                .containsExactlyInAnyOrderElementsOf(SOLUTIONS.keySet());
        assertThat(expectedNumbers()).hasSize(17);
    }

    private static double number(Map<String, Object> map, String key) {
        return (Double) map.get(key);
    }

    private static Answers voids(Map<String, Object> in) {
        double rhoF = number(in, "rho_f");
        double rhoR = number(in, "rho_r");
        double psi = number(in, "psi");
        return new Answers()
                .put("rho_theory", Mixture.density(psi, rhoF, rhoR, 0))
                .put("Vv", Mixture.voidFraction(number(in, "rho_meas"), psi, rhoF, rhoR));
    }

    private static Lamina unidirectional(Map<String, Object> in, double Vf) {
        return Micromechanics.HALPIN_TSAI.lamina(
                FibreProperties.isotropic(number(in, "Ef"), number(in, "nuf")),
                MatrixProperties.of(number(in, "Em"), number(in, "num")),
                Vf,
                0);
    }

    private static Answers mat(Map<String, Object> in) {
        return modulus(in, RandomMat::tsaiPagano);
    }

    private static Answers wovenRoving(Map<String, Object> in) {
        return modulus(in, ud -> Woven.crossed(ud, 0.5, 1));
    }

    /** Moduli here are in GPa throughout, as in the case. */
    private static Answers modulus(Map<String, Object> in, Function<Lamina, Lamina> rule) {
        double Vf = Mixture.fibreVolumeFraction(number(in, "psi"), number(in, "rho_f"), number(in, "rho_r"), 0);
        Lamina ud = unidirectional(in, Vf);
        double theory = rule.apply(ud).E1();
        return new Answers()
                .put("Vf", Vf)
                .put("E1", ud.E1())
                .put("E2", ud.E2())
                .put("E_theory_GPa", theory)
                .put("ratio", number(in, "E_rule_GPa") / theory);
    }

    private static Answers thickness(Map<String, Object> in) {
        return new Answers()
                .put(
                        "h_m",
                        Mixture.thickness(
                                number(in, "w"), number(in, "psi"), number(in, "rho_f"), number(in, "rho_r"), 0));
    }

    private static Answers workshop(Map<String, Object> in) {
        double resin = Mixture.resinMass(number(in, "glass"), number(in, "psi"));
        return new Answers().put("resin", resin).put("laminate", resin + number(in, "glass"));
    }

    private static Answers ratio(Map<String, Object> in) {
        List<Double> r = numbers(in.get("r"));
        return new Answers()
                .put("psi[0]", Mixture.fibreMassFractionOfRatio(r.get(0)))
                .put("psi[1]", Mixture.fibreMassFractionOfRatio(r.get(1)));
    }

    /** t = (w/3.072)(2.56/ψ − 1.36) of ISO 12215-5:2008 (from memory), t in mm and w in kg/m², over its whole range. */
    @Test
    void thicknessIsThatOfIso12215() {
        for (int percent = 10; percent <= 80; percent++) {
            for (double w = 0.03; w < 12; w *= 1.3) {
                double psi = percent / 100.0;
                double iso = w / 3.072 * (2.56 / psi - 1.36) / 1000;
                assertThat(Mixture.thickness(w, psi, 2560, 1200, 0)).isCloseTo(iso, within(1e-12 * iso));
            }
        }
    }

    /** One kg/m² of glass in polyester, densities 2560 and 1200: a table computed independently, to its digits. */
    @ParameterizedTest
    @CsvSource({
        "0.25, 2.891, 0.135, 1384, 3.00",
        "0.30, 2.335, 0.167, 1428, 2.33",
        "0.33, 2.083, 0.188, 1455, 2.03",
        "0.36, 1.872, 0.209, 1484, 1.78",
        "0.48, 1.293, 0.302, 1611, 1.08",
        "0.50, 1.224, 0.319, 1634, 1.00",
        "0.55, 1.072, 0.364, 1695, 0.82",
        "0.58, 0.994, 0.393, 1734, 0.72",
        "0.60, 0.946, 0.413, 1761, 0.67",
        "0.66, 0.820, 0.476, 1848, 0.52"
    })
    void oneKilogramOfGlassPerSquareMetre(double psi, double mm, double Vf, double density, double ratio) {
        assertThat(1000 * Mixture.thickness(1, psi, 2560, 1200, 0)).isCloseTo(mm, within(0.0005));
        assertThat(Mixture.fibreVolumeFraction(psi, 2560, 1200, 0)).isCloseTo(Vf, within(0.0005));
        assertThat(Mixture.density(psi, 2560, 1200, 0)).isCloseTo(density, within(0.5));
        assertThat(Mixture.resinMass(1, psi)).isCloseTo(ratio, within(0.005));
    }
}
