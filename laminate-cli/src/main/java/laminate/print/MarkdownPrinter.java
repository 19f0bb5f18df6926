package laminate.print;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;

/**
 * Prints results as Markdown for a report: what {@link TextPrinter} says, with pipe tables.
 *
 * @param <T> what is printed
 */
public final class MarkdownPrinter<T> implements Printer<T> {
    private final Function<T, Report> reports;
    private final ReportMarkdown renderer = new ReportMarkdown();

    /**
     * A printer.
     *
     * @param reports what is told of a result, as {@code new EstimateReport(…)::of}
     */
    public MarkdownPrinter(Function<T, Report> reports) {
        this.reports = reports;
    }

    @Override
    public void print(List<T> results, Appendable out) throws IOException {
        boolean first = true;
        for (T result : results) {
            out.append(first ? "" : "\n");
            first = false;
            renderer.print(reports.apply(result), out);
        }
    }
}
