package laminate.print.check;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of checks against its accepted print. */
class CheckPrintTest {
    private static final CheckedPart TANK = TestChecks.sideTank();
    private static final CheckReport SI = new CheckReport(UnitSystem.SI, false);

    static Stream<Arguments> prints() {
        TextPrinter<CheckedPart> text = new TextPrinter<>(SI::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("check-side-tank.txt", text, TANK),
                Arguments.of("check-unknown-strength.txt", text, TestChecks.unknownStrength()),
                Arguments.of("check-not-judged.txt", text, TestChecks.notJudged()),
                Arguments.of("check-hostile-names.txt", text, TestChecks.hostileNames()),
                Arguments.of(
                        "check-side-tank-us-plies.txt",
                        new TextPrinter<>(new CheckReport(UnitSystem.US, true)::of, 120, Style.PLAIN),
                        TANK),
                Arguments.of("check-side-tank.json", new CheckJson(), TANK),
                Arguments.of("check-side-tank.md", new MarkdownPrinter<>(SI::of), TANK),
                csv(CheckCsv.Which.PLIES),
                csv(CheckCsv.Which.PANELS),
                csv(CheckCsv.Which.BEAMS),
                csv(CheckCsv.Which.LIMITS),
                csv(CheckCsv.Which.COMPARISON),
                csv(CheckCsv.Which.SURFACE));
    }

    private static Arguments csv(CheckCsv.Which which) {
        return Arguments.of("check-side-tank-" + which.word() + ".csv", new CheckCsv(which, UnitSystem.SI), TANK);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Printer<CheckedPart> printer, CheckedPart checked) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(checked), printed);
        Golden.check(name, printed.toString());
    }
}
