package laminate.cli;

import java.util.List;
import java.util.Optional;
import laminate.file.Job;
import laminate.material.Materials;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.ReportHtml;
import laminate.print.TextPrinter;
import laminate.print.quote.CostSheet;
import laminate.print.quote.Letter;
import laminate.print.quote.Quotation;
import laminate.print.quote.QuoteCsv;
import laminate.print.quote.QuoteJson;
import laminate.print.quote.QuoteWorkbook;
import laminate.print.quote.QuotedPart;
import laminate.quote.Quote;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate quote}: what to charge for a part in several numbers, and how that is made up. */
final class QuoteCommand extends Command {
    static final String NAME = "quote";

    private final PartInput parts;
    private final OptionSpec counts = option(
            "--count", "NUMBERS", new Counts(), "Numbers of good parts, as 1,5,10,25; the part's own if not given.");
    private final OptionSpec asBought =
            flag("--as-bought", "Materials at the whole packs bought for each batch alone, not as they are used up.");
    private final QuoteOptions page = new QuoteOptions(this);

    QuoteCommand(Materials library) {
        super(
                NAME,
                "Price of a part in several numbers, line by line, what it earns and what moves it; or the quotation for a"
                        + " customer.",
                "laminate quote locker-lid.yaml --count 1,5,10,25",
                "laminate quote locker-lid.yaml --count 10 --format html --customer 'Reed Bay School' -o lid.html",
                "laminate quote locker-lid.yaml --count 1,10 --as-bought --format xlsx -o lid.xlsx");
        parts = new PartInput(this, library);
    }

    @Override
    public Integer call() {
        page.check(parts);
        Optional<Letter> letter = page.isForCustomer() ? Optional.of(page.letter()) : Optional.empty();
        List<QuotedPart> quotes = parts.each(this::quote);
        if (page.format() == QuoteOptions.QuoteFormat.XLSX) {
            Output.write(page.file().orElseThrow(), out -> new QuoteWorkbook().print(quotes, out));
            return ExitCode.DONE;
        }
        Printer<QuotedPart> printer = letter.isPresent() ? letter(letter.get()) : printer();
        print(page.file(), out -> printer.print(quotes, out));
        if (letter.isPresent()) {
            tellWhatIsNotWritten(quotes);
        }
        return ExitCode.DONE;
    }

    @SuppressWarnings("unchecked")
    private QuotedPart quote(Job job) {
        List<Integer> numbers = (List<Integer>)
                given(counts, List.class).orElse(List.of(job.part().count()));
        Quote quote = isSet(asBought) ? job.quoteAsBought(numbers) : job.quote(numbers);
        return new QuotedPart(quote, job.estimate().massEach().planned(), isSet(asBought), job.quotation());
    }

    private void tellWhatIsNotWritten(List<QuotedPart> quotes) {
        for (QuotedPart quoted : quotes) {
            if (quoted.text().yard().isEmpty()) {
                spec().commandLine()
                        .getErr()
                        .println(quoted.quote().part().name() + ": the quotation does not say who offers it; add"
                                + " quotation: {yard: …} to the workshop file");
            }
        }
    }

    private static Printer<QuotedPart> letter(Letter letter) {
        return (quotes, out) -> new ReportHtml("Quotation").print(List.of(new Quotation(letter).of(quotes)), out);
    }

    private Printer<QuotedPart> printer() {
        CostSheet sheets = new CostSheet();
        return switch (page.format()) {
            case TEXT -> new TextPrinter<>(sheets::of, page.width(), page.style());
            case MARKDOWN -> new MarkdownPrinter<>(sheets::of);
            case JSON -> new QuoteJson();
            case CSV -> new QuoteCsv(page.table());
            case HTML, XLSX ->
                (quotes, out) -> new ReportHtml("Internal cost sheet")
                        .print(quotes.stream().map(sheets::of).toList(), out);
        };
    }
}
