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
import laminate.print.Style.Mark;

/** Renders a document as plain text: no line is wider than the page. */
public final class ReportText {
    /** The narrowest page (columns). */
    public static final int NARROWEST = 40;

    private static final int WIDEST_NAME = 20;

    private final int width;
    private final Style style;

    /**
     * A renderer.
     *
     * @param width the most columns of a line, at least {@link #NARROWEST}
     * @param style how lines that stand out are marked
     * @throws IllegalArgumentException if the page is too narrow
     */
    public ReportText(int width, Style style) {
        if (width < NARROWEST) {
            throw new IllegalArgumentException("a page has at least " + NARROWEST + " columns, not " + width);
        }
        this.width = width;
        this.style = style;
    }

    /**
     * Renders a document.
     *
     * @param report the document
     * @param out takes the text, each line ended by a line feed
     * @throws IOException if that fails
     */
    public void print(Report report, Appendable out) throws IOException {
        boolean first = true;
        boolean underHeading = false;
        for (Block block : report.blocks()) {
            if (!first && !underHeading) {
                out.append('\n');
            }
            print(block, out);
            first = false;
            underHeading = block instanceof Heading;
        }
    }

    private void print(Block block, Appendable out) throws IOException {
        if (block instanceof Heading heading) {
            printHeading(heading, out);
        } else if (block instanceof Paragraph paragraph) {
            print(Lines.wrap(paragraph.text(), width), out);
        } else if (block instanceof Facts facts) {
            printFacts(facts.facts(), out);
        } else if (block instanceof Grid grid) {
            print(TableText.lines(grid.table(), width, style), out);
        } else if (block instanceof Bullets bullets) {
            printBullets(bullets.texts(), out);
        }
    }

    private void printHeading(Heading heading, Appendable out) throws IOException {
        int widest = 0;
        for (String line : Lines.wrap(heading.text(), width)) {
            print(style.apply(Mark.HEADING, line), out);
            widest = Math.max(widest, Lines.width(line));
        }
        if (heading.level() < 3) {
            print((heading.level() == 1 ? "=" : "-").repeat(widest), out);
        }
    }

    private void printFacts(List<Fact> facts, Appendable out) throws IOException {
        int names = 0;
        for (Fact fact : facts) {
            names = Math.max(names, Math.min(WIDEST_NAME, Lines.width(fact.name())));
        }
        for (Fact fact : facts) {
            printBeside(Lines.wrap(fact.name(), names), Lines.wrap(fact.value(), width - names - 2), names, out);
        }
    }

    private static void printBeside(List<String> left, List<String> right, int width, Appendable out)
            throws IOException {
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            String name = i < left.size() ? left.get(i) : "";
            String value = i < right.size() ? right.get(i) : "";
            print((Lines.padRight(name, width) + "  " + value).stripTrailing(), out);
        }
    }

    private void printBullets(List<String> texts, Appendable out) throws IOException {
        for (String text : texts) {
            String lead = "- ";
            for (String line : Lines.wrap(text, width - 2)) {
                print(style.apply(Mark.CAUTION, lead + line), out);
                lead = "  ";
            }
        }
    }

    private static void print(List<String> lines, Appendable out) throws IOException {
        for (String line : lines) {
            print(line, out);
        }
    }

    private static void print(String line, Appendable out) throws IOException {
        out.append(line).append('\n');
    }
}
