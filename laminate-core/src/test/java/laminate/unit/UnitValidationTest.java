package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The factors against published values, which we did not compute. */
class UnitValidationTest {
    /** Printed to seven figures, so the most they can differ is half a unit of the seventh. */
    private static final double SEVEN_FIGURES = 5e-7;

    /** NIST SP 811 (2008), appendix B.8, factors as printed there, from memory; values of SI units per unit. */
    @ParameterizedTest(name = "1 {0} = {2}")
    @CsvSource({
        "in, LENGTH, 2.54e-2",
        "ft, LENGTH, 3.048e-1",
        "yd, LENGTH, 9.144e-1",
        "mil, LENGTH, 2.54e-5",
        "ft², AREA, 9.290304e-2",
        "yd², AREA, 8.361274e-1",
        "US gal, VOLUME, 3.785412e-3",
        "US fl oz, VOLUME, 2.957353e-5",
        "lb, MASS, 4.535924e-1",
        "oz, MASS, 2.834952e-2",
        "oz/yd², AREAL_MASS, 3.390575e-2",
        "oz/ft², AREAL_MASS, 3.051517e-1",
        "lb/ft³, DENSITY, 1.601846e1",
        "g/cm³, DENSITY, 1.0e3",
        "psi, PRESSURE, 6.894757e3",
        "ksi, PRESSURE, 6.894757e6",
        "bar, PRESSURE, 1.0e5",
        "mbar, PRESSURE, 1.0e2",
        "lbf, FORCE, 4.448222",
        "lb/in, FORCE_PER_LENGTH, 1.751268e2",
        "lb·in/in, MOMENT_PER_LENGTH, 4.448222",
        "day, TIME, 8.64e4",
        "h, TIME, 3.6e3",
    })
    void nistPrintsTheSameFactor(String symbol, Dimension dimension, double printed) {
        double factor = Unit.find(symbol, dimension).orElseThrow().factor();

        assertThat(factor).isCloseTo(printed, within(SEVEN_FIGURES * printed));
    }

    /** The same to more figures, from memory; digits that are not shown are cut, or there are none. */
    @ParameterizedTest(name = "{0} = {2} {3}")
    @CsvSource({
        "1 oz/yd², AREAL_MASS, 33.905747, g/m², 1e-6",
        "1 oz/ft², AREAL_MASS, 305.151727, g/m², 1e-6",
        "1 psi, PRESSURE, 6894.757293, Pa, 1e-6",
        "1 lb/in, FORCE_PER_LENGTH, 175.126835, N/m, 1e-6",
        "1 lb/ft³, DENSITY, 16.018463, kg/m³, 1e-6",
        "1 lbf, FORCE, 4.4482216152605, N, 1e-13",
        "1 kN·m/m, MOMENT_PER_LENGTH, 1000, N·mm/mm, 0",
        "0.0254 1/in, CURVATURE, 1, 1/m, 1e-15",
        "2 1/mm, CURVATURE, 2000, 1/m, 0",
        "1 US gal, VOLUME, 3.785411784, l, 1e-12",
        "1 US fl oz, VOLUME, 29.5735295625, ml, 1e-12",
        "0 °F, TEMPERATURE, 255.372222, K, 1e-6",
        "32 °F, TEMPERATURE, 0, °C, 1e-12",
        "212 °F, TEMPERATURE, 100, °C, 1e-12",
        "-40 °F, TEMPERATURE, -40, °C, 1e-12",
        "9 °F, TEMPERATURE_DIFFERENCE, 5, K, 1e-15",
        "20 °C, TEMPERATURE_DIFFERENCE, 20, K, 0",
        "5 1/°F, EXPANSION, 9, 1/K, 1e-14",
        "18 1e-6/K, EXPANSION, 10, 1e-6/°F, 1e-14",
    })
    void agreesToMoreFigures(String text, Dimension dimension, double expected, String inUnit, double lastFigure) {
        Unit unit = Unit.find(inUnit, dimension).orElseThrow();

        assertThat(unit.fromSi(Quantity.parse(text, dimension))).isCloseTo(expected, within(lastFigure));
    }
}
