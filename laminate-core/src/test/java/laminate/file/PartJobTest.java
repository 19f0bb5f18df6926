package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.LayUp;
import laminate.process.Process;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part file together with the workshop, price and material files that it names or that are asked for. */
class PartJobTest {

    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench(folder);
    }

    private static Job house() {
        return PartFile.read(Bench.resource("house/locker-lid.yaml"), Bench.STOCK);
    }

    private static List<String> materials(Zone zone) {
        return zone.layers().stream().map(Layer::material).toList();
    }

    private static LayUp layUp(Job job, int layer) {
        return job.part().zones().get(0).layers().get(layer).laying().orElseThrow();
    }

    @Test
    void workshopMayChooseTheSetOfContentsAndStandInThePartFile() {
        Job job = bench().read(Bench.WITHOUT_ZONES + """
                workshop: {fibre-content: iso-nominal, surface: simple, temperature: 21 °C}
                zones: [{name: lid, area: 1 m², layers: [mat-300]}]
                """);
        assertThat(job.part().zones().get(0).contents()).isEqualTo(ContentSet.ISO_NOMINAL_SIMPLE);
        assertThat(job.workshop().temperature()).hasValue(294.15);
    }

    @Test
    void ownMaterialReplacesThatOfTheLibrary() {
        ReinforcementLayer shed =
                (ReinforcementLayer) house().part().zones().get(0).layers().get(4);
        assertThat(shed.reinforcement().arealMass()).isEqualTo(0.47);
        assertThat(house().materials().find("mat-450").orElseThrow().name()).startsWith("Mat from the shed");
    }

    @Test
    void overridesWinOverTheFile() {
        Bench bench = bench();
        Path own = bench.put("heavy.yaml", """
                material: mat-300
                kind: reinforcement
                name: A heavy one
                form: mat
                areal-weight: 320 g/m²
                fibre: e-glass
                """);
        Path workshop = bench.put("other.yaml", "temperature: 25 °C\n");
        Path prices = bench.put("euro.yaml", "currency: EUR\nprices: [{material: mat-300, price: 3 EUR/kg}]\n");
        Overrides overrides = new Overrides(
                Optional.of(Process.VACUUM_BAG), Optional.of(workshop), Optional.of(prices), List.of(own));
        Job job = bench.read(Bench.WITHOUT_ZONES + """
                workshop: not-there.yaml
                prices: not-there-either.yaml
                zones:
                  - {name: lid, area: 1 m², process: infusion, layers: [{reinforcement: mat-300, process: hand lay-up}]}
                """, overrides);
        ReinforcementLayer layer =
                (ReinforcementLayer) job.part().zones().get(0).layers().get(0);
        assertThat(layer.layUp().process()).isEqualTo(Process.VACUUM_BAG);
        assertThat(layer.layUp().resin().id()).isEqualTo("polyester-ortho");
        assertThat(layer.reinforcement().arealMass()).isEqualTo(0.32);
        assertThat(job.workshop().temperature()).hasValue(298.15);
        assertThat(job.prices().orElseThrow().currency()).isEqualTo("EUR");
    }

    @Test
    void onlyTheMaterialsThatAreNamedAreLoaded() {
        Bench bench = bench();
        Bench.Watched watched = new Bench.Watched();
        bench.put("prices.yaml", "currency: GBP\nprices: [{material: roving-600, price: 3 GBP/kg}]\n");
        Path part = bench.put(
                "part.yaml",
                Bench.WITHOUT_ZONES + "prices: prices.yaml\nzones: [{name: lid, area: 1 m², layers: [mat-300]}]\n");
        PartFile.read(part, watched);
        assertThat(watched.loaded).containsExactlyInAnyOrder("polyester-ortho", "mekp", "mat-300");
    }

    @Test
    void jobIsEstimated() {
        assertThat(house().estimate().mass().planned()).isBetween(5.0, 60.0);
        assertThat(house().estimate().cost()).isPresent();
    }

    @Test
    void allFilesComplainAtOnceEachByItsName() {
        Bench bench = bench();
        bench.put("shop.yaml", "temperature: 18\nlabour: {rate: 28 EUR/h}\n");
        bench.put("money.yaml", "currency: GBP\nprices: [{material: mat-30, price: 3 GBP/kg}]\n");
        bench.put(
                "own.yaml",
                "materials: [{material: my-mat, kind: reinforcement, name: Mine, form: mat, fibre: eglass}]\n");
        assertThat(bench.complaints(Bench.WITHOUT_ZONES + """
                workshop: shop.yaml
                prices: money.yaml
                materials: own.yaml
                zones: [{name: lid, area: -1 m², layers: [my-mat, my-mut, pvc-80]}]
                items: [{name: hinge, mass: 0.1, price: 9 GBP}]
                """))
                .containsExactly(
                        "money.yaml:2:21: material: 'mat-30' is not known; did you mean mat-300? a material of the library"
                                + " or of a material file is wanted",
                        "own.yaml:1:13: materials, entry 1: this reinforcement has no areal-weight; add areal-weight: with"
                                + " its value",
                        "own.yaml:1:83: fibre: 'eglass' is not known; did you mean e-glass? a fibre of the library or of a"
                                + " material file is wanted",
                        "part.yaml:7:27: area: '-1 m²' is outside the range; accepted: more than zero",
                        "part.yaml:7:51: layers, entry 2: 'my-mut' is not known; did you mean my-mat? a reinforcement of the"
                                + " library or of a material file is wanted",
                        "part.yaml:7:59: layers, entry 3: pvc-80 is a core, and a reinforcement is wanted here; it is"
                                + " written {core: pvc-80, thickness: 10 mm}",
                        "part.yaml:8:32: mass: a mass needs its unit; write it like 0.1 g or 0.1 kg",
                        "shop.yaml:1:16: temperature: a temperature needs its unit; write it like 18 °C");
    }

    @Test
    void oneCurrencyServesAJob() {
        Bench bench = bench();
        bench.put("money.yaml", "currency: GBP\nprices: [{material: mat-300, price: 3 GBP/kg}]\n");
        assertThat(bench.complaints(Bench.WITHOUT_ZONES + """
                workshop: {labour: {rate: 28 EUR/h}}
                prices: money.yaml
                zones: [{name: lid, area: 1 m², layers: [mat-300]}]
                items: [{name: hinge, mass: 100 g, price: 9 USD}]
                """))
                .containsExactly(
                        "part.yaml:4:27: rate: this is in EUR and the price list in GBP; one currency is accepted",
                        "part.yaml:7:43: price: this is in USD and the price list in GBP; one currency is accepted");
    }

    @Test
    void fileThatIsNotThereIsToldOfOnceAndWhatMayBeInItIsNot() {
        Bench bench = bench();
        bench.put("broken.yaml", "materials: [\n");
        assertThat(bench.complaints(Bench.WITHOUT_ZONES + """
                workshop: none.yaml
                materials: [none.yaml, broken.yaml]
                zones: [{name: lid, area: 1 m², layers: [my-mat, {core: mat-300, thickness: 5 mm}]}]
                """))
                .containsExactly(
                        "broken.yaml:2:1: a value cannot begin with the end of the file; put text in quotes",
                        "part.yaml:4:11: workshop: there is no file none.yaml; a path is wanted that begins where the"
                                + " file lies that names it",
                        "part.yaml:5:13: materials, entry 1: there is no file none.yaml; a path is wanted that begins where"
                                + " the file lies that names it",
                        "part.yaml:6:57: core: mat-300 is a reinforcement, and a core is wanted here; as a layer it is"
                                + " written mat-300 alone, or {reinforcement: mat-300, angle: 45}");
    }

    @Test
    void filesAskedForAreComplainedOfByTheNameTheyWereAskedForBy() {
        Overrides overrides = new Overrides(
                Optional.empty(), Optional.of(folder.resolve("w")), Optional.of(folder.resolve("p")), List.of(folder));
        assertThat(bench().complaints(() -> bench().read(
                                Bench.WITHOUT_ZONES + "zones: [{name: lid, area: 1 m², layers: [mat-300]}]\n",
                                overrides)))
                .hasSize(3)
                .contains("p: there is no such file; the name of a price file is wanted");
    }
}
