package laminate.print.quote;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import laminate.print.CsvWriter;
import laminate.print.Printer;

/** Prints one table of quotes as comma-separated values, all parts below each other. Money is in the currency's digits. */
public final class QuoteCsv implements Printer<QuotedPart> {

    /** The tables there are. */
    public enum Which {
        /** A row for each number, with every line of its price. */
        PRICES,
        /** A row for each line of a price, with the rate and base it is reckoned by. */
        BUILD_UP,
        /** What moves the price. */
        SENSITIVITY;

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

    @Override
    public void print(List<QuotedPart> parts, Appendable out) throws IOException {
        QuoteTable table = QuoteTable.of(which, parts);
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
