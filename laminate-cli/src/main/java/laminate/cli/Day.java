package laminate.cli;

import java.time.DateTimeException;
import java.time.LocalDate;
import laminate.unit.DateText;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day on the command line: 2026-03-02. */
final class Day implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String text) {
        try {
            return DateText.day(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(
                    "'" + text + "' is no day; year, month and day are accepted, as 2026-03-02");
        }
    }
}
