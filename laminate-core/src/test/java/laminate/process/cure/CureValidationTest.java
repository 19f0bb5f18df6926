package laminate.process.cure;

import static laminate.testing.ReferenceCase.map;
import static laminate.testing.ReferenceCase.maps;
import static laminate.testing.ReferenceCase.numbers;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import laminate.material.Resin;
import laminate.testing.Json;
import laminate.testing.TestMaterials;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Times, heat and viscosity of cure against worked cases, published figures and integration of the equations. */
class CureValidationTest {
    private static final double MINUTE = 60;
    private static final double ICE = 273.15;

    private static final Map<String, Function<Map<String, Object>, List<Double>>> SOLUTIONS = Map.ofEntries(
            Map.entry("visc-styrene fit_mPas", in -> each(in, "ws", ws -> Viscosity.withStyrene(ws) * 1000)),
            Map.entry("visc-styrene measured_mPas", in -> each(in, "ws", ws -> Viscosity.withStyrene(ws) * 1000)),
            Map.entry(
                    "arrhenius-shift t2_s",
                    in -> each(in, "T2", t2 -> Arrhenius.time(n(in, "t1_s"), n(in, "Ea"), n(in, "T1"), t2))),
            Map.entry(
                    "arrhenius-ea-from-two Ea",
                    in -> List.of(
                            Arrhenius.activationEnergy(n(in, "t1_min"), n(in, "T1"), n(in, "t2_min"), n(in, "T2")))),
            Map.entry("gel-cobalt-exponent slope", in -> List.of(cobaltExponent(in))),
            Map.entry(
                    "cure-heat-UP dH_J_per_g",
                    in -> List.of(HeatOfCure.unsaturated(n(in, "ws"), n(in, "M") / 1000) / 1000)),
            Map.entry(
                    "exotherm-adiabatic dT_K",
                    in -> List.of(Exotherm.adiabaticRise(n(in, "wf"), n(in, "H"), n(in, "cr"), n(in, "cf")))),
            Map.entry("exotherm-lumped tau_c_s", in -> List.of(coolingTime(in))),
            Map.entry(
                    "exotherm-lumped dT_K",
                    in -> List.of(Exotherm.lumpedRise(n(in, "dTad"), coolingTime(in), n(in, "tau_r")))),
            Map.entry("frank-kamenetskii-slab delta_crit", in -> List.of(FrankKamenetskii.CRITICAL_SLAB)),
            Map.entry("frank-kamenetskii-slab published", in -> List.of(FrankKamenetskii.CRITICAL_SLAB)));

    /** The fit to rounded constants is good to the digits that they carry, its points to its own error. */
    private static final Map<String, Double> TIGHTER = Map.of(
            "visc-styrene fit_mPas", 5e-5,
            "visc-styrene measured_mPas", 0.041,
            "frank-kamenetskii-slab delta_crit", 5e-9);

    static Stream<Arguments> expectedNumbers() {
        return maps(Json.resource("/reference/cure-cases.json").get("cases")).stream()
                .filter(c -> !((String) c.get("id")).matches("cv-.*|ilss-voids"))
                .flatMap(c -> map(c.get("expected")).entrySet().stream()
                        .map(e -> Arguments.of(c.get("id") + " " + e.getKey(), e.getValue(), c)));
    }

    @ParameterizedTest(name = "{0} = {1}")
    @MethodSource("expectedNumbers")
    void agreesWithTheWorkedCase(String name, Object expected, Map<String, Object> given) {
        List<Double> actual = SOLUTIONS.get(name).apply(map(given.get("inputs")));
        List<Double> wanted = expected instanceof Double one ? List.of(one) : numbers(expected);
        double tolerance = TIGHTER.getOrDefault(name, (Double) given.get("rel_tol"));
        assertThat(actual).hasSameSizeAs(wanted);
        for (int i = 0; i < wanted.size(); i++) {
            assertThat(actual.get(i)).isCloseTo(wanted.get(i), within(tolerance * Math.abs(wanted.get(i))));
        }
    }

