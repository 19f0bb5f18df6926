package laminate.print;

import java.io.IOException;
import java.util.List;

/** Prints checks for reading: limits first, then panels, beams, load cases, comparisons and cautions, worst things first. */
public final class CheckText implements CheckPrinter {
    private final CheckReport reports;
    private final ReportText renderer;

    /**
     * A printer.
     *
     * @param reports what is told
     * @param width the most columns of a line, at least {@link ReportText#NARROWEST}
     * @param style how lines that stand out are marked
     * @throws IllegalArgumentException if the page is too narrow
     */
    public CheckText(CheckReport reports, int width, Style style) {
        this.reports = reports;
        this.renderer = new ReportText(width, style);
    }

    @Override
    public void print(List<CheckedPart> parts, Appendable out) throws IOException {
        boolean first = true;
        for (CheckedPart part : parts) {
            out.append(first ? "" : "\n\n");
            first = false;
            renderer.print(reports.of(part), out);
        }
    }
}
