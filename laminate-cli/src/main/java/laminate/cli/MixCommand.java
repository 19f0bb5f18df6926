package laminate.cli;

import java.util.List;
import laminate.file.Job;
import laminate.material.Materials;
import laminate.plan.MixPlan;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.TextPrinter;
import laminate.print.mix.MixCsv;
import laminate.print.mix.MixJson;
import laminate.print.mix.MixReport;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate mix}: lay-up stages, and mixes that are used up before they gel. */
final class MixCommand extends Command {
    static final String NAME = "mix";

    private final PartInput parts;
    private final ShopOptions shop;
    private final OptionSpec doseTable = flag(
            "--dose-table",
            "Print the table for the wall instead: gel time by dose and temperature of each resin that the part takes.");
    private final PageOptions page = new PageOptions(
            this,
            new Words<>(MixCsv.Which.values(), MixCsv.Which::word),
            "Table of the CSV: mixes (the default), stages, layers, doses or working-times.");

    MixCommand(Materials library) {
        super(
                NAME,
                "Lay-up stages of one moulding with their clock, and mixes of resin and catalyst or hardener that are used"
                        + " up before they gel.",
                "laminate mix locker-lid.yaml",
                "laminate mix locker-lid.yaml --temperature 22C --hands 2 --start 8:30",
                "laminate mix locker-lid.yaml --dose-table --width 120",
                "laminate mix locker-lid.yaml --format csv --table stages -o stages.csv");
        parts = new PartInput(this, library).withSets();
        shop = new ShopOptions(this);
    }

    @Override
    public Integer call() {
        checkUsage();
        Printer<MixPlan> printer = printer();
        List<MixPlan> plans = parts.each(shop.addTo(parts.overrides()), this::plan);
        print(page.file(), out -> printer.print(plans, out));
        return isSet(doseTable) ? ExitCode.DONE : shop.verdict(plans);
    }

    private void checkUsage() {
        page.check(parts);
        shop.check();
        refuse(
                isSet(doseTable) && page.format() == Format.JSON,
                "--dose-table goes with --format text, csv or markdown; json always has it");
        refuse(
                isSet(doseTable) && page.table(MixCsv.Which.class).isPresent(),
                "--dose-table is --table doses; give one of them");
    }

    private MixPlan plan(Job job) {
        // The table for the wall tells all temperatures, whatever today's.
        return isSet(doseTable) ? shop.planAnyway(job).mixes() : shop.plan(job).mixes();
    }

    private Printer<MixPlan> printer() {
        MixReport reports = new MixReport(page.system());
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(isSet(doseTable) ? reports::doses : reports::of, page.width(), page.style());
            case JSON -> new MixJson();
            case CSV -> csv();
            case MARKDOWN -> new MarkdownPrinter<>(isSet(doseTable) ? reports::doses : reports::of);
        };
    }

    private Printer<MixPlan> csv() {
        MixCsv.Which usual = isSet(doseTable) ? MixCsv.Which.DOSES : MixCsv.Which.MIXES;
        return new MixCsv(page.table(MixCsv.Which.class).orElse(usual), page.system());
    }
}
