package laminate.theory.panel;

import static laminate.theory.panel.Panels.pressure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Optional;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Resultants;
import laminate.theory.TransverseShearStiffness;
import laminate.theory.Vector3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Panels, edges and loads as values, and what they refuse. */
class PanelValuesTest {
    private static final Laminate LAMINATE = Panels.sandwich();
    private static final Panel PANEL = Panel.of(LAMINATE, 0.6, 0.4, Panels.CLAMPED);

    @ParameterizedTest
    @CsvSource({
        "FREE, FREE, FREE, FREE",
        "SIMPLY_SUPPORTED, FREE, FREE, FREE",
        "FREE, FREE, FREE, SOFT_SIMPLY_SUPPORTED"
    })
    void edgesThatLeaveARigidMotionAreRefused(Edge a, Edge b, Edge c, Edge d) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Edges(a, b, c, d))
                .withMessageContaining("one clamped edge or two supported ones")
                .withMessageContaining(a.name());
    }

    /** Whatever is accepted can be solved, in the plane too: no combination is singular. */
    @Test
    void edgesThatAreAcceptedHoldThePanel() {
        int accepted = 0;
        for (int code = 0; code < 256; code++) {
            Edge[] kinds = Edge.values();
            Edge[] e = {kinds[code & 3], kinds[code >> 2 & 3], kinds[code >> 4 & 3], kinds[code >> 6]};
            Optional<Edges> edges = edges(e);
            accepted += edges.isPresent() ? 1 : 0;
            edges.ifPresent(PanelValuesTest::checkSolvable);
        }
        assertThat(accepted).isEqualTo(256 - 9);
    }

    private static Optional<Edges> edges(Edge[] e) {
        try {
            return Optional.of(new Edges(e[0], e[1], e[2], e[3]));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static void checkSolvable(Edges edges) {
        Laminate laminate = Panels.unsymmetric();
        for (InPlane inPlane : InPlane.values()) {
            Panel panel = new Panel(laminate, 0.6, 0.4, edges, inPlane);
            Section section = new Section(laminate, TransverseShearStiffness.of(laminate));
            for (Kinematics kinematics : Kinematics.values()) {
                Basis basis = Basis.of(panel, kinematics, new Orders(5, 4), true);
                assertThat(Ritz.solve(basis, section, pressure(1)).deflection(0.3, 0.2))
                        .as("%s %s", edges, inPlane)
                        .isPositive();
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void panelRefusesSizesThatCannotBe(double size) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Panel.of(LAMINATE, size, 0.4, Panels.CLAMPED))
                .withMessageContaining("length must be positive and finite, was " + size);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Panel.of(LAMINATE, 0.6, size, Panels.CLAMPED))
                .withMessageContaining("width");
        assertThatIllegalArgumentException().isThrownBy(() -> new PanelLoad.Head(size, 1000, PanelLoad.Upright.WIDTH));
        assertThatIllegalArgumentException().isThrownBy(() -> new PanelLoad.Patch(0, 0, size, 1, 1));
    }

    @ParameterizedTest
    @CsvSource({"0.05, 0.2", "0.58, 0.2", "0.3, 0.02", "0.3, 0.39"})
    void patchMustLieWithinThePanel(double x, double y) {
        PanelLoad patch = new PanelLoad.Patch(x, y, 0.12, 0.06, 100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PanelBending.of(PANEL, List.of(patch)))
                .withMessageContaining("the patch must lie within the panel");
    }

    @Test
    void pointMustLieWithinThePanel() {
        PanelResponse r = PanelBending.of(PANEL, pressure(1)).response();
        assertThatIllegalArgumentException().isThrownBy(() -> r.at(0.61, 0.2)).withMessageContaining("x");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> r.deflection(0.3, -0.01))
                .withMessageContaining("y");
    }

    /** Uniform, as a patch over the whole panel, as a flat head, and as the sum of two heads that lean both ways. */
    @Test
    void loadsThatAreTheSameActTheSame() {
        double uniform = PanelBending.of(PANEL, pressure(PanelLoad.STANDARD_GRAVITY * 1000 * 0.5))
                .deflection();
        PanelLoad flat = new PanelLoad.Head(0.5, 1000, PanelLoad.Upright.NONE);
        PanelLoad patch = new PanelLoad.Patch(0.3, 0.2, 0.6, 0.4, 0.24 * 9.80665 * 500);
        assertThat(PanelBending.of(PANEL, List.of(flat)).deflection()).isCloseTo(uniform, withinPercentage(1e-6));
        assertThat(PanelBending.of(PANEL, List.of(patch)).deflection()).isCloseTo(uniform, withinPercentage(1e-6));
    }

    /** Head 0.5 m on a side of 0.4 m: from 0.5 to 0.1 m of water, on average 0.3 m, and the middle takes the mean. */
    @Test
    void headActsByItsMeanInTheMiddle() {
        double even = PanelBending.of(PANEL, pressure(1000 * 9.80665 * 0.3))
                .response()
                .deflection(0.3, 0.2);
        PanelResponse upright = head(0.5, PanelLoad.Upright.WIDTH);
        assertThat(upright.deflection(0.3, 0.2)).isCloseTo(even, withinPercentage(0.05));
        assertThat(upright.mostDeflected().y()).isBetween(0.15, 0.199);
        assertThat(upright.mostDeflected().x()).isCloseTo(0.3, offset(0.001));
        assertThat(head(0.6, PanelLoad.Upright.LENGTH).mostDeflected().x()).isBetween(0.2, 0.299);
    }

    private static PanelResponse head(double head, PanelLoad.Upright upright) {
        return PanelBending.of(PANEL, List.of(new PanelLoad.Head(head, 1000, upright)))
                .response();
    }

    /** Water that covers a part presses with ½ ρ g head² on each metre of the edge; nothing above it. */
    @Test
    void headStopsAtTheWaterLine() {
        Basis basis = Basis.of(
                Panel.of(LAMINATE, 0.6, 0.4, new Edges(Edge.FREE, Edge.FREE, Edge.FREE, Edge.CLAMPED)),
                Kinematics.FIRST_ORDER,
                new Orders(4, 6),
                false);
        Section section = new Section(LAMINATE, TransverseShearStiffness.of(LAMINATE));
        double[] work = LoadVector.of(basis, section, List.of(new PanelLoad.Head(0.1, 1000, PanelLoad.Upright.WIDTH)));
        for (int i = 0; i < work.length; i++) {
            Basis.Unknown u = basis.unknown(i);
            if (u.field() == Field.W && u.x() == Shapes.ONE && u.y() == Shapes.AT_START) {
                double force = 1000 * 9.80665 * 0.1 * 0.1 / 2 * 0.6;
                double byShape = force * (1 - 0.1 / 3 / 0.4);
                assertThat(work[i]).isCloseTo(byShape, withinPercentage(1e-9));
                return;
            }
        }
        throw new AssertionError("no such function");
    }

    /** ε = A⁻¹ N and no bending where bending does not couple; where it does, the panel bows. */
    @Test
    void forcesInThePlaneStrainThePanelEvenly() {
        PanelLoad.EdgeForces forces = new PanelLoad.EdgeForces(1000, -500, 200);
        PanelPoint point = PanelBending.of(PANEL, List.of(forces)).response().at(0.1, 0.3);
        assertThat(point.resultants().force().x()).isCloseTo(1000, withinPercentage(1e-9));
        assertThat(point.resultants().force().y()).isCloseTo(-500, withinPercentage(1e-9));
        assertThat(point.resultants().force().xy()).isCloseTo(200, withinPercentage(1e-9));
        assertThat(point.deflection()).isZero();
    }

    /** A strip of [0/90], supported at its ends and pulled, bows as the free laminate does: w = κ x (L − x)/2. */
    @Test
    void pullOnAnUnsymmetricStripBowsIt() {
        Laminate laminate = Panels.plies(Lamina.of(40e9, 10e9, 4e9, 0), 0.001, 0, 90);
        Edges ends = new Edges(Edge.SIMPLY_SUPPORTED, Edge.SIMPLY_SUPPORTED, Edge.FREE, Edge.FREE);
        double w = PanelBending.of(Panel.of(laminate, 0.4, 0.1, ends), List.of(new PanelLoad.EdgeForces(100, 0, 0)))
                .response()
                .deflection(0.2, 0.05);
        double curvature = laminate.deformationUnder(new Resultants(new Vector3(100, 0, 0), Vector3.ZERO))
                .curvature()
                .x();
        assertThat(w).isCloseTo(curvature * 0.2 * 0.2 / 2, withinPercentage(0.1));
    }

    @Test
    void noLoadGivesNoDeflection() {
        PanelBending rest = PanelBending.of(PANEL, List.of());
        assertThat(rest.deflection()).isZero();
        assertThat(rest.bendingDeflection()).isZero();
        assertThat(rest.response().convergence().reached()).isTrue();
        assertThat(LargeDeflection.of(PANEL, List.of()).deflection()).isZero();
    }

    @Test
    void candidatesTakeInEdgesMiddlesAndCentre() {
        List<PanelPoint> points = PanelBending.of(PANEL, pressure(1)).response().candidates();
        assertThat(points).hasSize(17 * 17 + 1);
        assertThat(points).anyMatch(p -> p.x() == 0.3 && p.y() == 0);
        assertThat(points).anyMatch(p -> p.x() == 0.6 && p.y() == 0.2);
        assertThat(points).anyMatch(p -> p.x() == 0.3 && p.y() == 0.2);
        double most = points.stream().mapToDouble(PanelPoint::deflection).max().orElseThrow();
        assertThat(most).isEqualTo(points.get(0).deflection());
    }

    @Test
    void navierRefusesWhatItCannotSolve() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Navier.sinusoidal(Panels.twisting(), 1, 1, 1, Optional.empty()))
                .withMessageContaining("16, 26 and 45");
    }

    @Test
    void spanIsTheShorterSide() {
        assertThat(PANEL.span()).isEqualTo(0.4);
        assertThat(Panel.of(LAMINATE, 0.3, 0.4, Panels.CLAMPED).span()).isEqualTo(0.3);
        assertThat(PANEL.with(Panels.SIMPLE).edges()).isEqualTo(Panels.SIMPLE);
        assertThat(PANEL.with(InPlane.HELD).inPlane()).isEqualTo(InPlane.HELD);
    }
}
