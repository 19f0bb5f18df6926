package laminate.unit;

import static laminate.unit.Dimension.ANGLE;
import static laminate.unit.Dimension.AREA;
import static laminate.unit.Dimension.AREAL_MASS;
import static laminate.unit.Dimension.CURVATURE;
import static laminate.unit.Dimension.DENSITY;
import static laminate.unit.Dimension.EXPANSION;
import static laminate.unit.Dimension.FORCE;
import static laminate.unit.Dimension.FORCE_PER_LENGTH;
import static laminate.unit.Dimension.FRACTION;
import static laminate.unit.Dimension.LENGTH;
import static laminate.unit.Dimension.MASS;
import static laminate.unit.Dimension.MOMENT_PER_LENGTH;
import static laminate.unit.Dimension.PERMEABILITY;
import static laminate.unit.Dimension.PRESSURE;
import static laminate.unit.Dimension.TEMPERATURE;
import static laminate.unit.Dimension.TEMPERATURE_DIFFERENCE;
import static laminate.unit.Dimension.TIME;
import static laminate.unit.Dimension.TIME_PER_AREA;
import static laminate.unit.Dimension.TIME_PER_LENGTH;
import static laminate.unit.Dimension.VISCOSITY;
import static laminate.unit.Dimension.VOLUME;
import static laminate.unit.Dimension.VOLUME_PER_MASS;
import static laminate.unit.ExactFactor.BAR;
import static laminate.unit.ExactFactor.CENTI;
import static laminate.unit.ExactFactor.FAHRENHEIT;
import static laminate.unit.ExactFactor.FOOT;
import static laminate.unit.ExactFactor.GIGA;
import static laminate.unit.ExactFactor.GRAM;
import static laminate.unit.ExactFactor.HOUR;
import static laminate.unit.ExactFactor.INCH;
import static laminate.unit.ExactFactor.KILO;
import static laminate.unit.ExactFactor.LITRE;
import static laminate.unit.ExactFactor.MEGA;
import static laminate.unit.ExactFactor.MICRO;
import static laminate.unit.ExactFactor.MILLI;
import static laminate.unit.ExactFactor.ONE;
import static laminate.unit.ExactFactor.OUNCE;
import static laminate.unit.ExactFactor.POUND;
import static laminate.unit.ExactFactor.POUND_FORCE;
import static laminate.unit.ExactFactor.PSI;
import static laminate.unit.ExactFactor.YARD;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A unit in which a quantity may be written.
 *
 * <p>SI value = (value + offset) × factor, with the factor computed from the defined values of {@link ExactFactor} and
 * rounded only once. The offset is zero but for °C and °F. The order of the constants is the order in which messages
 * list them.
 *
 * <p>Besides its symbol each unit reads in ASCII: {@code m2} and {@code m^2} for m², {@code N.m/m} and {@code N*m/m}
 * for N·m/m, {@code um} for µm, {@code degC} for °C, {@code deg} for °. The micro sign and the Greek mu read alike, as
 * do the middle dot and the dot operator.
 */
public enum Unit {
    /** Micrometre. */
    MICROMETRE("µm", LENGTH, MICRO, Source.SI),
    /** Mil, a thousandth of an inch; the unit of film thickness in US practice. */
    MIL("mil", LENGTH, MILLI.times(INCH), Source.YARD_AND_POUND),
    /** Millimetre. */
    MILLIMETRE("mm", LENGTH, MILLI, Source.SI),
    /** Centimetre. */
    CENTIMETRE("cm", LENGTH, CENTI, Source.SI),
    /** Metre. */
    METRE("m", LENGTH, ONE, Source.SI),
    /** Inch. */
    INCHES("in", LENGTH, INCH, Source.YARD_AND_POUND),
    /** Foot. */
    FEET("ft", LENGTH, FOOT, Source.YARD_AND_POUND),
    /** Yard. */
    YARDS("yd", LENGTH, YARD, Source.YARD_AND_POUND),

