package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code mix} and {@code jobsheet}, which plan alike. */
class MixCommandTest {
    private static final String LID = """
            part: Lid
            process: hand lay-up
            resin: polyester-ortho
            zones: [{name: top, area: 1 m², layers: [mat-300, mat-450]}]
            """;

    @TempDir
    private Path folder;

    private Path lid;

    @BeforeEach
    void writeThePart() throws IOException {
        lid = Files.writeString(folder.resolve("lid.yaml"), LID);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"json | {", "csv | part,stage,name,use,mix,", "markdown | # Lid", "text | Lid"})
    void printsTheFormatAskedFor(String format, String start) {
        Run run = laminate("mix", lid, "--format", format);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({
        "mixes,part;stage;name;use;mix",
        "stages,part;stage;name;kind",
        "layers,part;stage;zone",
        "doses,resin;agent;dose_percent",
        "working-times,resin;agent;working_time_min"
    })
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("mix", lid, "--format", "csv", "--table", table).out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void todaysTemperatureHandsHoursAndPumpWin() {
        String usual = laminate("mix", lid).out();
        assertThat(usual).contains("temperature  20 °C, assumed", "hands        1", " 08:00 ");
        Run run =
                laminate("mix", lid, "--temperature", "25 °C", "--hands", 2, "--start", "7:30", "--pump-stroke", "5ml");
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("temperature  25 °C\n", "hands        2", " 07:30 ", "pump strokes")
                .doesNotContain("assumed");
        assertThat(laminate("mix", lid, "--temperature", "77F").out()).contains("temperature  25 °C\n");
        assertThat(laminate("mix", lid, "--units", "us", "--temperature", "25C").out())
                .contains("temperature  77 °F\n");
    }

    @Test
    void aTemperatureBeyondTheGelTimesOfAResinIsRefusedWithTheRange() {
        Path result = folder.resolve("result.txt");
        for (String command : new String[] {"mix", "jobsheet"}) {
            Run run = laminate(command, lid, "--temperature", "40C", "-o", result);
            assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
            assertThat(run.out()).isEmpty();
            assertThat(run.err())
                    .startsWith(lid + ": ")
                    .contains("polyester-ortho", "at 40 °C", "from 15 °C to 30 °C")
                    .doesNotContain("Exception");
            assertThat(result).doesNotExist();
        }
    }

    @Test
    void aDoseOutsideTheRangeOfAResinIsRefusedAtItsPlace() throws IOException {
        Path strong = Files.writeString(folder.resolve("strong.yaml"), LID + "catalyst: {id: mekp, amount: 9 %}\n");
        Run run = laminate("mix", strong);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.err()).startsWith(strong + ":5:30: ").contains("9 %");
    }

    @Test
    void theTableForTheWallTellsAllTemperaturesWhateverTodays() {
        Run run = laminate("mix", lid, "--dose-table", "--temperature", "40C");
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .startsWith("polyester-ortho with mekp\n")
                .contains("Minutes until it gels")
                .doesNotContain("Stage 1");
        assertThat(laminate("mix", lid, "--dose-table", "--format", "csv").out())
                .isEqualTo(laminate("mix", lid, "--format", "csv", "--table", "doses")
                        .out());
    }

    @Test
    void aStageThatHasNoMixIsToldBesideThePlan() {
        Run run = laminate("mix", lid, "--temperature", "30C", "--pump-stroke", "100ml");
        assertThat(run.exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(run.err().lines()).containsExactly("Lid: not every stage has mixes that fit; the plan says why");
        assertThat(run.out()).contains("mixes fit    no, not in stage 1", "- No mix fits: ");
        Run sheets = laminate("jobsheet", lid, "--temperature", "30C", "--pump-stroke", "100ml");
        assertThat(sheets.exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(sheets.err()).isEqualTo(run.err());
        assertThat(sheets.out()).contains("No mix fits: ");
        assertThat(laminate("mix", lid, "--dose-table", "--temperature", "30C", "--pump-stroke", "100ml")
                        .exitCode())
                .as("the table for the wall is no plan")
                .isEqualTo(ExitCode.DONE);
    }

    /** Lids that are filled by themselves, a hatch whose resin sets on the way, and a rim of which nothing is planned. */
    @Test
    void thePageOfAStageShowsEachOfItsInfusions(@TempDir Path folder) throws IOException {
        Path lids = Files.writeString(folder.resolve("lids.yaml"), """
                part: Lids
                process: infusion
                resin: epoxy-infusion
                workshop: {temperature: 20 °C, labour: {crew: 2}}
                schedules: {shell: [{reinforcement: biaxial-600, times: 4}]}
                zones:
                  - name: lid
                    count: 2
                    area: 0.5 m²
                    layers: [{schedule: shell}]
                    infusion: {feed: line, flow-length: 0.4 m, vacuum: 900 mbar, permeability: 1e-10 m²}
                  - name: hatch
                    area: 0.5 m²
                    layers: [{schedule: shell}]
                    infusion: {feed: line, flow-length: 40 m, vacuum: 850 mbar, permeability: typical}
                  - {name: rim, area: 0.2 m², layers: [{schedule: shell}]}
                """);

        Run run = laminate("jobsheet", lids, "--format", "markdown");

        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains(
                        "by minute ",
                        "## Infusion of lid",
                        "2 alike, each by itself",
                        "| vacuum | mbar | 900 and 850 |")
                .contains("## Infusion of hatch", "| full after | never |", "order of magnitude from memory")
                .contains("min by the flow of the planned infusion (lid); ", "none is planned or it never fills")
                .contains("| pressure lost in the drop test | mbar | 10.0 |");
        assertThat(laminate("mix", lids, "--format", "json").out())
                .contains("\"by_flow_zones\": [", "\"never_full_zones\": [", "\"by_labour_s\": ");
    }

    @Test
    void theHelpTellsTheExitCodes() {
        for (String command : List.of("mix", "jobsheet")) {
            assertThat(laminate(command, "--help").out()).contains("Exit codes:", "  3   no mix of a stage is used up");
        }
    }

    @Test
    void handsAreWholeAndNoMoreThanGetRoundAMould() {
        assertThat(laminate("mix", lid, "--hands", "1.5").err())
                .contains("'--hands': '1.5' is not a whole number of up to nine digits, as 2");
        assertThat(laminate("mix", lid, "--hands", "1000").err())
                .startsWith("laminate: --hands must be 1 to 100, not 1000: it is how many laminate together");
        assertThat(laminate("mix", lid, "--hands", "100").exitCode()).isEqualTo(ExitCode.DONE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--table stages",
                "--format json --units us",
                "--format json --dose-table",
                "--format csv --table mixes --dose-table",
                "--temperature 20",
                "--temperature 20kg",
                "--hands 0",
                "--hands two",
                "--hands 1.5",
                "--hands 101",
                "--width 80.5",
                "--start noon",
                "--start 25:00",
                "--pump-stroke 0ml",
                "--pump-stroke 5",
                "--width 39",
                "--bogus"
            })
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("mix", lid.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate mix --help'.\n");
    }

    @Test
    void aSheetHasAPageForEachStage() {
        Run run = laminate("jobsheet", lid);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith("Lid, stage 1 of ").contains("[ ]", "Write down", "mat-450");
        assertThat(laminate("jobsheet", lid, "--format", "markdown").out()).startsWith("# Lid, stage 1 of ");
        assertThat(laminate("jobsheet", lid, "--format", "json").exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(laminate("jobsheet", lid, "--width", 60).out().lines()).allMatch(line -> line.length() <= 60);
    }

    @Test
    void aFileIsNotOverwrittenByItsOwnPlan() {
        for (String command : new String[] {"mix", "jobsheet"}) {
            assertThat(laminate(command, lid, "-o", lid).exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        }
        assertThat(lid).hasContent(LID);
    }
}
