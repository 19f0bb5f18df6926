package laminate.print;

import java.util.ArrayList;
import java.util.List;
import laminate.print.Style.Mark;
import laminate.print.Table.Column;

/** Tells a table row by row, "heading cell unit, heading cell unit", for a page too narrow for its columns. */
final class RowText {
    private RowText() {}

    static List<String> lines(Table table, int page, Style style) {
        List<String> lines = new ArrayList<>();
        int first = table.rows().size() - table.totals();
        for (int r = 0; r < table.rows().size(); r++) {
            boolean isTotal = r >= first;
            for (String line : Lines.wrap(sentence(table.columns(), table.rows().get(r)), page)) {
                lines.add(isTotal ? style.apply(Mark.TOTAL, line) : line);
            }
        }
        return lines;
    }

    private static String sentence(List<Column> columns, List<String> cells) {
        StringBuilder sentence = new StringBuilder();
        for (int c = 0; c < cells.size(); c++) {
            if (!cells.get(c).isEmpty()) {
                Column column = columns.get(c);
                sentence.append(sentence.length() == 0 ? "" : ", ")
                        .append(column.heading())
                        .append(column.heading().isEmpty() ? "" : " ")
                        .append(cells.get(c))
                        .append(column.unit().isEmpty() ? "" : " " + column.unit());
            }
        }
        return sentence.toString();
    }
}
