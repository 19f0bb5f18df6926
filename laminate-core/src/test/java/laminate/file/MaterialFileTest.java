package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import laminate.material.Consumable;
import laminate.material.Core;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.material.Material;
import laminate.material.Materials;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.unit.PriceBasis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MaterialFileTest {

    @TempDir
    private Path folder;

    private List<Material> readFile(String text) {
        return MaterialFile.read(new Bench(folder).put("own.yaml", text), Bench.STOCK);
    }

    private static Material readText(String text) {
        return MaterialFile.read("library", text, Bench.STOCK).get(0);
    }

    @Test
    void figureKeepsItsSourceAndStatus() {
        Material agent = readText("""
                material: mekp-strong
                kind: catalyst
                name: Stronger peroxide
                density: {value: 1170 kg/m³, source: "handbook, from memory", status: memory}
                """);
        assertThat(agent.figures().find(Property.DENSITY))
                .contains(new Figure(1170, "handbook, from memory", Status.MEMORY));
    }

    @Test
    void figureWithoutASourceIsTheUsersOwn() {
        Fibre fibre = (Fibre) readFile("""
                material: my-fibre
                kind: fibre
                name: Mine
                type: natural
                density: 1450 kg/m³
                E1: 55 GPa
                E2: {value: 8 GPa}
                G12: {value: 3 GPa, source: data sheet}
                nu12: 0.35
                alpha1: -1e-6 1/K
                alpha2: 40e-6 1/K
                tensile-strength: 600 N/mm²
                """).get(0);
        assertThat(fibre.type()).isEqualTo(Fibre.Type.NATURAL);
        assertThat(fibre.density()).isEqualTo(1450);
        assertThat(fibre.figures().find(Property.E2)).contains(Figure.stated(8e9));
        assertThat(fibre.figures().find(Property.G12)).contains(new Figure(3e9, "data sheet", Status.USER));
        assertThat(fibre.figures().value(Property.ALPHA1)).isEqualTo(-1e-6);
        assertThat(fibre.figures().value(Property.TENSILE_STRENGTH)).isEqualTo(6e8);
    }

    @Test
    void materialsOfOneFileMayReferToEachOtherInAnyOrder() {
        List<Material> all = readFile("""
                materials:
                  - material: own-cloth
                    kind: reinforcement
                    name: Cloth of a fibre below
                    form: woven cloth
                    areal-weight: 200 g/m²
                    fibre: own-fibre
                    warp-share: 60 %
                    measured: {fibre-volume-fraction: 45 %, E1: 20 GPa, E2: 18 GPa, G12: 3 GPa, nu12: 0.15, G13: 3 GPa, G23: 3 GPa,
                               alpha1: 9e-6 1/K, alpha2: 10e-6 1/K, Xt: 320 MPa, Xc: 250 MPa, Yt: 300 MPa, Yc: 240 MPa,
                               S: 60 MPa, S23: 40 MPa, strain-limits: {e1t: 1.8 %, e1c: 1.4 %, e2t: 1.7 %, e2c: 1.3 %, g12: 2.5 %}}
                    roll-width: 1 m
                    roll-length: 50 m
                    dry-thickness: 0.2 mm
                  - material: own-fibre
                    kind: fibre
                    name: Mine
                    type: glass
                    density: 2600 kg/m³
                    E1: 80 GPa
                    E2: 80 GPa
                    G12: 33 GPa
                    nu12: 0.2
                    alpha1: 5e-6 1/K
                    alpha2: 5e-6 1/K
                    tensile-strength: 2 GPa
                """);
        assertThat(all).extracting(Material::id).containsExactly("own-cloth", "own-fibre");
        Reinforcement cloth = (Reinforcement) all.get(0);
        assertThat(cloth.plies()).containsExactly(new FibrePly((Fibre) all.get(1), Form.WOVEN_CLOTH, 0, 0.2, 0.6));
        assertThat(cloth.measured().orElseThrow().value(Property.G23)).isEqualTo(3e9);
        assertThat(cloth.measured().orElseThrow().value(Property.S23)).isEqualTo(40e6);
        assertThat(cloth.measured().orElseThrow().value(Property.YC)).isEqualTo(240e6);
        assertThat(cloth.measured().orElseThrow().value(Property.STRAIN_12)).isEqualTo(0.025);
        assertThat(cloth.rollWidth()).hasValue(1);
    }

    @Test
    void makeUpIsListedAsItLies() {
        Reinforcement combination = (Reinforcement) readText("""
                material: combination
                kind: reinforcement
                name: Mat and crossed plies
                form: stitched
                areal-weight: {value: 850 g/m², source: x, status: memory}
                plies:
                  - {fibre: e-glass, form: mat, areal-weight: 225 g/m²}
                  - {fibre: e-glass, angle: 45, areal-weight: 300 g/m²}
                  - {fibre: carbon-standard, form: woven cloth, angle: -45, areal-weight: 300 g/m², warp-share: 70 %}
                """);
        assertThat(combination.plies())
                .extracting(FibrePly::form)
                .containsExactly(Form.MAT, Form.STITCHED, Form.WOVEN_CLOTH);
        assertThat(combination.plies()).extracting(FibrePly::angle).containsExactly(0.0, 45.0, -45.0);
        assertThat(combination.plies()).extracting(FibrePly::warpShare).containsExactly(0.5, 1.0, 0.7);
        assertThat(combination.plies().stream().mapToDouble(FibrePly::arealMass).sum())
                .isCloseTo(0.85, within(1e-15));
    }

    @Test
    void resinHasItsCuresAndGelTimes() {
        Resin resin = (Resin) Bench.STOCK.find("epoxy-laminating").orElseThrow();
        assertThat(resin.family()).isEqualTo(Resin.Family.EPOXY);
        assertThat(resin.use()).isEqualTo(Resin.Use.LAMINATING);
        assertThat(resin.defaultCure().agent()).isEqualTo("hardener-epoxy-slow");
        assertThat(resin.defaultCure().amount().value()).isEqualTo(0.3);
        assertThat(resin.gelPoints()).singleElement().satisfies(point -> {
            assertThat(point.temperature()).isEqualTo(288.15);
            assertThat(point.time().value()).isEqualTo(86 * 60);
        });
    }

    @Test
    void otherKindsAreRead() {
        Core core = (Core) Bench.STOCK.find("honeycomb-aramid-29").orElseThrow();
        assertThat(core.openCell()).isTrue();
        assertThat(core.type()).isEqualTo(Core.Type.HONEYCOMB);
        assertThat(core.figures().find(Property.UPTAKE_INFUSION)).isEmpty();
        assertThat(((Consumable) Bench.STOCK.find("acetone").orElseThrow()).soldBy())
                .isEqualTo(PriceBasis.LITRE);
    }

    @Test
    void agentsOfALibraryTextAreNotLookedUp() {
        Bench.Watched watched = new Bench.Watched();
        MaterialFile.read("library", """
                material: resin
                kind: resin
                name: Resin
                family: polyester
                use: laminating
                density-liquid: 1100 kg/m³
                density-cured: 1200 kg/m³
                E: 3 GPa
                nu: 0.35
                alpha: 80e-6 1/K
                cure: [{agent: mekp, amount: 1.5 %, from: 1 %, to: 3 %}]
                """, watched);
        assertThat(watched.loaded).isEmpty();
    }

    @Test
    void stockOfSomeoneElseIsOnlyReadFrom() {
        assertThat(MaterialFile.read(
                        "own",
                        "materials: [{material: rags, kind: consumable, name: Rags, sold-by: kg}]\n",
                        Materials.of(List.of())))
                .extracting(Material::name)
                .containsExactly("Rags");
    }
}
