package laminate.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.file.Job;
import laminate.file.Project;
import laminate.file.Work;
import laminate.material.Materials;
import laminate.print.MarkdownPrinter;
import laminate.print.Report;
import laminate.print.ReportHtml;
import laminate.print.TextPrinter;
import laminate.print.quote.CostSheet;
import laminate.print.quote.Letter;
import laminate.print.quote.Quotation;
import laminate.print.quote.QuoteCsv;
import laminate.print.quote.QuoteJson;
import laminate.print.quote.QuoteWorkbook;
import laminate.print.quote.QuotedPart;
import laminate.print.quote.QuotedSet;
import laminate.quote.Quote;
import laminate.quote.SetQuote;
import picocli.CommandLine.Model.OptionSpec;

/** {@code laminate quote}: what to charge for a part in several numbers, and how that is made up. */
final class QuoteCommand extends Command {
    static final String NAME = "quote";

    private final PartInput parts;
    private final OptionSpec counts = option(
            "--count",
            "NUMBERS",
            new Counts(),
            "Numbers of good parts, as 1,5,10,25, or of sets of a project; the part's own, or one set, if not given.");
    private final OptionSpec asBought =
            flag("--as-bought", "Materials at the whole packs bought for each batch alone, not as they are used up.");
    private final QuoteOptions page = new QuoteOptions(this);

    QuoteCommand(Materials library) {
        super(
                NAME,
                "Price of a part, or of a project's set of parts, in several numbers, line by line, what it earns and what moves"
                        + " it; or the quotation for a customer.",
                "laminate quote locker-lid.yaml --count 1,5,10,25",
                "laminate quote locker-lid.yaml --count 10 --format html --customer 'Reed Bay School' -o lid.html",
                "laminate quote lockers.yaml --count 1,5,10",
                "laminate quote locker-lid.yaml --count 1,10 --as-bought --format xlsx -o lid.xlsx");
        parts = new PartInput(this, library);
    }

    @Override
    public Integer call() {
        page.check(parts);
        Optional<Letter> letter = page.isForCustomer() ? Optional.of(page.letter()) : Optional.empty();
        QuotedSet quoted = quoted();
        if (page.format() == QuoteOptions.QuoteFormat.XLSX) {
            Output.write(page.file().orElseThrow(), out -> new QuoteWorkbook().print(quoted, out));
            return ExitCode.DONE;
        }
        print(page.file(), letter.isPresent() ? letter(letter.get(), quoted) : sheet(quoted));
        if (letter.isPresent()) {
            tellWhatIsNotWritten(quoted);
        }
        return ExitCode.DONE;
    }

    private QuotedSet quoted() {
        List<QuotedSet> quotes = parts.eachFile(this::quote);
        boolean anyProject = quotes.stream().anyMatch(quoted -> quoted.project().isPresent());
        refuse(anyProject && quotes.size() > 1, "a project file is quoted by itself; give no other file with it");
        refuse(
                page.table().isOfProject() && !anyProject,
                "--table " + page.table().word() + " goes with a project file");
        return anyProject
                ? quotes.get(0)
                : QuotedSet.of(quotes.stream()
                        .flatMap(quoted -> quoted.parts().stream())
                        .toList());
    }

    private QuotedSet quote(Work work) {
        return work instanceof Project project
                ? quote(project)
                : QuotedSet.of(List.of(quote(work.mouldings().get(0))));
    }

    private QuotedPart quote(Job job) {
        List<Integer> numbers = numbers(job.part().count());
        return quoted(job, isSet(asBought) ? job.quoteAsBought(numbers) : job.quote(numbers));
    }

    private QuotedSet quote(Project project) {
        List<Integer> sets = numbers(1);
        SetQuote quote = isSet(asBought) ? project.quoteAsBought(sets) : project.quote(sets);
        List<QuotedPart> mouldings = new ArrayList<>();
        for (int i = 0; i < quote.quotes().size(); i++) {
            mouldings.add(quoted(project.mouldings().get(i), quote.quotes().get(i)));
        }
        return new QuotedSet(Optional.of(project.name()), mouldings, quote.batches());
    }

    private QuotedPart quoted(Job job, Quote quote) {
        return new QuotedPart(quote, job.estimate().massEach().planned(), isSet(asBought), job.quotation());
    }

    @SuppressWarnings("unchecked")
    private List<Integer> numbers(int usual) {
        return (List<Integer>) given(counts, List.class).orElse(List.of(usual));
    }

    private void tellWhatIsNotWritten(QuotedSet quoted) {
        for (QuotedPart part : quoted.parts()) {
            if (part.text().yard().isEmpty()) {
                spec().commandLine()
                        .getErr()
                        .println(quoted.project().orElse(part.quote().part().name())
                                + ": the quotation does not say who offers it; add quotation: {yard: …} to the workshop"
                                + " file");
                if (quoted.project().isPresent()) {
                    return;
                }
            }
        }
    }

    private static Output.Print letter(Letter letter, QuotedSet quoted) {
        return out -> new ReportHtml("Quotation").print(List.of(new Quotation(letter).of(quoted)), out);
    }

    private Output.Print sheet(QuotedSet quoted) {
        List<Report> sheets = new CostSheet().of(quoted);
        return switch (page.format()) {
            case TEXT -> out -> new TextPrinter<Report>(sheet -> sheet, page.width(), page.style()).print(sheets, out);
            case MARKDOWN -> out -> new MarkdownPrinter<Report>(sheet -> sheet).print(sheets, out);
            case JSON -> out -> new QuoteJson().print(quoted, out);
            case CSV -> out -> new QuoteCsv(page.table()).print(quoted, out);
            case HTML, XLSX -> out -> new ReportHtml("Internal cost sheet").print(sheets, out);
        };
    }
}
