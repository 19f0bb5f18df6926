package laminate.theory.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.MatStrength;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import laminate.theory.Resultants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Ply discount from the first ply to the last. */
class ProgressiveFailureTest {
    private static final Lamina PLY = Lamina.of(45e9, 12e9, 5e9, 0.28)
            .withTransverseShear(5e9, 4e9)
            .withExpansion(8e-6, 26e-6)
            .withStrength(PlyStrength.of(1000e6, 700e6, 40e6, 140e6, 70e6));
    private static final LaminateLoad PULL = LaminateLoad.NONE.with(Term.NX, 1e6);

    /**
     * The 90° plies crack, then the 0° plies split, held back across by the others, then their fibres break: 2 × 1 mm ×
     * Xt.
     */
    @Test
    void aCrossPlyCracksThenBreaks() {
        Laminate laminate = laminate(PLY, 0, 90, 90, 0);
        ProgressiveFailure failure = ProgressiveFailure.of(laminate, PULL, Criterion.HASHIN, PlyDiscount.BY_MODE);
        FailureStep crack = failure.steps().get(0);
        assertThat(crack.failed()).extracting(PlyReserve::ply).containsExactly(1, 2);
        assertThat(crack.failed()).extracting(f -> f.reserve().mode()).containsOnly(Mode.MATRIX_TENSION);
        assertThat(failure.firstPlyFactor()).hasValue(crack.loadFactor());
        FailureStep breaking = failure.steps().stream()
                .filter(s -> s.failed().get(0).reserve().mode() == Mode.TENSION_1)
                .findFirst()
                .orElseThrow();
        assertThat(breaking.failed()).extracting(PlyReserve::ply).containsExactly(0, 3);
        assertThat(breaking.loadFactor()).isCloseTo(2 * 0.001 * 1000e6 / 1e6, within(0.03));
        assertThat(failure.survivors()).isEmpty();
    }

    /** With nothing beside it to carry on, a ply that cracks across the load breaks at the same load. */
    @Test
    void aPlyAloneIsGoneWhenItCracks() {
        ProgressiveFailure failure =
                ProgressiveFailure.of(laminate(PLY, 90), PULL, Criterion.TSAI_WU, PlyDiscount.BY_MODE);
        assertThat(failure.steps()).hasSize(2);
        assertThat(failure.firstPlyFactor().orElseThrow()).isCloseTo(40e6 * 0.001 / 1e6, within(1e-12));
        assertThat(failure.lastPlyFactor().orElseThrow())
                .isCloseTo(failure.firstPlyFactor().orElseThrow(), within(1e-9));
        assertThat(failure.survivors()).isEmpty();
    }

    /** Strengths that differ by rounding fail together; by a ten-thousandth, one after the other. */
    @ParameterizedTest
    @CsvSource({"1e-8, 2", "1e-4, 1"})
    void pliesThatFailAtNearlyTheSameLoadGoTogether(double difference, int first) {
        Lamina other = PLY.withStrength(PlyStrength.of(1000e6 * (1 + difference), 700e6, 40e6, 140e6, 70e6));
        Laminate laminate = Laminate.of(List.of(new Ply(PLY, 0.001, 0), new Ply(other, 0.001, 0)));
        ProgressiveFailure failure = ProgressiveFailure.of(laminate, PULL, Criterion.MAX_STRESS, PlyDiscount.BY_MODE);
        assertThat(failure.steps().get(0).failed()).hasSize(first);
        assertThat(failure.survivors()).isEmpty();
    }

    @Test
    void aWholePlyGoesAtOnce() {
        ProgressiveFailure failure =
                ProgressiveFailure.of(laminate(PLY, 90), PULL, Criterion.TSAI_WU, PlyDiscount.WHOLE_PLY);
        assertThat(failure.steps()).hasSize(1);
        assertThat(failure.survivors()).isEmpty();
    }

