package laminate.print;

import java.io.IOException;
import java.util.List;
import laminate.estimate.PartEstimate;

/** Prints estimates for reading: the totals first, then zones, quantities, hours, cost and cautions. */
public final class EstimateText implements EstimatePrinter {
    private final EstimateReport reports;
    private final ReportText renderer;

    /**
     * A printer.
     *
     * @param reports what is told
     * @param width the most columns of a line, at least {@link ReportText#NARROWEST}
     * @param style how lines that stand out are marked
     * @throws IllegalArgumentException if the page is too narrow
     */
    public EstimateText(EstimateReport reports, int width, Style style) {
        this.reports = reports;
        this.renderer = new ReportText(width, style);
    }

    @Override
    public void print(List<PartEstimate> estimates, Appendable out) throws IOException {
        boolean first = true;
        for (PartEstimate estimate : estimates) {
            out.append(first ? "" : "\n\n");
            first = false;
            renderer.print(reports.of(estimate), out);
        }
    }
}
