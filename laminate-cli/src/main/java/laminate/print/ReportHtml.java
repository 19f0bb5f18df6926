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

/**
 * Renders documents as one HTML page that needs no other file and no script. Printed, it fits on A4 as on Letter: margins are
 * set and the size of the sheet is not; a table's head stands again on each sheet, and no row is torn.
 */
public final class ReportHtml {
    private static final String STYLE = """
            @page { margin: 18mm 16mm }
            body { font: 11pt/1.4 "Liberation Sans", Helvetica, Arial, sans-serif; color: #1a1a1a; background: #fff;
              max-width: 44rem; margin: 2rem auto; padding: 0 1rem; overflow-wrap: anywhere }
            h1 { font-size: 1.7rem; margin: 0 0 .6rem; border-bottom: 2px solid #23506e; color: #23506e }
            h2 { font-size: 1.15rem; margin: 1.6rem 0 .4rem; color: #23506e }
            h3 { font-size: 1rem; margin: 1.2rem 0 .3rem }
            p { margin: .3rem 0 }
            dl { display: grid; grid-template-columns: max-content 1fr; gap: .15rem 1rem; margin: .8rem 0 }
            dt { color: #555 }
            dd { margin: 0 }
            table { border-collapse: collapse; width: 100%; margin: .5rem 0; font-variant-numeric: tabular-nums }
            th { border-bottom: 1.5px solid #23506e; vertical-align: bottom; font-weight: 600 }
            th, td { padding: .25rem .5rem; text-align: left; overflow-wrap: break-word }
            td { border-bottom: 1px solid #ddd; vertical-align: top }
            .number { text-align: right; white-space: nowrap }
            th.number { white-space: normal }
            .unit { font-weight: normal; color: #555 }
            .total td { font-weight: 600; background: #f0f4f7 }
            ul { margin: .3rem 0; padding-left: 1.3rem }
            @media print {
              body { max-width: none; margin: 0; padding: 0; font-size: 10pt }
              h1:not(:first-child) { break-before: page }
              h1, h2, h3 { break-after: avoid }
              thead { display: table-header-group }
              tr, li, dd { break-inside: avoid }
              .total td { -webkit-print-color-adjust: exact; print-color-adjust: exact }
            }
            """;

    private final String title;

    /**
     * A renderer.
     *
     * @param title what a browser calls the page
     */
    public ReportHtml(String title) {
        this.title = Lines.clean(title);
    }

    /**
     * Renders documents, one after the other on one page.
     *
     * @param reports the documents
     * @param out takes the text, to be stored in UTF-8
     * @throws IOException if that fails
     */
    public void print(List<Report> reports, Appendable out) throws IOException {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
                .append(escaped(title))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n");
        for (Report report : reports) {
            for (Block block : report.blocks()) {
                print(block, out);
            }
        }
        out.append("</body>\n</html>\n");
    }

    private static void print(Block block, Appendable out) throws IOException {
        if (block instanceof Heading heading) {
            element("h" + heading.level(), "", heading.text(), out);
            out.append('\n');
        } else if (block instanceof Paragraph paragraph) {
            element("p", "", paragraph.text(), out);
            out.append('\n');
        } else if (block instanceof Facts facts) {
            printFacts(facts.facts(), out);
        } else if (block instanceof Grid grid) {
            printTable(grid.table(), out);
        } else if (block instanceof Bullets bullets) {
            out.append("<ul>\n");
            for (String text : bullets.texts()) {
                element("li", "", text, out);
                out.append('\n');
            }
            out.append("</ul>\n");
        }
    }

    private static void printFacts(List<Fact> facts, Appendable out) throws IOException {
        out.append("<dl>\n");
        for (Fact fact : facts) {
            element("dt", "", fact.name(), out);
            element("dd", "", fact.value(), out);
            out.append('\n');
        }
        out.append("</dl>\n");
    }

    private static void printTable(Table table, Appendable out) throws IOException {
        out.append("<table>\n<thead>\n<tr>");
        for (Column column : table.columns()) {
            out.append("<th scope=\"col\"").append(kind(column)).append('>').append(escaped(column.heading()));
            if (!column.unit().isEmpty()) {
                out.append(' ');
                element("span", " class=\"unit\"", column.unit(), out);
            }
            out.append("</th>");
        }
        out.append("</tr>\n</thead>\n<tbody>\n");
        int totals = table.rows().size() - table.totals();
        for (int r = 0; r < table.rows().size(); r++) {
            out.append(r < totals ? "<tr>" : "<tr class=\"total\">");
            printCells(table.columns(), table.rows().get(r), out);
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n");
    }

    private static void printCells(List<Column> columns, List<String> cells, Appendable out) throws IOException {
        for (int c = 0; c < cells.size(); c++) {
            element("td", kind(columns.get(c)), cells.get(c), out);
        }
    }

    private static String kind(Column column) {
        return column.align() == Align.RIGHT ? " class=\"number\"" : "";
    }

    private static void element(String name, String attributes, String text, Appendable out) throws IOException {
        out.append('<').append(name).append(attributes).append('>');
        out.append(escaped(text)).append("</").append(name).append('>');
    }

    /** What a name holds is text, never a mark. */
    private static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(c);
            }
        }
        return escaped.toString();
    }
}