    /** Shear alone breaks no fibre: the ply cracks, and with nothing beside it is gone at the same load. */
    @Test
    void shearCracksBeforeItBreaks() {
        ProgressiveFailure failure = ProgressiveFailure.of(
                laminate(PLY, 0), LaminateLoad.NONE.with(Term.NXY, 1e5), Criterion.HASHIN, PlyDiscount.BY_MODE);
        assertThat(failure.steps())
                .extracting(step -> step.failed().get(0).reserve().mode())
                .containsExactly(Mode.MATRIX_TENSION, Mode.SHEAR_12);
        assertThat(failure.lastPlyFactor().orElseThrow()).isCloseTo(70e6 * 0.001 / 1e5, within(1e-9));
    }

    @Test
    void coolingBringsTheFirstCrackForward() {
        Laminate laminate = laminate(PLY, 0, 90, 90, 0);
        LaminateLoad cooled = PULL.withTemperatureChange(-60);
        ProgressiveFailure with = ProgressiveFailure.of(laminate, cooled, Criterion.MAX_STRESS, PlyDiscount.BY_MODE);
        ProgressiveFailure without =
                ProgressiveFailure.of(laminate, cooled.mechanical(), Criterion.MAX_STRESS, PlyDiscount.BY_MODE);
        assertThat(with.firstPlyFactor().orElseThrow())
                .isLessThan(0.95 * without.firstPlyFactor().orElseThrow());
        ProgressiveFailure cracked = ProgressiveFailure.of(
                laminate, PULL.withTemperatureChange(-1000), Criterion.MAX_STRESS, PlyDiscount.BY_MODE);
        assertThat(cracked.firstPlyFactor()).hasValue(0);
        assertThat(cracked.lastPlyFactor().orElseThrow()).isPositive();
    }

    @Test
    void whatIsCrackedKeepsItsFibresWhatIsBrokenNothing() {
        Lamina cracked = PlyDiscount.BY_MODE.cracked(PLY);
        assertThat(cracked.E1()).isEqualTo(45e9);
        assertThat(cracked.E2()).isEqualTo(12e6);
        assertThat(cracked.G12()).isEqualTo(5e6);
        assertThat(cracked.nu12()).isCloseTo(0.00028, within(1e-15));
        assertThat(cracked.G13()).isEqualTo(5e6);
        assertThat(cracked.G23()).isEqualTo(4e6);
        assertThat(cracked.strength()).isEqualTo(PLY.strength());
        assertThat(cracked.thermalExpansion()).isEqualTo(PLY.thermalExpansion());
        assertThat(new PlyDiscount(0.1, false).broken(PLY)).isEqualTo(PLY.scaledBy(0.1));
        assertThat(new PlyDiscount(0.1, true).breaks(Mode.MATRIX_TENSION)).isTrue();
        assertThat(PlyDiscount.BY_MODE.breaks(Mode.MATRIX_TENSION)).isFalse();
        assertThat(PlyDiscount.BY_MODE.breaks(Mode.MAT_SHEAR)).isTrue();
    }

    @Test
    void withoutLoadOrStrengthNothingFails() {
        Laminate laminate = laminate(PLY, 0, 90);
        ProgressiveFailure failure =
                ProgressiveFailure.of(laminate, LaminateLoad.NONE, Criterion.HASHIN, PlyDiscount.BY_MODE);
        assertThat(failure.steps()).isEmpty();
        assertThat(failure.firstPlyFactor()).isEmpty();
        assertThat(failure.lastPlyFactor()).isEmpty();
        assertThat(failure.survivors()).containsExactly(0, 1);
    }

