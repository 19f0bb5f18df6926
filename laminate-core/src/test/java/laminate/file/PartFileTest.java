package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import laminate.material.Materials;
import laminate.material.Resin;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.CoreFinish;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PartFileTest {

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
    void everythingInTheExampleIsRead() {
        Job job = house();
        Part part = job.part();
        assertThat(part.name()).isEqualTo("Bow locker lid");
        assertThat(part.zones())
                .extracting(Zone::name)
                .containsExactly("lid", "seat patch", "balanced panel", "textbook strip");
        Zone lid = part.zones().get(0);
        assertThat(lid.area()).isEqualTo(0.62);
        assertThat(lid.trim()).contains(new Trim(3.4, 0.04));
        assertThat(materials(lid))
                .containsExactly("mat-300", "biaxial-600", "biaxial-600", "mat-300", "mat-450", "pvc-80", "mat-450");
        assertThat(lid.layers())
                .extracting(Layer::stage)
                .containsExactly("", "", "", "outer skin", "outer skin", "", "");
        assertThat(lid.contents()).isEqualTo(ContentSet.TRADE);
        assertThat(((ReinforcementLayer) lid.layers().get(6)).content()).contains(FibreContent.ofMassFraction(0.32));
        assertThat(part.items()).singleElement().satisfies(hinge -> {
            assertThat(hinge.count()).isEqualTo(2);
            assertThat(hinge.mass()).isEqualTo(0.12);
            assertThat(hinge.price().orElseThrow()).hasToString("9.00 GBP");
        });
        assertThat(part.measured().mass()).hasValue(4.2);
        assertThat(part.measured().thickness()).containsExactly(0.0031, 0.0033);
    }

    @Test
    void coatingTakesItsOwnDose() {
        Coating gelcoat = house().part().zones().get(0).coatings().get(0);
        assertThat(gelcoat.film()).isEqualTo(new Film(Film.Basis.WET, 0.0005));
        Resin material = gelcoat.material();
        assertThat(gelcoat.dose().ratio())
                .isEqualTo(material.defaultCure().amount().value())
                .isNotEqualTo(0.015);
        Job stated = bench().read(Bench.WITHOUT_ZONES + """
                zones:
                  - name: lid
                    area: 1 m²
                    coatings:
                      - {gelcoat: gelcoat-iso, areal-weight: 600 g/m², coats: 2, catalyst: {id: mekp, amount: 2 %}}
                      - {paint: paint-polyurethane, thickness: 0.1 mm}
                    layers: [mat-300]
                """);
        List<Coating> coatings = stated.part().zones().get(0).coatings();
        assertThat(coatings.get(0).dose().ratio()).isEqualTo(0.02);
        assertThat(coatings.get(0).coats()).isEqualTo(2);
        assertThat(coatings.get(0).film()).isEqualTo(new Film(Film.Basis.AREAL_WEIGHT, 0.6));
        assertThat(coatings.get(1).dose().agent().id()).isEqualTo("hardener-polyurethane");
    }

    @Test
    void stageLaysItsOwnResinInItsUsualDose() {
        LayUp outside = layUp(house(), 0);
        LayUp inStage = layUp(house(), 3);
        assertThat(outside.resin().id()).isEqualTo("polyester-ortho");
        assertThat(outside.dose().ratio()).isEqualTo(0.015);
        assertThat(inStage.resin().id()).isEqualTo("vinylester");
        assertThat(inStage.process()).isEqualTo(Process.HAND_LAY_UP);
    }

    @Test
    void coreHasItsFinishAndBed() {
        CoreLayer core = (CoreLayer) house().part().zones().get(0).layers().get(5);
        assertThat(core.thickness()).isEqualTo(0.01);
        assertThat(core.finish()).isEqualTo(CoreFinish.of(CoreFinish.Kind.GROOVED));
        assertThat(core.bed().orElseThrow().paste().id()).isEqualTo("bonding-paste");
        assertThat(core.bed().orElseThrow().thickness()).isEqualTo(0.001);
        Job own = bench().layers(
                        "{core: pvc-80, thickness: 20 mm, angle: 90,"
                                + " grooves: {width: 3 mm, depth: 4 mm, pitch: 30 mm, faces: 1, ways: 2}}, {core: pet-100, thickness: 5 mm}");
        CoreLayer grooved = (CoreLayer) own.part().zones().get(0).layers().get(0);
        assertThat(grooved.finish().grooves().orElseThrow().ways()).isEqualTo(2);
        assertThat(grooved.angle()).isEqualTo(90);
        assertThat(((CoreLayer) own.part().zones().get(0).layers().get(1)).finish())
                .isEqualTo(CoreFinish.PLAIN);
    }

    @Test
    void scheduleIsLaidOutWithItsRepeats() {
        assertThat(materials(house().part().zones().get(1)))
                .containsExactly("mat-300", "mat-450", "roving-600", "mat-450", "roving-600", "mat-450", "roving-600");
        Job twice = bench().read(Bench.WITHOUT_ZONES + """
                schedules:
                  inner: [{reinforcement: mat-300, times: 2}]
                  outer: [{schedule: inner}, cloth-280]
                zones:
                  - name: lid
                    area: 1 m²
                    layers: [{schedule: outer, times: 2}, {bulker: bulking-mat-3, times: 2}, {schedule: inner}]
                """);
        assertThat(materials(twice.part().zones().get(0)))
                .containsExactly(
                        "mat-300",
                        "mat-300",
                        "cloth-280",
                        "mat-300",
                        "mat-300",
                        "cloth-280",
                        "bulking-mat-3",
                        "bulking-mat-3",
                        "mat-300",
                        "mat-300");
    }

    @Test
    void scheduleTakesTheResinOfTheZoneThatUsesIt() {
        Job job = bench().read(Bench.WITHOUT_ZONES + """
                schedules: {shell: [mat-300, {stage: last, layers: [mat-450]}]}
                zones:
                  - {name: a, area: 1 m², layers: [{schedule: shell}]}
                  - {name: b, area: 1 m², resin: vinylester, layers: [{schedule: shell}]}
                """);
        assertThat(job.part().zones())
                .extracting(zone ->
                        zone.layers().get(1).laying().orElseThrow().resin().id())
                .containsExactly("polyester-ortho", "vinylester");
        assertThat(job.part().zones().get(1).layers().get(1).stage()).isEqualTo("last");
    }

    @Test
    void laminaIsReadWithAllItsConstants() {
        Zone strip = house().part().zones().get(3);
        LaminaLayer ply = (LaminaLayer) strip.layers().get(0);
        assertThat(ply.lamina().E1()).isEqualTo(181e9);
        assertThat(ply.density()).isEqualTo(1600);
        assertThat(ply.angle()).isEqualTo(30);
        Job full = bench().read("""
                part: Strip without process or resin
                zones:
                  - name: strip
                    area: 1 m²
                    layers:
                      - lamina: {E1: 40 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³, G13: 4 GPa, G23: 3 GPa,
                                 alpha1: 7e-6 1/K, alpha2: 25e-6 1/K, beta1: 0, beta2: 0.4}
                        thickness: 0.5 mm
                        angle: -45°
                        times: 3
                """);
        assertThat(full.part().zones().get(0).layers()).hasSize(3).allSatisfy(layer -> {
            LaminaLayer read = (LaminaLayer) layer;
            assertThat(read.angle()).isEqualTo(-45);
            assertThat(read.lamina().transverseShear().orElseThrow().G23()).isEqualTo(3e9);
            assertThat(read.lamina().thermalExpansion().orElseThrow().across()).isEqualTo(25e-6);
            assertThat(read.lamina().moistureExpansion().orElseThrow().across()).isEqualTo(0.4);
        });
    }

    @Test
    void nearestTermsWin() {
        Job job = bench().read("""
                part: Lid
                process: hand lay-up
                resin: polyester-ortho
                catalyst: {id: mekp, amount: 2 %}
                zones:
                  - name: lid
                    area: 1 m²
                    process: vacuum bag
                    layers:
                      - mat-300
                      - {reinforcement: mat-300, resin: polyester-iso, catalyst: {id: mekp, amount: 1.2 %}}
                      - stage: structure
                        resin: epoxy-laminating
                        layers: [cloth-280, {reinforcement: cloth-280, process: infusion, hardener: hardener-epoxy-fast}]
                      - {bulker: bulking-mat-3, catalyst: {id: mekp, amount: 1.5 %}}
                """);
        assertThat(job.part().zones().get(0).layers().stream()
                        .map(layer -> layer.laying().orElseThrow())
                        .map(laid -> laid.process().word() + ", " + laid.resin().id() + ", "
                                + laid.dose().agent().id() + " " + laid.dose().ratio()))
                .containsExactly(
                        "vacuum bag, polyester-ortho, mekp 0.02",
                        "vacuum bag, polyester-iso, mekp 0.012",
                        "vacuum bag, epoxy-laminating, hardener-epoxy-slow 0.3",
                        "infusion, epoxy-laminating, hardener-epoxy-fast 0.3",
                        "vacuum bag, polyester-ortho, mekp 0.015");
    }

    @Test
    void partMayNameACatalystAndAHardenerForItsTwoResins() {
        Job job = bench().read("""
                part: Lid
                process: hand lay-up
                resin: polyester-ortho
                catalyst: mekp
                hardener: {id: hardener-epoxy-fast, amount: 30.5 %}
                zones:
                  - {name: lid, area: 1 m², layers: [mat-300, {reinforcement: cloth-280, resin: epoxy-laminating}]}
                """);
        assertThat(layUp(job, 0).dose().agent().id()).isEqualTo("mekp");
        assertThat(layUp(job, 1).dose().agent().id()).isEqualTo("hardener-epoxy-fast");
        assertThat(layUp(job, 1).dose().ratio()).isEqualTo(0.305);
    }

    @Test
    void doseByVolumeIsBroughtToMassByTheDensityOfTheAgent() {
        Job job = bench().read(Bench.WITHOUT_ZONES + """
                catalyst: {id: mekp, amount: 15 ml/kg}
                zones: [{name: lid, area: 1 m², layers: [mat-300]}]
                """);
        double density = layUp(job, 0).dose().agent().density();
        assertThat(layUp(job, 0).dose().ratio()).isCloseTo(15e-6 * density, within(1e-15));
        assertThat(density).isEqualTo(1170);
    }

    @Test
    void doseThatDoesNotSuitIsRefusedWhereItStands() {
        assertThat(bench().complaints(Bench.WITHOUT_ZONES + """
                catalyst: {id: mekp, amount: 4 %}
                zones:
                  - {name: lid, area: 1 m², layers: [mat-300, {reinforcement: mat-300, hardener: hardener-epoxy-slow}]}
                """))
                .containsExactly(
                        "part.yaml:4:30: amount: polyester-ortho takes 1 % to 3 % of mekp by mass, not 4 %",
                        "part.yaml:6:82: hardener: hardener-epoxy-slow does not cure polyester-ortho; it takes mekp,"
                                + " mekp-slow, aap");
    }

    @Test
    void inheritedDoseOutsideTheRangeOfANearerResinIsRefusedWhereItStands() {
        assertThat(bench().complaints(Bench.WITHOUT_ZONES + """
                catalyst: {id: mekp, amount: 3 %}
                zones: [{name: lid, area: 1 m², layers: [mat-300, {reinforcement: mat-300, resin: vinylester}]}]
                """))
                .containsExactly("part.yaml:4:30: amount: vinylester takes 1 % to 2 % of mekp by mass, not 3 %");
    }

    @Test
    void agentAsNearAsTheResinHasToCureIt() {
        assertThat(bench().complaints("""
                part: Lid
                process: hand lay-up
                resin: epoxy-laminating
                catalyst: mekp
                zones: [{name: lid, area: 1 m², layers: [cloth-280, cloth-280]}]
                """))
                .containsExactly("part.yaml:4:11: catalyst: mekp does not cure epoxy-laminating; it takes"
                        + " hardener-epoxy-slow, hardener-epoxy-fast");
    }

    /** A library that is sold short: its resin names an agent that it does not hold. */
    @Test
    void usualAgentThatIsNowhereIsToldWhereTheLayerIs() {
        Materials withoutMekp = Materials.of(Stream.of("mat-300", "e-glass", "polyester-ortho")
                .map(id -> Bench.STOCK.find(id).orElseThrow())
                .toList());
        Bench bench = bench();
        Path part =
                bench.put("part.yaml", Bench.WITHOUT_ZONES + "zones: [{name: lid, area: 1 m², layers: [mat-300]}]\n");
        assertThat(bench.complaints(() -> PartFile.read(part, withoutMekp)))
                .containsExactly("part.yaml:4:42: layers, entry 1: polyester-ortho is cured by mekp, which is no known"
                        + " catalyst or hardener; state another that cures it, or add it to a material file");
    }

    @Test
    void missingProcessAndResinAreToldOnceAPart() {
        assertThat(bench().complaints("""
                part: Lid
                zones:
                  - {name: a, area: 1 m², layers: [mat-300, mat-300]}
                  - {name: b, area: 1 m², layers: [mat-300]}
                """))
                .containsExactly(
                        "part.yaml:3:36: layers, entry 1: no process is stated for this layer; add process: to the part,"
                                + " zone, stage or layer, with hand lay-up, vacuum bag or infusion",
                        "part.yaml:3:36: layers, entry 1: no resin is stated for this layer; add resin: to the part,"
                                + " zone, stage or layer, with the id of a laminating or infusion resin");
    }

    @Test
    void zoneMayStateAFibreContentForItsLayers() {
        Job job = bench().read(Bench.WITHOUT_ZONES + """
                fibre-content: iso-nominal
                surface: complex
                zones:
                  - {name: a, area: 1 m², resin-ratio: 2.2, layers: [mat-300, {reinforcement: mat-300, thickness: 0.9 mm}]}
                  - {name: b, area: 1 m², fibre-content: trade, layers: [mat-300]}
                """);
        assertThat(job.part().zones().get(0).layers())
                .extracting(layer -> ((ReinforcementLayer) layer).content().orElseThrow())
                .containsExactly(FibreContent.ofResinRatio(2.2), FibreContent.ofThickness(0.0009));
        assertThat(job.part().zones())
                .extracting(Zone::contents)
                .containsExactly(ContentSet.ISO_NOMINAL_COMPLEX, ContentSet.TRADE);
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
                        "part.yaml:8:32: mass: a mass needs its unit; write it like 0.1 kg",
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
                        "part.yaml:4:11: workshop: there is no file none.yaml; a path is wanted that begins where the part"
                                + " file lies",
                        "part.yaml:5:13: materials, entry 1: there is no file none.yaml; a path is wanted that begins where"
                                + " the part file lies",
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
