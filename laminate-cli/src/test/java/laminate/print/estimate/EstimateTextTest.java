package laminate.print.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import laminate.estimate.PartEstimate;
import laminate.print.Columns;
import laminate.print.Style;
import laminate.print.Style.Mark;
import laminate.print.TestParts;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EstimateTextTest {
    private static final List<PartEstimate> PARTS = TestParts.all();

    static Stream<Arguments> pages() {
        return Stream.of(40, 47, 60, 72, 80, 100, 120, 300)
                .flatMap(width -> Stream.of(UnitSystem.values())
                        .flatMap(system ->
                                Stream.of(Arguments.of(width, system, true), Arguments.of(width, system, false))));
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noLineIsWiderThanThePage(int width, UnitSystem system, boolean matrices) throws IOException {
        String text = print(new EstimateReport(system, matrices), width, Style.PLAIN);
        assertThat(text.lines())
                .allSatisfy(line -> assertThat(Columns.of(line)).as(line).isLessThanOrEqualTo(width));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 120})
    void noLineCanSteerATerminalOrEndsInSpaces(int width) throws IOException {
        String text = print(new EstimateReport(UnitSystem.SI, true), width, Style.PLAIN);
        assertThat(text.codePoints().filter(c -> c != '\n' && Character.isISOControl(c)))
                .isEmpty();
        assertThat(text).doesNotContain("\u202E", "\u2028");
        assertThat(text.lines()).noneMatch(line -> line.endsWith(" "));
    }

    @Test
    void aStyleChangesNothingButTheMarksOfWholeLines() throws IOException {
        EstimateReport report = new EstimateReport(UnitSystem.SI, true);
        String marked = print(report, 80, (mark, line) -> "<" + mark + ">" + line + "</>");
        assertThat(marked)
                .contains("<" + Mark.HEADING + ">Bow locker lid</>", "<" + Mark.TOTAL + ">", "<" + Mark.COLUMNS + ">");
        assertThat(marked.replaceAll("<[A-Z]+>|</>", "")).isEqualTo(print(report, 80, Style.PLAIN));
    }

    @Test
    void aPageTooNarrowToReadIsRefused() {
        EstimateReport report = new EstimateReport(UnitSystem.SI, false);
        assertThatThrownBy(() -> new TextPrinter<>(report::of, 39, Style.PLAIN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a page has at least 40 columns, not 39");
    }

    private static String print(EstimateReport report, int width, Style style) throws IOException {
        StringBuilder text = new StringBuilder();
        new TextPrinter<>(report::of, width, style).print(PARTS, text);
        return text.toString();
    }
}
