package laminate.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import laminate.unit.JsonNumbers;

/**
 * Writes JSON (RFC 8259), always alike: keys in the order given, two spaces a level, numbers to 15 significant digits.
 *
 * <p>There is no way to write null: what is not known is left out.
 *
 * <pre>{@code
 * JsonWriter json = new JsonWriter(out);
 * json.object().key("part").text("lid").key("mass_kg").number(4.2).end();
 * }</pre>
 */
public final class JsonWriter {
    private static final String HEX = "0123456789abcdef";

    /** A line end and two spaces for each level. */
    private static final List<String> INDENTS = List.of(
            "\n", "\n  ", "\n    ", "\n      ", "\n        ", "\n          ", "\n            ", "\n              ");

    private final Appendable out;
    private final StringBuilder ends = new StringBuilder();
    private boolean isFirst = true;
    private boolean afterKey;
    private boolean onOneLine;

    /**
     * A writer.
     *
     * @param out takes the text; its failures come back as {@link UncheckedIOException}
     */
    public JsonWriter(Appendable out) {
        this.out = out;
    }

    /**
     * Writes a document.
     *
     * @param out takes the text
     * @param document writes it
     * @throws IOException if the text cannot be taken
     */
    public static void write(Appendable out, Consumer<JsonWriter> document) throws IOException {
        try {
            document.accept(new JsonWriter(out));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /**
     * Opens an object.
     *
     * @return this
     */
    public JsonWriter object() {
        return open('{', '}');
    }

    /**
     * Opens an array.
     *
     * @return this
     */
    public JsonWriter array() {
        return open('[', ']');
    }

    /**
     * Closes the object or array opened last.
     *
     * @return this
     * @throws IllegalStateException if none is open, or a key waits for its value
     */
    public JsonWriter end() {
        if (ends.length() == 0 || afterKey) {
            throw new IllegalStateException(afterKey ? "a key has no value yet" : "nothing is open");
        }
        char end = ends.charAt(ends.length() - 1);
        ends.setLength(ends.length() - 1);
        if (!isFirst) {
            newLine();
        }
        append(String.valueOf(end));
        isFirst = ends.length() == 0;
        if (isFirst) {
            append("\n");
        }
        return this;
    }

    /**
     * Writes a key of the object opened last; its value follows.
     *
     * @param key the key
     * @return this
     * @throws IllegalStateException if no object is open or a key waits for its value
     */
    public JsonWriter key(String key) {
        if (afterKey || ends.length() == 0 || ends.charAt(ends.length() - 1) != '}') {
            throw new IllegalStateException("no key can stand here: " + key);
        }
        separate();
        append(quoted(key));
        append(": ");
        afterKey = true;
        return this;
    }

    /**
     * Writes a text.
     *
     * @param text the text
     * @return this
     */
    public JsonWriter text(String text) {
        return value(quoted(text));
    }

    /**
     * Writes a number.
     *
     * @param number the number, finite
     * @return this
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public JsonWriter number(double number) {
        return value(JsonNumbers.format(number));
    }

    /**
     * Writes a truth value.
     *
     * @param flag the value
     * @return this
     */
    public JsonWriter flag(boolean flag) {
        return value(flag ? "true" : "false");
    }

    /**
     * Writes a key with a number.
     *
     * @param key the key
     * @param number the number, finite
     * @return this
     */
    public JsonWriter field(String key, double number) {
        return key(key).number(number);
    }

    /**
     * Writes a key with a number, or nothing where it is not known.
     *
     * @param key the key
     * @param number the number
     * @return this
     */
    public JsonWriter field(String key, OptionalDouble number) {
        return number.isPresent() ? field(key, number.getAsDouble()) : this;
    }

    /**
     * Writes a key with a text.
     *
     * @param key the key
     * @param text the text
     * @return this
     */
    public JsonWriter field(String key, String text) {
        return key(key).text(text);
    }

    /**
     * Writes numbers as an array on one line.
     *
     * @param numbers the numbers, finite
     * @return this
     * @throws IllegalArgumentException if one is NaN or infinite
     */
    public JsonWriter numbers(double... numbers) {
        array();
        onOneLine = true;
        for (double number : numbers) {
            number(number);
        }
        isFirst = true;
        end();
        onOneLine = false;
        return this;
    }

    /**
     * Writes rows of numbers, each row on one line.
     *
     * @param rows the rows
     * @return this
     */
    public JsonWriter matrix(double[][] rows) {
        array();
        for (double[] row : rows) {
            numbers(row);
        }
        return end();
    }

    private JsonWriter open(char start, char end) {
        value(String.valueOf(start));
        ends.append(end);
        isFirst = true;
        return this;
    }

    private JsonWriter value(String token) {
        if (ends.length() > 0 && ends.charAt(ends.length() - 1) == '}' && !afterKey) {
            throw new IllegalStateException("a value in an object needs a key");
        }
        if (!afterKey) {
            separate();
        }
        append(token);
        afterKey = false;
        isFirst = false;
        return this;
    }

    private void separate() {
        if (!isFirst) {
            append(onOneLine ? ", " : ",");
        }
        if (ends.length() > 0 && !onOneLine) {
            newLine();
        }
        isFirst = false;
    }

    private void newLine() {
        append(ends.length() < INDENTS.size() ? INDENTS.get(ends.length()) : "\n" + "  ".repeat(ends.length()));
    }

    private void append(String text) {
        try {
            out.append(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder(text.length() + 2).append('"');
        int plain = 0;
        for (int i = 0; i < text.length(); i++) {
            if (isSpecial(text.charAt(i))) {
                quoted.append(text, plain, i);
                appendEscaped(text, i, quoted);
                plain = i + 1;
            }
        }
        return quoted.append(text, plain, text.length()).append('"').toString();
    }

    private static boolean isSpecial(char c) {
        return c < ' ' || c == '"' || c == '\\' || c >= 0x7F;
    }

    private static void appendEscaped(String text, int i, StringBuilder quoted) {
        char c = text.charAt(i);
        if (c == '"' || c == '\\') {
            quoted.append('\\').append(c);
        } else if (c == '\n') {
            quoted.append("\\n");
        } else if (c == '\t') {
            quoted.append("\\t");
        } else if (c < ' ' || c == 0x7F || c == 0x2028 || c == 0x2029 || isLoneSurrogate(text, i)) {
            quoted.append("\\u");
            for (int shift = 12; shift >= 0; shift -= 4) {
                quoted.append(HEX.charAt(c >> shift & 0xF));
            }
        } else {
            quoted.append(c);
        }
    }

    /** Half a pair has no UTF-8; written as an escape it survives. */
    private static boolean isLoneSurrogate(String text, int i) {
        char c = text.charAt(i);
        if (Character.isHighSurrogate(c)) {
            return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
        }
        return Character.isLowSurrogate(c) && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
    }
}
