package laminate.print.quote;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Report;
import laminate.print.ReportHtml;
import laminate.print.Style;
import laminate.print.TextPrinter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of quotes against its accepted print. */
class QuotePrintTest {
    private static final CostSheet SHEET = new CostSheet();

    /** A format of a quote. */
    private interface Print {
        void to(QuotedSet quoted, Appendable out) throws IOException;
    }

    private static final Print TEXT =
            (quoted, out) -> new TextPrinter<Report>(sheet -> sheet, 80, Style.PLAIN).print(SHEET.of(quoted), out);
    private static final Print MARKDOWN =
            (quoted, out) -> new MarkdownPrinter<Report>(sheet -> sheet).print(SHEET.of(quoted), out);
    private static final Print JSON = (quoted, out) -> new QuoteJson().print(quoted, out);
    private static final Print LETTER = (quoted, out) ->
            new ReportHtml("Quotation").print(List.of(new Quotation(TestQuotes.LETTER).of(quoted)), out);

    static Stream<Arguments> prints() {
        QuotedSet lid = TestQuotes.alone(TestQuotes.lid());
        QuotedSet lockers = TestQuotes.lockers();
        QuotedSet untaxed = TestQuotes.alone(TestQuotes.untaxed());
        return Stream.of(
                Arguments.of("quote-lid.txt", TEXT, lid),
                Arguments.of("quote-untaxed.txt", TEXT, untaxed),
                Arguments.of("quote-lid.md", MARKDOWN, lid),
                Arguments.of("quote-lid.json", JSON, lid),
                Arguments.of("quote-untaxed.html", LETTER, untaxed),
                Arguments.of("quote-several.html", LETTER, TestQuotes.several()),
                csv(QuoteCsv.Which.PRICES, "several", TestQuotes.several()),
                csv(QuoteCsv.Which.BUILD_UP, "several", TestQuotes.several()),
                csv(QuoteCsv.Which.SENSITIVITY, "several", TestQuotes.several()),
                Arguments.of("quote-lockers.txt", TEXT, lockers),
                Arguments.of("quote-lockers.md", MARKDOWN, lockers),
                Arguments.of("quote-lockers.json", JSON, lockers),
                Arguments.of("quote-lockers.html", LETTER, lockers),
                csv(QuoteCsv.Which.SETS, "lockers", lockers),
                csv(QuoteCsv.Which.TOOLING, "lockers", lockers));
    }

    private static Arguments csv(QuoteCsv.Which which, String name, QuotedSet set) {
        Print csv = (quoted, out) -> new QuoteCsv(which).print(quoted, out);
        return Arguments.of("quote-" + name + "-" + which.word() + ".csv", csv, set);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Print format, QuotedSet quoted) throws IOException {
        StringBuilder printed = new StringBuilder();
        format.to(quoted, printed);
        Golden.check(name, printed.toString());
    }
}
