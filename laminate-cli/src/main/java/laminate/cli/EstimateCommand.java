package laminate.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import laminate.estimate.PartEstimate;
import laminate.file.InputException;
import laminate.file.Overrides;
import laminate.file.PartFile;
import laminate.library.MaterialLibrary;
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
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code laminate estimate}: from part files to thickness, weight, stiffness, resin, catalyst, hours and cost. */
@Command(
        name = EstimateCommand.NAME,
        description = "Thickness, weight, fibre content, stiffness, resin, catalyst, cutting list, hours and cost.",
        footer = {
            "",
            "Examples:",
            "  laminate estimate locker-lid.yaml",
            "  laminate estimate locker-lid.yaml --process infusion --format json -o lid.json",
            "  laminate estimate *.yaml --format csv --table cuts -o cutting-list.csv"
        })
final class EstimateCommand implements Callable<Integer> {
    static final String NAME = "estimate";

    private static final int WIDTH = 80;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Part files.")
    private List<Path> files;

    @Option(names = "--format", paramLabel = "FORMAT", description = "text (the default), json, csv or markdown.")
    private Format format = Format.TEXT;

    @Option(
            names = "--process",
            paramLabel = "PROCESS",
            converter = Words.OfProcess.class,
            description = "hand-lay-up, vacuum-bag or infusion for every layer, whatever the file says.")
    private Process process;

    @Option(names = "--workshop", paramLabel = "FILE", description = "Workshop file in place of the part's own.")
    private Path workshop;

    @Option(names = "--prices", paramLabel = "FILE", description = "Price file in place of the part's own.")
    private Path prices;

    @Option(
            names = "--materials",
            paramLabel = "FILE",
            description = "Material file laid over the library and the part's own; may be repeated.")
    private List<Path> materials = List.of();

    @Option(names = "--units", paramLabel = "UNITS", description = "si (the default) or us; JSON is always in SI.")
    private Optional<UnitSystem> units;

    @Option(names = "--width", paramLabel = "COLUMNS", description = "Widest line of the text, 80 if not given.")
    private Optional<Integer> width;

    @Option(names = "--matrices", description = "Print A, B and D too.")
    private boolean matrices;

    @Option(
            names = "--table",
            paramLabel = "TABLE",
            description = "Table of the CSV: layers (the default), resins, materials, cuts or cost.")
    private Optional<EstimateCsv.Which> table;

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write to a file, whole or not at all.")
    private Path output;

    /** Made by the command line. */
    EstimateCommand() {}

    @Override
    public Integer call() {
        checkUsage();
        EstimatePrinter printer = printer();
        List<PartEstimate> estimates = estimates();
        Output.write(Optional.ofNullable(output), spec.commandLine().getOut(), out -> printer.print(estimates, out));
        return ExitCode.DONE;
    }

    private void checkUsage() {
        refuse(table.isPresent() && format != Format.CSV, "--table goes with --format csv");
        refuse(width.isPresent() && format != Format.TEXT, "--width goes with --format text");
        refuse(
                matrices && format != Format.TEXT && format != Format.MARKDOWN,
                "--matrices goes with --format text or markdown");
        refuse(
                units.isPresent() && format == Format.JSON,
                "--units does not go with --format json, which is always in SI");
        refuse(
                width.orElse(WIDTH) < ReportText.NARROWEST,
                "--width must be " + ReportText.NARROWEST + " or more, not " + width.orElse(WIDTH));
        for (Path file : files) {
            refuse(output != null && isSame(file, output), "-o would overwrite the part file " + file);
        }
    }

    private static boolean isSame(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other) && Files.isSameFile(one, other);
        } catch (IOException e) {
            return false;
        }
    }

    private void refuse(boolean wrong, String why) {
        if (wrong) {
            throw new ParameterException(spec.commandLine(), why);
        }
    }

    /** All files are read before anything is written, and all that is wrong in any of them is said at once. */
    private List<PartEstimate> estimates() {
        Materials library = new MaterialLibrary();
        Overrides overrides = new Overrides(
                Optional.ofNullable(process), Optional.ofNullable(workshop), Optional.ofNullable(prices), materials);
        List<PartEstimate> estimates = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        for (Path file : files) {
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
        UnitSystem system = units.orElse(UnitSystem.SI);
        return switch (format) {
            case TEXT ->
                new EstimateText(
                        new EstimateReport(system, matrices), width.orElse(WIDTH), Colours.of(spec, output != null));
            case JSON -> new EstimateJson();
            case CSV -> new EstimateCsv(table.orElse(EstimateCsv.Which.LAYERS), system);
            case MARKDOWN -> new EstimateMarkdown(new EstimateReport(system, matrices));
        };
    }
}
