package laminate.check;

import static laminate.check.CheckedParts.check;
import static laminate.check.CheckedParts.factor;
import static laminate.check.CheckedParts.panel;
import static laminate.check.CheckedParts.part;
import static laminate.check.CheckedParts.sandwich;
import static laminate.check.CheckedParts.solid;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import laminate.part.PanelPlan;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.theory.Lamina;
import laminate.theory.failure.Criterion;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.PanelLoad;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Panels of a part against closed forms and finite elements. */
class PanelCheckValidationTest {
    private static final double SIZE = 0.4;
    private static final double T = 0.004;
    private static final double Q = 1000;
    private static final double D = 70e9 * T * T * T / (12 * (1 - 0.3 * 0.3));

    private static PanelCheck square(Edge edge) {
        return check(part(solid(T)).withPanels(List.of(panel("solid", SIZE, edge, Q))))
                .panels()
                .get(0);
    }

    /** Timoshenko and Woinowsky-Krieger 1959, table 8, square: w = 0.00406 q a⁴/D, M = 0.0479 q a², from memory. */
    @Test
    void aSimplySupportedSquare() {
        PanelCheck panel = square(Edge.SIMPLY_SUPPORTED);
        assertThat(panel.bending().deflection())
                .isCloseTo(0.00406 * Q * Math.pow(SIZE, 4) / D, Percentage.withPercentage(0.2));
        double M = panel.spots().get(PanelSpot.CENTRE).resultants().moment().x();
        assertThat(M).isCloseTo(0.0479 * Q * SIZE * SIZE, Percentage.withPercentage(0.2));
        double stress = 6 * 0.0479 * Q * SIZE * SIZE / (T * T);
        PanelCheck byStress = check(
                        part(solid(T)).withPanels(List.of(panel("solid", SIZE, Edge.SIMPLY_SUPPORTED, Q))),
                        CheckOptions.USUAL.with(Criterion.MAX_STRESS))
                .panels()
                .get(0);
        assertThat(factor(byStress.reserves(), ReserveKind.FIRST_PLY))
                .isCloseTo(150e6 / stress, Percentage.withPercentage(0.3));
        assertThat(byStress.worstPlace().x()).isEqualTo(SIZE / 2);
        assertThat(byStress.worstPlace().y()).isEqualTo(SIZE / 2);
        assertThat(panel.large()).isEmpty();
        assertThat(panel.softEdgeDeflection()).isEmpty();
    }

    /** The same, table 35, square: w = 0.00126 q a⁴/D, M = −0.0513 q a² at the middle of an edge, 0.0231 at the centre. */
    @Test
    void aClampedSquare() {
        PanelCheck panel = square(Edge.CLAMPED);
        assertThat(panel.bending().deflection())
                .isCloseTo(0.00126 * Q * Math.pow(SIZE, 4) / D, Percentage.withPercentage(0.7));
        for (PanelSpot spot : List.of(PanelSpot.X_START, PanelSpot.X_END)) {
            assertThat(panel.spots().get(spot).resultants().moment().x())
                    .isCloseTo(-0.0513 * Q * SIZE * SIZE, Percentage.withPercentage(0.5));
        }
        for (PanelSpot spot : List.of(PanelSpot.Y_START, PanelSpot.Y_END)) {
            assertThat(panel.spots().get(spot).resultants().moment().y())
                    .isCloseTo(-0.0513 * Q * SIZE * SIZE, Percentage.withPercentage(0.5));
        }
        assertThat(panel.spots().get(PanelSpot.CENTRE).resultants().moment().x())
                .isCloseTo(0.0231 * Q * SIZE * SIZE, Percentage.withPercentage(1));
        double onEdge = Math.max(
                Math.abs(panel.worstPlace().x() / SIZE - 0.5),
                Math.abs(panel.worstPlace().y() / SIZE - 0.5));
        assertThat(onEdge).as("worst on an edge").isEqualTo(0.5);
    }