    @Test
    void everyCaseIsThere() {
        assertThat(expectedNumbers().map(a -> a.get()[0])).containsExactlyInAnyOrderElementsOf(SOLUTIONS.keySet());
    }

    /** Arrhenius' law at 55 kJ/mol from 40 min at 20 °C: 59.2 min at 15 °C, 27.4 at 25, 19.0 at 30. */
    @ParameterizedTest
    @CsvSource({"15, 59.2", "20, 40.0", "25, 27.4", "30, 19.0"})
    void gelTimesFollowArrheniusLaw(double celsius, double minutes) {
        double time = Arrhenius.time(40 * MINUTE, Arrhenius.STYRENIC.planned(), 20 + ICE, celsius + ICE);
        assertThat(time / MINUTE).isCloseTo(minutes, within(0.05));
    }

    /** "Halves every 10 °C" means an activation energy of about 50 kJ/mol. */
    @Test
    void halvingEveryTenKelvinIsFiftyKilojoules() {
        assertThat(Arrhenius.activationEnergy(2, 15 + ICE, 1, 25 + ICE)).isCloseTo(50e3, within(1e3));
    }

    /** H 350 kJ/kg: 184 K neat, 156 K at 30 % glass, 130 K at 50 %, 93 K at 70 %. */
    @ParameterizedTest
    @CsvSource({"0, 184", "0.3, 156", "0.5, 130", "0.7, 93"})
    void glassTakesUpHeat(double glass, double kelvin) {
        assertThat(Exotherm.adiabaticRise(glass, 350e3, 1900, 800)).isCloseTo(kelvin, within(0.5));
    }

    /** Neat polyester peaked at 162 °C and, slower, at 126 °C in air of 25 °C: Polymers 16 (2024) 2391. */
    @ParameterizedTest
    @CsvSource({"162", "126"})
    void noMeasuredPeakReachesTheCeiling(double celsius) {
        double ceiling = 25
                + Exotherm.adiabaticRise(
                        0, HeatOfCure.STYRENIC.planned(), WetStage.RESIN_SPECIFIC_HEAT, WetStage.GLASS_SPECIFIC_HEAT);
        assertThat(ceiling).isGreaterThan(celsius).isCloseTo(209, within(0.5));
    }

    /** dθ/dt = ΔTad/τr − θ/τc, which the closed form solves, in many small steps of the midpoint rule. */
    @ParameterizedTest
    @CsvSource({"1350, 900", "200, 900", "5000, 600", "900, 900"})
    void theLumpedRiseSolvesItsEquation(double cooling, double release) {
        int steps = 100_000;
        double step = release / steps;
        double rise = 0;
        for (int i = 0; i < steps; i++) {
            double middle = rise + step / 2 * (130 / release - rise / cooling);
            rise += step * (130 / release - middle / cooling);
        }
        assertThat(Exotherm.lumpedRise(130, cooling, release)).isCloseTo(rise, within(1e-7));
    }

    /**
     * Frank-Kamenetskii's slab by shooting: θ″ = −e^θ from the middle, θ = θm and θ′ = 0, reaches the face θ = 0 at x with
     * δ = x². No steady state exists beyond the greatest δ over all θm.
     */
    @Test
    void theCriticalSlabIsTheLastWithASteadyState() {
        double greatest = 0;
        for (double middle = 0.8; middle < 1.6; middle += 0.005) {
            double x = faceOf(middle);
            greatest = Math.max(greatest, x * x);
        }
        assertThat(FrankKamenetskii.CRITICAL_SLAB).isCloseTo(greatest, within(2e-6));
    }

    @Test
    void theCriticalSlabMaximisesItsFormula() {
        double greatest = 0;
        for (double theta = 1; theta < 1.4; theta += 1e-5) {
            double e = Math.exp(theta / 2);
            double arcosh = Math.log(e + Math.sqrt(e * e - 1));
            greatest = Math.max(greatest, 2 * Math.exp(-theta) * arcosh * arcosh);
        }
        assertThat(FrankKamenetskii.CRITICAL_SLAB).isCloseTo(greatest, within(1e-10));
    }

