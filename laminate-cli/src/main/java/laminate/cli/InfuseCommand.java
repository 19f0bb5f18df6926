package laminate.cli;

import java.util.List;
import java.util.Optional;
import laminate.file.Job;
import laminate.file.Overrides;
import laminate.material.Materials;
import laminate.plan.infusion.Infuser;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.PartInfusion;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.TextPrinter;
import laminate.print.infuse.InfuseCsv;
import laminate.print.infuse.InfuseJson;
import laminate.print.infuse.InfuseReport;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate infuse}: whether an infusion fills before the resin gels. */
final class InfuseCommand extends Command {
    static final String NAME = "infuse";

    private static final String EXAMPLE = """
            Add how it is infused to the part or to a zone, for example:

              process: infusion
              infusion:
                feed: line
                flow-length: 1.0 m
                vacuum: 950 mbar
                strip-test: {length: 300 mm, time: 474 s}""";

    private final PartInput parts;
    private final OptionSpec temperature = ShopOptions.temperature(this);
    private final PageOptions page = new PageOptions(
            this,
            new Words<>(InfuseCsv.Which.values(), InfuseCsv.Which::word),
            "Table of the CSV: infusions (the default), front, resin or buckets.");

    InfuseCommand(Materials library) {
        super(
                NAME,
                "Fill time of an infusion against the gel time, the front at times, the largest spacing of feed lines, resin"
                        + " in hoses, mesh and pot.",
                "laminate infuse kayak.yaml",
                "laminate infuse kayak.yaml --temperature 22C",
                "laminate infuse kayak.yaml --format csv --table front -o front.csv");
        parts = new PartInput(this, library);
        spec().usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(ExitCode.meanings(
                        "the results are written",
                        "a file cannot be used, or plans no infusion",
                        "not full within the margin that the part file states, or not judged as the gel time is not known; the"
                                + " results are written all the same"));
    }

    @Override
    public Integer call() {
        page.check(parts);
        Printer<PartInfusion> printer = printer();
        List<PartInfusion> infusions = parts.telling(
                overrides(),
                false,
                InfuseCommand::infuse,
                part -> part.infusions().isEmpty());
        refuseNothingToInfuse(infusions);
        print(page.file(), out -> printer.print(infusions, out));
        return verdict(infusions);
    }

    private Overrides overrides() {
        Optional<Double> asked = given(temperature, Double.class);
        return asked.isPresent() ? parts.overrides().withTemperature(asked.get()) : parts.overrides();
    }

    private static PartInfusion infuse(Job job) {
        return new Infuser(job.workshop()).infuse(job.estimate());
    }

    private static void refuseNothingToInfuse(List<PartInfusion> parts) {
        List<String> idle = parts.stream()
                .filter(part -> part.infusions().isEmpty())
                .map(part -> part.estimate().part().name() + ": no infusion is planned.")
                .toList();
        if (!idle.isEmpty()) {
            throw new UnusableInputException(String.join("\n", idle) + " " + EXAMPLE);
        }
    }

    /** A miss is told to whoever does not read the results as well, but only after they are written. */
    private int verdict(List<PartInfusion> parts) {
        int exitCode = ExitCode.DONE;
        for (PartInfusion part : parts) {
            for (Infusion infusion : part.infusions()) {
                if (infusion.plan().margin().isPresent() && !infusion.gel().isInTime()) {
                    String where = infusion.zone().map(zone -> ", zone " + zone).orElse("");
                    spec().commandLine()
                            .getErr()
                            .println(part.estimate().part().name() + where + ": "
                                    + infusion.gel().verdict().word() + ": "
                                    + infusion.gel().reason());
                    exitCode = ExitCode.REQUIREMENT_NOT_MET;
                }
            }
        }
        return exitCode;
    }

    private Printer<PartInfusion> printer() {
        InfuseReport reports = new InfuseReport(page.system());
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(reports::of, page.width(), page.style());
            case JSON -> new InfuseJson();
            case CSV ->
                new InfuseCsv(page.table(InfuseCsv.Which.class).orElse(InfuseCsv.Which.INFUSIONS), page.system());
            case MARKDOWN -> new MarkdownPrinter<>(reports::of);
        };
    }
}