    /** Square centimetre. */
    SQUARE_CENTIMETRE("cm²", AREA, CENTI.times(CENTI), Source.SI),
    /** Square metre. */
    SQUARE_METRE("m²", AREA, ONE, Source.SI),
    /** Square foot. */
    SQUARE_FOOT("ft²", AREA, FOOT.times(FOOT), Source.YARD_AND_POUND),
    /** Square yard. */
    SQUARE_YARD("yd²", AREA, YARD.times(YARD), Source.YARD_AND_POUND),

    /** Square micrometre, as a permeability. */
    SQUARE_MICROMETRE_PERMEABILITY("µm²", PERMEABILITY, MICRO.times(MICRO), Source.SI),
    /** Square millimetre, as a permeability. */
    SQUARE_MILLIMETRE_PERMEABILITY("mm²", PERMEABILITY, MILLI.times(MILLI), Source.SI),
    /** Square metre, as a permeability. */
    SQUARE_METRE_PERMEABILITY("m²", PERMEABILITY, ONE, Source.SI),

    /** Millilitre. */
    MILLILITRE("ml", VOLUME, MILLI.times(LITRE), Source.SI, "mL"),
    /** Litre. */
    LITRES("l", VOLUME, LITRE, Source.SI, "L"),
    /** Cubic metre. */
    CUBIC_METRE("m³", VOLUME, ONE, Source.SI),
    /** US fluid ounce. */
    US_FLUID_OUNCE("US fl oz", VOLUME, ExactFactor.US_FLUID_OUNCE, Source.US_GALLON),
    /** US liquid gallon. */
    US_GALLON("US gal", VOLUME, ExactFactor.US_GALLON, Source.US_GALLON),

    /** Gram. */
    GRAMS("g", MASS, GRAM, Source.SI),
    /** Kilogram. */
    KILOGRAM("kg", MASS, ONE, Source.SI),
    /** Avoirdupois ounce; a mass only, never an areal weight. */
    OUNCES("oz", MASS, OUNCE, Source.YARD_AND_POUND),
    /** Avoirdupois pound. */
    POUNDS("lb", MASS, POUND, Source.YARD_AND_POUND),

    /** Gram per square metre. */
    GRAM_PER_SQUARE_METRE("g/m²", AREAL_MASS, GRAM, Source.SI),
    /** Kilogram per square metre. */
    KILOGRAM_PER_SQUARE_METRE("kg/m²", AREAL_MASS, ONE, Source.SI),
    /** Ounce per square yard, by which US practice sells cloth and roving. */
    OUNCE_PER_SQUARE_YARD("oz/yd²", AREAL_MASS, OUNCE.per(YARD.times(YARD)), Source.YARD_AND_POUND),
    /** Ounce per square foot, by which US practice sells mat. */
    OUNCE_PER_SQUARE_FOOT("oz/ft²", AREAL_MASS, OUNCE.per(FOOT.times(FOOT)), Source.YARD_AND_POUND),

    /** Kilogram per cubic metre. */
    KILOGRAM_PER_CUBIC_METRE("kg/m³", DENSITY, ONE, Source.SI),
    /** Gram per cubic centimetre. */
    GRAM_PER_CUBIC_CENTIMETRE("g/cm³", DENSITY, GRAM.per(CENTI.times(CENTI).times(CENTI)), Source.SI),
    /** Milligram per cubic metre, by which vapours in air are limited. */
    MILLIGRAM_PER_CUBIC_METRE("mg/m³", DENSITY, MICRO, Source.SI),
    /** Pound per cubic foot. */
    POUND_PER_CUBIC_FOOT("lb/ft³", DENSITY, POUND.per(FOOT.times(FOOT).times(FOOT)), Source.YARD_AND_POUND),

