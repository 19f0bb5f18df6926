package laminate.cli;

import java.time.DateTimeException;
import java.time.LocalTime;
import laminate.unit.DateText;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a time of day on the command line: 8:00 or 08:00. */
final class Clock implements ITypeConverter<LocalTime> {

    @Override
    public LocalTime convert(String text) {
        try {
            return DateText.timeOfDay(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException("'" + text + "' is not a time of day, as 08:00");
        }
    }
}
