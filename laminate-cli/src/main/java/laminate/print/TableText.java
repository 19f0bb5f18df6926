package laminate.print;

import java.util.ArrayList;
import java.util.List;
import laminate.print.Style.Mark;
import laminate.print.Table.Align;
import laminate.print.Table.Column;

/**
 * Lays a table out in columns. Numbers stand to the right and are never broken; words wrap where the table would be
 * wider than the page. A table that cannot fit is told in pieces where its columns are in groups, else row by row.
 */
final class TableText {
    private static final int NARROWEST_WORDS = 9;
    private static final int WIDE_GAP = 2;

    private final Table table;
    private final int page;
    private final Style style;
    private final int[] narrowest;
    private final int[] widths;
    private int gap = WIDE_GAP;

    private TableText(Table table, int page, Style style) {
        this.table = table;
        this.page = page;
        this.style = style;
        this.narrowest = new int[table.columns().size()];
        this.widths = new int[table.columns().size()];
    }

    /**
     * The lines of a table.
     *
     * @param table the table
     * @param page the most columns of a line
     * @param style how headings and sums are marked
     * @return the lines, none wider than the page
     */
    static List<String> lines(Table table, int page, Style style) {
        TableText whole = new TableText(table, page, style);
        if (whole.isLaidOut()) {
            return whole.columns();
        }
        List<String> pieces = pieces(table, page, style);
        return pieces.isEmpty() ? RowText.lines(table, page, style) : pieces;
    }

    /** As many groups of columns a piece as fit; nothing where one by itself does not. */
    private static List<String> pieces(Table table, int page, Style style) {
        List<String> lines = new ArrayList<>();
        for (int first = 1; first <= table.groups(); ) {
            int last = first;
            TableText piece = new TableText(table.groups(first, last), page, style);
            if (!piece.isLaidOut()) {
                return List.of();
            }
            while (last < table.groups()) {
                TableText more = new TableText(table.groups(first, last + 1), page, style);
                if (!more.isLaidOut()) {
                    break;
                }
                piece = more;
                last++;
            }
            if (first > 1) {
                lines.add("");
            }
            lines.addAll(piece.columns());
            first = last + 1;
        }
        return lines;
    }

    /** Finds the width of each column, if the page holds them. */
    private boolean isLaidOut() {
        for (int c = 0; c < widths.length; c++) {
            narrowest[c] = narrowestWidth(c);
            widths[c] =
                    Math.max(narrowest[c], Lines.width(table.columns().get(c).heading()));
        }
        return fits();
    }

    /** The width at which no cell and no word of the heading is broken. */
    private int narrowestWidth(int c) {
        Column column = table.columns().get(c);
        int width = Math.max(Lines.longestWord(column.heading()), Lines.width(column.unit()));
        for (List<String> row : table.rows()) {
            width = Math.max(width, Lines.width(row.get(c)));
        }
        return width;
    }

    /** Makes room: headings wrap first, then words, and at last the columns move together. */
    private boolean fits() {
        while (total() > page) {
            int heading = widestHeading();
            int words = widestWords();
            if (heading >= 0) {
                widths[heading]--;
            } else if (words >= 0) {
                widths[words]--;
            } else if (gap == WIDE_GAP) {
                gap = 1;
            } else {
                return false;
            }
        }
        return true;
    }

    private int widestHeading() {
        int widest = -1;
        int slack = 0;
        for (int c = 0; c < widths.length; c++) {
            if (widths[c] - narrowest[c] > slack) {
                widest = c;
                slack = widths[c] - narrowest[c];
            }
        }
        return widest;
    }

    private int total() {
        int total = gap * (widths.length - 1);
        for (int width : widths) {
            total += width;
        }
        return total;
    }

    private int widestWords() {
        int widest = -1;
        int width = 0;
        for (int c = 0; c < widths.length; c++) {
            if (table.columns().get(c).align() == Align.LEFT && widths[c] > Math.max(width, leastWords(c))) {
                widest = c;
                width = widths[c];
            }
        }
        return widest;
    }

    /** No word is broken where the table can be told in pieces instead. */
    private int leastWords(int c) {
        int least = NARROWEST_WORDS;
        if (table.groups() > 1) {
            for (List<String> row : table.rows()) {
                least = Math.max(least, Lines.longestWord(row.get(c)));
            }
        }
        return least;
    }

    private List<String> columns() {
        List<String> lines = new ArrayList<>();
        addHeadings(lines);
        int first = table.rows().size() - table.totals();
        for (int r = 0; r < table.rows().size(); r++) {
            boolean isTotal = r >= first;
            if (r == first && r > 0) {
                lines.add("-".repeat(total()));
            }
            for (String line : row(table.rows().get(r))) {
                lines.add(isTotal ? style.apply(Mark.TOTAL, line) : line);
            }
        }
        return lines;
    }

    private void addHeadings(List<String> lines) {
        List<String> headings = new ArrayList<>();
        List<String> units = new ArrayList<>();
        boolean measured = false;
        for (Column column : table.columns()) {
            headings.add(column.heading());
            units.add(column.unit());
            measured |= !column.unit().isEmpty();
        }
        List<String> heads = new ArrayList<>(wrapped(headings, true));
        if (measured) {
            heads.add(line(units));
        }
        for (String head : heads) {
            lines.add(style.apply(Mark.COLUMNS, head));
        }
        lines.add("-".repeat(total()));
    }

    private List<String> row(List<String> cells) {
        return wrapped(cells, false);
    }

    /** Headings of several lines stand at the bottom, next to their unit; cells stand at the top. */
    private List<String> wrapped(List<String> cells, boolean atBottom) {
        List<List<String>> parts = new ArrayList<>();
        int height = 1;
        for (int c = 0; c < widths.length; c++) {
            List<String> part = Lines.width(cells.get(c)) <= widths[c]
                    ? List.of(cells.get(c))
                    : Lines.wrap(cells.get(c), Math.max(widths[c], 4));
            parts.add(part);
            height = Math.max(height, part.size());
        }
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < height; i++) {
            List<String> line = new ArrayList<>();
            for (List<String> part : parts) {
                int at = atBottom ? i - (height - part.size()) : i;
                line.add(at >= 0 && at < part.size() ? part.get(at) : "");
            }
            lines.add(line(line));
        }
        return lines;
    }

    private String line(List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int c = 0; c < widths.length; c++) {
            boolean right = table.columns().get(c).align() == Align.RIGHT;
            line.append(c == 0 ? "" : " ".repeat(gap))
                    .append(right ? Lines.padLeft(cells.get(c), widths[c]) : Lines.padRight(cells.get(c), widths[c]));
        }
        return line.toString().stripTrailing();
    }
}
