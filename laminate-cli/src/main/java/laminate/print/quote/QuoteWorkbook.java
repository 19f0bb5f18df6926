package laminate.print.quote;

import java.io.IOException;
import java.io.OutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes quotes as a workbook (Office Open XML, ISO/IEC 29500) with a sheet for each table of {@link QuoteCsv} that there is.
 * A text that looks like a formula is kept as text. The file bears the time at which it is written.
 */
public final class QuoteWorkbook {
    private static final String APPLICATION = "laminate";
    private static final String VERSION = "1.0";

    /** A writer. */
    public QuoteWorkbook() {}

    /**
     * Writes a workbook.
     *
     * @param quoted a set, or parts by themselves
     * @param out takes the file; it stays open
     * @throws IOException if that fails
     */
    public void print(QuotedSet quoted, OutputStream out) throws IOException {
        Workbook book = new Workbook(out, APPLICATION, VERSION);
        for (QuoteCsv.Which which : QuoteCsv.Which.values()) {
            if (quoted.project().isPresent() || !which.isOfProject()) {
                fill(book.newWorksheet(QuoteTable.title(which)), QuoteTable.of(which, quoted));
            }
        }
        book.finish();
    }

    private static void fill(Worksheet sheet, QuoteTable table) {
        for (int c = 0; c < table.headings().size(); c++) {
            sheet.value(0, c, table.headings().get(c));
            sheet.style(0, c).bold().wrapText(true).set();
        }
        sheet.freezePane(0, 1);
        for (int r = 0; r < table.rows().size(); r++) {
            for (int c = 0; c < table.headings().size(); c++) {
                fill(sheet, r + 1, c, table.rows().get(r).get(c));
            }
        }
    }

    private static void fill(Worksheet sheet, int row, int column, QuoteTable.Cell cell) {
        if (cell instanceof QuoteTable.Number number) {
            sheet.value(row, column, number.value());
            int decimals = Math.max(0, number.value().scale());
            sheet.style(row, column)
                    .format(decimals == 0 ? "0" : "0." + "0".repeat(Math.min(decimals, 2)))
                    .set();
        } else if (cell instanceof QuoteTable.Text text) {
            sheet.value(row, column, printable(text.text()));
        }
    }

    /** A workbook is XML, which has no place for control characters. */
    private static String printable(String text) {
        StringBuilder printable = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> Character.isISOControl(c)
                                || Character.getType(c) == Character.SURROGATE
                                || c >= 0xFFFE && c <= 0xFFFF
                        ? ' '
                        : c)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }
}
