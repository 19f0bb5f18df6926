package laminate.theory.panel;

import static laminate.theory.panel.Panels.pressure;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.Ply;
import laminate.theory.TransverseShearStiffness;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for every panel. */
class PanelPropertiesTest {
    /** Solutions that are the same in mathematics differ by rounding only. */
    private static final double ROUNDING = 1e-5;

    private static final Edge[] KINDS = Edge.values();

    /** Seeded random panels: any laminate, any edges that hold it. */
    static Stream<Panel> panels() {
        return IntStream.range(0, 12).mapToObj(i -> panel(new Random(300 + i)));
    }

    private static Panel panel(Random random) {
        Laminate laminate = random.nextInt(4) == 0 ? Panels.sandwich() : Panels.random(random);
        Edges edges =
                new Edges(KINDS[random.nextInt(4)], KINDS[random.nextInt(4)], KINDS[random.nextInt(4)], Edge.CLAMPED);
        InPlane inPlane = random.nextBoolean() ? InPlane.HELD : InPlane.FREE_TO_PULL_IN;
        return new Panel(laminate, 0.3 + 0.5 * random.nextDouble(), 0.4, edges, inPlane);
    }

    private static final List<PanelLoad> LOADS = List.of(
            new PanelLoad.Uniform(2000),
            new PanelLoad.Head(0.3, 1000, PanelLoad.Upright.WIDTH),
            new PanelLoad.Patch(0.1, 0.25, 0.1, 0.2, 50));

    /** At one order: what is compared holds at each. */
    private static PanelState state(Panel panel, List<PanelLoad> loads) {
        Section section = section(panel);
        return Ritz.solve(
                Basis.of(panel, Kinematics.FIRST_ORDER, new Orders(7, 7), section.isCoupled()), section, loads);
    }

    private static Section section(Panel panel) {
        return new Section(panel.laminate(), TransverseShearStiffness.of(panel.laminate()));
    }

    @ParameterizedTest
    @MethodSource("panels")
    void turningThePanelByAQuarterTurnsTheAnswer(Panel panel) {
        List<Ply> turned = panel.laminate().plies().stream()
                .map(p -> new Ply(p.lamina(), p.thickness(), 90 - p.angleDegrees()))
                .toList();
        Edges e = panel.edges();
        Panel other = new Panel(
                Laminate.of(turned),
                panel.width(),
                panel.length(),
                new Edges(e.yStart(), e.yEnd(), e.xStart(), e.xEnd()),
                panel.inPlane());
        PanelState one = state(panel, List.of(new PanelLoad.Patch(0.1, 0.25, 0.1, 0.2, 50)));
        PanelState two = state(other, List.of(new PanelLoad.Patch(0.25, 0.1, 0.2, 0.1, 50)));
        assertThat(two.deflection(0.22, 0.13)).isCloseTo(one.deflection(0.13, 0.22), withinPercentage(ROUNDING));
        double[] a = section(panel).times(one.strain(one.fields(0.13, 0.22)));
        double[] b = section(other).times(two.strain(two.fields(0.22, 0.13)));
        double scale = Math.abs(a[3]) + Math.abs(a[4]) + Math.abs(a[5]);
        assertThat(new double[] {b[4], b[3], b[5]})
                .containsExactly(new double[] {a[3], a[4], a[5]}, offset(1e-6 * scale));
    }

    @ParameterizedTest
    @MethodSource("panels")
    void mirroringThePanelMirrorsTheAnswer(Panel panel) {
        List<Ply> mirrored = panel.laminate().plies().stream()
                .map(p -> new Ply(p.lamina(), p.thickness(), -p.angleDegrees()))
                .toList();
        Edges e = panel.edges();
        Panel other = new Panel(
                Laminate.of(mirrored),
                panel.length(),
                panel.width(),
                new Edges(e.xEnd(), e.xStart(), e.yStart(), e.yEnd()),
                panel.inPlane());
        double one = state(panel, List.of(new PanelLoad.Patch(0.1, 0.25, 0.1, 0.2, 50)))
                .deflection(0.13, 0.22);
        PanelState two = state(other, List.of(new PanelLoad.Patch(panel.length() - 0.1, 0.25, 0.1, 0.2, 50)));
        assertThat(two.deflection(panel.length() - 0.13, 0.22)).isCloseTo(one, withinPercentage(ROUNDING));
    }