    /** Degree Celsius as a temperature: 0 °C is 273.15 K. */
    CELSIUS("°C", TEMPERATURE, ONE, new BigDecimal("273.15"), Source.SI, "C"),
    /** Degree Fahrenheit as a temperature: 0 °F is 459.67 × 5/9 K. */
    FAHRENHEITS("°F", TEMPERATURE, FAHRENHEIT, new BigDecimal("459.67"), Source.FAHRENHEIT, "F"),
    /** Kelvin as a temperature. */
    KELVIN("K", TEMPERATURE, ONE, Source.SI),

    /** Kelvin as a difference. */
    KELVIN_DIFFERENCE("K", TEMPERATURE_DIFFERENCE, ONE, Source.SI),
    /** Degree Celsius as a difference, the same as a kelvin. */
    CELSIUS_DIFFERENCE("°C", TEMPERATURE_DIFFERENCE, ONE, Source.SI, "C"),
    /** Degree Fahrenheit as a difference, 5/9 K. */
    FAHRENHEIT_DIFFERENCE("°F", TEMPERATURE_DIFFERENCE, FAHRENHEIT, Source.FAHRENHEIT, "F"),

    /** Pascal. */
    PASCAL("Pa", PRESSURE, ONE, Source.SI),
    /** Kilopascal. */
    KILOPASCAL("kPa", PRESSURE, KILO, Source.SI),
    /** Megapascal. */
    MEGAPASCAL("MPa", PRESSURE, MEGA, Source.SI),
    /** Gigapascal. */
    GIGAPASCAL("GPa", PRESSURE, GIGA, Source.SI),
    /** Newton per square millimetre, the same as a megapascal. */
    NEWTON_PER_SQUARE_MILLIMETRE("N/mm²", PRESSURE, ONE.per(MILLI.times(MILLI)), Source.SI),
    /** Millibar. */
    MILLIBAR("mbar", PRESSURE, MILLI.times(BAR), Source.BAR),
    /** Bar. */
    BARS("bar", PRESSURE, BAR, Source.BAR),
    /** Pound-force per square inch. */
    PSIS("psi", PRESSURE, PSI, Source.POUND_FORCE),
    /** Thousand psi. */
    KSI("ksi", PRESSURE, KILO.times(PSI), Source.POUND_FORCE),
    /** Million psi. */
    MSI("Msi", PRESSURE, MEGA.times(PSI), Source.POUND_FORCE),

    /** Newton. */
    NEWTON("N", FORCE, ONE, Source.SI),
    /** Kilonewton. */
    KILONEWTON("kN", FORCE, KILO, Source.SI),
    /** Pound-force. */
    POUNDS_FORCE("lbf", FORCE, POUND_FORCE, Source.POUND_FORCE),

    /** Newton per metre of width. */
    NEWTON_PER_METRE("N/m", FORCE_PER_LENGTH, ONE, Source.SI),
    /** Newton per millimetre of width. */
    NEWTON_PER_MILLIMETRE("N/mm", FORCE_PER_LENGTH, ONE.per(MILLI), Source.SI),
    /** Kilonewton per metre of width. */
    KILONEWTON_PER_METRE("kN/m", FORCE_PER_LENGTH, KILO, Source.SI),
    /** Pound-force per inch of width. */
    POUND_PER_INCH("lb/in", FORCE_PER_LENGTH, POUND_FORCE.per(INCH), Source.POUND_FORCE, "lbf/in"),

    /** Newton metre per metre of width. */
    NEWTON_METRE_PER_METRE("N·m/m", MOMENT_PER_LENGTH, ONE, Source.SI),
    /** Newton millimetre per millimetre of width, the same as a newton metre per metre. */
    NEWTON_MILLIMETRE_PER_MILLIMETRE("N·mm/mm", MOMENT_PER_LENGTH, ONE, Source.SI),
    /** Kilonewton metre per metre of width. */
    KILONEWTON_METRE_PER_METRE("kN·m/m", MOMENT_PER_LENGTH, KILO, Source.SI),
    /** Pound-force inch per inch of width. */
    POUND_INCH_PER_INCH("lb·in/in", MOMENT_PER_LENGTH, POUND_FORCE, Source.POUND_FORCE, "lbf·in/in", "in·lb/in"),

