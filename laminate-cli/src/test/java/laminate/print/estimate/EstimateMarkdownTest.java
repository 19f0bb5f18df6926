package laminate.print.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import laminate.print.MarkdownPrinter;
import laminate.print.Style;
import laminate.print.TestParts;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;

class EstimateMarkdownTest {

    @Test
    void everyRowOfAPipeTableHasTheCellsOfItsHeading() throws IOException {
        List<String> table = new ArrayList<>();
        int tables = 0;
        for (String line : print().split("\n", -1)) {
            if (line.startsWith("|")) {
                table.add(line);
            } else if (!table.isEmpty()) {
                assertThat(table.get(1)).matches("\\|( :--| --:| \\|)+ \\|");
                assertThat(table).allSatisfy(row -> assertThat(bars(row)).isEqualTo(bars(table.get(0))));
                table.clear();
                tables++;
            }
        }
        assertThat(tables).isGreaterThan(20);
    }

    @Test
    void whatANameHoldsIsNoMark() throws IOException {
        assertThat(print())
                .doesNotContain("<b>")
                .doesNotContain("*bold*", "\u001B")
                .contains("\\*bold\\* \\<b\\>");
    }

    @Test
    void itSaysWhatTheTextSays() throws IOException {
        StringBuilder text = new StringBuilder();
        new TextPrinter<>(new EstimateReport(UnitSystem.SI, true)::of, 300, Style.PLAIN).print(TestParts.all(), text);
        assertThat(words(print().replace("\\", "").replaceAll("[|*#]|:?--:?", " ")))
                .containsAll(words(text.toString().replaceAll("[|*#]|--+|==+", " ")));
    }

    private static List<String> words(String text) {
        return List.of(text.replaceAll("[()]", " ").trim().split("\\s+"));
    }

    private static long bars(String row) {
        return row.replace("\\|", "").chars().filter(c -> c == '|').count();
    }

    private static String print() throws IOException {
        StringBuilder markdown = new StringBuilder();
        new MarkdownPrinter<>(new EstimateReport(UnitSystem.SI, true)::of).print(TestParts.all(), markdown);
        return markdown.toString();
    }
}