    /** A room of any size that begins clean stays below the limit, and a small one comes up to it. */
    @ParameterizedTest
    @CsvSource({"1, 0.999", "50, 0.5", "500, 0.1"})
    void freshAirKeepsAMixedRoomAtTheLimit(double room, double reached) {
        double mass = 0.2;
        double time = 3600;
        double limit = Styrene.USUAL_LIMIT.value();
        double flow = Styrene.freshAir(mass, time, limit);
        // V dC/dt = m/t − Q C.
        double concentration = mass / time / flow * -Math.expm1(-flow / room * time);
        assertThat(concentration).isBetween(reached * limit, limit);
        assertThat(flow).isCloseTo(0.2 / 3600 / 426e-6, within(1e-12));
    }

    /** A rise to the thousandfold at the gel: resin must fill in less than 0.145 of its gel time. */
    @Test
    void aThousandfoldRiseLeavesASeventhOfTheGelTimeToFlow() {
        // With μ = μ0 exp(t/τ) the flow stops for good at t0 = τ, the time that it would take at constant viscosity.
        assertThat(Viscosity.riseTime(1)).isCloseTo(0.145, within(0.0005));
        assertThat(Math.exp(1 / Viscosity.riseTime(1))).isCloseTo(1000, within(1e-9));
    }

    /** −4 to −7 % a kelvin at 20 °C for styrenic resins, −7 to −10 % for epoxies, from memory. */
    @ParameterizedTest
    @CsvSource({"30e3, 0.04", "50e3, 0.07", "70e3, 0.10"})
    void viscosityFallsBySomePerCentAKelvin(double energy, double share) {
        double colder = Viscosity.atTemperature(1, energy, 20 + ICE, 19.5 + ICE);
        double warmer = Viscosity.atTemperature(1, energy, 20 + ICE, 20.5 + ICE);
        assertThat(colder - warmer).isCloseTo(share, within(0.005));
    }

    private static double faceOf(double middle) {
        double step = 1e-3;
        double theta = middle;
        double slope = 0;
        double x = 0;
        while (true) {
            double k1 = slope;
            double l1 = -Math.exp(theta);
            double k2 = slope + step / 2 * l1;
            double l2 = -Math.exp(theta + step / 2 * k1);
            double k3 = slope + step / 2 * l2;
            double l3 = -Math.exp(theta + step / 2 * k2);
            double k4 = slope + step * l3;
            double l4 = -Math.exp(theta + step * k3);
            double next = theta + step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            if (next < 0) {
                // θ is all but straight within the last step.
                return x + step * theta / (theta - next);
            }
            theta = next;
            slope += step / 6 * (l1 + 2 * l2 + 2 * l3 + l4);
            x += step;
        }
    }

    private static double cobaltExponent(Map<String, Object> in) {
        List<Double> cobalt = numbers(in.get("Co_wt_pct"));
        List<Double> minutes = numbers(in.get("t_min"));
        List<Resin.GelPoint> points = new ArrayList<>();
        for (int i = 0; i < cobalt.size(); i++) {
            points.add(GelPoints.point("cobalt", cobalt.get(i) / 100, 296, minutes.get(i) * MINUTE));
        }
        return GelTimes.of(GelPoints.resin(TestMaterials.POLYESTER, points), "cobalt")
                .doseExponent(296)
                .orElseThrow();
    }

    private static double coolingTime(Map<String, Object> in) {
        return Exotherm.coolingTime(n(in, "rho"), n(in, "c"), n(in, "h"), (int) n(in, "faces"), n(in, "hc"));
    }

    private static List<Double> each(Map<String, Object> in, String name, Function<Double, Double> formula) {
        return numbers(in.get(name)).stream().map(formula).toList();
    }

    private static double n(Map<String, Object> in, String name) {
        return (Double) in.get(name);
    }
}