    /** Turned over, the mould face is inside, and the panel deflects the same. */
    @ParameterizedTest
    @MethodSource("panels")
    void turningThePanelOverKeepsTheDeflection(Panel panel) {
        List<Ply> reversed = new ArrayList<>(panel.laminate().plies());
        Collections.reverse(reversed);
        Panel other = new Panel(Laminate.of(reversed), panel.length(), panel.width(), panel.edges(), panel.inPlane());
        double one = state(panel, LOADS).deflection(0.13, 0.22);
        assertThat(state(other, LOADS).deflection(0.13, 0.22)).isCloseTo(one, withinPercentage(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("panels")
    void splittingAPlyChangesNothing(Panel panel) {
        List<Ply> split = new ArrayList<>();
        for (Ply p : panel.laminate().plies()) {
            split.add(new Ply(p.lamina(), p.thickness() / 4, p.angleDegrees()));
            split.add(new Ply(p.lamina(), p.thickness() * 3 / 4, p.angleDegrees()));
        }
        Panel other = new Panel(Laminate.of(split), panel.length(), panel.width(), panel.edges(), panel.inPlane());
        double one = state(panel, LOADS).deflection(0.13, 0.22);
        assertThat(state(other, LOADS).deflection(0.13, 0.22)).isCloseTo(one, withinPercentage(ROUNDING));
    }

    /** All lengths by k, the same pressure: deflection by k, moments by k². */
    @ParameterizedTest
    @MethodSource("panels")
    void scalingAllLengthsScalesTheDeflection(Panel panel) {
        double k = 3;
        List<Ply> larger = panel.laminate().plies().stream()
                .map(p -> new Ply(p.lamina(), k * p.thickness(), p.angleDegrees()))
                .toList();
        Panel other =
                new Panel(Laminate.of(larger), k * panel.length(), k * panel.width(), panel.edges(), panel.inPlane());
        PanelState one = state(panel, pressure(2000));
        PanelState two = state(other, pressure(2000));
        assertThat(two.deflection(0.39, 0.66)).isCloseTo(k * one.deflection(0.13, 0.22), withinPercentage(ROUNDING));
        double mx = section(panel).times(one.strain(one.fields(0.13, 0.22)))[3];
        double large = section(other).times(two.strain(two.fields(0.39, 0.66)))[3];
        assertThat(large).isCloseTo(k * k * mx, offset(1e-6 * Math.abs(k * k * mx) + 1e-6));
    }

    @ParameterizedTest
    @MethodSource("panels")
    void twoPatchesDoEqualWorkOnEachOther(Panel panel) {
        List<PanelLoad> one = List.of(new PanelLoad.Patch(0.1, 0.25, 0.1, 0.2, 50));
        List<PanelLoad> two = List.of(new PanelLoad.Patch(0.2, 0.1, 0.05, 0.1, 30));
        double oneOnTwo = work(state(panel, one), two, panel);
        assertThat(work(state(panel, two), one, panel)).isCloseTo(oneOnTwo, withinPercentage(ROUNDING));
    }

    private static double work(PanelState state, List<PanelLoad> loads, Panel panel) {
        double[] load = LoadVector.of(state.basis(), section(panel), loads);
        return IntStream.range(0, load.length)
                .mapToDouble(i -> load[i] * state.factors()[i])
                .sum();
    }

    @ParameterizedTest
    @MethodSource("panels")
    void loadsAddUp(Panel panel) {
        double together = state(panel, LOADS).deflection(0.13, 0.22);
        double apart = LOADS.stream()
                .mapToDouble(load -> state(panel, List.of(load)).deflection(0.13, 0.22))
                .sum();
        assertThat(apart).isCloseTo(together, withinPercentage(ROUNDING));
    }

    /** Half the work of the load is stored; a higher order stores more (Ritz from below). */
    @ParameterizedTest
    @MethodSource("panels")
    void energyBalances(Panel panel) {
        PanelResponse response = PanelBending.of(panel, LOADS).response();
        assertThat(response.strainEnergy()).isCloseTo(response.virtualWork(LOADS) / 2, withinPercentage(ROUNDING));
        assertThat(work(state(panel, LOADS), LOADS, panel))
                .isLessThanOrEqualTo(response.virtualWork(LOADS) * (1 + 1e-9));
    }

    /** A ply next to nothing stiff shifts the mid-plane, so that B appears, and nothing else. */
    @Test
    void shiftedMidPlaneChangesNothing() {
        Laminate solid = Panels.plies(Panels.ROVING, 0.001, 0, 90, 90, 0);
        List<Ply> padded = new ArrayList<>(solid.plies());
        padded.add(new Ply(Lamina.isotropic(1e3, 0.3), 0.003, 0));
        Laminate shifted = Laminate.of(padded);
        assertThat(shifted.isCoupled()).isTrue();
        TransverseShearStiffness shear = TransverseShearStiffness.of(solid);
        for (Edges edges : List.of(Panels.SIMPLE, Panels.CLAMPED)) {
            PanelBending one = PanelBending.of(Panel.of(solid, 0.5, 0.4, edges), LOADS, shear);
            PanelBending two = PanelBending.of(Panel.of(shifted, 0.5, 0.4, edges), LOADS, shear);
            assertThat(two.deflection()).isCloseTo(one.deflection(), withinPercentage(0.02));
            assertThat(two.bendingDeflection()).isCloseTo(one.bendingDeflection(), withinPercentage(0.02));
        }
    }

    /** B of [0/90] counts: the panel is the same as by Navier's series, and softer than its D alone. */
    @Test
    void unsymmetricCrossPlyIsAsByNavier() {
        Laminate laminate = Panels.plies(Panels.ROVING, 0.002, 0, 90);
        PanelResponse ours = PanelBending.of(Panel.of(laminate, 0.5, 0.4, Panels.SIMPLE), pressure(1000))
                .response();
        Optional<TransverseShearStiffness> shear = Optional.of(TransverseShearStiffness.of(laminate));
        Navier series = Navier.uniform(laminate, 0.5, 0.4, 1000, 61, shear);
        for (double[] place : new double[][] {{0.25, 0.2}, {0.1, 0.3}}) {
            PanelPoint a = ours.at(place[0], place[1]);
            PanelPoint b = series.at(place[0], place[1]);
            assertThat(a.deflection()).isCloseTo(b.deflection(), withinPercentage(0.02));
            assertThat(a.resultants().moment().x())
                    .isCloseTo(b.resultants().moment().x(), withinPercentage(0.5));
            assertThat(a.resultants().moment().xy())
                    .isCloseTo(b.resultants().moment().xy(), offset(0.05));
            assertThat(a.deformation().strain().x())
                    .isCloseTo(b.deformation().strain().x(), withinPercentage(0.5));
            assertThat(a.Qy()).isCloseTo(b.Qy(), offset(1.5));
        }
    }

    @Test
    void heldEdgesStiffenAnUnsymmetricLaminate() {
        Panel free = Panel.of(Panels.plies(Panels.ROVING, 0.002, 0, 90), 0.5, 0.4, Panels.SIMPLE);
        double held = PanelBending.of(free.with(InPlane.HELD), pressure(1)).deflection();
        assertThat(held).isLessThan(0.95 * PanelBending.of(free, pressure(1)).deflection());
    }

    /** Thin limit: shear deflection falls with the square of the thickness ratio. */
    @Test
    void shearPartVanishesWithThickness() {
        double thick = shearShare(0.04);
        double thin = shearShare(0.004);
        assertThat(thick / thin).isCloseTo(100, withinPercentage(2));
        assertThat(thin).isLessThan(1e-3);
    }

    private static double shearShare(double thickness) {
        Panel panel = Panel.of(Panels.isotropic(1e10, 0.3, thickness), 0.4, 0.4, Panels.SIMPLE);
        PanelBending bending = PanelBending.of(panel, pressure(1));
        return bending.shearDeflection() / bending.bendingDeflection();
    }

    /** The shear forces on a line across balance the load between it and the free edge: mean Qx of a cantilever. */
    @Test
    void shearForcesBalanceTheLoad() {
        Edges edges = new Edges(Edge.CLAMPED, Edge.FREE, Edge.FREE, Edge.FREE);
        PanelResponse r = PanelBending.of(Panel.of(Panels.twisting(), 0.5, 0.3, edges), pressure(1000))
                .response();
        Gauss line = Gauss.on(0, 0.3, 12);
        double sum = 0;
        for (int k = 0; k < line.size(); k++) {
            sum += line.weight(k) * r.at(0.25, line.point(k)).Qx();
        }
        assertThat(sum).isCloseTo(1000 * 0.25 * 0.3, withinPercentage(2));
    }

    /** Positive pressure on the mould face bends the panel towards +z, so that the inner face is stretched. */
    @Test
    void signsAreThoseOfTheHouse() {
        PanelResponse r = PanelBending.of(Panel.of(Panels.sandwich(), 0.5, 0.4, Panels.CLAMPED), pressure(1000))
                .response();
        PanelPoint middle = r.mostDeflected();
        assertThat(middle.deflection()).isPositive();
        assertThat(middle.deformation().curvature().y()).isPositive();
        assertThat(middle.resultants().moment().y()).isPositive();
        assertThat(r.at(0.25, 0).resultants().moment().y()).isNegative();
        assertThat(r.at(0.25, 0).Qy()).isPositive();
        assertThat(r.at(0, 0.2).Qx()).isPositive();
        assertThat(r.at(0.1, 0.1).deformation().curvature().xy()).isNegative();
    }

    /** On a thick panel both have settled, where moments and twist vary both ways. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.1", "0.13, 0.3", "0.4, 0.07"})
    void shearForceByStrainIsThatByEquilibrium(double x, double y) {
        Laminate laminate = Panels.plies(Panels.ROVING, 0.02, 0, 45, 0);
        Panel panel = Panel.of(laminate, 0.5, 0.4, Panels.CLAMPED);
        Basis basis = Basis.of(panel, Kinematics.FIRST_ORDER, new Orders(14, 14), false);
        PanelState state = Ritz.solve(basis, section(panel), pressure(1000));
        double[][][] fields = state.fields(x, y);
        double[] byStrain = ShearMethod.STRAIN.shear(state, section(panel), fields);
        double[] byEquilibrium = ShearMethod.EQUILIBRIUM.shear(state, section(panel), fields);
        assertThat(byEquilibrium).containsExactly(byStrain, offset(1.5));
    }

    @Test
    void longerSideHasTheHigherOrder() {
        assertThat(Orders.of(8, Panel.of(Panels.sandwich(), 1.2, 0.4, Panels.SIMPLE)))
                .isEqualTo(new Orders(11, 8));
        assertThat(Orders.of(8, Panel.of(Panels.sandwich(), 0.4, 1.2, Panels.SIMPLE)))
                .isEqualTo(new Orders(8, 11));
        assertThat(Orders.of(8, Panel.of(Panels.sandwich(), 40, 0.4, Panels.SIMPLE)))
                .isEqualTo(new Orders(24, 8));
    }
}
