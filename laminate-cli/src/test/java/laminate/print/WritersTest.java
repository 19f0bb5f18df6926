package laminate.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.unit.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The writers of JSON and CSV by themselves. */
class WritersTest {
    private final StringBuilder out = new StringBuilder();

    @Test
    void jsonIsLaidOutTheSameEveryTime() {
        new JsonWriter(out)
                .object()
                .field("a", 1.5)
                .field("left out", OptionalDouble.empty())
                .key("list")
                .array()
                .text("x")
                .flag(true)
                .end()
                .key("none")
                .array()
                .end()
                .key("rows")
                .matrix(new double[][] {{1, 0}, {0, 2e20}})
                .end();
        assertThat(out.toString()).isEqualTo("""
                {
                  "a": 1.5,
                  "list": [
                    "x",
                    true
                  ],
                  "none": [],
                  "rows": [
                    [1, 0],
                    [0, 2e20]
                  ]
                }
                """);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "plain",
                "\"quoted\" \\ back",
                "\b\f\n\r\t\u0000\u001F\u007F",
                "mat 450 g/m² 艇庫 😀",
                "\u2028\u2029",
                ""
            })
    void jsonTextComesBackAsItWas(String text) {
        new JsonWriter(out).object().field("t", text).end();
        assertThat(StrictJson.object(out.toString())).containsEntry("t", text);
    }

    @Test
    void halfACharacterSurvivesUtf8() {
        new JsonWriter(out).object().field("t", "a\uD83Db").end();
        assertThat(out.toString()).contains("a\\ud83db");
        assertThat(StandardCharsets.UTF_8.newEncoder().canEncode(out)).isTrue();
    }

    @Test
    void jsonOutOfPlaceIsRefused() {
        JsonWriter json = new JsonWriter(out);
        assertThatThrownBy(json::end).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> json.key("k")).isInstanceOf(IllegalStateException.class);
        json.object();
        assertThatThrownBy(() -> json.text("t")).isInstanceOf(IllegalStateException.class);
        json.key("k");
        assertThatThrownBy(json::end).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> json.number(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void csvAmountsKeepTheirSign() {
        StringBuilder out = new StringBuilder();
        new CsvWriter(out)
                .amount(Money.parse("-1.83 GBP"))
                .amount(Optional.empty())
                .end();
        assertThat(out).hasToString("-1.83,\r\n");
    }

    @Test
    void csvQuotesWhatItMust() {
        new CsvWriter(out)
                .headings(List.of("a", "b"))
                .text("x, \"y\"")
                .number(-1.5)
                .end()
                .text("two\nlines")
                .nothing()
                .end();
        assertThat(out.toString()).isEqualTo("a,b\r\n\"x, \"\"y\"\"\",-1.5\r\n\"two\nlines\",\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "＝1"})
    void csvTextThatWouldRunGetsAnApostrophe(String text) {
        new CsvWriter(out).text(text);
        assertThat(out.toString().replace("\"", "")).isEqualTo("'" + text);
    }
}
