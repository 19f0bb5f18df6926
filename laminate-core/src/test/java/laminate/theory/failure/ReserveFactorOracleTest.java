package laminate.theory.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.PlyStrength;
import laminate.theory.ShearStress;
import laminate.theory.Vector3;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Reserve factors by another road: the formulas written out once more from the books, and the first point at which they
 * reach 1 found by a scan and the root finder of a general-purpose library.
 */
class ReserveFactorOracleTest {
    private static final int PATHS = 400;
    private static final double TOLERANCE = 1e-9;

    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "TSAI_HILL", "TSAI_WU", "HASHIN"})
    void ofPlies(Criterion criterion) {
        Random random = new Random(11);
        for (int i = 0; i < PATHS; i++) {
            Lamina lamina = RandomStrength.ply(random);
            PlyStrength s = (PlyStrength) lamina.strength().orElseThrow();
            StressPath path = StressPath.of(
                    scaled(random, s.Xt(), s.Yt(), s.S()),
                    scaled(random, s.Xt(), s.Yt(), s.S()).times(0.4));
            compare(criterion, lamina, path, stress -> index(criterion, lamina, s, stress));
        }
    }

    private static Vector3 scaled(Random random, double x, double y, double xy) {
        return new Vector3(
                x * random.nextGaussian(),
                random.nextInt(5) == 0 ? 0 : y * random.nextGaussian(),
                random.nextInt(5) == 0 ? 0 : xy * random.nextGaussian());
    }

    private static double index(Criterion criterion, Lamina m, PlyStrength s, StressState state) {
        double s1 = state.inPlane().x();
        double s2 = state.inPlane().y();
        double t = state.inPlane().xy();
        double X = s1 >= 0 ? s.Xt() : s.Xc();
        double Y = s2 >= 0 ? s.Yt() : s.Yc();
        return switch (criterion) {
            case MAX_STRESS -> max(Math.abs(s1) / X, Math.abs(s2) / Y, Math.abs(t) / s.S());
            case MAX_STRAIN -> {
                double e1 = (s1 - m.nu12() * s2) / m.E1();
                double e2 = (s2 - m.nu21() * s1) / m.E2();
                yield max(
                        e1 >= 0 ? e1 * m.E1() / s.Xt() : -e1 * m.E1() / s.Xc(),
                        e2 >= 0 ? e2 * m.E2() / s.Yt() : -e2 * m.E2() / s.Yc(),
                        Math.abs(t) / s.S());
            }
            case TSAI_HILL -> square(s1 / X) - s1 * s2 / X / X + square(s2 / Y) + square(t / s.S());
            case TSAI_WU ->
                s1 * (1 / s.Xt() - 1 / s.Xc())
                        + s2 * (1 / s.Yt() - 1 / s.Yc())
                        + s1 * s1 / s.Xt() / s.Xc()
                        + s2 * s2 / s.Yt() / s.Yc()
                        + square(t / s.S())
                        - s1 * s2 / Math.sqrt(s.Xt() * s.Xc() * s.Yt() * s.Yc());
            default -> {
                double twice = 2 * s.S23().orElse(s.Yc() / 2);
                double fibre = s1 >= 0 ? square(s1 / s.Xt()) + square(t / s.S()) : square(s1 / s.Xc());
                double matrix = s2 >= 0
                        ? square(s2 / s.Yt()) + square(t / s.S())
                        : square(s2 / twice) + (square(s.Yc() / twice) - 1) * s2 / s.Yc() + square(t / s.S());
                yield Math.max(fibre, matrix);
            }
        };
    }

    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "ISOTROPIC"})
    void ofMats(Criterion criterion) {
        Random random = new Random(12);
        for (int i = 0; i < PATHS; i++) {
            Lamina lamina = RandomStrength.mat(random);
            MatStrength s = (MatStrength) lamina.strength().orElseThrow();
            Vector3 growing = i % 10 == 0
                    ? new Vector3(1e7, 1e7, 0).times(random.nextGaussian())
                    : RandomStrength.vector(random, s.tension());
            StressPath path = StressPath.of(growing, RandomStrength.vector(random, 0.3 * s.tension()));
            compare(criterion, lamina, path, stress -> index(criterion, lamina.nu12(), s, stress.inPlane()));
        }
    }

    /** Principal stresses from Mohr's angle; the isotropic form by its tensor coefficients. */
    private static double index(Criterion criterion, double nu, MatStrength s, Vector3 v) {
        double angle = Math.atan2(2 * v.xy(), v.x() - v.y()) / 2;
        double c = Math.cos(angle);
        double n = Math.sin(angle);
        double one = v.x() * c * c + v.y() * n * n + 2 * v.xy() * n * c;
        double two = v.x() * n * n + v.y() * c * c - 2 * v.xy() * n * c;
        double shear = (one - two) / 2 / s.shear();
        if (criterion == Criterion.MAX_STRESS) {
            return max(one / s.tension(), -two / s.compression(), shear);
        }
        if (criterion == Criterion.MAX_STRAIN) {
            return max((one - nu * two) / s.tension(), (nu * one - two) / s.compression(), shear);
        }
        double F1 = 1 / s.tension() - 1 / s.compression();
        double F11 = 1 / (s.tension() * s.compression());
        double F66 = 1 / (s.shear() * s.shear());
        double F12 = F11 - F66 / 2;
        return F1 * (v.x() + v.y())
                + F11 * (v.x() * v.x() + v.y() * v.y())
                + 2 * F12 * v.x() * v.y()
                + F66 * v.xy() * v.xy();
    }

    @ParameterizedTest
    @EnumSource(names = {"CORE_SHEAR", "CRUSHING"})
    void ofCores(Criterion criterion) {
        Random random = new Random(13);
        for (int i = 0; i < PATHS; i++) {
            Lamina lamina = RandomStrength.core(random);
            CoreStrength s = (CoreStrength) lamina.strength().orElseThrow();
            double quadratic = 1e6 * random.nextGaussian();
            StressPath path = new StressPath(state(random, 0.4e6), state(random, 1e6), quadratic);
            compare(
                    criterion,
                    lamina,
                    path,
                    stress -> criterion == Criterion.CRUSHING
                            ? -stress.normal() / s.compression()
                            : square(stress.across().xz() / s.shear13())
                                    + square(stress.across().yz() / s.shear23()));
        }
    }

    private static StressState state(Random random, double size) {
        Vector3 v = RandomStrength.vector(random, size);
        return new StressState(Vector3.ZERO, new ShearStress(v.x(), v.y()), v.xy());
    }

    private static void compare(
            Criterion criterion, Lamina lamina, StressPath path, ToDoubleFunction<StressState> index) {
        Optional<ReserveFactor> actual = criterion.reserve(lamina, path);
        double expected = firstReached(R -> index.applyAsDouble(path.at(R)));
        if (Double.isNaN(expected)) {
            assertThat(actual).as("%s of %s", criterion, path).isEmpty();
        } else {
            assertThat(actual).as("%s of %s", criterion, path).isPresent();
            assertThat(actual.get().value())
                    .as("%s of %s", criterion, path)
                    .isCloseTo(expected, within(TOLERANCE * Math.max(1, expected)));
            assertThat(actual.get().criterion()).isEqualTo(criterion);
            assertThat(criterion.index(lamina, path.at(0.37)).orElseThrow())
                    .isCloseTo(index.applyAsDouble(path.at(0.37)), within(1e-9));
        }
    }

    /** Scans in small steps, then polishes; not a number if the index stays below 1. */
    private static double firstReached(DoubleUnaryOperator index) {
        if (index.applyAsDouble(0) >= 1) {
            return 0;
        }
        double low = 0;
        for (double high = 0.001; high < 1e5; high += Math.max(0.001, high * 0.001)) {
            if (index.applyAsDouble(high) >= 1) {
                UnivariateFunction rest = R -> index.applyAsDouble(R) - 1;
                return new BracketingNthOrderBrentSolver(1e-14, 1e-14, 5).solve(1000, rest, low, high);
            }
            low = high;
        }
        return Double.NaN;
    }

    private static double max(double a, double b, double c) {
        return Math.max(a, Math.max(b, c));
    }

    private static double square(double x) {
        return x * x;
    }
}
