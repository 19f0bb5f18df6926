package laminate.print.mix;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.plan.MixPlan;
import laminate.plan.infusion.MouldingPlan;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of plans and of their sheets against its accepted print. */
class MixPrintTest {
    private static final MixReport SI = new MixReport(UnitSystem.SI);

    static Stream<Arguments> plans() {
        TextPrinter<MixPlan> text = new TextPrinter<>(SI::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("mix-lid.txt", text, TestPlans.lid()),
                Arguments.of("mix-keel.txt", text, TestPlans.keel()),
                Arguments.of("mix-hostile-names.txt", text, TestPlans.hostileNames()),
                Arguments.of(
                        "mix-lid-us-120.txt",
                        new TextPrinter<>(new MixReport(UnitSystem.US)::of, 120, Style.PLAIN),
                        TestPlans.lid()),
                Arguments.of("mix-lid-doses.txt", new TextPrinter<>(SI::doses, 80, Style.PLAIN), TestPlans.lid()),
                Arguments.of("mix-lid.md", new MarkdownPrinter<>(SI::of), TestPlans.lid()),
                Arguments.of("mix-lid.json", new MixJson(), TestPlans.lid()),
                Arguments.of("mix-keel.json", new MixJson(), TestPlans.keel()),
                csv(MixCsv.Which.MIXES),
                csv(MixCsv.Which.STAGES),
                csv(MixCsv.Which.LAYERS),
                csv(MixCsv.Which.DOSES),
                csv(MixCsv.Which.WORKING_TIMES));
    }

    private static Arguments csv(MixCsv.Which which) {
        return Arguments.of("mix-lid-" + which.word() + ".csv", new MixCsv(which, UnitSystem.SI), TestPlans.lid());
    }

    static Stream<Arguments> sheets() {
        return Stream.of(
                Arguments.of("jobsheet-lid.txt", new JobSheetText(UnitSystem.SI, 80, Style.PLAIN), TestPlans.lid()),
                Arguments.of("jobsheet-keel.txt", new JobSheetText(UnitSystem.SI, 80, Style.PLAIN), TestPlans.keel()),
                Arguments.of("jobsheet-lid.md", new JobSheetMarkdown(UnitSystem.SI), TestPlans.lid()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("plans")
    void printsWhatWasAccepted(String name, Printer<MixPlan> printer, MixPlan plan) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(plan), printed);
        Golden.check(name, printed.toString());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void printsTheSheetsThatWereAccepted(String name, Printer<MouldingPlan> printer, MixPlan plan) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(TestPlans.sheet(plan)), printed);
        Golden.check(name, printed.toString());
    }
}
