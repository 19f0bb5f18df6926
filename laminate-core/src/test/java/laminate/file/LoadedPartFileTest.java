package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import laminate.part.BeamPlan;
import laminate.part.DeflectionLimit;
import laminate.part.LaminaLayer;
import laminate.part.Limits;
import laminate.part.LoadCase;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.ReserveKind;
import laminate.process.StrengthBasis;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.PointLoad;
import laminate.theory.beam.Supports;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.PanelLoad;
import laminate.theory.panel.PanelLoad.Upright;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Load cases, panels, beams and limits as the part file states them. */
class LoadedPartFileTest {

    private static final String ZONES = Bench.WITHOUT_ZONES + """
            zones:
              - {name: lid, area: 1 m², layers: [mat-300], limits: {thickness: 4 mm}}
              - {name: side, area: 1 m², layers: [mat-300]}
            """;

    @TempDir
    private Path folder;

    private Part read(String text) {
        return new Bench(folder).read(text).part();
    }

    private LoadCase loadCase(String keys) {
        return read(Bench.WITHOUT_ZONES
                        + "zones: [{name: lid, area: 1 m², layers: [mat-300], load-cases: [{name: case, " + keys
                        + "}]}]\n")
                .zones()
                .get(0)
                .loadCases()
                .get(0);
    }

    private PanelPlan panel(String keys) {
        return read(ZONES + "panels: [{name: a, zone: lid, length: 600 mm, width: 400 mm, " + keys + "}]\n")
                .panels()
                .get(0);
    }

    private BeamPlan beam(String keys) {
        return read(ZONES + "beams: [{name: a, zone: lid, span: 900 mm, width: 250 mm, " + keys + "}]\n")
                .beams()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource({
        "Nx: 1000 N/m, NX, 1000",
        "Ny: 1 N/mm, NY, 1000",
        "Nxy: -2 kN/m, NXY, -2000",
        "Nx: 1 lb/in, NX, 175.126835246476",
        "Mx: 20 N·m/m, MX, 20",
        "My: 20 N.mm/mm, MY, 20",
        "Mxy: 1 lb·in/in, MXY, 4.4482216152605",
        "strain-x: 0.001, EPS_X, 0.001",
        "strain-y: -0.1 %, EPS_Y, -0.001",
        "strain-xy: 1e-3, GAMMA_XY, 0.001",
        "curvature-x: 0.2 1/m, KAPPA_X, 0.2",
        "curvature-y: 0.0254 1/in, KAPPA_Y, 1",
        "curvature-xy: 1e-4 1/mm, KAPPA_XY, 0.1",
    })
    void forcesMomentsAndDeformationsAreGivenTerms(String keys, Term term, double value) {
        Map<Term, Double> given = loadCase(keys).load().given();
        assertThat(given).containsOnlyKeys(term);
        assertThat(given.get(term)).isCloseTo(value, within(1e-12 * Math.abs(value)));
    }

    @Test
    void shearForceTemperatureAndMoistureGoWithThem() {
        LoadCase swollen = loadCase("Qx: 200 N/m, Qy: -1 N/mm, temperature-change: -75 °C, moisture: 0.5 %, Nx: 0 N/m");
        assertThat(swollen.name()).isEqualTo("case");
        assertThat(swollen.load().given()).containsExactly(Map.entry(Term.NX, 0.0));
        assertThat(swollen.load().Qx()).isEqualTo(200);
        assertThat(swollen.load().Qy()).isEqualTo(-1000);
        assertThat(swollen.load().temperatureChange()).isEqualTo(-75);
        assertThat(swollen.load().moisture()).isEqualTo(0.005);
        assertThat(loadCase("temperature-change: -9 °F").load().temperatureChange())
                .isCloseTo(-5, within(1e-12));
    }

    @Test
    void thePanelsOfTheExampleAreRead() {
        Part part = read(ZONES + """
                panels:
                  - {name: lid centre, zone: lid, length: 600 mm, width: 400 mm, edges: simply supported, pressure: 10 kPa}
                  - {name: tank side, zone: side, length: 600 mm, width: 400 mm, edges: clamped, head: 0.6 m, water: fresh}
                """);
        Edges supported = Edges.all(Edge.SIMPLY_SUPPORTED);
        assertThat(part.panels())
                .containsExactly(
                        PanelPlan.of("lid centre", "lid", 0.6, 0.4, supported, new PanelLoad.Uniform(10_000)),
                        PanelPlan.of(
                                "tank side",
                                "side",
                                0.6,
                                0.4,
                                Edges.all(Edge.CLAMPED),
                                new PanelLoad.Head(0.6, 1000, Upright.WIDTH)));
        assertThat(part.panels().get(0).limits()).isEqualTo(Limits.NONE);
        assertThat(part.limitsOf(part.panels().get(0)).thickness()).hasValue(0.004);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "head: 0.6 m | 0.6 | 1000 | WIDTH",
                "head: 600 mm, water: salt | 0.6 | 1025 | WIDTH",
                "head: 0.6 m, density: 840 kg/m³ | 0.6 | 840 | WIDTH",
                "head: 0.6 m, upright: length | 0.6 | 1000 | LENGTH",
                "head: 0.6 m, upright: width, flat: false | 0.6 | 1000 | WIDTH",
                "head: 0.6 m, upright: length, flat: false | 0.6 | 1000 | LENGTH",
                "head: 0.6 m, flat: true | 0.6 | 1000 | NONE"
            })
    void aHeadHasItsWaterAndItsUprightSide(String keys, double head, double density, Upright upright) {
        assertThat(panel("edges: clamped, " + keys).loads())
                .containsExactly(new PanelLoad.Head(head, density, upright));
    }

