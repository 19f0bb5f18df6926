package laminate.print.compare;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.compare.SideBySide;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of comparisons against its accepted print. */
class ComparePrintTest {
    private static final CompareReport SI = new CompareReport(UnitSystem.SI);

    static Stream<Arguments> prints() {
        TextPrinter<SideBySide> text = new TextPrinter<>(SI::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("compare-lid.txt", text, TestComparisons.lid()),
                Arguments.of("compare-plywood.txt", text, TestComparisons.asStiffAsPlywood()),
                Arguments.of("compare-hostile-names.txt", text, TestComparisons.hostileNames()),
                Arguments.of(
                        "compare-lid-us-120.txt",
                        new TextPrinter<>(new CompareReport(UnitSystem.US)::of, 120, Style.PLAIN),
                        TestComparisons.lid()),
                Arguments.of("compare-lid.md", new MarkdownPrinter<>(SI::of), TestComparisons.lid()),
                csv(CompareCsv.Which.FIGURES),
                csv(CompareCsv.Which.COSTS),
                csv(CompareCsv.Which.CURVE),
                csv(CompareCsv.Which.BREAK_EVEN));
    }

    private static Arguments csv(CompareCsv.Which which) {
        return Arguments.of(
                "compare-lid-" + which.word() + ".csv", new CompareCsv(which, UnitSystem.SI), TestComparisons.lid());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Printer<SideBySide> printer, SideBySide ways) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(ways), printed);
        Golden.check(name, printed.toString());
    }
}
