package laminate.print.quote;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import laminate.print.CsvWriter;

/** Prints one table of quotes as comma-separated values, all parts below each other. Money is in the currency's digits. */
public final class QuoteCsv {

    /** The tables there are. */
    public enum Which {
        /** A row for each number, with every line of its price. */
        PRICES,
        /** A row for each line of a price, with the rate and base it is reckoned by. */
        BUILD_UP,
        /** What moves the price. */
        SENSITIVITY,
        /** Of a project: a row for each number of sets, with every line of its price. */
        SETS,
        /** Of a project: a row for each that pays for a mould or plug, with what it pays. */
        TOOLING;

        /**
         * Whether the table tells of a project alone.
         *
         * @return true for {@link #SETS} and {@link #TOOLING}
         */
        public boolean isOfProject() {
            return this == SETS || this == TOOLING;
        }

        /**
         * The word that stands for the table.
         *
         * @return the word
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final Which which;

    /**
     * A printer.
     *
     * @param which the table wanted
     */
    public QuoteCsv(Which which) {
        this.which = which;
    }

    /**
     * Prints a quote.
     *
     * @param quoted a set, or parts by themselves
     * @param out takes the text
     * @throws IOException if that fails
     */
    public void print(QuotedSet quoted, Appendable out) throws IOException {
        QuoteTable table = QuoteTable.of(which, quoted);
        CsvWriter.write(out, csv -> {
            csv.headings(table.headings());
            for (List<QuoteTable.Cell> row : table.rows()) {
                row.forEach(cell -> print(cell, csv));
                csv.end();
            }
        });
    }

    private static void print(QuoteTable.Cell cell, CsvWriter csv) {
        if (cell instanceof QuoteTable.Number number) {
            csv.number(number.value());
        } else if (cell instanceof QuoteTable.Text text) {
            csv.text(text.text());
        }
    }
}
