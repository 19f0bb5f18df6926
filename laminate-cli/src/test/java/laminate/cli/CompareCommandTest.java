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

class CompareCommandTest {
    private static final String LID = """
            part: Lid
            process: hand lay-up
            resin: polyester-ortho
            schedules: {shell: [mat-300, mat-450], thick-shell: [mat-300, {times: 2, layers: [mat-450]}]}
            alternatives: {shell: [thick-shell]}
            zones: [{name: top, area: 1 m², layers: [{schedule: shell}]}]
            """;
    private static final String BALSA = """
            part: Balsa lid
            process: hand lay-up
            resin: polyester-ortho
            zones: [{name: top, area: 1 m², layers: [mat-450, {core: honeycomb, thickness: 10 mm}, mat-450]}]
            """;

    @TempDir
    private Path folder;

    private Path lid;

    @BeforeEach
    void writeThePart() throws IOException {
        lid = write("lid.yaml", LID);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"json | {", "csv | of,name,zone,measure,unit,", "markdown | # Lid", "text | Lid"})
    void printsTheFormatAskedFor(String format, String start) {
        Run run = laminate("compare", lid, "--format", format);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({
        "figures,of;name;zone;measure;unit;hand lay-up;vacuum bag;vacuum bag difference_percent;infusion",
        "costs,head;name;currency",
        "curve,parts;hand lay-up total",
        "break-even,from_part;is_cheaper;than"
    })
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("compare", lid, "--format", "csv", "--table", table).out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void oneFileAloneIsTakenByEveryProcess() {
        assertThat(ways("compare", lid)).isEqualTo("hand lay-up, vacuum bag, infusion");
    }

    @Test
    void waysAreThoseThatAreNamed() throws IOException {
        assertThat(ways("compare", lid, "--process", "infusion,hand-lay-up")).isEqualTo("infusion, hand lay-up");
        assertThat(ways("compare", lid, "--process", "infusion", "--process", "vacuum-bag"))
                .isEqualTo("infusion, vacuum bag");
        assertThat(ways("compare", lid, "--resin", "polyester-iso,vinylester")).isEqualTo("polyester-iso, vinylester");
        assertThat(ways("compare", lid, "--process", "vacuum-bag,hand-lay-up", "--resin", "polyester-iso"))
                .isEqualTo("vacuum bag, polyester-iso, hand lay-up, polyester-iso");
        assertThat(ways("compare", lid, "--process", "infusion,infusion")).isEqualTo("as stated, infusion");
        Path other = write("other.yaml", LID.replace("part: Lid", "part: Other lid"));
        assertThat(ways("compare", lid, other)).isEqualTo("Lid, Other lid");
        Path copy = write("copy.yaml", LID);
        assertThat(ways("compare", lid, copy)).isEqualTo("Lid, Lid (" + copy + ")");
    }

    @Test
    void aSingleWayIsComparedWithThePartAsItIsStated() {
        assertThat(ways("compare", lid, "--process", "infusion")).isEqualTo("as stated, infusion");
        assertThat(ways("compare", lid, "--schedule", "shell=thick-shell")).isEqualTo("as stated, shell=thick-shell");
        assertThat(laminate("compare", lid, "--schedule", "shell=thick-shell").out())
                .contains("in % to as stated");
    }

    @Test
    void theReferenceStandsFirst() {
        assertThat(ways("compare", lid, "--reference", "infusion")).isEqualTo("infusion, hand lay-up, vacuum bag");
        Run unknown = laminate("compare", lid, "--reference", "magic");
        assertThat(unknown.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(unknown.err()).isEqualTo("no way is called magic; accepted: hand lay-up, vacuum bag, infusion\n");
    }

    @Test
    void whatIsHeldEqualIsNamed() {
        assertThat(laminate("compare", lid).out()).contains("held equal   same reinforcement");
        assertThat(laminate("compare", lid, "--schedule", "shell=thick-shell").out())
                .contains(
                        "held equal   nothing; each is laid as it is stated",
                        "Each is laid as it is stated, and not alike");
        assertThat(laminate("compare", lid, "--same", "stiffness", "--along", "y")
                        .out())
                .contains("held equal   same bending stiffness, by its reinforcement");
        assertThat(laminate("compare", lid, "--same", "weight").out()).contains("held equal   same weight");
    }

    @Test
    void aWayThatCannotBeStandsWithItsReason() throws IOException {
        Path balsa = write("balsa.yaml", BALSA.replace("honeycomb", openCelled()));
        Run run = laminate("compare", balsa);
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).contains("ways         hand lay-up, vacuum bag\n", "cannot be    infusion: ");
        Run none = laminate("compare", balsa, "--process", "infusion", "--reference", "infusion");
        assertThat(none.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(none.err()).contains("no way is called infusion; accepted: as stated, infusion (cannot be)");
    }

    /** A honeycomb of the library: resin would run into its cells. */
    private static String openCelled() {
        return laminate("materials", "--find", "honeycomb", "--format", "csv")
                .out()
                .lines()
                .skip(1)
                .findFirst()
                .orElseThrow()
                .split(",")[0];
    }

    @Test
    void aSlipIsComplainedOfAndNothingIsPrinted() throws IOException {
        Run resin = laminate("compare", lid, "--resin", "vinylester,glue");
        assertThat(resin.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(resin.out()).isEmpty();
        assertThat(resin.err()).contains("no resin is called glue");
        Run near = laminate("compare", lid, "--resin", "vinylster,mat-300");
        assertThat(near.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(near.err()).contains("did you mean vinylester? ", "mat-300 is no resin; ");
        Run schedule = laminate("compare", lid, "--schedule", "shell=thick-shel");
        assertThat(schedule.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(schedule.out()).isEmpty();
        assertThat(schedule.err()).contains("lid.yaml:1:1: ", "did you mean thick-shell?");
        Path typo = write("typo.yaml", LID.replace("area: 1 m²", "aera: 1 m²"));
        Run file = laminate("compare", lid, typo, folder.resolve("none.yaml"));
        assertThat(file.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(file.err()).contains("typo.yaml:6:", "none.yaml: ").doesNotContain("lid.yaml:6", "Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--table curve",
                "--format json --units us",
                "--by core",
                "--along y",
                "--along y --same weight",
                "--same money",
                "--along z",
                "--process magic",
                "--schedule shell",
                "--schedule shell=",
                "--width 39",
                "--bogus"
            })
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("compare", lid.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate compare --help'.\n");
    }

    @Test
    void acceptedWordsAreToldAsTheyAreWritten() {
        assertThat(laminate("compare", lid, "--same", "stifness").err())
                .contains("'stifness' is not one of reinforcement, stiffness, weight");
    }

    @Test
    void aFileIsNotOverwrittenByItsOwnComparison() {
        assertThat(laminate("compare", lid, "-o", lid).exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(lid).hasContent(LID);
    }

    private static String ways(Object... args) {
        Run run = laminate(
                Stream.concat(Stream.of(args), Stream.of("--width", 300)).toArray());
        assertThat(run.err()).isEmpty();
        return run.out()
                .lines()
                .filter(line -> line.startsWith("ways "))
                .findFirst()
                .orElseThrow()
                .substring("ways".length())
                .strip();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
