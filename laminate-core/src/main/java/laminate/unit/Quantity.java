package laminate.unit;

/**
 * A number with its unit, as a person wrote it or is to read it.
 *
 * @param value the number (in the unit)
 * @param unit the unit
 */
public record Quantity(double value, Unit unit) {
    /**
     * Checks that the quantity can be computed with.
     *
     * @param value the number (in the unit)
     * @param unit the unit
     * @throws IllegalArgumentException if the value or its SI equivalent is not finite, or a temperature is below
     *     absolute zero
     */
    public Quantity {
        if (unit == null) {
            throw new IllegalArgumentException("a quantity needs a unit; " + value + " has none");
        }
        if (!Double.isFinite(value) || !Double.isFinite(value * unit.factor())) {
            throw new IllegalArgumentException(
                    value + " " + unit + " is beyond what can be computed with; write a smaller number");
        }
        if (unit.dimension() == Dimension.TEMPERATURE && unit.toSi(value) < 0) {
            throw new IllegalArgumentException(
                    JsonNumbers.format(value) + " " + unit + " is below absolute zero, which is -273.15 °C");
        }
    }

    /**
     * The value in SI.
     *
     * @return the value in {@link Dimension#siSymbol()}; a temperature in kelvin, an angle in degrees
     */
    public double si() {
        return unit.toSi(value);
    }

    /**
     * Makes a quantity of an SI value, to be shown in a unit.
     *
     * @param si the value in {@link Dimension#siSymbol()}
     * @param unit the unit it is to be shown in
     * @return the same in that unit
     * @throws IllegalArgumentException if the value is not finite
     */
    public static Quantity ofSi(double si, Unit unit) {
        return new Quantity(unit.fromSi(si), unit);
    }

    /**
     * Reads a number with its unit, whatever it measures: "450 g/m²", "3.1mm", "5.3e-6 1/K". The space between the two
     * may be left out, unless the unit begins with a digit.
     *
     * @param text the text
     * @return the quantity; °C, °F and K are read as temperatures, not as differences
     * @throws QuantityException if the text is not one number with one known unit
     */
    public static Quantity parse(String text) {
        return QuantityParser.read(text);
    }

    /**
     * Reads a number with a unit of the wanted dimension. Only an angle may be bare.
     *
     * @param text the text
     * @param wanted what it has to measure
     * @return the value in {@link Dimension#siSymbol()}
     * @throws QuantityException if the text is not one number with one unit of that dimension
     */
    public static double parse(String text, Dimension wanted) {
        return QuantityParser.read(text, wanted).si();
    }

    /**
     * The quantity as text that reads back.
     *
     * @return the value to 15 digits, and the unit's symbol
     */
    @Override
    public String toString() {
        return JsonNumbers.format(value) + " " + unit;
    }
}
