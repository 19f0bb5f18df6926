package laminate.print.quote;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.ReportHtml;
import laminate.print.Style;
import laminate.print.TextPrinter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of quotes against its accepted print. */
class QuotePrintTest {
    private static final CostSheet SHEET = new CostSheet();
    private static final Printer<QuotedPart> LETTER =
            (parts, out) -> new ReportHtml("Quotation").print(List.of(new Quotation(TestQuotes.LETTER).of(parts)), out);

    static Stream<Arguments> prints() {
        Printer<QuotedPart> text = new TextPrinter<>(SHEET::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("quote-lid.txt", text, List.of(TestQuotes.lid())),
                Arguments.of("quote-untaxed.txt", text, List.of(TestQuotes.untaxed())),
                Arguments.of("quote-lid.md", new MarkdownPrinter<>(SHEET::of), List.of(TestQuotes.lid())),
                Arguments.of("quote-lid.json", new QuoteJson(), List.of(TestQuotes.lid())),
                Arguments.of("quote-untaxed.html", LETTER, List.of(TestQuotes.untaxed())),
                Arguments.of("quote-several.html", LETTER, List.of(TestQuotes.lid(), TestQuotes.hostile())),
                csv(QuoteCsv.Which.PRICES),
                csv(QuoteCsv.Which.BUILD_UP),
                csv(QuoteCsv.Which.SENSITIVITY));
    }

    private static Arguments csv(QuoteCsv.Which which) {
        return Arguments.of(
                "quote-several-" + which.word() + ".csv",
                new QuoteCsv(which),
                List.of(TestQuotes.lid(), TestQuotes.hostile()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Printer<QuotedPart> printer, List<QuotedPart> parts) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(parts, printed);
        Golden.check(name, printed.toString());
    }
}
