package laminate.cli;

import laminate.unit.Dimension;
import laminate.unit.Quantity;
import laminate.unit.QuantityException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads a number with its unit on the command line, as files have it; the result is in SI.
 *
 * @param dimension what it measures
 */
record Amounts(Dimension dimension) implements ITypeConverter<Double> {

    @Override
    public Double convert(String text) {
        try {
            return Quantity.parse(text, dimension);
        } catch (QuantityException e) {
            throw new TypeConversionException(e.getMessage());
        }
    }
}
