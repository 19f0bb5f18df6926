package laminate.unit;

/**
 * The units a reader is used to, chosen by dimension.
 *
 * <p>Where a dimension has no US unit that is read here (viscosity, moment per length, dose, time), US
 * readers get the SI unit.
 */
public enum UnitSystem {
    /** The International System with the trade's multiples: mm, g/m², kg, l, GPa, °C. */
    SI,
    /** US customary units: in, oz/yd², lb, US gal, Msi, °F. */
    US;

    /**
     * The usual unit of a dimension: for a length that of a thickness, for a pressure that of a modulus.
     *
     * @param dimension any dimension
     * @return a unit of that dimension
     */
    public Unit unit(Dimension dimension) {
        return this == US ? us(dimension) : si(dimension);
    }

    /**
     * The unit for large amounts of a dimension, such as a length off the roll.
     *
     * @param dimension any dimension
     * @return m or ft for a length, kN for a force in SI, otherwise the usual unit
     */
    public Unit large(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> this == US ? Unit.FEET : Unit.METRE;
            case FORCE -> this == US ? Unit.POUNDS_FORCE : Unit.KILONEWTON;
            default -> unit(dimension);
        };
    }

    /**
     * The unit for small amounts of a dimension, such as a dose of catalyst, or a strength beside a modulus.
     *
     * @param dimension any dimension
     * @return g or oz, ml or US fl oz, MPa or ksi, min, otherwise the usual unit
     */
    public Unit small(Dimension dimension) {
        return switch (dimension) {
            case MASS -> this == US ? Unit.OUNCES : Unit.GRAMS;
            case VOLUME -> this == US ? Unit.US_FLUID_OUNCE : Unit.MILLILITRE;
            case PRESSURE -> this == US ? Unit.KSI : Unit.MEGAPASCAL;
            case TIME -> Unit.MINUTE;
            default -> unit(dimension);
        };
    }

    private static Unit us(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> Unit.INCHES;
            case AREA -> Unit.SQUARE_FOOT;
            case VOLUME -> Unit.US_GALLON;
            case MASS -> Unit.POUNDS;
            case AREAL_MASS -> Unit.OUNCE_PER_SQUARE_YARD;
            case DENSITY -> Unit.POUND_PER_CUBIC_FOOT;
            case TEMPERATURE -> Unit.FAHRENHEITS;
            case TEMPERATURE_DIFFERENCE -> Unit.FAHRENHEIT_DIFFERENCE;
            case PRESSURE -> Unit.MSI;
            case EXPANSION -> Unit.MILLIONTH_PER_FAHRENHEIT;
            case FORCE -> Unit.POUNDS_FORCE;
            case FORCE_PER_LENGTH -> Unit.POUND_PER_INCH;
            case MOMENT_PER_LENGTH -> Unit.POUND_INCH_PER_INCH;
            case CURVATURE -> Unit.PER_INCH;
            default -> si(dimension);
        };
    }

    private static Unit si(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> Unit.MILLIMETRE;
            case AREA -> Unit.SQUARE_METRE;
            case PERMEABILITY -> Unit.SQUARE_METRE_PERMEABILITY;
            case VOLUME -> Unit.LITRES;
            case MASS -> Unit.KILOGRAM;
            case AREAL_MASS -> Unit.GRAM_PER_SQUARE_METRE;
            case DENSITY -> Unit.KILOGRAM_PER_CUBIC_METRE;
            case TEMPERATURE -> Unit.CELSIUS;
            case TEMPERATURE_DIFFERENCE -> Unit.KELVIN_DIFFERENCE;
            case PRESSURE -> Unit.GIGAPASCAL;
            case FORCE -> Unit.NEWTON;
            case FORCE_PER_LENGTH -> Unit.NEWTON_PER_MILLIMETRE;
            case MOMENT_PER_LENGTH -> Unit.NEWTON_METRE_PER_METRE;
            case CURVATURE -> Unit.PER_METRE;
            case VISCOSITY -> Unit.MILLIPASCAL_SECOND;
            case EXPANSION -> Unit.MILLIONTH_PER_KELVIN;
            case FRACTION -> Unit.PERCENT;
            case VOLUME_PER_MASS -> Unit.MILLILITRE_PER_KILOGRAM;
            case TIME -> Unit.HOURS;
            case TIME_PER_AREA -> Unit.HOUR_PER_SQUARE_METRE;
            case TIME_PER_LENGTH -> Unit.HOUR_PER_METRE;
            case ANGLE -> Unit.DEGREE;
        };
    }
}