    /** One per metre of radius. */
    PER_METRE("1/m", CURVATURE, ONE, Source.SI),
    /** One per millimetre of radius. */
    PER_MILLIMETRE("1/mm", CURVATURE, ONE.per(MILLI), Source.SI),
    /** One per inch of radius. */
    PER_INCH("1/in", CURVATURE, ONE.per(INCH), Source.YARD_AND_POUND),

    /** Pascal second. */
    PASCAL_SECOND("Pa·s", VISCOSITY, ONE, Source.SI),
    /** Millipascal second. */
    MILLIPASCAL_SECOND("mPa·s", VISCOSITY, MILLI, Source.SI),

    /** Strain per kelvin. */
    PER_KELVIN("1/K", EXPANSION, ONE, Source.SI),
    /** Millionth of strain per kelvin. */
    MILLIONTH_PER_KELVIN("1e-6/K", EXPANSION, MICRO, Source.SI),
    /** Strain per degree Fahrenheit. */
    PER_FAHRENHEIT("1/°F", EXPANSION, ONE.per(FAHRENHEIT), Source.FAHRENHEIT, "1/F"),
    /** Millionth of strain per degree Fahrenheit. */
    MILLIONTH_PER_FAHRENHEIT("1e-6/°F", EXPANSION, MICRO.per(FAHRENHEIT), Source.FAHRENHEIT, "1e-6/F"),

    /** Per cent. */
    PERCENT("%", FRACTION, CENTI, Source.SI),

    /** Millilitre per kilogram. */
    MILLILITRE_PER_KILOGRAM("ml/kg", VOLUME_PER_MASS, MILLI.times(LITRE), Source.SI, "mL/kg"),

    /** Second. */
    SECOND("s", TIME, ONE, Source.SI),
    /** Minute. */
    MINUTE("min", TIME, ExactFactor.MINUTE, Source.SI),
    /** Hour. */
    HOURS("h", TIME, HOUR, Source.SI),
    /** Day of 24 hours. */
    DAY("day", TIME, ExactFactor.DAY, Source.SI, "d"),

    /** Minute per square metre. */
    MINUTE_PER_SQUARE_METRE("min/m²", TIME_PER_AREA, ExactFactor.MINUTE, Source.SI),
    /** Hour per square metre. */
    HOUR_PER_SQUARE_METRE("h/m²", TIME_PER_AREA, HOUR, Source.SI),

    /** Hour per metre. */
    HOUR_PER_METRE("h/m", TIME_PER_LENGTH, HOUR, Source.SI),

    /** Degree of arc; see {@link Dimension#ANGLE} why it is not turned into radians. */
    DEGREE("°", ANGLE, ONE, Source.SI);

    private final String symbol;
    private final Dimension dimension;
    private final ExactFactor factor;
    private final BigDecimal offset;
    private final String source;
    private final String[] alsoRead;
    private final boolean isRoundedOnce;

    Unit(String symbol, Dimension dimension, ExactFactor factor, String source, String... alsoRead) {
        this(symbol, dimension, factor, BigDecimal.ZERO, source, alsoRead);
    }

