package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SourceTextTest {

    private final SourceText text = new SourceText("t.yaml", "a𝄞b\n  cd\r\n𝄞e");

    @Test
    void codePointsAreFoundInAnyOrder() {
        assertThat(text.index(2)).isEqualTo(3);
        assertThat(text.index(10)).isEqualTo(11);
        assertThat(text.index(1)).isEqualTo(1);
        assertThat(text.index(2)).isEqualTo(3);
        assertThat(text.index(12)).isEqualTo(text.text().length());
    }

    @Test
    void characterBeforeIsTheLastThatIsNoBlank() {
        assertThat(text.before(text.text().indexOf('d'))).isEqualTo('c');
        assertThat(text.before(text.text().indexOf('c'))).isEqualTo('\n');
        assertThat(text.before(0)).isEqualTo(' ');
        assertThat(new SourceText("t.yaml", "   a").before(3)).isEqualTo(' ');
    }

    @Test
    void linesEndHoweverTheyEnd() {
        assertThat(text.line(1)).isEqualTo("a𝄞b");
        assertThat(text.line(2)).isEqualTo("  cd");
        assertThat(text.line(3)).isEqualTo("𝄞e");
        assertThat(text.line(4)).isEmpty();
        assertThat(text.position(text.text().indexOf('e'))).isEqualTo(new Position("t.yaml", 3, 2));
    }
}
