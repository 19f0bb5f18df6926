package laminate.theory.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.theory.Angle;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateResponse;
import laminate.theory.Ply;
import laminate.theory.PlyPoint;
import laminate.theory.Resultants;
import laminate.theory.Vector3;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What any right failure analysis must obey, on random laminates with plies, mats and cores. */
class FailurePropertiesTest {
    private static final int CASES = 60;
    private static final double TOLERANCE = 1e-7;

    /** A laminate with a load of forces, moments, shear and cooling that is well below failure by cooling alone. */
    private record Loaded(Laminate laminate, Vector3 force, Vector3 moment, double Qx, double Qy, double change) {
        LaminateLoad load() {
            return LaminateLoad.of(new Resultants(force, moment))
                    .withShear(Qx, Qy)
                    .withTemperatureChange(change)
                    .withMoisture(-change * 1e-5);
        }

        double factor(Criterion criterion) {
            return first(criterion).factor();
        }

        PlyReserve first(Criterion criterion) {
            return FailureAnalysis.of(laminate, load()).firstPly(criterion).orElseThrow();
        }
    }

    private static Stream<Loaded> cases() {
        return IntStream.range(0, CASES).mapToObj(i -> {
            Random random = new Random(100 + i);
            Laminate laminate = RandomStrength.laminate(random, i % 3 == 0);
            double h = laminate.thickness();
            Vector3 force = RandomStrength.vector(random, 2e6 * h);
            Vector3 moment = RandomStrength.vector(random, 2e6 * h * h / 6);
            double shear = 2e4 * h;
            return new Loaded(
                    laminate,
                    force,
                    moment,
                    shear * random.nextGaussian(),
                    shear * random.nextGaussian(),
                    -10 * random.nextDouble());
        });
    }

    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "TSAI_HILL", "TSAI_WU", "HASHIN"})
    void turnedWithItsLoadNothingChanges(Criterion criterion) {
        cases().forEach(c -> {
            Loaded unsheared = new Loaded(c.laminate, c.force, c.moment, 0, 0, c.change);
            Angle turn = Angle.ofDegrees(37);
            Loaded turned = new Loaded(
                    turned(c.laminate, 37), turn.stressFromPly(c.force), turn.stressFromPly(c.moment), 0, 0, c.change);
            same(turned.factor(criterion), unsheared.factor(criterion));
        });
    }

    /** With shear across the thickness, by quarter turns: Qx becomes Qy, Qy becomes −Qx. */
    @ParameterizedTest
    @EnumSource(names = {"TSAI_WU", "CORE_SHEAR", "CRUSHING"})
    void turnedByAQuarterNothingChangesWithShear(Criterion criterion) {
        Angle turn = Angle.ofDegrees(90);
        cases().forEach(c -> {
            Loaded turned = new Loaded(
                    turned(c.laminate, 90),
                    turn.stressFromPly(c.force),
                    turn.stressFromPly(c.moment),
                    -c.Qy,
                    c.Qx,
                    c.change);
            sameOrNone(c, turned, criterion);
        });
    }

    private static Laminate turned(Laminate laminate, double degrees) {
        return Laminate.of(laminate.plies().stream()
                .map(p -> new Ply(p.lamina(), p.thickness(), p.angleDegrees() + degrees))
                .toList());
    }

    /** Seen from the other face: the list of plies reversed, moments and shear forces with the other sign. */
    @ParameterizedTest
    @EnumSource
    void mirroredNothingChanges(Criterion criterion) {
        cases().forEach(c -> {
            List<Ply> plies = new ArrayList<>(c.laminate.plies());
            Collections.reverse(plies);
            Loaded mirrored = new Loaded(Laminate.of(plies), c.force, c.moment.times(-1), -c.Qx, -c.Qy, c.change);
            sameOrNone(c, mirrored, criterion);
            FailureAnalysis one = FailureAnalysis.of(c.laminate, c.load());
            FailureAnalysis other = FailureAnalysis.of(mirrored.laminate, mirrored.load());
            int last = plies.size() - 1;
            same(
                    one.reserve(0, PlyPoint.At.INNER_SIDE, criterion),
                    other.reserve(last, PlyPoint.At.MOULD_FACE_SIDE, criterion));
        });
    }

    private static void sameOrNone(Loaded one, Loaded other, Criterion criterion) {
        same(
                FailureAnalysis.of(one.laminate, one.load()).firstPly(criterion).map(PlyReserve::reserve),
                FailureAnalysis.of(other.laminate, other.load())
                        .firstPly(criterion)
                        .map(PlyReserve::reserve));
    }

    private static void same(Optional<ReserveFactor> one, Optional<ReserveFactor> other) {
        assertThat(one.isPresent()).isEqualTo(other.isPresent());
        one.ifPresent(r -> same(other.orElseThrow().value(), r.value()));
    }

    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "TSAI_HILL", "TSAI_WU", "HASHIN"})
    void fourTimesTheLoadHasAQuarterOfTheReserve(Criterion criterion) {
        cases().forEach(c -> {
            double expected = c.factor(criterion) / 4;
            same(
                    FailureAnalysis.of(c.laminate, c.load().times(4))
                            .firstPly(criterion)
                            .orElseThrow()
                            .factor(),
                    expected);
        });
    }

    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "TSAI_HILL", "TSAI_WU", "HASHIN"})
    void aPlySplitInTwoFailsAtTheSameLoad(Criterion criterion) {
        cases().forEach(c -> {
            List<Ply> plies = new ArrayList<>();
            for (Ply ply : c.laminate.plies()) {
                Ply half = new Ply(ply.lamina(), ply.thickness() / 2, ply.angleDegrees());
                plies.addAll(List.of(half, half));
            }
            Loaded split = new Loaded(Laminate.of(plies), c.force, c.moment, 0, 0, c.change);
            Loaded whole = new Loaded(c.laminate, c.force, c.moment, 0, 0, c.change);
            PlyReserve first = whole.first(criterion);
            if (first.reserve().criterion() != Criterion.CRUSHING && first.at() != PlyPoint.At.MIDDLE) {
                same(split.factor(criterion), first.factor());
            }
        });
    }

    /** Cooling left out of the load, the load multiplied, put in again: the index at the failing point is 1. */
    @ParameterizedTest
    @EnumSource
    void theReserveFactorTimesTheLoadLandsOnTheCriterion(Criterion criterion) {
        cases().forEach(c -> {
            LaminateLoad load = c.load();
            FailureAnalysis.of(c.laminate, load).firstPly(criterion).ifPresent(first -> {
                LaminateLoad failing = load.times(first.factor());
                PlyPoint point = c.laminate
                        .responseTo(failing)
                        .points()
                        .get(3 * first.ply() + first.at().ordinal());
                Criterion judge = first.reserve().criterion();
                double normal = normal(c.laminate, c.laminate.responseTo(failing), first.z());
                StressState stress = new StressState(point.plyStress(), point.plyShear(), normal);
                double index = judge.index(c.laminate.plies().get(first.ply()).lamina(), stress)
                        .orElseThrow();
                assertThat(index).as("%s", first).isCloseTo(1, within(1e-6));
                same(
                        FailureAnalysis.of(c.laminate, failing)
                                .firstPly(criterion)
                                .orElseThrow()
                                .factor(),
                        1);
            });
        });
    }

    /** σ3 = κ · (F − N/2), F being summed from the mould face over the linear stress of each ply. */
    private static double normal(Laminate laminate, LaminateResponse response, double z) {
        double[] heights = laminate.interfaces();
        Vector3 below = Vector3.ZERO;
        Vector3 all = Vector3.ZERO;
        for (int i = 0; i < heights.length - 1; i++) {
            Vector3 low = response.points().get(3 * i).stress();
            Vector3 high = response.points().get(3 * i + 2).stress();
            double t = heights[i + 1] - heights[i];
            double share = Math.min(1, Math.max(0, (z - heights[i]) / t));
            Vector3 there = low.plus(high.minus(low).times(share));
            below = below.plus(low.plus(there).times(share * t / 2));
            all = all.plus(low.plus(high).times(t / 2));
        }
        Vector3 pressing = below.minus(all.times(0.5));
        Vector3 curvature = response.deformation().curvature();
        return curvature.x() * pressing.x() + curvature.y() * pressing.y() + curvature.xy() * pressing.xy();
    }

    private static void same(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(TOLERANCE * expected));
    }
}
