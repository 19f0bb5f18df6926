package laminate.cli;

import java.nio.file.Path;
import java.util.Optional;
import laminate.print.ReportText;
import laminate.print.Style;
import laminate.unit.UnitSystem;
import picocli.CommandLine.Model.OptionSpec;

/** How a command prints: the format, the reader's units, the width of a line, and where to. */
final class PageOptions {
    private static final int WIDTH = 80;
    private static final Words<UnitSystem> SYSTEMS = new Words<>(UnitSystem.values(), UnitSystem::name);

    private final Command command;
    private final OptionSpec format;
    private final OptionSpec units;
    private final OptionSpec width;
    private final OptionSpec output;
    private final Optional<OptionSpec> table;

    /** Declares the options of a command, whose CSV has several tables. */
    PageOptions(Command command, Words<?> tables, String tableDescription) {
        this.command = command;
        format = command.option(
                "--format", "FORMAT", Format.words(Format.values()), "text (the default), json, csv or markdown.");
        units = command.option("--units", "UNITS", SYSTEMS, "si (the default) or us; JSON is always in SI.");
        width = width(command);
        table = Optional.of(command.option("--table", "TABLE", tables, tableDescription));
        output = command.output();
    }

    private PageOptions(Command command) {
        this.command = command;
        format = command.option(
                "--format", "FORMAT", Format.words(Format.TEXT, Format.MARKDOWN), "text (the default) or markdown.");
        units = command.option("--units", "UNITS", SYSTEMS, "si (the default) or us.");
        width = width(command);
        table = Optional.empty();
        output = command.output();
    }

    /** Declares the options of a command that is only for reading. */
    static PageOptions forReading(Command command) {
        return new PageOptions(command);
    }

    private static OptionSpec width(Command command) {
        return command.option("--width", "COLUMNS", new WholeNumber(), "Widest line of the text, 80 if not given.");
    }

    /** Refuses options that do not go together, and a result that would overwrite what is to be read. */
    void check(PartInput parts) {
        Format wanted = format();
        command.refuse(
                table.isPresent() && isGiven(table.get()) && wanted != Format.CSV, "--table goes with --format csv");
        command.refuse(isGiven(width) && wanted != Format.TEXT, "--width goes with --format text");
        command.refuse(
                isGiven(units) && wanted == Format.JSON,
                "--units does not go with --format json, which is always in SI");
        command.refuse(
                width() < ReportText.NARROWEST, "--width must be " + ReportText.NARROWEST + " or more, not " + width());
        command.refuseToOverwrite(file(), parts.files());
    }

    private static boolean isGiven(OptionSpec option) {
        return Command.given(option, Object.class).isPresent();
    }

    Format format() {
        return Command.given(format, Format.class).orElse(Format.TEXT);
    }

    /** Whether a reader gets it, and not a program. */
    boolean isForReading() {
        return format() == Format.TEXT || format() == Format.MARKDOWN;
    }

    UnitSystem system() {
        return Command.given(units, UnitSystem.class).orElse(UnitSystem.SI);
    }

    int width() {
        return Command.given(width, Integer.class).orElse(WIDTH);
    }

    /** The table of the CSV that is asked for. */
    <T> Optional<T> table(Class<T> type) {
        return table.isPresent() ? Command.given(table.get(), type) : Optional.empty();
    }

    Style style() {
        return Colours.of(command.spec(), file().isPresent());
    }

    /** The file that takes the results, empty for standard output. */
    Optional<Path> file() {
        return Command.given(output, Path.class);
    }
}