    /** Case FEA-01: bricks give 1.0375 mm, thin-plate theory 0.74964 mm; soft edges give 9 to 12 % more. */
    @Test
    void aSandwichPanelAgainstBricks() {
        Lamina mat = Lamina.of(7.5e9, 7.5e9, 2819548872.18, 0.33).withTransverseShear(2.6e9, 2.6e9);
        Lamina woven = Lamina.of(17e9, 14e9, 3.3e9, 0.14).withTransverseShear(2.8e9, 2.7e9);
        Lamina foam = Lamina.of(80e6, 80e6, 30e6, 0.3333333).withTransverseShear(30e6, 30e6);
        Zone zone = Zone.of(
                "lid",
                0.24,
                List.of(
                        CheckedParts.layer(mat, 0.0008, 0),
                        CheckedParts.layer(woven, 0.001, 0),
                        CheckedParts.layer(foam, 0.015, 0),
                        CheckedParts.layer(woven, 0.001, 0),
                        CheckedParts.layer(mat, 0.0008, 0)));
        PanelPlan plan =
                PanelPlan.of("lid", "lid", 0.6, 0.4, Edges.all(Edge.SIMPLY_SUPPORTED), new PanelLoad.Uniform(10e3));
        PartCheck check = check(part(zone).withPanels(List.of(plan)));
        PanelCheck panel = check.panels().get(0);
        assertThat(panel.bending().deflection()).isCloseTo(0.0010375, Percentage.withPercentage(1));
        assertThat(panel.bending().bendingDeflection()).isCloseTo(0.00074964, Percentage.withPercentage(0.05));
        assertThat(panel.bending().shearDeflection())
                .isCloseTo(panel.bending().deflection() - panel.bending().bendingDeflection(), within(1e-15));
        assertThat(panel.softEdgeSurplus().orElseThrow()).isBetween(0.09, 0.12);
        assertThat(panel.reserves()).as("no strength, no reserve").isEmpty();
        assertThat(check.zones().get(0).notJudged()).hasSize(5);
    }

    /** Core shear force at the middle of an edge of a square sandwich, 0.338 q a in thin-plate theory (table 8). */
    @Test
    void theCoreOfASandwichPanelShearsAtTheEdge() {
        double q = 20e3;
        PanelCheck panel = check(part(sandwich()).withPanels(List.of(panel("sandwich", 0.6, Edge.SIMPLY_SUPPORTED, q))))
                .panels()
                .get(0);
        double shear = 0.338 * q * 0.6 / 0.022;
        assertThat(factor(panel.reserves(), ReserveKind.CORE_SHEAR))
                .isCloseTo(0.8e6 / shear, Percentage.withPercentage(2));
    }

    /** Small, so that its bending crushes the core less than the pressure itself does. */
    @Test
    void thePressurePressesTheCore() {
        PanelPlan plan = panel("sandwich", 0.3, Edge.SIMPLY_SUPPORTED, -20e3);
        PanelCheck panel =
                check(part(sandwich()).withPanels(List.of(plan))).panels().get(0);
        assertThat(factor(panel.reserves(), ReserveKind.CRUSHING))
                .isCloseTo(1.1e6 / 20e3, Percentage.withPercentage(1e-9));
    }

    /** Timoshenko and Gere 1961: k = 4 for a square pressed one way, N = 4 π² D/b², from memory. */
    @Test
    void aSquarePressedInItsPlaneBuckles() {
        PanelPlan plan = PanelPlan.of(
                "panel", "solid", SIZE, SIZE, Edges.all(Edge.SIMPLY_SUPPORTED), new PanelLoad.EdgeForces(-5e3, 0, 0));
        PanelCheck panel =
                check(part(solid(T)).withPanels(List.of(plan))).panels().get(0);
        assertThat(factor(panel.reserves(), ReserveKind.BUCKLING))
                .isCloseTo(4 * Math.PI * Math.PI * D / (SIZE * SIZE) / 5e3, Percentage.withPercentage(0.1));
        assertThat(factor(panel.reserves(), ReserveKind.FIRST_PLY))
                .isCloseTo(150e6 * T / 5e3, Percentage.withPercentage(1));
    }

    @Test
    void beyondHalfTheThicknessTheLargeDeflectionCounts() {
        double pressure = 12e3;
        PanelCheck panel = check(
                        part(solid(T)).withPanels(List.of(panel("solid", SIZE, Edge.SIMPLY_SUPPORTED, pressure))))
                .panels()
                .get(0);
        assertThat(panel.bending().deflection()).isGreaterThan(T / 2);
        assertThat(panel.isBeyondSmallDeflection()).isTrue();
        assertThat(panel.governingDeflection())
                .isEqualTo(panel.large().orElseThrow().deflection())
                .isLessThan(0.97 * panel.bending().deflection());
    }

    @Test
    void aPatchPressesTheCoreUnderIt() {
        PanelLoad patch = new PanelLoad.Patch(0.3, 0.3, 0.05, 0.04, 1000);
        PanelPlan plan = PanelPlan.of("deck", "sandwich", 0.6, 0.6, Edges.all(Edge.CLAMPED), patch);
        PanelCheck panel =
                check(part(sandwich()).withPanels(List.of(plan))).panels().get(0);
        assertThat(factor(panel.reserves(), ReserveKind.CRUSHING))
                .isCloseTo(1.1e6 / (1000 / (0.05 * 0.04)), Percentage.withPercentage(1e-9));
        assertThat(panel.worstPlace().x()).isBetween(0.25, 0.35);
    }
}
