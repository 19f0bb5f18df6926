package laminate.print;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;

/**
 * Prints results for reading, as the documents that tell them.
 *
 * @param <T> what is printed
 */
public final class TextPrinter<T> implements Printer<T> {
    private final Function<T, Report> reports;
    private final ReportText renderer;

    /**
     * A printer.
     *
     * @param reports what is told of a result, as {@code new EstimateReport(…)::of}
     * @param width the most columns of a line, at least {@link ReportText#NARROWEST}
     * @param style how lines that stand out are marked
     * @throws IllegalArgumentException if the page is too narrow
     */
    public TextPrinter(Function<T, Report> reports, int width, Style style) {
        this.reports = reports;
        this.renderer = new ReportText(width, style);
    }

    @Override
    public void print(List<T> results, Appendable out) throws IOException {
        boolean first = true;
        for (T result : results) {
            out.append(first ? "" : "\n\n");
            first = false;
            renderer.print(reports.apply(result), out);
        }
    }
}