    @Test
    void edgesAreOneWordOrFourInOrder() {
        PanelPlan panel = panel("edges: [clamped, free, simply supported, soft simply supported], pressure: -1 kPa,"
                + " in-plane-edges: held");
        assertThat(panel.edges())
                .isEqualTo(new Edges(Edge.CLAMPED, Edge.FREE, Edge.SIMPLY_SUPPORTED, Edge.SOFT_SIMPLY_SUPPORTED));
        assertThat(panel.inPlane()).isEqualTo(InPlane.HELD);
        assertThat(panel.loads()).containsExactly(new PanelLoad.Uniform(-1000));
        assertThat(panel("edges: clamped, pressure: 1 kPa, in-plane-edges: free")
                        .inPlane())
                .isEqualTo(InPlane.FREE_TO_PULL_IN);
    }

    @Test
    void loadsOfSeveralKindsActTogether() {
        PanelPlan panel = panel("edges: clamped, pressure: 2 kPa, patch: {force: 900 N, length: 80 mm, width: 60 mm,"
                + " x: 200 mm}, edge-loads: {Nx: -5 N/mm, Nxy: 2 kN/m}");
        assertThat(panel.loads())
                .containsExactly(
                        new PanelLoad.Uniform(2000),
                        new PanelLoad.Patch(0.2, 0.2, 0.08, 0.06, 900),
                        new PanelLoad.EdgeForces(-5000, 0, 2000));
    }

    @Test
    void aPatchMayBeStatedByPressureAndLiesInTheMiddle() {
        PanelLoad.Patch patch =
                (PanelLoad.Patch) panel("edges: clamped, patch: {pressure: 50 kPa, length: 100 mm, width: 80 mm}")
                        .loads()
                        .get(0);
        assertThat(patch.x()).isEqualTo(0.3);
        assertThat(patch.y()).isEqualTo(0.2);
        assertThat(patch.force()).isCloseTo(400, within(1e-9));
    }

    @Test
    void beamsAreHeldAndLoadedAsTheirWordSays() {
        BeamPlan middle = beam("loading: three-point, force: 800 N");
        assertThat(middle)
                .isEqualTo(BeamPlan.of("a", "lid", 0.9, 0.25, Supports.SIMPLY_SUPPORTED, BeamLoad.at(800, 0.45)));
        assertThat(beam("loading: four-point, force: 800 N, load-span: 300 mm")
                        .load()
                        .points())
                .hasSize(2)
                .allSatisfy(point -> assertThat(point.force()).isEqualTo(400))
                .extracting(PointLoad::position)
                .satisfies(at -> assertThat(at.get(0)).isCloseTo(0.3, within(1e-12)))
                .satisfies(at -> assertThat(at.get(1)).isCloseTo(0.6, within(1e-12)));
        BeamPlan tip = beam("loading: cantilever, force: 0.8 kN, direction: y, bearing-length: 40 mm");
        assertThat(tip.supports()).isEqualTo(Supports.CANTILEVER);
        assertThat(tip.load()).isEqualTo(BeamLoad.at(800, 0.9));
        assertThat(tip.along()).isEqualTo(BeamPlan.Along.Y);
        assertThat(tip.bearingLength()).hasValue(0.04);
        assertThat(beam("loading: cantilever, line-load: 2 N/mm").load()).isEqualTo(BeamLoad.uniform(2000));
        assertThat(beam("loading: uniform, line-load: 2 N/mm").supports()).isEqualTo(Supports.SIMPLY_SUPPORTED);
    }

