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

/** Every command with a project file: two lids off one mould, and the mould off a plug. */
class ProjectCommandTest {
    private static final String PART = """
            part: %s
            process: hand lay-up
            resin: polyester-ortho
            zones: [{name: top, area: 1 m², layers: [mat-450]}]
            """;

    private static final String PROJECT = """
            project: Lockers
            workshop: workshop.yaml
            prices: prices.yaml
            mouldings:
              - {part: lid.yaml, count: 2, made-on: lid mould}
              - {part: hatch.yaml, made-on: lid mould}
            tooling:
              - {name: lid mould, part: mould.yaml, life: 12, made-on: lid plug}
              - {name: lid plug, part: plug.yaml}
            """;

    @TempDir
    private Path folder;

    private Path project;

    @BeforeEach
    void writeTheFiles() throws IOException {
        write("prices.yaml", """
                currency: GBP
                prices:
                  - {material: mat-450, price: 3.10 GBP/kg}
                  - {material: polyester-ortho, price: 4.10 GBP/kg}
                  - {material: mekp, price: 9.00 GBP/kg}
                """);
        write("workshop.yaml", """
                labour: {rate: 28 GBP/h}
                consumables: 5 %
                pricing: {margin: 25 %, tax: {name: VAT, rate: 20 %}}
                """);
        for (String name : List.of("Lid", "Hatch", "Mould", "Plug")) {
            write(name.toLowerCase() + ".yaml", PART.formatted(name));
        }
        project = write("lockers.yaml", PROJECT);
    }