    /** A mat between plies breaks at once; a ply of unknown strength stays. */
    @Test
    void aMatBreaksAtOnceAndTheUnknownSurvives() {
        Lamina mat = Lamina.isotropic(7e9, 0.33).withStrength(new MatStrength(40e6, 80e6, 35e6));
        Laminate laminate = Laminate.of(List.of(
                new Ply(mat, 0.001, 0), new Ply(Lamina.isotropic(3e9, 0.33), 0.001, 0), new Ply(mat, 0.001, 0)));
        ProgressiveFailure failure = ProgressiveFailure.of(laminate, PULL, Criterion.HASHIN, PlyDiscount.BY_MODE);
        assertThat(failure.steps()).hasSize(1);
        assertThat(failure.steps().get(0).failed()).extracting(PlyReserve::ply).containsExactly(0, 2);
        assertThat(failure.survivors()).containsExactly(1);
    }

    /** Faces that would bear more are nothing without the core between them: S d/Q, or √(σc d D)/M. */
    @ParameterizedTest
    @CsvSource({"100e6, 10000, CORE_SHEAR, 2.1", "0.05e6, 0, CRUSHING, 32.3"})
    void theFailureOfACoreIsTheLast(double compression, double shearForce, Mode mode, double factor) {
        Lamina foam = Lamina.isotropic(80e6, 0.33)
                .withStrength(new CoreStrength(1e6, 1e6, compression, OptionalDouble.empty()));
        Lamina strong = PLY.withStrength(PlyStrength.of(100e9, 70e9, 4e9, 14e9, 7e9));
        Laminate sandwich =
                Laminate.of(List.of(new Ply(strong, 0.001, 0), new Ply(foam, 0.02, 0), new Ply(strong, 0.001, 0)));
        LaminateLoad load = LaminateLoad.NONE.with(Term.MX, 100).withShear(shearForce, 0);
        ProgressiveFailure failure = ProgressiveFailure.of(sandwich, load, Criterion.HASHIN, PlyDiscount.BY_MODE);
        assertThat(FailureAnalysis.of(sandwich, load).reserves(Criterion.HASHIN))
                .extracting(PlyReserve::ply)
                .contains(0, 1, 2);
        assertThat(failure.steps()).hasSize(1);
        assertThat(failure.steps().get(0).failed()).extracting(PlyReserve::ply).containsExactly(1);
        assertThat(failure.steps().get(0).failed().get(0).reserve().mode()).isEqualTo(mode);
        assertThat(failure.lastPlyFactor().orElseThrow()).isCloseTo(factor, withinPercentage(1));
        assertThat(failure.survivors()).containsExactly(0, 2);
    }

    /** Any laminate comes to an end; the load never falls; first-ply failure is that of the analysis. */
    @ParameterizedTest
    @EnumSource(names = {"MAX_STRESS", "MAX_STRAIN", "TSAI_HILL", "TSAI_WU", "HASHIN"})
    void theLoadNeverFalls(Criterion criterion) {
        for (int i = 0; i < 60; i++) {
            Random random = new Random(300 + i);
            Laminate laminate = RandomStrength.laminate(random, i % 3 == 0);
            LaminateLoad load = LaminateLoad.of(
                            new Resultants(RandomStrength.vector(random, 1e4), RandomStrength.vector(random, 5)))
                    .withShear(100, 50)
                    .withTemperatureChange(-20);
            ProgressiveFailure failure = ProgressiveFailure.of(laminate, load, criterion, PlyDiscount.BY_MODE);
            double reached = 0;
            for (FailureStep step : failure.steps()) {
                assertThat(step.loadFactor()).isGreaterThanOrEqualTo(reached);
                assertThat(step.failed()).isNotEmpty();
                reached = step.loadFactor();
            }
            assertThat(failure.steps()).hasSizeBetween(1, 2 * laminate.plies().size());
            assertThat(failure.firstPlyFactor().orElseThrow())
                    .isEqualTo(FailureAnalysis.of(laminate, load)
                            .firstPly(criterion)
                            .orElseThrow()
                            .factor());
            assertThat(failure.lastPlyFactor()).hasValue(reached);
        }
    }

    private static Laminate laminate(Lamina lamina, double... angles) {
        return Laminate.of(
                Arrays.stream(angles).mapToObj(a -> new Ply(lamina, 0.001, a)).toList());
    }
}
