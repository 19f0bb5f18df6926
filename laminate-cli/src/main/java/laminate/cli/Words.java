package laminate.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one of a few words on the command line. Case does not count, and a hyphen may stand for a space, so that
 * nothing needs quotes.
 */
final class Words<T> implements ITypeConverter<T> {
    private final T[] values;
    private final Function<T, String> word;

    /**
     * The words of some values.
     *
     * @param values what is accepted
     * @param word the word of each
     */
    Words(T[] values, Function<T, String> word) {
        this.values = values;
        this.word = word;
    }

    @Override
    public T convert(String text) {
        List<String> words = new ArrayList<>();
        for (T value : values) {
            if (plain(word.apply(value)).equals(plain(text))) {
                return value;
            }
            words.add(word.apply(value));
        }
        throw new TypeConversionException("'" + text + "' is not one of " + String.join(", ", words));
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
    }
}