    private static List<String> titles(String text) {
        List<String> lines = text.lines().toList();
        return Stream.iterate(1, i -> i < lines.size(), i -> i + 1)
                .filter(i -> lines.get(i).matches("={3,}"))
                .map(i -> lines.get(i - 1).strip())
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"estimate", "mix", "jobsheet"})
    void allThatIsMadeIsToldToolsFirst(String command) {
        Run run = laminate(command, project);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(titles(run.out()).stream().map(title -> title.replaceAll(",.*", "")))
                .containsExactly("Plug", "Mould", "Lid", "Hatch");
    }

    @Test
    void oneOrderBuysForPlugMouldAndMouldings() {
        assertThat(laminate("order", project).out()).contains("1 × Plug, 1 × Mould, 2 × Lid, 1 × Hatch");
        assertThat(laminate("order", project, "--sets", 5).out()).contains("1 × Plug, 2 × Mould, 10 × Lid, 5 × Hatch");
        assertThat(laminate("order", project, folder.resolve("lid.yaml")).out()).contains("1 × Hatch, 1 × Lid");
    }

    @Test
    void toolsInHandAreNotMadeAgain() throws IOException {
        write(
                "lockers.yaml",
                PROJECT.replace("life: 12", "life: 12, in-hand: 1").replace("plug.yaml", "plug.yaml, in-hand: 1"));
        assertThat(titles(laminate("estimate", project).out())).containsExactly("Lid", "Hatch");
        assertThat(laminate("order", project, "--sets", 5).out()).contains("1 × Mould, 10 × Lid, 5 × Hatch");
    }

    /** A bought mould for twelve pulls, one in hand; setting up is paid for by each batch. */
    @Test
    void anOrderBuysMouldsAndWhatSetsUp() throws IOException {
        write(
                "lockers.yaml",
                PROJECT.replaceFirst(
                        "(?s)tooling:.*",
                        "tooling: [{name: lid mould, price: 90 GBP, life: 12, in-hand: 1, set-up-price: 7 GBP}]\n"));
        assertThat(laminate("order", project).out())
                .contains("set-up of Lid", "set-up of Hatch")
                .doesNotContain("lid mould ");
        assertThat(laminate("order", project, "--sets", 5, "--format", "json").out())
                .containsPattern("(?s)\"set-up of Lid\".*\"7.00\".*\"lid mould\".*\"90.00\"");
    }

    /** What carries nothing has nothing to check, which is told of a part by itself alone. */
    @Test
    void onlyWhatIsLoadedIsChecked() throws IOException {
        assertThat(laminate("check", project).err())
                .contains("Plug: there is nothing to check", "Hatch: there is nothing");
        write("lid.yaml", PART.formatted("Lid") + "limits: {mass: 1 kg}\n");
        Run run = laminate("check", project);
        assertThat(run.exitCode()).isEqualTo(ExitCode.REQUIREMENT_NOT_MET);
        assertThat(titles(run.out())).containsExactly("Lid");
        assertThat(run.err()).isEqualTo("Lid: 1 of 1 limits not met\n");
    }

    @Test
    void mouldingsAloneAreInfused() throws IOException {
        assertThat(laminate("infuse", project).err())
                .contains("Lid: no infusion is planned.", "Hatch: no infusion")
                .doesNotContain("Mould:", "Plug:");
        String infused = PART.replace("hand lay-up", "infusion").replace("polyester-ortho", "vinylester-infusion");
        write("hatch.yaml", infused.formatted("Hatch") + """
                infusion: {feed: line, flow-length: 0.3 m, vacuum: 950 mbar, permeability: 1e-10 m²}
                """);
        Run run = laminate("infuse", project);
        assertThat(run.err()).isEmpty();
        assertThat(titles(run.out())).containsExactly("Hatch");
    }

    @Test
    void mouldingsAloneAreCompared() throws IOException {
        assertThat(laminate("compare", project).out()).contains("ways         Lid, Hatch");
        assertThat(laminate("compare", project, "--process", "vacuum-bag,infusion")
                        .out())
                .contains("Lid, vacuum bag, Lid, infusion, Hatch, vacuum bag, Hatch, infusion");
        write("lockers.yaml", PROJECT.replace("  - {part: hatch.yaml, made-on: lid mould}\n", ""));
        assertThat(laminate("compare", project).out()).contains("ways         hand lay-up, vacuum bag, infusion");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "json | { \"project\": \"Lockers\",",
                "csv | part,count,currency,materials",
                "csv --table sets | project,count,currency,materials",
                "csv --table tooling | project,count,currency,tool",
                "markdown | # Lockers",
                "text | Lockers =======",
                "html --internal | <!DOCTYPE html>",
                "html | <!DOCTYPE html>"
            })
    void quotesTheSetInTheFormatAskedFor(String format, String start) {
        Run run = laminate(
                Stream.concat(Stream.of("quote", project, "--count", "1,5", "--format"), Stream.of(format.split(" ")))
                        .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out().replaceAll("\\s+", " ")).startsWith(start);
    }

    @Test
    void oneSetIsQuotedIfNotToldOtherwise() {
        assertThat(laminate("quote", project, "--format", "json").out())
                .isEqualTo(laminate("quote", project, "--format", "json", "--count", 1)
                        .out());
        Path book = folder.resolve("lockers.xlsx");
        assertThat(laminate("quote", project, "--as-bought", "--format", "xlsx", "-o", book)
                        .err())
                .isEmpty();
        assertThat(book).isRegularFile().binaryContent().startsWith('P', 'K');
    }

    @Test
    void whoOffersIsAskedForOnce() {
        Run run = laminate("quote", project, "--format", "html");
        assertThat(run.err().lines()).singleElement().asString().startsWith("Lockers: the quotation does not say who");
    }

    @Test
    void aFaultOfAPartIsToldWithItsFile() throws IOException {
        write("hatch.yaml", PART.formatted("Hatch").replace("mat-450", "mat-45"));
        write("mould.yaml", PART.formatted("Mould").replace("1 m²", "1"));
        Run run = laminate("estimate", project);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("hatch.yaml:4:", "mould.yaml:4:");
    }

    @Test
    void aFaultIsToldWithTheNameOfThePart() {
        Run run = laminate("mix", project, "--temperature", "60C");
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.err()).contains("lockers.yaml: Plug: ", "lockers.yaml: Lid: ");
        assertThat(laminate("mix", folder.resolve("lid.yaml"), "--temperature", "60C")
                        .err())
                .contains("lid.yaml: ")
                .doesNotContain("Lid: ");
    }

    @Test
    void noFileOfAProjectIsOverwritten() {
        Run run = laminate("estimate", project, "-o", folder.resolve("plug.yaml"));
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.err()).contains("would overwrite the input file");
        assertThat(folder.resolve("plug.yaml")).content().startsWith("part: Plug");
    }

    @Test
    void setsAreOfAProject() {
        Run run = laminate("order", folder.resolve("lid.yaml"), "--sets", 2);
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.err()).startsWith("laminate: --sets goes with a project file\n");
        assertThat(laminate("order", project, "--sets", 0).exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
    }

    @Test
    void tablesOfSetsAreOfAProject() {
        for (String table : List.of("sets", "tooling")) {
            Run run = laminate(
                    "quote",
                    folder.resolve("lid.yaml"),
                    "--workshop",
                    folder.resolve("workshop.yaml"),
                    "--prices",
                    folder.resolve("prices.yaml"),
                    "--format",
                    "csv",
                    "--table",
                    table);
            assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
            assertThat(run.err()).startsWith("laminate: --table " + table + " goes with a project file\n");
        }
    }

    @Test
    void aProjectIsQuotedByItself() {
        Run run = laminate("quote", project, project);
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.err()).contains("a project file is quoted by itself");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
