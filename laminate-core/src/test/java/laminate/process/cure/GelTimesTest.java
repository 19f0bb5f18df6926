package laminate.process.cure;

import static laminate.testing.TestMaterials.POLYESTER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.material.Resin;
import laminate.material.Status;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Gel times are met at the points, lie between them, and are refused outside. */
class GelTimesTest {
    private static final double MINUTE = 60;

    /** Two full doses, and a third that stops short of the warmth. */
    private static final GelTimes CHART = of(
            point(1, 15, 60),
            point(1, 20, 40),
            point(1, 30, 18),
            point(2, 15, 32),
            point(2, 20, 21),
            point(2, 30, 10),
            point(3, 15, 24),
            point(3, 20, 16));

    @ParameterizedTest
    @CsvSource({"1, 15, 60", "1, 20, 40", "2, 30, 10", "3, 20, 16"})
    void meetsEachPointExactly(double percent, double celsius, double minutes) {
        assertThat(CHART.at(kelvin(celsius), percent / 100))
                .isEqualTo(new GelTime(minutes * MINUTE, Status.PRINTED, "chart"));
    }

    /** Between two points of a dose: the law with the activation energy of the two, from either end. */
    @ParameterizedTest
    @CsvSource({"15.5, 15, 20", "18, 15, 20", "19.999, 15, 20", "21, 20, 30", "29, 20, 30"})
    void followsArrheniusBetweenTemperatures(double celsius, double below, double above) {
        double cold = CHART.at(kelvin(below), 0.02).seconds();
        double warm = CHART.at(kelvin(above), 0.02).seconds();
        double energy = Arrhenius.activationEnergy(cold, kelvin(below), warm, kelvin(above));
        double actual = CHART.at(kelvin(celsius), 0.02).seconds();
        assertThat(actual).isCloseTo(Arrhenius.time(cold, energy, kelvin(below), kelvin(celsius)), within(1e-9 * cold));
        assertThat(actual).isCloseTo(Arrhenius.time(warm, energy, kelvin(above), kelvin(celsius)), within(1e-9 * cold));
    }

    /** Between two doses: the power of the dose that the two give. */
    @ParameterizedTest
    @CsvSource({"1.1, 20", "1.5, 20", "1.9, 17", "1.4142, 26"})
    void followsAPowerBetweenDoses(double percent, double celsius) {
        double slow = CHART.at(kelvin(celsius), 0.01).seconds();
        double quick = CHART.at(kelvin(celsius), 0.02).seconds();
        double exponent = Math.log(quick / slow) / Math.log(2);
        assertThat(CHART.at(kelvin(celsius), percent / 100).seconds())
                .isCloseTo(slow * Math.pow(percent, exponent), within(1e-9 * slow));
    }

    @ParameterizedTest
    @CsvSource({
        "14.9, 1",
        "30.1, 1",
        "20, 0.99",
        "20, 3.01",
        "12, 5",
        "20.1, 3",
        "25, 2.01",
    })
    void tellsNothingOutsideThePoints(double celsius, double percent) {
        assertThat(CHART.find(kelvin(celsius), percent / 100)).isEmpty();
        assertThatThrownBy(() -> CHART.at(kelvin(celsius), percent / 100))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageEndingWith(
                        "is not known; known: 1 % to 2 % from 15 °C to 30 °C, 2 % to 3 % from 15 °C to 20 °C");
    }

    @Test
    void saysWhatWasAskedAndHowFarThePointsReach() {
        assertThatThrownBy(() -> CHART.at(kelvin(12.5), 0.0125))
                .hasMessage("the gel time of polyester-ortho with 1.25 % of mekp at 12.5 °C is not known; known: "
                        + "1 % to 2 % from 15 °C to 30 °C, 2 % to 3 % from 15 °C to 20 °C");
    }

    @Test
    void saysThatNoPointIsThereAtAll() {
        GelTimes none = GelTimes.of(POLYESTER, "mekp");
        assertThat(none.isKnown()).isFalse();
        assertThat(none.reach()).isEmpty();
        assertThat(none.doses(kelvin(20))).isEmpty();
        assertThat(none.temperatures(0.01)).isEmpty();
        assertThatThrownBy(() -> none.at(kelvin(20), 0.015))
                .hasMessage("the gel time of polyester-ortho with 1.5 % of mekp at 20 °C is not known; none is given "
                        + "for this agent: time a cup of 100 g and give it as gel-time of the resin");
    }

