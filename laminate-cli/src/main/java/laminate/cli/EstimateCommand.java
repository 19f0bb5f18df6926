package laminate.cli;

import java.util.List;
import laminate.estimate.PartEstimate;
import laminate.file.Job;
import laminate.material.Materials;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.TextPrinter;
import laminate.print.estimate.EstimateCsv;
import laminate.print.estimate.EstimateJson;
import laminate.print.estimate.EstimateReport;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate estimate}: from part and project files to thickness, weight, stiffness, resin, catalyst, hours and cost. */
final class EstimateCommand extends Command {
    static final String NAME = "estimate";

    private final PartInput parts;
    private final OptionSpec matrices = flag("--matrices", "Print A, B and D too.");
    private final PageOptions page = new PageOptions(
            this,
            new Words<>(EstimateCsv.Which.values(), EstimateCsv.Which::word),
            "Table of the CSV: layers (the default), resins, materials, cuts or cost.");

    EstimateCommand(Materials library) {
        super(
                NAME,
                "Thickness, weight, fibre content, stiffness, resin, catalyst, cutting list, hours and cost.",
                "laminate estimate locker-lid.yaml",
                "laminate estimate locker-lid.yaml --process infusion --format json -o lid.json",
                "laminate estimate lockers.yaml --sets 5",
                "laminate estimate *.yaml --format csv --table cuts -o cutting-list.csv");
        parts = new PartInput(this, library).withSets();
    }

    @Override
    public Integer call() {
        page.check(parts);
        refuse(isSet(matrices) && !page.isForReading(), "--matrices goes with --format text or markdown");
        Printer<PartEstimate> printer = printer();
        List<PartEstimate> estimates = parts.each(Job::estimate);
        return print(page.file(), out -> printer.print(estimates, out));
    }

    private Printer<PartEstimate> printer() {
        EstimateReport reports = new EstimateReport(page.system(), isSet(matrices));
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(reports::of, page.width(), page.style());
            case JSON -> new EstimateJson();
            case CSV ->
                new EstimateCsv(page.table(EstimateCsv.Which.class).orElse(EstimateCsv.Which.LAYERS), page.system());
            case MARKDOWN -> new MarkdownPrinter<>(reports::of);
        };
    }
}
