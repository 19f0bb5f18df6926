package laminate.print;

import java.io.IOException;
import java.util.List;

/** Prints checks as Markdown for a report: what {@link CheckText} says, with pipe tables. */
public final class CheckMarkdown implements CheckPrinter {
    private final CheckReport reports;
    private final ReportMarkdown renderer = new ReportMarkdown();

    /**
     * A printer.
     *
     * @param reports what is told
     */
    public CheckMarkdown(CheckReport reports) {
        this.reports = reports;
    }

    @Override
    public void print(List<CheckedPart> parts, Appendable out) throws IOException {
        boolean first = true;
        for (CheckedPart part : parts) {
            out.append(first ? "" : "\n");
            first = false;
            renderer.print(reports.of(part), out);
        }
    }
}
