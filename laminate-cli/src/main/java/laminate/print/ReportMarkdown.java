package laminate.print;

import java.io.IOException;
import java.util.List;
import laminate.print.Report.Block;
import laminate.print.Report.Bullets;
import laminate.print.Report.Fact;
import laminate.print.Report.Facts;
import laminate.print.Report.Grid;
import laminate.print.Report.Heading;
import laminate.print.Report.Paragraph;
import laminate.print.Table.Align;
import laminate.print.Table.Column;

/** Renders a document as Markdown with pipe tables, as GitHub Flavored Markdown describes them. */
public final class ReportMarkdown {
    private static final String SPECIAL = "\\`*_[]<>|~&";

    /** A renderer. */
    public ReportMarkdown() {}

    /**
     * Renders a document.
     *
     * @param report the document
     * @param out takes the text, each line ended by a line feed
     * @throws IOException if that fails
     */
    public void print(Report report, Appendable out) throws IOException {
        boolean first = true;
        for (Block block : report.blocks()) {
            out.append(first ? "" : "\n");
            first = false;
            print(block, out);
        }
    }

    private static void print(Block block, Appendable out) throws IOException {
        if (block instanceof Heading heading) {
            out.append("#".repeat(heading.level()) + " " + escaped(heading.text()) + "\n");
        } else if (block instanceof Paragraph paragraph) {
            out.append(escaped(paragraph.text())).append('\n');
        } else if (block instanceof Facts facts) {
            printFacts(facts.facts(), out);
        } else if (block instanceof Grid grid) {
            printTable(grid.table(), out);
        } else if (block instanceof Bullets bullets) {
            for (String text : bullets.texts()) {
                out.append("- ").append(escaped(text)).append('\n');
            }
        }
    }

    private static void printFacts(List<Fact> facts, Appendable out) throws IOException {
        out.append("| | |\n| :-- | :-- |\n");
        for (Fact fact : facts) {
            printRow(List.of(fact.name(), fact.value()), false, out);
        }
    }

    private static void printTable(Table table, Appendable out) throws IOException {
        printRow(table.columns().stream().map(ReportMarkdown::heading).toList(), false, out);
        out.append('|');
        for (Column column : table.columns()) {
            out.append(column.align() == Align.RIGHT ? " --: |" : " :-- |");
        }
        out.append('\n');
        int first = table.rows().size() - table.totals();
        for (int r = 0; r < table.rows().size(); r++) {
            printRow(table.rows().get(r), r >= first, out);
        }
    }

    private static String heading(Column column) {
        return column.unit().isEmpty() ? column.heading() : (column.heading() + " (" + column.unit() + ")").strip();
    }

    private static void printRow(List<String> cells, boolean strong, Appendable out) throws IOException {
        out.append('|');
        for (String cell : cells) {
            String text = escaped(cell.strip());
            out.append(' ').append(strong && !text.isEmpty() ? "**" + text + "**" : text);
            out.append(text.isEmpty() ? "|" : " |");
        }
        out.append('\n');
    }

    /** What a name holds is text, never a mark. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (SPECIAL.indexOf(c) >= 0
                    || i == 0 && "#+-=".indexOf(c) >= 0 && text.length() > 1 && text.charAt(1) == ' ') {
                escaped.append('\\');
            }
            escaped.append(c);
        }
        return escaped.toString();
    }
}
