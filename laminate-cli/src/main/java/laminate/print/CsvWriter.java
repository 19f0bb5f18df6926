package laminate.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import laminate.unit.JsonNumbers;
import laminate.unit.Money;
import laminate.unit.Unit;

/**
 * Writes comma-separated values (RFC 4180): lines end in CR LF, a field is quoted where it holds a comma, a quote, or a
 * line break.
 *
 * <p>Spreadsheets run a text that begins with {@code =}, {@code +}, {@code -} or {@code @}, or with a tab or carriage
 * return before one, as a formula. Names come from files that others wrote, so such a text gets a leading apostrophe,
 * by which a spreadsheet knows text. Numbers are written apart and keep their sign.
 */
public final class CsvWriter {
    /** The ASCII characters, and their full-width forms, which some spreadsheets read alike. */
    private static final String STARTS_FORMULA = "=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20";

    private final Appendable out;
    private boolean isFirst = true;

    /**
     * A writer.
     *
     * @param out takes the text; its failures come back as {@link UncheckedIOException}
     */
    public CsvWriter(Appendable out) {
        this.out = out;
    }

    /**
     * Writes a table.
     *
     * @param out takes the text
     * @param table writes it
     * @throws IOException if the text cannot be taken
     */
    public static void write(Appendable out, Consumer<CsvWriter> table) throws IOException {
        try {
            table.accept(new CsvWriter(out));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /**
     * Writes a line of headings.
     *
     * @param headings the headings
     * @return this
     */
    public CsvWriter headings(List<String> headings) {
        headings.forEach(this::text);
        return end();
    }

    /**
     * Writes a field of text.
     *
     * @param text the text
     * @return this
     */
    public CsvWriter text(String text) {
        boolean runs = !text.isEmpty() && STARTS_FORMULA.indexOf(text.charAt(0)) >= 0;
        return field(runs ? "'" + text : text);
    }

    /**
     * Writes a field with a number to 15 significant digits.
     *
     * @param number the number, finite
     * @return this
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public CsvWriter number(double number) {
        return field(JsonNumbers.format(number));
    }

    /**
     * Writes a field with a decimal number, all its digits as they are: 12.50.
     *
     * @param number the number
     * @return this
     */
    public CsvWriter number(BigDecimal number) {
        return field(number.toPlainString());
    }

    /**
     * Writes a field with a value in a unit to 15 significant digits.
     *
     * @param si the value (SI), finite
     * @param unit the unit that the heading names
     * @return this
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public CsvWriter number(double si, Unit unit) {
        return number(unit.fromSi(si));
    }

    /**
     * Writes a field with a value in a unit, empty where there is none.
     *
     * @param si the value (SI), finite
     * @param unit the unit that the heading names
     * @return this
     */
    public CsvWriter number(OptionalDouble si, Unit unit) {
        return si.isPresent() ? number(si.getAsDouble(), unit) : nothing();
    }

    /**
     * Writes a field with an amount of money as it is rounded, without its currency.
     *
     * @param money the amount
     * @return this
     */
    public CsvWriter amount(Money money) {
        return field(money.amount().toPlainString());
    }

    /**
     * Writes a field with an amount of money, empty where there is none.
     *
     * @param money the amount
     * @return this
     */
    public CsvWriter amount(Optional<Money> money) {
        return money.isPresent() ? amount(money.get()) : nothing();
    }

    /**
     * The symbol of a unit as a piece of a heading: g/m² gives g_m2.
     *
     * @param unit the unit
     * @return the piece
     */
    public static String symbol(Unit unit) {
        return unit.symbol()
                .replace('/', '_')
                .replace(' ', '_')
                .replace("·", "")
                .replace("%", "percent")
                .replace('²', '2')
                .replace('³', '3');
    }

    /**
     * Writes an empty field: not known, or does not apply.
     *
     * @return this
     */
    public CsvWriter nothing() {
        return field("");
    }

    /**
     * Ends the line.
     *
     * @return this
     */
    public CsvWriter end() {
        append("\r\n");
        isFirst = true;
        return this;
    }

    private CsvWriter field(String field) {
        append(isFirst ? "" : ",");
        isFirst = false;
        append(needsQuotes(field) ? '"' + field.replace("\"", "\"\"") + '"' : field);
        return this;
    }

    private static boolean needsQuotes(String field) {
        for (int i = 0; i < field.length(); i++) {
            if ("\",\r\n".indexOf(field.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    private void append(String text) {
        try {
            out.append(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
