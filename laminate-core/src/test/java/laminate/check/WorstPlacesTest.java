package laminate.check;

import static laminate.check.CheckedParts.CORE;
import static laminate.check.CheckedParts.FACE;
import static laminate.check.CheckedParts.check;
import static laminate.check.CheckedParts.deflection;
import static laminate.check.CheckedParts.factor;
import static laminate.check.CheckedParts.layer;
import static laminate.check.CheckedParts.panel;
import static laminate.check.CheckedParts.part;
import static laminate.check.CheckedParts.sandwich;
import static laminate.check.CheckedParts.solid;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import laminate.part.BeamPlan;
import laminate.part.PanelPlan;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.Resultants;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.PanelLoad;
import laminate.theory.panel.PanelLoad.Upright;
import laminate.theory.panel.PanelPoint;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Where on a panel or beam it is looked for the worst, and on which face. */
class WorstPlacesTest {
    private static final double B = 0.05;
    private static final double L = 0.5;

    private static PanelCheck panelOf(Zone zone, Edges edges, PanelLoad... loads) {
        return check(part(zone).withPanels(List.of(PanelPlan.of("panel", zone.name(), 0.6, 0.6, edges, loads))))
                .panels()
                .get(0);
    }

    private static Reserve of(List<Reserve> reserves, ReserveKind kind) {
        return reserves.stream()
                .filter(reserve -> reserve.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void edgeForcesStressThePanelAsTheyAre() {
        PanelCheck panel =
                panelOf(solid(0.004), Edges.all(Edge.SIMPLY_SUPPORTED), new PanelLoad.EdgeForces(-5e3, 2e3, 1e3));
        assertThat(panel.worst().response().resultants().force().x()).isEqualTo(-5e3);
        assertThat(panel.worst().response().resultants().force().y()).isEqualTo(2e3);
        assertThat(panel.worst().response().resultants().force().xy()).isEqualTo(1e3);
        assertThat(panel.governingDeflection()).isZero();
        assertThat(panel.softEdgeSurplus()).isEmpty();
    }

    /** The faces are stressed most under the middle of a patch, wherever that stands between the points of a grid. */
    @Test
    void aPatchIsLookedAtInItsMiddle() {
        PanelLoad.Patch patch = new PanelLoad.Patch(0.15, 0.2, 0.05, 0.05, 500);
        PanelCheck panel = panelOf(sandwich(), Edges.all(Edge.SIMPLY_SUPPORTED), patch);
        assertThat(panel.worstPlace().x()).isEqualTo(0.15);
        assertThat(panel.worstPlace().y()).isEqualTo(0.2);
    }

    /** What stands on a small patch goes through the core along its perimeter: at least the mean, and more in places. */
    @Test
    void aSmallPatchPunches() {
        PanelLoad.Patch patch = new PanelLoad.Patch(0.313, 0.287, 0.01, 0.03, -500);
        PanelCheck panel = panelOf(sandwich(), Edges.all(Edge.SIMPLY_SUPPORTED), patch);
        double byTheMean = 0.8e6 / (500 / (2 * (0.01 + 0.03)) / 0.022);
        assertThat(factor(panel.reserves(), ReserveKind.CORE_SHEAR)).isBetween(0.5 * byTheMean, byTheMean);
    }

    /** Twist is greatest in the corner of a simply supported plate: Mxy = 0.0325 q a² against 0.0479 q a² in the middle. */
    @Test
    void aPlateWeakInShearFailsInItsCorner() {
        Lamina weak = Lamina.isotropic(70e9, 0.3).withStrength(new MatStrength(200e6, 200e6, 102e6));
        PanelCheck panel = panelOf(
                Zone.of("weak", 1, List.of(layer(weak, 0.004, 0))),
                Edges.all(Edge.SIMPLY_SUPPORTED),
                new PanelLoad.Uniform(500));
        assertThat(panel.worstPlace().x() % 0.6).isZero();
        assertThat(panel.worstPlace().y() % 0.6).isZero();
        assertThat(panel.worst().response().resultants().moment().xy())
                .isCloseTo(
                        Math.signum(panel.worst()
                                        .response()
                                        .resultants()
                                        .moment()
                                        .xy())
                                * 0.0325
                                * 500
                                * 0.36,
                        Percentage.withPercentage(1));
    }

    /** Where a clamped edge meets a free one theory has no finite value. */
    @Test
    void aCornerOfTwoKindsOfEdgeIsLeftOut() {
        PanelCheck panel = panelOf(
                sandwich(), new Edges(Edge.CLAMPED, Edge.FREE, Edge.FREE, Edge.FREE), new PanelLoad.Uniform(500));
        for (ReserveKind kind : List.of(ReserveKind.FIRST_PLY, ReserveKind.CORE_SHEAR, ReserveKind.WRINKLING)) {
            Reserve reserve = of(panel.reserves(), kind);
            boolean corner = reserve.x().orElseThrow() % 0.6 == 0 && reserve.y().orElseThrow() % 0.6 == 0;
            assertThat(corner).as(kind.word()).isFalse();
        }
    }

    @Test
    void theLargeDeflectionIsHeldAgainstTheLimit() {
        PanelCheck panel = check(part(solid(0.004).withLimits(deflection(1)))
                        .withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 12e3))))
                .panels()
                .get(0);
        assertThat(panel.limits().get(0).found())
                .hasValue(panel.large().orElseThrow().deflection());
    }

    /** What stretches bears most of the load, so stress is far below what small deflection gives, and above nothing. */
    @Test
    void stressBeyondHalfTheThicknessIsThatOfTheLargeDeflection() {
        PanelCheck panel = check(
                        part(solid(0.004)).withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 48e3))))
                .panels()
                .get(0);
        PanelPoint place = panel.large()
                .orElseThrow()
                .response()
                .at(panel.worstPlace().x(), panel.worstPlace().y());
        assertThat(panel.worst().response().resultants()).isEqualTo(place.resultants());
        assertThat(panel.worst().response().resultants().force().x()).isNotZero();
        Resultants small = panel.bending().response().mostDeflected().resultants();
        double smallStress = 6 * small.moment().x() / (0.004 * 0.004);
        assertThat(factor(panel.reserves(), ReserveKind.FIRST_PLY)).isGreaterThan(1.2 * 150e6 / Math.abs(smallStress));
        assertThat(check(part(solid(0.004)).withPanels(List.of(panel("solid", 0.4, Edge.SIMPLY_SUPPORTED, 48e3))))
                        .cautions())
                .anySatisfy(
                        caution -> assertThat(caution.text()).contains("on the stress at this load, not on the load"));
    }

    @Test
    void theLastPlyOfAPanelIsThatOfItsWorstPlace() {
        PanelCheck panel = panelOf(sandwich(), Edges.all(Edge.CLAMPED), new PanelLoad.Uniform(5e3));
        Reserve last = of(panel.reserves(), ReserveKind.LAST_PLY);
        assertThat(last.x()).hasValue(panel.worstPlace().x());
        assertThat(last.factor())
                .as("not before the first ply or the core")
                .isGreaterThanOrEqualTo(Math.min(
                        factor(panel.reserves(), ReserveKind.FIRST_PLY),
                        factor(panel.reserves(), ReserveKind.CORE_SHEAR)));
    }

    @Test
    void aHeadPressesTheCoreAtItsLowestEdge() {
        PanelCheck panel = check(part(sandwich())
                        .withPanels(List.of(PanelPlan.of(
                                "side",
                                "sandwich",
                                0.2,
                                0.2,
                                Edges.all(Edge.CLAMPED),
                                new PanelLoad.Head(2, 1000, Upright.WIDTH)))))
                .panels()
                .get(0);
        assertThat(factor(panel.reserves(), ReserveKind.CRUSHING))
                .isCloseTo(1.1e6 / (1000 * 9.80665 * 2), Percentage.withPercentage(1e-9));
    }

    /** Cantilever: uniform load q up, in the middle 1.2 q L down: V jumps there from −0.7 q L to 0.5 q L. */
    @Test
    void aBeamIsLookedAtJustBeforeALoad() {
        double q = 400;
        BeamLoad load = BeamLoad.uniform(q).plus(BeamLoad.at(-1.2 * q * L, L / 2));
        BeamPlan plan = BeamPlan.of("beam", "sandwich", L, B, Supports.CANTILEVER, load);
        BeamCheck beam =
                check(part(sandwich()).withBeams(List.of(plan))).beams().get(0);
        double shear = 0.7 * q * L / (B * 0.022);
        assertThat(factor(beam.reserves(), ReserveKind.CORE_SHEAR))
                .isCloseTo(0.8e6 / shear, Percentage.withPercentage(1));
    }

    private static BeamCheck threePoint(double force, Zone zone) {
        BeamPlan plan =
                BeamPlan.of("beam", zone.name(), L, B, Supports.SIMPLY_SUPPORTED, BeamLoad.threePoint(force, L));
        return check(part(zone).withBeams(List.of(plan))).beams().get(0);
    }

    /** A force towards +z stands on the mould face, its supports on the inner one with half of it each. */
    @Test
    void aForceIndentsTheFaceItStandsOn() {
        Zone thickMould =
                Zone.of("faces", 1, List.of(layer(FACE, 0.003, 0), layer(CORE, 0.02, 0), layer(FACE, 0.002, 0)));
        double perThickness = 4.0 / 3 * B * Math.sqrt(1.1e6 * 150e6);
        assertThat(factor(threePoint(500, thickMould).reserves(), ReserveKind.INDENTATION))
                .isCloseTo(perThickness * 0.003 / 500, Percentage.withPercentage(0.01));
        assertThat(factor(threePoint(-500, thickMould).reserves(), ReserveKind.INDENTATION))
                .isCloseTo(perThickness * 0.002 / 500, Percentage.withPercentage(0.01));
    }

    /** Under the load a face is in tension on its core side. */
    @Test
    void anIndentedFaceBreaksOnItsCoreSide() {
        Lamina strong = Lamina.isotropic(20e9, 0.3).withStrength(new MatStrength(300e6, 300e6, 170e6));
        Lamina brittle = Lamina.isotropic(20e9, 0.3).withStrength(new MatStrength(50e6, 300e6, 70e6));
        Zone zone = Zone.of(
                "faces",
                1,
                List.of(
                        layer(strong, 0.001, 0),
                        layer(brittle, 0.001, 0),
                        layer(CORE, 0.02, 0),
                        layer(brittle, 0.001, 0),
                        layer(strong, 0.001, 0)));
        double load = 4.0 / 3 * B * 0.002 * Math.sqrt(1.1e6 * 50e6);
        assertThat(factor(threePoint(500, zone).reserves(), ReserveKind.INDENTATION))
                .isCloseTo(load / 500, Percentage.withPercentage(0.01));
        assertThat(factor(threePoint(-500, zone).reserves(), ReserveKind.INDENTATION))
                .isCloseTo(load / 500, Percentage.withPercentage(0.01));
    }

    @Test
    void aFaceWithoutStrengthIsNotJudgedAgainstIndentation() {
        Lamina unknown = Lamina.isotropic(20e9, 0.3);
        Zone zone = Zone.of(
                "faces",
                1,
                List.of(
                        layer(unknown, 0.001, 0),
                        layer(FACE, 0.001, 0),
                        layer(CORE, 0.02, 0),
                        layer(unknown, 0.002, 0)));
        assertThat(threePoint(500, zone).reserves()).extracting(Reserve::kind).doesNotContain(ReserveKind.INDENTATION);
    }
}
