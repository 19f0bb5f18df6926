package laminate.theory.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import org.junit.jupiter.api.Test;

/** Failure surfaces against single analyses, and against an ellipse known by hand. */
class FailureSurfaceTest {
    private static final PlyStrength STRENGTH = PlyStrength.of(1000e6, 700e6, 40e6, 140e6, 70e6);
    private static final Lamina PLY =
            Lamina.of(45e9, 12e9, 5e9, 0.28).withExpansion(8e-6, 26e-6).withStrength(STRENGTH);
    private static final Laminate ONE = Laminate.of(List.of(new Ply(PLY, 0.002, 0)));

    /** Each point, given as a load, has a reserve factor of 1 beside the constant load. */
    @Test
    void everyPointIsOnTheCriterion() {
        Term[][] pairs = {{Term.NX, Term.NY}, {Term.NXY, Term.MX}, {Term.MX, Term.MXY}, {Term.EPS_X, Term.KAPPA_Y}};
        for (int i = 0; i < 12; i++) {
            Random random = new Random(500 + i);
            Laminate laminate = RandomStrength.laminate(random, i % 2 == 0);
            Term[] pair = pairs[i % pairs.length];
            LaminateLoad constant = LaminateLoad.NONE.withTemperatureChange(-5).with(Term.MY, 0.1);
            constant = pair[1] == Term.KAPPA_Y ? LaminateLoad.NONE.withTemperatureChange(-5) : constant;
            FailureSurface surface = FailureSurface.trace(laminate, constant, pair[0], pair[1], Criterion.TSAI_WU, 24);
            assertThat(surface.points()).hasSize(24);
            LaminateLoad still = constant.with(pair[0], 0).with(pair[1], 0);
            for (SurfacePoint point : surface.points()) {
                LaminateLoad growing =
                        still.mechanical().times(0).with(pair[0], point.x()).with(pair[1], point.y());
                PlyReserve first = FailureAnalysis.of(laminate, still, growing)
                        .firstPly(Criterion.TSAI_WU)
                        .orElseThrow();
                assertThat(first.factor()).isCloseTo(1, within(1e-6));
            }
        }
    }

    /** Crushing grows with the square of the load: the two terms do not just add up. */
    @Test
    void crushingUnderTwoMomentsIsOnTheCriterion() {
        Laminate sandwich = RandomStrength.laminate(new Random(9), true);
        FailureSurface surface =
                FailureSurface.trace(sandwich, LaminateLoad.NONE, Term.MX, Term.MY, Criterion.CRUSHING, 24);
        assertThat(surface.points()).isNotEmpty();
        for (SurfacePoint point : surface.points()) {
            LaminateLoad load = LaminateLoad.NONE.with(Term.MX, point.x()).with(Term.MY, point.y());
            assertThat(FailureAnalysis.of(sandwich, load)
                            .firstPly(Criterion.CRUSHING)
                            .orElseThrow()
                            .factor())
                    .isCloseTo(1, within(1e-9));
        }
    }

    /** One 0° ply of 2 mm under Nx, Ny by maximum stress: a rectangle of strengths times thickness. */
    @Test
    void maximumStressOfOnePlyIsARectangle() {
        FailureSurface surface =
                FailureSurface.trace(ONE, LaminateLoad.NONE, Term.NX, Term.NY, Criterion.MAX_STRESS, 360);
        assertThat(surface.xTerm()).isEqualTo(Term.NX);
        assertThat(surface.yTerm()).isEqualTo(Term.NY);
        assertThat(surface.points().get(0).x()).isCloseTo(2e6, within(1e-3));
        assertThat(surface.points().get(90).y()).isCloseTo(0.08e6, within(1e-3));
        assertThat(surface.points().get(180).x()).isCloseTo(-1.4e6, within(1e-3));
        assertThat(surface.points().get(270).y()).isCloseTo(-0.28e6, within(1e-3));
        assertThat(surface.points().get(45).failure().reserve().mode()).isIn(Mode.TENSION_1, Mode.TENSION_2);
        assertThat(surface.points()).allMatch(p -> p.x() <= 2e6 + 1 && p.y() <= 0.08e6 + 1);
    }

    @Test
    void aConstantLoadThatFailsAloneLeavesNoSurface() {
        Laminate cross = Laminate.of(List.of(new Ply(PLY, 0.001, 0), new Ply(PLY, 0.001, 90), new Ply(PLY, 0.001, 0)));
        LaminateLoad cold = LaminateLoad.NONE.withTemperatureChange(-1000);
        assertThat(FailureSurface.trace(cross, cold, Term.NX, Term.NY, Criterion.HASHIN, 36)
                        .points())
                .isEmpty();
        LaminateLoad cool = LaminateLoad.NONE.withTemperatureChange(-30);
        double colder = FailureSurface.trace(cross, cool, Term.NX, Term.NY, Criterion.HASHIN, 1)
                .points()
                .get(0)
                .x();
        double warm = FailureSurface.trace(cross, LaminateLoad.NONE, Term.NX, Term.NY, Criterion.HASHIN, 1)
                .points()
                .get(0)
                .x();
        assertThat(colder).isLessThan(0.95 * warm);
    }

    @Test
    void withoutStrengthThereIsNoSurface() {
        Laminate weak = Laminate.of(List.of(new Ply(Lamina.isotropic(3e9, 0.3), 0.001, 0)));
        assertThat(FailureSurface.trace(weak, LaminateLoad.NONE, Term.NX, Term.NY, Criterion.HASHIN, 36)
                        .points())
                .isEmpty();
    }

    /** A finer surface holds the points of a coarser one. */
    @Test
    void anyResolutionGivesTheSameSurface() {
        Laminate laminate = RandomStrength.laminate(new Random(3), true);
        List<SurfacePoint> fine = FailureSurface.trace(
                        laminate, LaminateLoad.NONE, Term.NX, Term.NY, Criterion.TSAI_WU, 10_000)
                .points();
        List<SurfacePoint> coarse = FailureSurface.trace(
                        laminate, LaminateLoad.NONE, Term.NX, Term.NY, Criterion.TSAI_WU, 100)
                .points();
        assertThat(fine).hasSize(10_000);
        for (int i = 0; i < coarse.size(); i++) {
            assertThat(fine.get(100 * i).x()).isCloseTo(coarse.get(i).x(), within(1e-3));
            assertThat(fine.get(100 * i).y()).isCloseTo(coarse.get(i).y(), within(1e-3));
        }
    }
}