    @Test
    void limitsAreReadWhereverTheyStand() {
        Part part =
                read("limits: {deflection: 1/100 span, reserve-factor: {first-ply: 1.5, core-shear: 2, wrinkling: 2},"
                        + " thickness: 3 mm, mass: 25 kg}\n" + ZONES + """
                panels:
                  - {name: a, zone: lid, length: 600 mm, width: 400 mm, edges: clamped, pressure: 1 kPa,
                     limits: {deflection: 4 mm, reserve-factor: {core-shear: 3}}}
                beams:
                  - {name: b, zone: side, span: 900 mm, width: 250 mm, loading: uniform, line-load: 2 N/mm,
                     limits: {deflection: 1 / 62.5 span, mass: 2 lb}}
                """);
        assertThat(part.limits().deflection()).contains(DeflectionLimit.ofSpan(100));
        assertThat(part.limits().mass()).hasValue(25);
        Limits panel = part.limitsOf(part.panels().get(0));
        assertThat(panel.deflection()).contains(DeflectionLimit.of(0.004));
        assertThat(panel.thickness()).hasValue(0.004);
        assertThat(panel.mass()).isEmpty();
        assertThat(panel.reserveFactors())
                .containsExactly(
                        Map.entry(ReserveKind.FIRST_PLY, 1.5),
                        Map.entry(ReserveKind.CORE_SHEAR, 3.0),
                        Map.entry(ReserveKind.WRINKLING, 2.0));
        Limits beam = part.limitsOf(part.beams().get(0));
        assertThat(beam.deflection()).contains(DeflectionLimit.ofSpan(62.5));
        assertThat(beam.thickness()).hasValue(0.003);
        assertThat(beam.mass()).hasValue(0.90718474);
    }

    @Test
    void aPartWithoutTheseKeysHasNothingOfThem() {
        Part part = read(Bench.WITHOUT_ZONES + "zones: [{name: lid, area: 1 m², layers: [mat-300]}]\n");
        assertThat(part.panels()).isEmpty();
        assertThat(part.beams()).isEmpty();
        assertThat(part.limits()).isEqualTo(Limits.NONE);
        assertThat(part.zones().get(0).loadCases()).isEmpty();
        assertThat(part.zones().get(0).limits()).isEqualTo(Limits.NONE);
    }

    private PlyStrength strength(String more) {
        Part part = new Bench(folder)
                .layers("{lamina: {E1: 40 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³, Xt: 1000 MPa,"
                        + " Xc: 600 MPa, Yt: 30 MPa, Yc: 110 N/mm², S: 40 MPa" + more + "}, thickness: 1 mm}")
                .part();
        LaminaLayer ply = (LaminaLayer) part.zones().get(0).layers().get(0);
        return (PlyStrength) ply.lamina().strength().orElseThrow();
    }

    @Test
    void aLaminaHasItsStrengths() {
        PlyStrength five = PlyStrength.of(1000e6, 600e6, 30e6, 110e6, 40e6);
        assertThat(strength("")).isEqualTo(five);
        assertThat(strength(", S23: 50 MPa").S23()).isEqualTo(OptionalDouble.of(50e6));
        assertThat(strength(", strain-limits: {e1t: 2.5 %, e1c: 0.015, e2t: 0.3 %, e2c: 1.1 %, g12: 1 %}")
                        .strainLimits())
                .contains(new StrainLimits(0.025, 0.015, 0.003, 0.011, 0.01));
        List<LaminaLayer> bare = new Bench(folder)
                        .layers(
                                "{lamina: {E1: 40 GPa, E2: 10 GPa, G12: 4 GPa, nu12: 0.3, density: 1900 kg/m³}, thickness: 1 mm}")
                        .part()
                        .zones()
                        .get(0)
                        .layers()
                        .stream()
                        .map(LaminaLayer.class::cast)
                        .toList();
        assertThat(bare.get(0).lamina().strength()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"temperature: 18 °C, LIBRARY", "strength: library, LIBRARY", "strength: iso-12215-5, ISO_12215_5"})
    void aWorkshopSaysHowStrengthIsReckoned(String text, StrengthBasis basis) {
        WorkshopFile read = WorkshopFile.read(new Bench(folder).put("workshop.yaml", text + "\n"), Bench.STOCK);
        assertThat(read.workshop().strength()).isEqualTo(basis);
    }
}
