package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import laminate.process.Workshop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that several part files name are read once, and make no other job than if each part were read alone. */
class SharedFilesTest {

    private static final String OWN = """
            material: shed-mat
            kind: reinforcement
            name: A mat from the shed
            form: mat
            areal-weight: 320 g/m²
            fibre: e-glass
            """;
    private static final String PRICES = "currency: EUR\nprices: [{material: shed-mat, price: 3 EUR/kg}]\n";
    private static final String NAMED = """
            workshop: workshop.yaml
            prices: prices.yaml
            """;
    private static final String ZONES = "zones: [{name: lid, area: 1 m², layers: [mat-300]}]\n";

    private final SharedFiles shared = new SharedFiles();

    @TempDir
    private Path folder;

    private Bench bench;

    @BeforeEach
    void putFiles() {
        bench = new Bench(folder);
        bench.put("own.yaml", OWN);
        bench.put("workshop.yaml", "temperature: 21 °C\nlabour: {rate: 28 EUR/h}\n");
        bench.put("prices.yaml", PRICES);
    }

    private Path part(String name, String keys) {
        return bench.put(name, Bench.WITHOUT_ZONES + keys + ZONES);
    }

    private Job read(Path file) {
        return (Job) WorkFile.read(file, Bench.STOCK, Overrides.NONE, shared);
    }

    @Test
    void aFileThatSeveralPartsNameIsReadOnce() {
        Job first = read(part("lid.yaml", NAMED + "materials: own.yaml\n"));
        bench.put("prices.yaml", "no longer a price file");
        bench.put("own.yaml", "no longer a material");
        bench.put("workshop.yaml", "no longer a workshop");
        Job second = read(part("hatch.yaml", NAMED + "materials: [own.yaml]\n"));
        assertThat(second.prices().orElseThrow()).isSameAs(first.prices().orElseThrow());
        assertThat(second.materials()).isSameAs(first.materials());
        assertThat(second.workshop()).isSameAs(first.workshop());
        assertThat(second.workshop()).isNotEqualTo(Workshop.USUAL);
    }

    @Test
    void aPartIsTheSameAsIfItWereReadAlone() {
        Path lid = part("lid.yaml", NAMED + "materials: own.yaml\n");
        Path hatch = part("hatch.yaml", NAMED + "materials: own.yaml\n");
        read(lid);
        Job alone = PartFile.read(hatch, Bench.STOCK);
        Job shares = read(hatch);
        assertThat(shares.part()).isEqualTo(alone.part());
        assertThat(shares.prices()).isEqualTo(alone.prices());
        assertThat(shares.workshop()).isEqualTo(alone.workshop());
        assertThat(shares.files()).isEqualTo(alone.files()).hasSize(4);
        assertThat(shares.materials().find("shed-mat"))
                .isEqualTo(alone.materials().find("shed-mat"));
    }

    /** The prices are of a material that only the first part has. */
    @Test
    void pricesAreReadAnewForOtherMaterials() {
        read(part("lid.yaml", NAMED + "materials: own.yaml\n"));
        Path hatch = part("hatch.yaml", NAMED);
        assertThat(bench.complaints(() -> read(hatch)))
                .singleElement()
                .asString()
                .startsWith("prices.yaml:2:21: material: 'shed-mat' is not known");
    }

    /** A rate in euros is right beside prices in euros alone. */
    @Test
    void theWorkshopIsReadAnewForAnotherCurrency() {
        read(part("lid.yaml", NAMED + "materials: own.yaml\n"));
        Path other = part("hatch.yaml", """
                workshop: workshop.yaml
                materials: own.yaml
                prices: {currency: GBP, prices: [{material: mat-300, price: 3 GBP/kg}]}
                """);
        assertThat(bench.complaints(() -> read(other)))
                .singleElement()
                .asString()
                .startsWith("workshop.yaml:2:16: rate");
    }

    @Test
    void whatIsWrongIsToldToEveryPart() {
        bench.put("prices.yaml", "currency: EUR\nprices: [{material: mat-300, price: 3 EUR/stone}]\n");
        bench.put("own.yaml", OWN + "colour: white\n");
        List<String> first = bench.complaints(() -> read(part("lid.yaml", NAMED + "materials: own.yaml\n")));
        List<String> second = bench.complaints(() -> read(part("hatch.yaml", NAMED + "materials: own.yaml\n")));
        assertThat(first).hasSize(2).isEqualTo(second);
        assertThat(first.get(0)).startsWith("own.yaml:7:1: ");
        assertThat(first.get(1)).startsWith("prices.yaml:2:");
    }

    /** What cannot be found may lie in the file that is missing, so it is not complained of; the next part has all. */
    @Test
    void aMissingFileIsOfTheOnePartAlone() {
        Path lid = part("lid.yaml", "prices: prices.yaml\nmaterials: [own.yaml, gone.yaml]\n");
        assertThat(bench.complaints(() -> read(lid)))
                .singleElement()
                .asString()
                .contains("there is no file")
                .contains("gone.yaml");
        assertThat(read(part("hatch.yaml", "prices: prices.yaml\nmaterials: [own.yaml]\n"))
                        .prices())
                .isPresent();
    }

    @Test
    void filesAskedForInPlaceOfThePartsOwnAreSharedToo() {
        Path prices = folder.resolve("prices.yaml");
        Overrides overrides = new Overrides(
                Optional.empty(), Optional.empty(), Optional.of(prices), List.of(folder.resolve("own.yaml")));
        Job first = (Job) WorkFile.read(part("lid.yaml", ""), Bench.STOCK, overrides, shared);
        bench.put("prices.yaml", "no longer a price file");
        Job second = (Job) WorkFile.read(part("hatch.yaml", ""), Bench.STOCK, overrides, shared);
        assertThat(second.prices().orElseThrow()).isSameAs(first.prices().orElseThrow());
        Path third = part("third.yaml", "");
        assertThatThrownBy(() -> PartFile.read(third, Bench.STOCK, overrides)).isInstanceOf(InputException.class);
    }
}
