package laminate.print.estimate;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.estimate.PartEstimate;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.Style;
import laminate.print.TestParts;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format against its accepted print. */
class EstimatePrintTest {
    private static final EstimateReport SI = new EstimateReport(UnitSystem.SI, false);

    static Stream<Arguments> prints() {
        TextPrinter<PartEstimate> text = new TextPrinter<>(SI::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("locker-lid.txt", text, TestParts.lockerLid()),
                Arguments.of("locker-lid-missing-prices.txt", text, TestParts.lockerLidMissingPrices()),
                Arguments.of("kayak-deck.txt", text, TestParts.kayakDeck()),
                Arguments.of("textbook-strip.txt", text, TestParts.textbookStrip()),
                Arguments.of("hostile-names.txt", text, TestParts.hostileNames()),
                Arguments.of(
                        "kayak-deck-us-matrices.txt",
                        new TextPrinter<>(new EstimateReport(UnitSystem.US, true)::of, 80, Style.PLAIN),
                        TestParts.kayakDeck()),
                Arguments.of("locker-lid-120.txt", new TextPrinter<>(SI::of, 120, Style.PLAIN), TestParts.lockerLid()),
                Arguments.of("locker-lid.json", new EstimateJson(), TestParts.lockerLid()),
                Arguments.of("kayak-deck.json", new EstimateJson(), TestParts.kayakDeck()),
                Arguments.of("locker-lid.md", new MarkdownPrinter<>(SI::of), TestParts.lockerLid()),
                Arguments.of("hostile-names.md", new MarkdownPrinter<>(SI::of), TestParts.hostileNames()),
                csv(EstimateCsv.Which.LAYERS),
                csv(EstimateCsv.Which.RESINS),
                csv(EstimateCsv.Which.MATERIALS),
                csv(EstimateCsv.Which.CUTS),
                csv(EstimateCsv.Which.COST));
    }

    private static Arguments csv(EstimateCsv.Which which) {
        return Arguments.of(
                "locker-lid-" + which.word() + ".csv", new EstimateCsv(which, UnitSystem.SI), TestParts.lockerLid());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Printer<PartEstimate> printer, PartEstimate estimate) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(estimate), printed);
        Golden.check(name, printed.toString());
    }
}
