package laminate.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a number measures, and with it the units in which it may be written. */
public enum Dimension {
    /** Length or thickness (m). */
    LENGTH("a length", "m", "mm"),
    /** Area (m²). */
    AREA("an area", "m²", "m²"),
    /** Permeability of a bed of fibres to a liquid (m²), by Darcy's law; it has the units of an area and its own scale. */
    PERMEABILITY("a permeability", "m²", "m²"),
    /** Volume (m³). */
    VOLUME("a volume", "m³", "l"),
    /** Mass (kg). */
    MASS("a mass", "kg", "kg"),
    /** Mass per area, which the trade calls areal weight (kg/m²). */
    AREAL_MASS("an areal weight", "kg/m²", "g/m²"),
    /** Density (kg/m³). */
    DENSITY("a density", "kg/m³", "kg/m³"),
    /** Temperature on the thermodynamic scale (K). */
    TEMPERATURE("a temperature", "K", "°C"),
    /** Difference of two temperatures (K); 1 °C is 1 K here, not 274.15 K. */
    TEMPERATURE_DIFFERENCE("a temperature difference", "K", "K"),
    /** Pressure, stress, strength or modulus (Pa). */
    PRESSURE("a pressure or modulus", "Pa", "MPa"),
    /** Force (N). */
    FORCE("a force", "N", "N"),
    /** Force per width of a laminate (N/m). */
    FORCE_PER_LENGTH("a force per length", "N/m", "N/mm"),
    /** Moment per width of a laminate (N·m/m); a plain N is not read, as it cannot be told from a force. */
    MOMENT_PER_LENGTH("a moment per length", "N·m/m", "N·m/m"),
    /** Curvature of a bent or twisted laminate (1/m). */
    CURVATURE("a curvature", "1/m", "1/m"),
    /** Dynamic viscosity (Pa·s). */
    VISCOSITY("a viscosity", "Pa·s", "mPa·s"),
    /** Coefficient of linear thermal expansion (1/K). */
    EXPANSION("a thermal expansion", "1/K", "1/K"),
    /** Share of a whole (1), always written in per cent. */
    FRACTION("a fraction", "1", "%"),
    /** Volume per mass, as a dose of catalyst (m³/kg). */
    VOLUME_PER_MASS("a volume per mass", "m³/kg", "ml/kg"),
    /** Time (s). */
    TIME("a time", "s", "min"),
    /** Working time per area (s/m²). */
    TIME_PER_AREA("a time per area", "s/m²", "h/m²"),
    /** Working time per length (s/m). */
    TIME_PER_LENGTH("a time per length", "s/m", "h/m"),
    /** Angle, in degrees (°), not radians, as 45° and 90° have to stay exact; a bare number is read as degrees. */
    ANGLE("an angle", "°", "°");

    private final String phrase;
    private final String siSymbol;
    private final String exampleSymbol;

    Dimension(String phrase, String siSymbol, String exampleSymbol) {
        this.phrase = phrase;
        this.siSymbol = siSymbol;
        this.exampleSymbol = exampleSymbol;
    }

    /**
     * The dimension in words with its article, for messages.
     *
     * @return for example "an areal weight"
     */
    public String phrase() {
        return phrase;
    }

    /**
     * Symbol of the unit in which values of this dimension are kept inside the library.
     *
     * @return the coherent SI unit, or ° for {@link #ANGLE}
     */
    public String siSymbol() {
        return siSymbol;
    }

    /**
     * The accepted units as a phrase for messages, one symbol a unit.
     *
     * @return for example "s, min, h or day"
     */
    public String accepted() {
        List<String> symbols = new ArrayList<>();
        Unit.of(this).forEach(unit -> symbols.add(unit.symbol()));
        if (this == ANGLE) {
            symbols.add("a bare number of degrees");
        }
        return alternatives(symbols);
    }

    /** Symbol of the unit that a message takes when it shows how to write a number. */
    String exampleSymbol() {
        return exampleSymbol;
    }

    /** A number with each of the units that it may well have been meant in, for the message where it has none. */
    String written(String number) {
        List<String> symbols = switch (this) {
            case MASS -> List.of("g", "kg");
            case VOLUME -> List.of("ml", "l");
            case TIME -> List.of("s", "min", "h", "d");
            case PRESSURE -> List.of("mbar", "kPa", "MPa", "GPa");
            default -> List.of(exampleSymbol);
        };
        List<String> texts = new ArrayList<>();
        symbols.forEach(symbol -> texts.add(number + " " + symbol));
        return alternatives(texts);
    }

    /** A number of a usual size with its unit, for the message where what is written is no number at all. */
    String example() {
        String number = switch (this) {
            case ANGLE -> "45";
            case FRACTION -> "30";
            case TEMPERATURE -> "18";
            case LENGTH, AREAL_MASS -> "450";
            case PERMEABILITY -> "1e-10";
            default -> "1.5";
        };
        return number + " " + exampleSymbol;
    }

    /** Joins as a sentence does: "a", "a or b", "a, b or c". */
    static String alternatives(List<String> words) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words) : String.join(", ", words.subList(0, last)) + " or " + words.get(last);
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
