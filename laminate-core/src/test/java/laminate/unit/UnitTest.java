package laminate.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitTest {
    /** More digits than any double has, so that a tie between two doubles stays one. */
    private static final MathContext FAR_BEYOND_A_DOUBLE = new MathContext(120);

    private static final long SEED = 20260115;

    static Stream<Arguments> everySpelling() {
        return Stream.of(Unit.values())
                .flatMap(unit -> unit.spellings().stream().map(spelling -> Arguments.of(spelling, unit)));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("everySpelling")
    void everySpellingIsRead(String spelling, Unit unit) {
        assertThat(Unit.find(spelling, unit.dimension())).contains(unit);
        assertThat(Quantity.parse("36.5 " + spelling, unit.dimension())).isEqualTo(unit.toSi(36.5));
        assertThat(Unit.spellings(unit.dimension())).contains(spelling);
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void aDimensionListsTheSpellingsOfItsUnitsAndNoOthers(Dimension dimension) {
        List<String> ofUnits = Unit.of(dimension).stream()
                .flatMap(unit -> unit.spellings().stream())
                .toList();

        assertThat(Unit.spellings(dimension)).containsExactlyElementsOf(ofUnits).doesNotHaveDuplicates();
        assertThat(Unit.of(dimension)).isNotEmpty().allMatch(unit -> unit.dimension() == dimension);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void aUnitHasASourceAndAPositiveFactorAndIsFoundByItsSymbol(Unit unit) {
        assertThat(unit.source()).isNotBlank();
        assertThat(unit.factor()).isPositive().isFinite();
        assertThat(unit.spellings().get(0)).isEqualTo(unit.symbol());
        assertThat(Unit.find(unit.symbol()).orElseThrow().symbol()).isEqualTo(unit.symbol());
        assertThat(unit).hasToString(unit.symbol());
    }

    /** There and back loses at most the rounding of two conversions. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void convertsThereAndBack(Unit unit) {
        Random random = new Random(SEED + unit.ordinal());
        for (int i = 0; i < 200; i++) {
            double value = random.nextDouble() * Math.pow(10, random.nextInt(8) - 3);
            double scale = Math.max(value, unit.offset());

            assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(4 * Math.ulp(scale)));
        }
    }

    /** What was written with few digits comes back with the very same, and SI values are the nearest doubles. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "3.1, mm, 0.0031",
        "450, g/m², 0.45",
        "0.7, mm, 0.0007",
        "1.1, %, 0.011",
        "181, GPa, 181e9",
        "20, °C, 293.15",
        "22.7, °C, 295.85",
        "5.3, 1e-6/K, 5.3e-6",
        "12.2, ml/kg, 1.22e-5",
        "0.2, h/m², 720",
        "5, min/m², 300",
        "1.5, h/m, 5400",
        "1, N/mm², 1e6",
        "1, N/mm, 1e3",
        "1, kN/m, 1e3",
        "250, mPa·s, 0.25",
        "30, °, 30",
        "2.54, cm, 0.0254",
        "10, kPa, 1e4",
        "2, cm², 2e-4",
    })
    void decimalsConvertAsDecimals(double value, String symbol, double si) {
        Unit unit = Unit.find(symbol).orElseThrow();

        assertThat(unit.toSi(value)).isEqualTo(si);
        assertThat(unit.fromSi(si)).isEqualTo(value);
    }

    /** The quick way of a computed number is the exact way, rounded once. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void computedNumbersConvertToTheNearestDouble(Unit unit) {
        if (Decimals.isComputed(unit.factor())) {
            return; // a factor of the US without a short decimal: only the exact way is gone
        }
        BigDecimal factor = Decimals.of(unit.factor());
        Random random = new Random(SEED + unit.ordinal());
        for (int i = 0; i < 500; i++) {
            double si = random.nextDouble() * Math.pow(10, random.nextInt(16) - 6);
            BigDecimal exact = Decimals.of(si).divide(factor, FAR_BEYOND_A_DOUBLE);

            assertThat(unit.fromSi(si))
                    .isEqualTo(exact.subtract(Decimals.of(unit.offset())).doubleValue());
        }
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void isFoundByEachOfItsSpellings(Unit unit) {
        for (String spelling : unit.spellings()) {
            assertThat(Unit.find(spelling, unit.dimension())).as(spelling).contains(unit);
        }
    }

    @Test
    void microSignAndGreekMuReadAlike() {
        assertThat(Unit.MICROMETRE.spellings()).containsExactly("\u00B5m", "\u03BCm", "um");
    }

    @Test
    void asciiSpellingsAreThere() {
        assertThat(Unit.GRAM_PER_SQUARE_METRE.spellings()).containsExactly("g/m²", "g/m2", "g/m^2");
        assertThat(Unit.NEWTON_METRE_PER_METRE.spellings()).containsExactly("N·m/m", "N⋅m/m", "N.m/m", "N*m/m");
        assertThat(Unit.CELSIUS.spellings()).containsExactly("°C", "degC", "C");
        assertThat(Unit.LITRES.spellings()).containsExactly("l", "L");
        assertThat(Unit.DEGREE.spellings()).containsExactly("°", "deg");
    }

    @Test
    void withoutAWantedDimensionADegreeCelsiusIsATemperature() {
        assertThat(Unit.find("°C")).contains(Unit.CELSIUS);
        assertThat(Unit.find("°C", Dimension.TEMPERATURE_DIFFERENCE)).contains(Unit.CELSIUS_DIFFERENCE);
        assertThat(Unit.CELSIUS.offset()).isEqualTo(273.15);
        assertThat(Unit.CELSIUS_DIFFERENCE.offset()).isZero();
    }

    @Test
    void caseCounts() {
        assertThat(Unit.find("MM")).isEmpty();
        assertThat(Unit.find("mpa")).isEmpty();
    }

    @Test
    void nothingButFiniteNumbersConverts() {
        assertThatThrownBy(() -> Unit.METRE.toSi(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a finite number is wanted, not NaN");
        assertThatThrownBy(() -> Unit.GIGAPASCAL.toSi(1e300)).hasMessage("a finite number is wanted, not Infinity");
        assertThatThrownBy(() -> Unit.MICROMETRE.fromSi(-1e305)).hasMessage("a finite number is wanted, not -Infinity");
    }

    @Test
    void listsCannotBeChanged() {
        assertThatThrownBy(() -> Unit.of(Dimension.MASS).clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Unit.spellings(Dimension.MASS).clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> Unit.METRE.spellings().clear()).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void dimensionsSpeakForThemselves() {
        assertThat(Dimension.LENGTH.accepted()).isEqualTo("µm, mil, mm, cm, m, in, ft or yd");
        assertThat(Dimension.EXPANSION.accepted()).isEqualTo("1/K, 1e-6/K, 1/°F or 1e-6/°F");
        assertThat(Dimension.FRACTION.accepted()).isEqualTo("%");
        assertThat(Dimension.ANGLE.accepted()).isEqualTo("° or a bare number of degrees");
        assertThat(Dimension.AREAL_MASS.phrase()).isEqualTo("an areal weight");
        assertThat(Dimension.AREAL_MASS.siSymbol()).isEqualTo("kg/m²");
        assertThat(Dimension.AREAL_MASS).hasToString("areal mass");
    }

    /** The SI symbol is that of the unit with factor 1, where such a unit is read at all. */
    @ParameterizedTest
    @EnumSource(Dimension.class)
    void theSiSymbolHasFactorOne(Dimension dimension) {
        Unit.find(dimension.siSymbol(), dimension).ifPresent(unit -> {
            assertThat(unit.factor()).isEqualTo(1.0);
            assertThat(unit.offset()).isZero();
        });
        assertThat(Unit.find(dimension.exampleSymbol(), dimension)).isPresent();
    }

    @Test
    void aSystemGivesEveryDimensionAUnitOfItsOwn() {
        for (UnitSystem system : UnitSystem.values()) {
            for (Dimension dimension : Dimension.values()) {
                assertThat(List.of(system.unit(dimension), system.large(dimension), system.small(dimension)))
                        .allMatch(unit -> unit.dimension() == dimension);
                assertThat(system.large(dimension).factor())
                        .isGreaterThanOrEqualTo(system.small(dimension).factor());
            }
        }
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvSource({
        "LENGTH, mm, in",
        "AREA, m², ft²",
        "VOLUME, l, US gal",
        "MASS, kg, lb",
        "AREAL_MASS, g/m², oz/yd²",
        "DENSITY, kg/m³, lb/ft³",
        "TEMPERATURE, °C, °F",
        "TEMPERATURE_DIFFERENCE, K, °F",
        "PRESSURE, GPa, Msi",
        "FORCE, N, lbf",
        "FORCE_PER_LENGTH, N/mm, lb/in",
        "MOMENT_PER_LENGTH, N·m/m, lb·in/in",
        "CURVATURE, 1/m, 1/in",
        "VISCOSITY, mPa·s, mPa·s",
        "EXPANSION, 1e-6/K, 1e-6/°F",
        "FRACTION, %, %",
        "VOLUME_PER_MASS, ml/kg, ml/kg",
        "TIME, h, h",
        "TIME_PER_AREA, h/m², h/m²",
        "TIME_PER_LENGTH, h/m, h/m",
        "ANGLE, °, °",
    })
    void systemsUseTheUnitsReadersAreUsedTo(Dimension dimension, String si, String us) {
        assertThat(UnitSystem.SI.unit(dimension).symbol()).isEqualTo(si);
        assertThat(UnitSystem.US.unit(dimension).symbol()).isEqualTo(us);
    }

    @Test
    void systemsHaveUnitsForLargeAndSmall() {
        assertThat(UnitSystem.SI.large(Dimension.LENGTH)).isEqualTo(Unit.METRE);
        assertThat(UnitSystem.US.large(Dimension.LENGTH)).isEqualTo(Unit.FEET);
        assertThat(UnitSystem.SI.large(Dimension.FORCE)).isEqualTo(Unit.KILONEWTON);
        assertThat(UnitSystem.SI.small(Dimension.MASS)).isEqualTo(Unit.GRAMS);
        assertThat(UnitSystem.US.small(Dimension.MASS)).isEqualTo(Unit.OUNCES);
        assertThat(UnitSystem.SI.small(Dimension.VOLUME)).isEqualTo(Unit.MILLILITRE);
        assertThat(UnitSystem.US.small(Dimension.VOLUME)).isEqualTo(Unit.US_FLUID_OUNCE);
        assertThat(UnitSystem.SI.small(Dimension.PRESSURE)).isEqualTo(Unit.MEGAPASCAL);
        assertThat(UnitSystem.US.small(Dimension.PRESSURE)).isEqualTo(Unit.KSI);
        assertThat(UnitSystem.US.small(Dimension.TIME)).isEqualTo(Unit.MINUTE);
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void aSymbolIsFoundAsTheFirstUnitThatReadsIt(Unit unit) {
        for (String spelling : unit.spellings()) {
            assertThat(Unit.find(spelling))
                    .hasValue(Stream.of(Unit.values())
                            .filter(other -> other.spellings().contains(spelling))
                            .findFirst()
                            .orElseThrow());
            assertThat(Unit.find(spelling, unit.dimension())).hasValue(unit);
        }
    }
}
