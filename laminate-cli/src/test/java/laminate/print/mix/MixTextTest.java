package laminate.print.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import laminate.plan.MixPlan;
import laminate.print.MarkdownPrinter;
import laminate.print.Pages;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MixTextTest {
    private static final MixReport SI = new MixReport(UnitSystem.SI);

    @ParameterizedTest
    @MethodSource("laminate.print.Pages#all")
    void noLineIsWiderThanThePageOrCanSteerATerminal(int width, UnitSystem system) throws IOException {
        MixReport reports = new MixReport(system);
        Pages.assertReadable(text(new TextPrinter<>(reports::of, width, Style.PLAIN), TestPlans.all()), width);
        Pages.assertReadable(text(new TextPrinter<>(reports::doses, width, Style.PLAIN), TestPlans.all()), width);
        StringBuilder sheets = new StringBuilder();
        new JobSheetText(system, width, Style.PLAIN)
                .print(TestPlans.all().stream().map(TestPlans::sheet).toList(), sheets);
        Pages.assertReadable(sheets.toString().replace('\f', '\n'), width);
    }

    @Test
    void mixesThatAreAlikeStandInOneRowAndKeepEveryGram() throws IOException {
        String lid = text(new TextPrinter<>(SI::of, 80, Style.PLAIN), List.of(TestPlans.lid()));
        assertThat(lid.lines().map(line -> line.replaceAll(" +", " ")))
                .contains("1 to 2, each 1265 1140 19.0 16.2 20.0 12.0 7.67", "3 300 270 4.5 3.85 20.0 12.0 7.67");
    }

    @Test
    void aDayIsToldOnlyWhereThereAreSeveral() throws IOException {
        assertThat(text(new TextPrinter<>(SI::of, 80, Style.PLAIN), List.of(TestPlans.lid())))
                .contains("08:00 to 08:25, gelled at 08:45")
                .doesNotContain("day 1");
        assertThat(text(new TextPrinter<>(SI::of, 120, Style.PLAIN), List.of(TestPlans.keel())))
                .contains("day 1 08:00 to day 1 08:25", "day 2 09:00");
    }

    @Test
    void whatDoesNotFitSaysWhyAndWhatWouldHelp() throws IOException {
        assertThat(text(new TextPrinter<>(SI::of, 120, Style.PLAIN), List.of(TestPlans.keel())))
                .contains("mixes fit    no, not in stage 1")
                .contains("- No mix fits: a layer takes longer than the usable time.")
                .contains("- It fits with a dose of 1.00 %: then 4 mixes.", "- It fits with 3 hands: then one mix.")
                .contains("gel time   not known: the resin states no gel time")
                .contains("20 °C, assumed: the workshop states none");
    }

    @Test
    void aSheetBeginsANewPageForEachStage() throws IOException {
        StringBuilder text = new StringBuilder();
        new JobSheetText(UnitSystem.SI, 80, Style.PLAIN).print(List.of(TestPlans.sheet(TestPlans.lid())), text);
        List<String> pages = List.of(text.toString().split("\f"));
        assertThat(pages).hasSize(2);
        assertThat(pages.get(0)).startsWith("Bow locker lid, stage 1 of 2: gelcoat\n");
        assertThat(pages.get(1))
                .startsWith("Bow locker lid, stage 2 of 2: laminate\n")
                .contains("[ ]", "____");
        assertThat(pages.get(1).lines()).hasSizeLessThan(66);
    }

    @Test
    void markdownSaysWhatTheTextSays() throws IOException {
        List<MixPlan> plans = List.of(TestPlans.lid(), TestPlans.keel());
        String text = text(new TextPrinter<>(SI::of, 300, Style.PLAIN), plans);
        assertThat(words(markdown(plans).replace("\\", "").replaceAll("[|*#]|:?--:?", " ")))
                .containsAll(words(text.replaceAll("[|*#]|--+|==+", " ")));
        assertThat(markdown(List.of(TestPlans.hostileNames())))
                .doesNotContain("<b>", "\u001B")
                .contains("\\*bold\\* \\<b\\>");
    }

    private static String markdown(List<MixPlan> plans) throws IOException {
        StringBuilder markdown = new StringBuilder();
        new MarkdownPrinter<>(SI::of).print(plans, markdown);
        return markdown.toString();
    }

    private static List<String> words(String text) {
        return List.of(text.replaceAll("[()]", " ").trim().split("\\s+"));
    }

    private static String text(TextPrinter<MixPlan> printer, List<MixPlan> plans) throws IOException {
        StringBuilder text = new StringBuilder();
        printer.print(plans, text);
        return text.toString();
    }
}
