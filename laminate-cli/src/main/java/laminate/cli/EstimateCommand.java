package laminate.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import laminate.estimate.PartEstimate;
import laminate.file.InputException;
import laminate.file.Overrides;
import laminate.file.PartFile;
import laminate.material.Materials;
import laminate.print.EstimateCsv;
import laminate.print.EstimateJson;
import laminate.print.EstimateMarkdown;
import laminate.print.EstimatePrinter;
import laminate.print.EstimateReport;
import laminate.print.EstimateText;
import laminate.print.ReportText;
import laminate.process.Process;
import laminate.unit.UnitSystem;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code laminate estimate}: from part files to thickness, weight, stiffness, resin, catalyst, hours and cost. */
final class EstimateCommand extends Command {
    static final String NAME = "estimate";

    private static final int WIDTH = 80;
    private static final Words<UnitSystem> SYSTEMS = new Words<>(UnitSystem.values(), UnitSystem::name);

    private final PositionalParamSpec files = arguments("FILE", "1..*", Path.class, "Part files.");
    private final OptionSpec format =
            option("--format", "FORMAT", Format.words(), "text (the default), json, csv or markdown.");
    private final OptionSpec process = option(
            "--process",
            "PROCESS",
            new Words<>(Process.values(), Process::word),
            "hand-lay-up, vacuum-bag or infusion for every layer, whatever the file says.");
    private final OptionSpec workshop =
            option("--workshop", "FILE", Path.class, "Workshop file in place of the part's own.");
    private final OptionSpec prices = option("--prices", "FILE", Path.class, "Price file in place of the part's own.");
    private final OptionSpec materials = repeated(
            "--materials",
            "FILE",
            Path.class,
            "Material file laid over the library and the part's own; may be repeated.");
    private final OptionSpec units =
            option("--units", "UNITS", SYSTEMS, "si (the default) or us; JSON is always in SI.");
    private final OptionSpec width =
            option("--width", "COLUMNS", Integer.class, "Widest line of the text, 80 if not given.");
    private final OptionSpec matrices = flag("--matrices", "Print A, B and D too.");
    private final OptionSpec table = option(
            "--table",
            "TABLE",
            new Words<>(EstimateCsv.Which.values(), EstimateCsv.Which::word),
            "Table of the CSV: layers (the default), resins, materials, cuts or cost.");
    private final OptionSpec output = output();

    private final Materials library;

    EstimateCommand(Materials library) {
        super(
                NAME,
                "Thickness, weight, fibre content, stiffness, resin, catalyst, cutting list, hours and cost.",
                "laminate estimate locker-lid.yaml",
                "laminate estimate locker-lid.yaml --process infusion --format json -o lid.json",
                "laminate estimate *.yaml --format csv --table cuts -o cutting-list.csv");
        this.library = library;
    }

    @Override
    public Integer call() {
        checkUsage();
        EstimatePrinter printer = printer();
        List<PartEstimate> estimates = estimates();
        return print(given(output, Path.class), out -> printer.print(estimates, out));
    }

    private Format format() {
        return given(format, Format.class).orElse(Format.TEXT);
    }

    private int width() {
        return given(width, Integer.class).orElse(WIDTH);
    }

    private void checkUsage() {
        Format wanted = format();
        boolean forReading = wanted == Format.TEXT || wanted == Format.MARKDOWN;
        refuse(given(table, Object.class).isPresent() && wanted != Format.CSV, "--table goes with --format csv");
        refuse(given(width, Object.class).isPresent() && wanted != Format.TEXT, "--width goes with --format text");
        refuse(isSet(matrices) && !forReading, "--matrices goes with --format text or markdown");
        refuse(
                given(units, Object.class).isPresent() && wanted == Format.JSON,
                "--units does not go with --format json, which is always in SI");
        refuse(width() < ReportText.NARROWEST, "--width must be " + ReportText.NARROWEST + " or more, not " + width());
        refuseToOverwrite(given(output, Path.class), inputs());
    }

    /** The files named on the command line; those that a part file names lie beside it and are not known yet. */
    private List<Path> inputs() {
        List<Path> inputs = new ArrayList<>(all(files, Path.class));
        given(workshop, Path.class).ifPresent(inputs::add);
        given(prices, Path.class).ifPresent(inputs::add);
        inputs.addAll(all(materials, Path.class));
        return inputs;
    }

    /** All files are read before anything is written, and all that is wrong in any of them is said at once. */
    private List<PartEstimate> estimates() {
        Overrides overrides = new Overrides(
                given(process, Process.class),
                given(workshop, Path.class),
                given(prices, Path.class),
                all(materials, Path.class));
        List<PartEstimate> estimates = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        for (Path file : all(files, Path.class)) {
            try {
                estimates.add(PartFile.read(file, library, overrides).estimate());
            } catch (InputException e) {
                e.getMessage()
                        .lines()
                        .filter(line -> !complaints.contains(line))
                        .forEach(complaints::add);
            } catch (IllegalArgumentException e) {
                complaints.add(file + ": " + e.getMessage());
            }
        }
        if (!complaints.isEmpty()) {
            throw new UnusableInputException(String.join(System.lineSeparator(), complaints));
        }
        return estimates;
    }

    private EstimatePrinter printer() {
        UnitSystem system = given(units, UnitSystem.class).orElse(UnitSystem.SI);
        EstimateReport reports = new EstimateReport(system, isSet(matrices));
        return switch (format()) {
            case TEXT ->
                new EstimateText(
                        reports,
                        width(),
                        Colours.of(spec(), given(output, Path.class).isPresent()));
            case JSON -> new EstimateJson();
            case CSV -> new EstimateCsv(given(table, EstimateCsv.Which.class).orElse(EstimateCsv.Which.LAYERS), system);
            case MARKDOWN -> new EstimateMarkdown(reports);
        };
    }
}
