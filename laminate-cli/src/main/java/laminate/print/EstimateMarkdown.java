package laminate.print;

import java.io.IOException;
import java.util.List;
import laminate.estimate.PartEstimate;

/** Prints estimates as Markdown for a report: what {@link EstimateText} says, with pipe tables. */
public final class EstimateMarkdown implements EstimatePrinter {
    private final EstimateReport reports;
    private final ReportMarkdown renderer = new ReportMarkdown();

    /**
     * A printer.
     *
     * @param reports what is told
     */
    public EstimateMarkdown(EstimateReport reports) {
        this.reports = reports;
    }

    @Override
    public void print(List<PartEstimate> estimates, Appendable out) throws IOException {
        boolean first = true;
        for (PartEstimate estimate : estimates) {
            out.append(first ? "" : "\n");
            first = false;
            renderer.print(reports.of(estimate), out);
        }
    }
}