    Unit(String symbol, Dimension dimension, ExactFactor factor, BigDecimal offset, String source, String... alsoRead) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.source = source;
        this.alsoRead = alsoRead;
        this.isRoundedOnce = offset.signum() == 0 && factor.isRoundedOnce();
    }

    /**
     * The unit's symbol, as it is printed.
     *
     * @return for example "g/m²"
     */
    public String symbol() {
        return symbol;
    }

    /**
     * What the unit measures.
     *
     * @return the dimension
     */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * SI units per one of this unit, rounded to the nearest double.
     *
     * @return the factor, positive (in {@link Dimension#siSymbol()})
     */
    public double factor() {
        return factor.multiply(BigDecimal.ONE).doubleValue();
    }

    /**
     * What is added to a value in this unit before the factor is applied; zero but for °C and °F.
     *
     * @return the offset (in this unit)
     */
    public double offset() {
        return offset.doubleValue();
    }

    /**
     * Where the factor comes from.
     *
     * @return the published source
     */
    public String source() {
        return source;
    }

    /**
     * Every way to write this unit that is read, its symbol first.
     *
     * @return the spellings, unmodifiable
     */
    public List<String> spellings() {
        return Spellings.of(symbol, alsoRead);
    }

    /** Whether a spelling is the symbol or one of the names beside it, special signs not replaced. */
    boolean isOftenWritten(String spelling) {
        if (symbol.equals(spelling)) {
            return true;
        }
        for (String other : alsoRead) {
            if (other.equals(spelling)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Converts a value in this unit to SI.
     *
     * @param value a value in this unit
     * @return the same in {@link Dimension#siSymbol()}
     * @throws IllegalArgumentException if the value or the result is not finite
     */
    public double toSi(double value) {
        return Decimals.requireFinite(
                factor.multiply(Decimals.of(value).add(offset)).doubleValue());
    }

    /**
     * Converts an SI value to this unit.
     *
     * @param si a value in {@link Dimension#siSymbol()}
     * @return the same in this unit
     * @throws IllegalArgumentException if the value or the result is not finite
     */
    public double fromSi(double si) {
        // The same to the last bit, in a fraction of the time: a computed number has some 50 digits.
        return Decimals.requireFinite(
                isRoundedOnce && Decimals.isComputed(si) ? factor.divide(si) : fromDecimal(Decimals.of(si)));
    }

    private double fromDecimal(BigDecimal si) {
        return factor.divide(si).subtract(offset).doubleValue();
    }

    /**
     * The units of a dimension, in the order in which messages list them.
     *
     * @param dimension any dimension
     * @return its units, unmodifiable, never empty
     */
    public static List<Unit> of(Dimension dimension) {
        return Spellings.unitsOf(dimension);
    }

    /**
     * Every accepted spelling of every unit of a dimension.
     *
     * @param dimension any dimension
     * @return the spellings, unmodifiable, without repetition
     */
    public static List<String> spellings(Dimension dimension) {
        return Spellings.spellingsOf(dimension);
    }

    /**
     * Finds the unit of a dimension by one of its spellings.
     *
     * @param spelling as {@link #spellings()} lists it; case counts
     * @param dimension the wanted dimension
     * @return the unit, or empty if the dimension has none of that spelling
     */
    public static Optional<Unit> find(String spelling, Dimension dimension) {
        return Spellings.find(spelling, dimension);
    }

    /**
     * Finds a unit of any dimension by one of its spellings; °C, °F and K are temperatures, not differences.
     *
     * @param spelling as {@link #spellings()} lists it; case counts
     * @return the unit, or empty if none has that spelling
     */
    public static Optional<Unit> find(String spelling) {
        return Spellings.find(spelling);
    }

    @Override
    public String toString() {
        return symbol;
    }

    /** The published sources of the factors. */
    private static final class Source {
        static final String SI = "BIPM, The International System of Units (SI), 9th edition, 2019, from memory";
        static final String YARD_AND_POUND = "International yard and pound agreement, 1959, from memory";
        static final String POUND_FORCE = YARD_AND_POUND
                + "; standard gravity, 3rd General Conference on Weights and Measures, 1901, from memory";
        static final String US_GALLON = "NIST SP 811, 2008, appendix B (231 cubic inches), from memory";
        static final String BAR = "NIST SP 811, 2008, appendix B (bar), from memory";
        static final String FAHRENHEIT = "NIST SP 811, 2008, appendix B (degree Fahrenheit), from memory";

        private Source() {}
    }
}
