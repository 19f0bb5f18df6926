package laminate.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.print.ReportText;
import laminate.print.Style;
import laminate.print.quote.Letter;
import laminate.print.quote.QuoteCsv;
import picocli.CommandLine.Model.OptionSpec;

/** How a quote is told, and what its letter to a customer says. */
final class QuoteOptions {
    private static final int WIDTH = 80;

    /** The formats of a quote. */
    enum QuoteFormat {
        /** The internal cost sheet for reading. */
        TEXT,
        /** For programs. */
        JSON,
        /** For the books, a table at a time. */
        CSV,
        /** The internal cost sheet for a report. */
        MARKDOWN,
        /** The quotation for a customer, or the internal cost sheet. */
        HTML,
        /** For the books, all tables. */
        XLSX
    }

    private final Command command;
    private final OptionSpec format;
    private final OptionSpec internal;
    private final OptionSpec customer;
    private final OptionSpec date;
    private final OptionSpec validUntil;
    private final OptionSpec table;
    private final OptionSpec width;
    private final OptionSpec output;

    /** Declares the options of a command. */
    QuoteOptions(Command command) {
        this.command = command;
        format = command.option(
                "--format",
                "FORMAT",
                new Words<>(QuoteFormat.values(), word -> word.name().toLowerCase(Locale.ROOT)),
                "text (the default), json, csv, markdown or xlsx, all internal, or html: the quotation for a customer.");
        internal = command.flag("--internal", "With --format html: the internal cost sheet instead.");
        customer = command.option("--customer", "NAME", String.class, "For whom the quotation is.");
        date = command.option("--date", "DAY", new Day(), "Day of the quotation, as 2026-03-02; today if not given.");
        validUntil = command.option(
                "--valid-until", "DAY", new Day(), "Last day of the offer, in place of the workshop's valid-for.");
        table = command.option(
                "--table",
                "TABLE",
                new Words<>(QuoteCsv.Which.values(), QuoteCsv.Which::word),
                "Table of the CSV: prices (the default), build-up or sensitivity; of a project sets or tooling too.");
        width = command.option("--width", "COLUMNS", new WholeNumber(), "Widest line of the text, 80 if not given.");
        output = command.output();
    }

    /** Refuses options that do not go together, and a result that would overwrite what is to be read. */
    void check(PartInput parts) {
        command.refuse(isGiven(table) && format() != QuoteFormat.CSV, "--table goes with --format csv");
        command.refuse(isGiven(width) && format() != QuoteFormat.TEXT, "--width goes with --format text");
        command.refuse(
                width() < ReportText.NARROWEST, "--width must be " + ReportText.NARROWEST + " or more, not " + width());
        command.refuse(isInternal() && format() != QuoteFormat.HTML, "--internal goes with --format html");
        for (OptionSpec option : List.of(customer, date, validUntil)) {
            command.refuse(
                    isGiven(option) && !isForCustomer(),
                    option.longestName() + " goes with --format html, without --internal");
        }
        command.refuse(
                format() == QuoteFormat.XLSX && file().isEmpty(), "--format xlsx goes to a file; name it with -o");
        command.refuseToOverwrite(file(), parts.files());
    }

    private static boolean isGiven(OptionSpec option) {
        return Command.given(option, Object.class).isPresent();
    }

    QuoteFormat format() {
        return Command.given(format, QuoteFormat.class).orElse(QuoteFormat.TEXT);
    }

    boolean isForCustomer() {
        return format() == QuoteFormat.HTML && !isInternal();
    }

    private boolean isInternal() {
        return Command.isSet(internal);
    }

    /** What the letter says. */
    Letter letter() {
        LocalDate day = Command.given(date, LocalDate.class).orElseGet(LocalDate::now);
        Optional<LocalDate> end = Command.given(validUntil, LocalDate.class);
        command.refuse(
                end.orElse(day).isBefore(day),
                "--valid-until " + end.orElse(day) + " is before the day of the quotation, " + day);
        Optional<String> name = Command.given(customer, String.class);
        command.refuse(name.orElse("one").isBlank(), "--customer is blank; a name is wanted, or leave it out");
        return new Letter(name, day, end);
    }

    QuoteCsv.Which table() {
        return Command.given(table, QuoteCsv.Which.class).orElse(QuoteCsv.Which.PRICES);
    }

    int width() {
        return Command.given(width, Integer.class).orElse(WIDTH);
    }

    Style style() {
        return Colours.of(command.spec(), file().isPresent());
    }

    /** The file that takes the results, empty for standard output. */
    Optional<Path> file() {
        return Command.given(output, Path.class);
    }
}
