package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuoteCommandTest {
    private static final String LID = """
            part: Lid
            count: 3
            process: hand lay-up
            resin: polyester-ortho
            workshop: workshop.yaml
            prices: prices.yaml
            zones: [{name: top, area: 1 m², layers: [mat-450]}]
            """;

    private static final String WORKSHOP = """
            labour: {rate: 28 GBP/h}
            consumables: 5 %
            pricing: {margin: 25 %, tax: {name: VAT, rate: 20 %}}
            """;

    private static final String PRICES = """
            currency: GBP
            prices:
              - {material: mat-450, price: 3.10 GBP/kg, packs: [{pack: roll, amount: 35 kg, price: 108.50 GBP}]}
              - {material: polyester-ortho, price: 4.10 GBP/kg}
              - {material: mekp, price: 9.00 GBP/kg}
            """;

    @TempDir
    private Path folder;

    private Path lid;

    @BeforeEach
    void writeTheFiles() throws IOException {
        write("prices.yaml", PRICES);
        write("workshop.yaml", WORKSHOP);
        lid = write("lid.yaml", LID);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "json | {",
                "csv | part,count,currency,materials",
                "markdown | # Lid",
                "text | Lid",
                "html --internal | <!DOCTYPE html>"
            })
    void printsTheFormatAskedFor(String format, String start) {
        Run run = laminate(
                Stream.concat(Stream.of("quote", lid, "--count", "1,5", "--format"), Stream.of(format.split(" ")))
                        .toArray());
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).startsWith(start);
    }

    @ParameterizedTest
    @CsvSource({
        "prices,part;count;currency;materials",
        "build-up,part;count;currency;line",
        "sensitivity,part;count;currency;input"
    })
    void printsTheTableAskedFor(String table, String start) {
        assertThat(laminate("quote", lid, "--format", "csv", "--table", table).out())
                .startsWith(start.replace(';', ','));
    }

    @Test
    void thePartsOwnCountIsTheUsualOne() {
        assertThat(laminate("quote", lid, "--format", "json").out())
                .isEqualTo(laminate("quote", lid, "--format", "json", "--count", "3,3")
                        .out())
                .contains("\"count\": 3,");
    }

    @Test
    void wholePacksCostWhatTheyCost() {
        Run used = laminate("quote", lid, "--count", "1", "--format", "csv");
        Run bought = laminate("quote", lid, "--count", "1", "--format", "csv", "--as-bought");
        assertThat(bought.err()).isEmpty();
        assertThat(materials(bought)).isGreaterThan(108.50).isLessThan(125);
        assertThat(materials(used)).isLessThan(15);
        assertThat(laminate("quote", lid, "--as-bought").out()).contains("in whole packs");
    }

    private static double materials(Run run) {
        return Double.parseDouble(run.out().lines().toList().get(1).split(",")[3]);
    }

    @Test
    void theQuotationIsOfTodayIfNotToldOtherwise() throws IOException {
        write("workshop.yaml", WORKSHOP + "quotation: {yard: Lake Yard, valid-for: 30 d}\n");
        LocalDate before = LocalDate.now();
        Run run = laminate("quote", lid, "--format", "html", "--customer", "Reed Bay School");
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("Lake Yard", "Reed Bay School")
                .containsAnyOf(before.toString(), LocalDate.now().toString());
        assertThat(laminate("quote", lid, "--format", "html", "--date", "2026-03-02")
                        .out())
                .contains("<dd>2026-03-02</dd>", "<dd>2026-04-01</dd>");
        assertThat(laminate("quote", lid, "--format", "html", "--date", "2026-03-02", "--valid-until", "2026-03-09")
                        .out())
                .contains("<dd>2026-03-09</dd>");
    }

    @Test
    void aQuotationWithoutTheYardsNameSaysHowToAddIt() {
        Run run = laminate("quote", lid, "--format", "html");
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(run.err()).contains("Lid: the quotation does not say who offers it", "quotation: {yard:");
    }

    @Test
    void aWorkbookGoesToAFile() {
        Path book = folder.resolve("lid.xlsx");
        Run run = laminate("quote", lid, "--format", "xlsx", "-o", book);
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(book).isRegularFile().binaryContent().startsWith('P', 'K');
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void withoutPricingTheFileCannotBeUsed() throws IOException {
        write("workshop.yaml", "labour: {rate: 28 GBP/h}\n");
        Run run = laminate("quote", lid);
        assertThat(run.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("lid.yaml", "pricing:");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--count 0",
                "--count 1,,2",
                "--count -1",
                "--count 1.5",
                "--count 100001",
                "--table prices",
                "--format xlsx",
                "--internal",
                "--customer x",
                "--format html --customer \t",
                "--format html --internal --date 2026-03-02",
                "--format html --date 2026-03-02 --valid-until 2026-03-01",
                "--format html --date yesterday",
                "--format json --width 80",
                "--width 39"
            })
    void wrongUsageIsTwo(String options) {
        Run run = laminate(Stream.concat(Stream.of("quote", lid.toString()), Stream.of(options.split(" ")))
                .toArray());
        assertThat(run.exitCode()).isEqualTo(ExitCode.WRONG_USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("laminate: ").endsWith("Try 'laminate quote --help'.\n");
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
