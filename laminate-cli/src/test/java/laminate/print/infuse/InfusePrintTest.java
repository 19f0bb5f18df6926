package laminate.print.infuse;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.plan.infusion.PartInfusion;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of infusions against its accepted print. */
class InfusePrintTest {
    private static final InfuseReport SI = new InfuseReport(UnitSystem.SI);

    static Stream<Arguments> prints() {
        TextPrinter<PartInfusion> text = new TextPrinter<>(SI::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("infuse-deck.txt", text, TestInfusions.deck()),
                Arguments.of("infuse-never.txt", text, TestInfusions.never()),
                Arguments.of("infuse-hostile-names.txt", text, TestInfusions.hostileNames()),
                Arguments.of(
                        "infuse-deck-us-120.txt",
                        new TextPrinter<>(new InfuseReport(UnitSystem.US)::of, 120, Style.PLAIN),
                        TestInfusions.deck()),
                Arguments.of("infuse-deck.md", new MarkdownPrinter<>(SI::of), TestInfusions.deck()),
                Arguments.of("infuse-deck.json", new InfuseJson(), TestInfusions.deck()),
                Arguments.of("infuse-never.json", new InfuseJson(), TestInfusions.never()),
                csv(InfuseCsv.Which.INFUSIONS),
                csv(InfuseCsv.Which.FRONT),
                csv(InfuseCsv.Which.RESIN),
                csv(InfuseCsv.Which.BUCKETS));
    }

    private static Arguments csv(InfuseCsv.Which which) {
        return Arguments.of(
                "infuse-deck-" + which.word() + ".csv", new InfuseCsv(which, UnitSystem.SI), TestInfusions.deck());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Printer<PartInfusion> printer, PartInfusion part) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(part), printed);
        Golden.check(name, printed.toString());
    }
}