    @Test
    void pointsOfAnotherAgentDoNotCount() {
        Resin resin = GelPoints.resin(
                POLYESTER, List.of(GelPoints.point("cumene-peroxide", 0.02, kelvin(20), 3600), point(1, 20, 40)));
        assertThat(GelTimes.of(resin, "mekp").at(kelvin(20), 0.01).seconds()).isEqualTo(40 * MINUTE);
        assertThat(GelTimes.of(resin, "mekp").find(kelvin(20), 0.015)).isEmpty();
        assertThat(GelTimes.of(resin, "cumene-peroxide").isKnown()).isTrue();
    }

    static Stream<Arguments> reaches() {
        return Stream.of(
                Arguments.of(of(point(1.5, 20, 30)), "1.5 % at 20 °C"),
                Arguments.of(of(point(1.5, 20, 30), point(1.5, 25.5, 20)), "1.5 % from 20 °C to 25.5 °C"),
                Arguments.of(of(point(1, 20, 30), point(2, 20, 20)), "1 % to 2 % at 20 °C"),
                Arguments.of(of(point(1, 20, 30), point(2, 25, 20)), "1 % at 20 °C, 2 % at 25 °C"),
                Arguments.of(
                        of(point(1, 15, 30), point(1, 25, 20), point(2, 20, 20)),
                        "1 % from 15 °C to 25 °C, 1 % to 2 % at 20 °C"),
                Arguments.of(of(point(1, -5, 90), point(1, 0, 80)), "1 % from -5 °C to 0 °C"));
    }

    @ParameterizedTest
    @MethodSource("reaches")
    void tellsItsReach(GelTimes times, String words) {
        assertThat(times.reach()).isEqualTo(words);
    }

    @Test
    void dosesThatLieCloseAreToldApart() {
        GelTimes close = of(point(1.5, 20, 30), point(1.51, 20, 29));
        assertThat(close.at(kelvin(20), 0.0151).seconds()).isEqualTo(29 * MINUTE);
        assertThat(close.at(kelvin(20), 0.01505).seconds()).isBetween(29 * MINUTE, 30 * MINUTE);
    }

    /** A single cup test beside a chart takes nothing of the chart away. */
    @Test
    void aPointOfOnesOwnLeavesTheChartAsItWas() {
        GelTimes own = of(
                point(1, 15, 60),
                point(1, 20, 40),
                point(1, 30, 18),
                point(2, 15, 32),
                point(2, 20, 21),
                point(2, 30, 10),
                point(1.4, 19, 50));
        assertThat(own.at(kelvin(19), 0.014).seconds()).isEqualTo(50 * MINUTE);
        assertThat(own.at(kelvin(25), 0.014)).isEqualTo(CHART.at(kelvin(25), 0.014));
        assertThat(own.temperatures(0.012)).containsExactly(new Span(kelvin(15), kelvin(30)));
        assertThat(own.reach()).isEqualTo("1 % to 2 % from 15 °C to 30 °C");
    }

    @Test
    void tellsDosesByTemperatureAndTemperaturesByDose() {
        assertThat(CHART.doses(kelvin(18))).contains(new Span(0.01, 0.03));
        assertThat(CHART.doses(kelvin(25))).contains(new Span(0.01, 0.02));
        assertThat(CHART.doses(kelvin(10))).isEmpty();
        assertThat(CHART.temperatures(0.015)).containsExactly(new Span(kelvin(15), kelvin(30)));
        assertThat(CHART.temperatures(0.025)).containsExactly(new Span(kelvin(15), kelvin(20)));
        assertThat(CHART.temperatures(0.005)).isEmpty();
    }

    @Test
    void aDoseMayBeKnownInTwoSpansOfTemperature() {
        GelTimes gap = of(
                point(1, 15, 60),
                point(1, 30, 20),
                point(2, 15, 30),
                point(2, 18, 25),
                point(3, 25, 9),
                point(3, 30, 7));
        assertThat(gap.temperatures(0.015))
                .containsExactly(new Span(kelvin(15), kelvin(18)), new Span(kelvin(25), kelvin(30)));
        assertThat(gap.reach())
                .isEqualTo("1 % from 15 °C to 30 °C, 1 % to 2 % from 15 °C to 18 °C and from 25 °C to 30 °C, "
                        + "2 % to 3 % from 25 °C to 30 °C");
    }

    /** A dose that came by way of millilitres, a temperature that came by way of °F. */
    @Test
    void theEdgeIsReachedInSpiteOfRounding() {
        assertThat(CHART.find(kelvin(15) * (1 - 1e-13), 0.01 * (1 - 1e-13))).isPresent();
        assertThat(CHART.find(kelvin(20) * (1 + 1e-13), 0.03 * (1 + 1e-13))).isPresent();
    }

