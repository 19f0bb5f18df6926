package laminate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int laminate(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @ParameterizedTest
    @ValueSource(strings = {"--version", "-V"})
    void printsItsVersionAsTheBuildWroteIt(String option) {
        assertThat(laminate(option)).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).matches("laminate \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?\\R");
        assertThat(err.toString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "-h"})
    void printsHelpToStandardOutput(String option) {
        assertThat(laminate(option)).isEqualTo(ExitCode.DONE);
        assertThat(out.toString()).startsWith("Usage: laminate ");
        assertThat(out.toString().lines()).allMatch(line -> line.length() <= 80);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void asksForACommandWhereNoneIsGiven() {
        assertThat(laminate()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines())
                .containsExactly("laminate: Which command? None is given.", "Try 'laminate --help'.");
    }

    @Test
    void namesAnUnknownOptionAndTheNearestKnownOne() {
        assertThat(laminate("--versoin")).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString().lines())
                .containsExactly(
                        "laminate: Unknown option: '--versoin'",
                        "Possible solutions: --version",
                        "Try 'laminate --help'.");
    }
}
