package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class InfuseCommandTest {
    private static final String DECK = """
            part: Deck
            process: infusion
            resin: vinylester-infusion
            zones: [{name: top, area: 1 m², layers: [{times: 4, layers: [biaxial-600]}]}]
            infusion:
              feed: line
              flow-length: 0.5 m
              vacuum: 950 mbar
              viscosity: 0.2 Pa·s
              permeability: 1e-10 m²
            """;

    @TempDir
    private Path folder;

    private Path deck;
    private Path late;

    @BeforeEach
    void writeTheParts() throws IOException {
        deck = write("deck.yaml", DECK);
        late = write(
                "late.yaml", DECK.replace("part: Deck", "part: Late").replace("0.5 m", "5 m") + "  margin: 80 %\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"json | {", "csv | part,zone,verdict,", "markdown | # Deck", "text | Deck"})
    void printsTheFormatAskedFor(String format, String start) {
        Run run = laminate("infuse", deck, "--format", format);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({
        "infusions,part;zone;verdict",
        "front,part;zone;time_min",
        "resin,part;resin;use;place",
        "buckets,part;zone;bucket"
    })
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("infuse", deck, "--format", "csv", "--table", table).out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void aMissOfAStatedMarginIsThreeAfterTheResultsAreWritten() {
        Path result = folder.resolve("result.txt");
        Run run = laminate("infuse", deck, late, "-o", result);
        assertThat(run.exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Late: ").doesNotContain("Deck: ");
        assertThat(result).content().contains("Deck\n====", "Late\n====");
    }

    @Test
    void aMissOfTheUsualMarginIsToldButIsNoRequirement() throws IOException {
        Path usual = write("usual.yaml", DECK.replace("0.5 m", "5 m"));
        Run run = laminate("infuse", usual);
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).containsPattern("too late|never full");
    }

    /** The flow needs no gel time: it is told where the gel time is not known, and nothing is judged. */
    @Test
    void outsideTheGelTimesTheFillIsToldAndNotJudged() throws IOException {
        Run run = laminate("infuse", deck, "--temperature", "40C", "--format", "json");

        assertThat(run.out())
                .contains("\"fill_time_s\": ", "\"verdict\": \"not judged\"", "is not known outside ", "at 40.0 °C")
                .doesNotContain("gel_time_s", "usable_time_s");
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        Path demanding = write("demanding.yaml", DECK + "  margin: 60 %\n");
        Run asked = laminate("infuse", demanding, "--temperature", "40C");
        assertThat(asked.exitCode())
                .as("a margin that cannot be judged is not met")
                .isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(asked.err()).startsWith("Deck: not judged: full after ").contains("is not known outside ");
    }

    @Test
    void aPartThatPlansNoInfusionIsToldHowTo() throws IOException {
        Path idle = write("idle.yaml", DECK.substring(0, DECK.indexOf("infusion:\n")));
        Run run = laminate("infuse", deck, idle);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Deck: no infusion is planned.").contains("strip-test:");
        String example = run.err()
                .substring(run.err().indexOf("  infusion:"))
                .stripTrailing()
                .stripIndent();
        assertThat(laminate("infuse", write("told.yaml", Files.readString(idle) + example))
                        .exitCode())
                .isEqualTo(ExitCode.DONE);
    }

    @Test
    void todaysTemperatureWins() {
        assertThat(laminate("infuse", deck, "--temperature", "25C").out())
                .isNotEqualTo(laminate("infuse", deck, "--temperature", "18C").out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--table front", "--format json --units us", "--temperature 20", "--width 39", "--bogus"})
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("infuse", deck.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate infuse --help'.\n");
    }

    @Test
    void theHelpTellsTheExitCodes() {
        assertThat(laminate("infuse", "--help").out()).contains("Exit codes:", "  3   not full within the margin");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
