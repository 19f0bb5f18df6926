package laminate.print.mix;

import java.io.IOException;
import java.util.List;
import laminate.plan.infusion.MouldingPlan;
import laminate.print.Printer;
import laminate.print.Report;
import laminate.print.ReportMarkdown;
import laminate.unit.UnitSystem;

/** Prints sheets of stages as Markdown, with a rule between the pages. */
public final class JobSheetMarkdown implements Printer<MouldingPlan> {
    private final JobSheetReport reports;
    private final ReportMarkdown renderer = new ReportMarkdown();

    /**
     * A printer.
     *
     * @param system the reader's units
     */
    public JobSheetMarkdown(UnitSystem system) {
        this.reports = new JobSheetReport(system);
    }

    @Override
    public void print(List<MouldingPlan> plans, Appendable out) throws IOException {
        boolean first = true;
        for (MouldingPlan plan : plans) {
            for (Report page : reports.of(plan)) {
                out.append(first ? "" : "\n---\n\n");
                first = false;
                renderer.print(page, out);
            }
        }
    }
}
