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

class EstimateCommandTest {
    @TempDir
    private Path folder;

    private Path lid;

    @BeforeEach
    void writeThePart() throws IOException {
        lid = write("lid.yaml", """
                part: Lid
                process: hand lay-up
                resin: polyester-ortho
                zones: [{name: top, area: 1 m², layers: [mat-300, mat-450]}]
                """);
    }

    @Test
    void printsTextWithTheTotalsFirst() {
        Run run = laminate("estimate", lid);
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("Lid\n===\nprocess        hand lay-up\nmass           2.50 kg (");
        assertThat(run.out()).doesNotContain("\u001B").endsWith("\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"json     | {", "JSON     | {", "csv      | part,zone,layer,", "markdown | # Lid", "text     | Lid"
            })
    void printsTheFormatAskedFor(String format, String start) {
        assertThat(laminate("estimate", lid, "--format", format).out()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({
        "layers,part;zone;layer",
        "resins,part;use",
        "materials,part;material",
        "cuts,part;zone",
        "cost,part;head"
    })
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("estimate", lid, "--format", "csv", "--table", table)
                        .out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void whatIsAskedForWinsOverTheFile() throws IOException {
        Path workshop = write("shop.yaml", "labour: {rate: 30 GBP/h, operations: {gazing: 2 h}}\n");
        Path prices = write("prices.yaml", "currency: GBP\nprices: [{material: mat-300, price: 3 GBP/kg}]\n");
        Path own = write("own.yaml", """
                materials:
                  - {material: mat-300, kind: reinforcement, name: Own mat, form: mat, binder: powder, fibre: e-glass, areal-weight: 310 g/m²}
                """);
        assertThat(laminate("estimate", lid, "--process", "vacuum-bag").out()).contains("process        vacuum bag");
        assertThat(laminate("estimate", lid, "--workshop", workshop).out()).contains("gazing");
        assertThat(laminate("estimate", lid, "--prices", prices).out()).contains("known cost", "polyester-ortho");
        assertThat(laminate("estimate", lid, "--materials", own).out()).containsPattern("1  mat-300 +0  0.746 +310 ");
        assertThat(laminate("estimate", lid, "--units", "us").out()).contains("mass           5.51 lb");
        assertThat(laminate("estimate", lid, "--matrices").out()).contains("A (N/mm)", "D (N·m)");
    }

    @Test
    void linesAreAsWideAsAskedFor() {
        assertThat(laminate("estimate", lid).out().lines())
                .allMatch(line -> line.length() <= 80)
                .anyMatch(line -> line.length() > 60);
        assertThat(laminate("estimate", lid, "--width", 60).out().lines()).allMatch(line -> line.length() <= 60);
    }

    @Test
    void complaintsOfAllFilesComeTogetherAndNothingIsPrinted() throws IOException {
        Path typo = write("typo.yaml", "part: A\nzones: [{name: z, area: 1, layers: [mat-300]}]\n");
        Path impossible = write("impossible.yaml", Files.readString(lid).replace("mat-450", "mat-451"));
        Path result = folder.resolve("result.txt");
        Run run = laminate("estimate", lid, typo, impossible, folder.resolve("none.yaml"), "-o", result);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(result).doesNotExist();
        assertThat(run.err()).contains("typo.yaml:2:", "impossible.yaml:4:", "'mat-451'", "none.yaml: ");
        assertThat(run.err()).doesNotContain("lid.yaml:", "Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--table cuts",
                "--format json --units us",
                "--format csv --width 100",
                "--format json --matrices",
                "--width 39",
                "--format cvs",
                "--process casting",
                "--width wide",
                "--bogus"
            })
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("estimate", lid.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate estimate --help'.\n");
    }

    @Test
    void aFileIsWantedAndIsNotOverwrittenByItsOwnEstimate() throws IOException {
        assertThat(laminate("estimate").exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        String before = Files.readString(lid);
        assertThat(laminate("estimate", lid, "-o", lid).exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(lid).hasContent(before);
    }

    @Test
    void noInputIsOverwritten() throws IOException {
        Path workshop = write("shop.yaml", "temperature: 20 °C\n");
        Path prices = write("prices.yaml", "currency: GBP\nprices: [{material: mat-300, price: 3 GBP/kg}]\n");
        Path own = write("own.yaml", "materials: [{material: rags, kind: consumable, name: Rags, sold-by: kg}]\n");
        Object[] inputs = {"--workshop", workshop, "--prices", prices, "--materials", own};
        for (Path input : List.of(workshop, prices, own)) {
            String before = Files.readString(input);
            Run run = laminate(Stream.concat(Stream.of("estimate", lid, "-o", input), Stream.of(inputs))
                    .toArray());
            assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
            assertThat(run.err()).startsWith("laminate: -o would overwrite the input file " + input);
            assertThat(input).hasContent(before);
        }
    }

    @Test
    void noFileThatAPartNamesIsOverwritten() throws IOException {
        Path workshop = write("shop.yaml", "temperature: 20 °C\n");
        Path prices = write("prices.yaml", "currency: GBP\nprices: [{material: mat-300, price: 3 GBP/kg}]\n");
        Path plug = write("plug.yaml", Files.readString(lid));
        Path part = write(
                "named.yaml",
                Files.readString(lid) + "workshop: shop.yaml\nprices: prices.yaml\ntooling: [{part: plug.yaml}]\n");
        for (Path input : List.of(part, workshop, prices, plug)) {
            String before = Files.readString(input);
            Run run = laminate("estimate", part, "-o", input);
            assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
            assertThat(run.err()).startsWith("laminate: -o would overwrite the input file " + input);
            assertThat(input).hasContent(before);
        }
    }

    @Test
    void aWordThatIsNotKnownIsAnsweredWithThoseThatAre() {
        assertThat(laminate("estimate", lid, "--format", "cvs").err())
                .contains("'cvs' is not one of text, json, csv, markdown");
        assertThat(laminate("estimate", lid, "--process", "vaccum bag").err())
                .contains("'vaccum bag' is not one of hand lay-up, vacuum bag, infusion");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