    @Test
    void restsOnTheWeakestOfItsPoints() {
        GelTimes mixed = of(
                GelPoints.point(1, 20, 40, "chart", Status.PRINTED),
                GelPoints.point(1, 25, 28, "handbook", Status.MEMORY),
                GelPoints.point(2, 20, 20, "own cup", Status.USER),
                GelPoints.point(2, 25, 14, "habit", Status.COMMON_PRACTICE));
        assertThat(mixed.at(kelvin(22), 0.01))
                .returns(Status.MEMORY, GelTime::status)
                .returns("between points of: chart; handbook", GelTime::source);
        assertThat(mixed.at(kelvin(20), 0.015)).returns(Status.USER, GelTime::status);
        assertThat(mixed.at(kelvin(22), 0.02)).returns(Status.COMMON_PRACTICE, GelTime::status);
        assertThat(mixed.at(kelvin(25), 0.015)).returns(Status.COMMON_PRACTICE, GelTime::status);
        assertThat(mixed.at(kelvin(22), 0.015).source())
                .isEqualTo("between points of: chart; handbook; own cup; habit");
    }

    static Stream<GelTimes> randomCharts() {
        Random random = new Random(41);
        return IntStream.range(0, 50).mapToObj(i -> randomChart(random));
    }

    @ParameterizedTest
    @MethodSource("randomCharts")
    void gelsSoonerWarmerAndWithMoreAgent(GelTimes chart) {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            double t = 288.15 + 14 * random.nextDouble();
            double dose = 0.01 + 0.019 * random.nextDouble();
            double here = chart.at(t, dose).seconds();
            assertThat(chart.at(t + random.nextDouble(), dose).seconds()).isLessThanOrEqualTo(here);
            assertThat(chart.at(t, dose + 0.001 * random.nextDouble()).seconds())
                    .isLessThanOrEqualTo(here);
        }
    }

    @ParameterizedTest
    @MethodSource("randomCharts")
    void findsTheDoseAgain(GelTimes chart) {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            double t = 288.15 + 15 * random.nextDouble();
            double dose = 0.01 + 0.02 * random.nextDouble();
            double seconds = chart.at(t, dose).seconds();
            assertThat(chart.doseFor(seconds, t)).hasValueCloseTo(dose, within(1e-9 * dose));
        }
    }

    @Test
    void noDoseGivesATimeBeyondThePoints() {
        assertThat(CHART.doseFor(40 * MINUTE, kelvin(20))).hasValue(0.01);
        assertThat(CHART.doseFor(16 * MINUTE, kelvin(20))).hasValue(0.03);
        assertThat(CHART.doseFor(40.1 * MINUTE, kelvin(20))).isEmpty();
        assertThat(CHART.doseFor(15.9 * MINUTE, kelvin(20))).isEmpty();
        assertThat(CHART.doseFor(30 * MINUTE, kelvin(10))).isEmpty();
    }

    @Test
    void tellsHowTheTimeAnswersToTheDose() {
        GelTimes power = of(point(1, 20, 40), point(2, 20, 40 / Math.pow(2, 0.9)), point(4, 20, 40 / Math.pow(4, 0.9)));
        assertThat(power.doseExponent(kelvin(20))).hasValueCloseTo(-0.9, within(1e-12));
        assertThat(of(point(1, 20, 40)).doseExponent(kelvin(20))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0, 0.01", "-1, 0.01", "NaN, 0.01", "293, 0", "293, -1", "293, NaN", "Infinity, 0.01"})
    void refusesNonsense(double temperature, double dose) {
        assertThatThrownBy(() -> CHART.find(temperature, dose)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Doses of 1, 1.5, 2 and 3 % at 15 to 30 °C, falling along both. */
    private static GelTimes randomChart(Random random) {
        List<Resin.GelPoint> points = new ArrayList<>();
        double[] percents = {1, 1.5, 2, 3};
        double[] row = {90, 70, 50, 35};
        for (double percent : percents) {
            double least = 0;
            for (int i = row.length - 1; i >= 0; i--) {
                row[i] = Math.max(least * 1.05, row[i] * (0.6 + 0.3 * random.nextDouble()));
                least = row[i];
                points.add(point(percent, 15 + 5 * i, row[i]));
            }
        }
        return of(points.toArray(Resin.GelPoint[]::new));
    }

    private static GelTimes of(Resin.GelPoint... points) {
        return GelTimes.of(GelPoints.resin(POLYESTER, List.of(points)), "mekp");
    }

    private static Resin.GelPoint point(double percent, double celsius, double minutes) {
        return GelPoints.point(percent, celsius, minutes, "chart", Status.PRINTED);
    }

    private static double kelvin(double celsius) {
        return celsius + 273.15;
    }
}
