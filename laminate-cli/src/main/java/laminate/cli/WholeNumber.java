package laminate.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number on the command line; the command says which it takes. */
final class WholeNumber implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String text) {
        if (text.matches("[+-]?[0-9]{1,9}")) {
            return Integer.valueOf(text);
        }
        throw new TypeConversionException("'" + text + "' is not a whole number of up to nine digits, as 2");
    }
}
