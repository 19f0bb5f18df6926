package laminate.print.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import laminate.print.MarkdownPrinter;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;

class CheckMarkdownTest {

    @Test
    void itSaysWhatTheTextSays() throws IOException {
        CheckReport report = new CheckReport(UnitSystem.SI, true);
        StringBuilder text = new StringBuilder();
        StringBuilder markdown = new StringBuilder();
        new TextPrinter<>(report::of, 300, Style.PLAIN).print(TestChecks.all(), text);
        new MarkdownPrinter<>(report::of).print(TestChecks.all(), markdown);
        assertThat(words(markdown.toString().replace("\\", "").replaceAll("[|*#]|:?--:?", " ")))
                .containsAll(words(text.toString().replaceAll("[|*#]|--+|==+", " ")));
        assertThat(markdown.toString()).doesNotContain("<b>", "\u001B").contains("\\*bold\\* \\<b\\>");
    }

    private static List<String> words(String text) {
        return List.of(text.replaceAll("[()]", " ").trim().split("\\s+"));
    }
}
