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

class OrderCommandTest {
    private static final String LID = """
            part: Lid
            process: hand lay-up
            resin: polyester-ortho
            prices: prices.yaml
            zones: [{name: top, area: 1 m², layers: [mat-450]}]
            """;

    private static final String PRICES = """
            currency: GBP
            prices:
              - {material: mat-450, packs: [{pack: roll, amount: 35 kg, price: 108.50 GBP}], lead-time: 2 d}
              - {material: polyester-ortho, price: 4.10 GBP/kg}
            """;

    @TempDir
    private Path folder;

    private Path lid;
    private Path tank;

    @BeforeEach
    void writeTheParts() throws IOException {
        write("prices.yaml", PRICES);
        lid = write("lid.yaml", LID);
        tank = write("tank.yaml", LID.replace("Lid", "Tank").replace("1 m²", "2 m²"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"json | {", "csv | group,material,thickness_mm,unit,need", "markdown | # Order", "text | Order"})
    void printsTheFormatAskedFor(String format, String start) {
        Run run = laminate("order", lid, tank, "--format", format);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith(start).contains("108.50");
    }

    @ParameterizedTest
    @CsvSource({"lines,group;material;thickness_mm;unit", "packs,group;material;thickness_mm;pack"})
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("order", lid, "--format", "csv", "--table", table).out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void allPartsAreOrderedAtOnceLessWhatIsInStock() throws IOException {
        Path stock = write("stock.yaml", "stock: [{material: mat-450, amount: 34 kg, use-by: 2026-03-01}]\n");
        String both = laminate("order", lid, tank, "--stock", stock).out();
        assertThat(both).contains("1 × Lid, 1 × Tank").contains("in stock").contains("is counted");
        assertThat(laminate("order", lid, "--stock", stock, "--date", "2026-03-02")
                        .out())
                .contains("1 × roll of 35 kg", "it is not counted", "2026-02-28");
    }

    @Test
    void cuttingIsPlannedAndDrawnWhereItIsAsked() throws IOException {
        Path cut = write("cut.yaml", LID.replace("area: 1 m²", "area: 1 m², outline: {length: 1.25 m, width: 0.8 m}"));
        Path folder = this.folder.resolve("drawings/of lid");
        write("prices.yaml", PRICES.replace("amount: 35 kg", "width: 1.3 m, amount: 35 kg"));
        assertThat(laminate("order", cut).out()).doesNotContain("Cutting list");
        Run run = laminate("order", cut, tank, "--cutting", "--straight-cuts", "--svg", folder);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Cutting list, in order of lay-up", "Tank, zone top: no outline is stated");
        assertThat(folder.resolve("mat-450.svg")).content().startsWith("<svg ").endsWith("</svg>\n");
        assertThat(laminate("order", cut, "--cutting", "--format", "json").out())
                .contains("\"lower_bound_m\": 0.8");
        assertThat(laminate("order", cut, "--cutting", "--format", "csv", "--table", "pieces")
                        .out())
                .contains("1,Lid,top,1,mat-450,,");
    }

    @Test
    void drawingsGoToAFolder() throws IOException {
        Path file = write("drawings", "");
        Run run = laminate("order", lid, "--svg", file);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.err()).isEqualTo(file + ": this is a file; the name of a folder is wanted\n");
    }

    @Test
    void aFlawedStockFileIsComplainedOf() throws IOException {
        Path stock = write("stock.yaml", "stock: [{material: mat-451, amount: 34}]\n");
        Run run = laminate("order", lid, "--stock", stock);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("stock.yaml:1:20: material: 'mat-451' is not known", "stock.yaml:1:39: amount");
    }

    @Test
    void partsWithDifferentPricesAreRefused() throws IOException {
        write("dear.yaml", PRICES.replace("4.10", "4.20"));
        Path dear = write("dear-lid.yaml", LID.replace("prices.yaml", "dear.yaml"));
        Run run = laminate("order", lid, dear);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.err()).contains("polyester-ortho is priced in two ways");
        assertThat(laminate("order", lid, dear, "--prices", folder.resolve("prices.yaml"))
                        .exitCode())
                .isEqualTo(ExitCode.DONE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--table lines",
                "--date tomorrow",
                "--date 2026-02-30",
                "--width 39",
                "--bogus",
                "--straight-cuts",
                "--format csv --table pieces"
            })
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("order", lid.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate order --help'.\n");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
