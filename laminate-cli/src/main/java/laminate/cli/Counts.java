package laminate.cli;

import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads numbers of mouldings, or of sets of them, on the command line: 1,5,10,25. */
final class Counts implements ITypeConverter<List<Integer>> {
    private static final int MOST = 100_000;

    @Override
    public List<Integer> convert(String text) {
        return Stream.of(text.split(",", -1))
                .map(String::strip)
                .map(Counts::count)
                .distinct()
                .toList();
    }

    /** Reads one number. */
    static final class One implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String text) {
            return count(text.strip());
        }
    }

    private static int count(String text) {
        if (text.matches("0*[1-9][0-9]{0,5}") && Integer.parseInt(text) <= MOST) {
            return Integer.parseInt(text);
        }
        throw new TypeConversionException("'" + text + "' is no number of parts or sets; whole numbers from 1 to "
                + MOST + " are accepted, as 1,5,10");
    }
}
