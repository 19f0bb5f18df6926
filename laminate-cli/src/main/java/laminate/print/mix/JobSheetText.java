package laminate.print.mix;

import java.io.IOException;
import java.util.List;
import laminate.plan.infusion.MouldingPlan;
import laminate.print.Printer;
import laminate.print.Report;
import laminate.print.ReportText;
import laminate.print.Style;
import laminate.unit.UnitSystem;

/** Prints sheets of stages as text, with a form feed between the pages, at which a printer begins a new one. */
public final class JobSheetText implements Printer<MouldingPlan> {
    private final JobSheetReport reports;
    private final ReportText renderer;

    /**
     * A printer.
     *
     * @param system the reader's units
     * @param width the most columns of a line, at least {@link ReportText#NARROWEST}
     * @param style how lines that stand out are marked
     * @throws IllegalArgumentException if the page is too narrow
     */
    public JobSheetText(UnitSystem system, int width, Style style) {
        this.reports = new JobSheetReport(system);
        this.renderer = new ReportText(width, style);
    }

    @Override
    public void print(List<MouldingPlan> plans, Appendable out) throws IOException {
        boolean first = true;
        for (MouldingPlan plan : plans) {
            for (Report page : reports.of(plan)) {
                out.append(first ? "" : "\f");
                first = false;
                renderer.print(page, out);
            }
        }
    }
}
