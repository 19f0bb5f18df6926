package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import laminate.material.Materials;
import laminate.material.Resin;
import laminate.part.Coating;
import laminate.part.Film;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.FibreContent;
import laminate.process.LayUp;
import laminate.process.Process;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Process, resin, agents and fibre content as a part file states them, of which the nearest wins. */
class PartTermsTest {

    @TempDir
    private Path folder;

    private Bench bench() {
        return new Bench(folder);
    }

    private static Job house() {
        return PartFile.read(Bench.resource("house/locker-lid.yaml"), Bench.STOCK);
    }

    private static LayUp layUp(Job job, int layer) {
        return job.part().zones().get(0).layers().get(layer).laying().orElseThrow();
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
}
