package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RollPlanTest {
    private static final double WIDTH = 1.27;
    private static final RollPlanner ROLL = RollPlanner.of(WIDTH).withSteps(500_000);

    private static List<Piece> equal(int count, double width, double length, Turn turn) {
        return Collections.nCopies(count, new Piece("panel", width, length, turn));
    }

    @ParameterizedTest
    @EnumSource
    void onePieceIsOnePull(Cuts cuts) {
        Piece piece = new Piece("transom", 0.9, 1.4, Turn.NONE);
        RollPlan plan = ROLL.withCuts(cuts).plan(List.of(piece));
        assertThat(plan.placements()).containsExactly(new Placement(piece, 0, 0, false));
        assertThat(plan.length()).isEqualTo(1.4);
        assertThat(plan.lowerBound()).isEqualTo(1.4);
        assertThat(plan.gap()).isZero();
        assertThat(plan.yieldFraction()).isCloseTo(0.9 / 1.27, within(1e-12));
        assertThat(plan.pulls()).hasSize(1);
        assertThat(plan.offcuts()).hasSize(1);
        Offcut beside = plan.offcuts().get(0);
        assertThat(beside.x()).isEqualTo(0.9);
        assertThat(beside.area()).isCloseTo(0.37 * 1.4, within(1e-12));
    }

    @Test
    void onePieceIsTurnedWhereThatTakesLessOfTheRoll() {
        RollPlan plan = ROLL.plan(equal(1, 0.5, 1.2, Turn.QUARTER));
        assertThat(plan.length()).isEqualTo(0.5);
        assertThat(plan.placements().get(0).turned()).isTrue();
        assertThat(plan.placements().get(0).across()).isEqualTo(1.2);
    }

    @Test
    void aPieceThatOnlyFitsTurnedIsTurned() {
        RollPlan plan = ROLL.plan(equal(3, 1.5, 0.4, Turn.QUARTER));
        assertThat(plan.placements()).allMatch(Placement::turned);
        assertThat(plan.length()).isEqualTo(1.5);
        Soundness.check(plan, equal(3, 1.5, 0.4, Turn.QUARTER));
    }

    /** Sizes that fill the width on paper but not as sums of doubles: 1.27/3 has no end, 0.1 + 0.2 is above 0.3. */
    @ParameterizedTest
    @CsvSource({"1.27, 3", "1.27, 7", "0.3, 3", "1.0, 6", "0.7, 7", "2.1, 3", "1.25, 12"})
    void equalPiecesFillTheRollExactly(double width, int abreast) {
        for (Cuts cuts : Cuts.values()) {
            List<Piece> pieces = equal(5 * abreast, width / abreast, 0.8, Turn.NONE);
            RollPlan plan = RollPlanner.of(width).withCuts(cuts).plan(pieces);
            Soundness.check(plan, pieces);
            assertThat(plan.length()).isCloseTo(4.0, within(1e-8));
            assertThat(plan.yieldFraction()).isCloseTo(1, within(1e-8));
            assertThat(plan.gap()).isBetween(0.0, 1e-7);
            assertThat(plan.pulls()).hasSize(5);
            assertThat(plan.offcuts()).isEmpty();
        }
    }

    @Test
    void unequalPiecesFillTheWidthExactly() {
        List<Piece> pieces = new ArrayList<>();
        for (double width : new double[] {0.1, 0.2, 0.431, 0.539}) {
            pieces.add(new Piece("strip " + width, width, 0.6, Turn.NONE));
        }
        assertThat(ROLL.plan(pieces).length()).isEqualTo(0.6);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyPlanIsSound(long seed) {
        List<Piece> pieces = RandomPieces.of(1 + new Random(seed).nextInt(60), WIDTH, 2.4, seed).stream()
                .filter(p -> p.width() <= WIDTH)
                .toList();
        for (Cuts cuts : Cuts.values()) {
            Soundness.check(ROLL.withCuts(cuts).plan(pieces), pieces);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theOrderInWhichPiecesAreGivenDoesNotCount(Cuts cuts) {
        List<Piece> pieces = RandomPieces.of(40, WIDTH, 2.4, 9);
        RollPlan plan = ROLL.withCuts(cuts).plan(pieces);
        Random random = new Random(10);
        for (int i = 0; i < 5; i++) {
            List<Piece> shuffled = new ArrayList<>(pieces);
            Collections.shuffle(shuffled, random);
            assertThat(ROLL.withCuts(cuts).plan(shuffled)).isEqualTo(plan);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 0.1, 0.5, 2, 25.4, 3.28, 1000})
    void anotherUnitGivesTheSamePlan(double factor) {
        List<Piece> pieces = RandomPieces.of(40, WIDTH, 2.4, 11);
        RollPlan plan = ROLL.plan(pieces);
        RollPlan scaled = new RollPlanner(WIDTH * factor, Cuts.FREE, 0.1 * factor, ROLL.steps(), OptionalDouble.empty())
                .plan(pieces.stream()
                        .map(p -> new Piece(p.name(), p.width() * factor, p.length() * factor, p.turn()))
                        .toList());
        assertThat(scaled.length()).isCloseTo(plan.length() * factor, within(1e-7 * factor));
        assertThat(scaled.lowerBound()).isCloseTo(plan.lowerBound() * factor, within(1e-7 * factor));
        assertThat(scaled.yieldFraction()).isCloseTo(plan.yieldFraction(), within(1e-7));
        assertThat(scaled.pulls()).hasSameSizeAs(plan.pulls());
        assertThat(scaled.offcuts()).hasSameSizeAs(plan.offcuts());
    }

    @Test
    void moreEffortIsNeverWorse() {
        List<Piece> pieces = RandomPieces.of(60, WIDTH, 2.4, 12);
        double hasty = ROLL.withSteps(1).plan(pieces).length();
        double usual = RollPlanner.of(WIDTH).plan(pieces).length();
        assertThat(usual).isLessThan(hasty);
    }

    /** Two pieces wider than half the roll cannot lie side by side, however little area they have. */
    @Test
    void theBoundSeesPiecesThatClash() {
        RollPlan plan = ROLL.plan(equal(10, 0.65, 0.5, Turn.NONE));
        assertThat(plan.lowerBound()).isEqualTo(5.0);
        assertThat(plan.length()).isEqualTo(5.0);
    }

    @Test
    void eachPullIsAsLongAsAPieceWhereCutsGoAcross() {
        List<Piece> pieces = RandomPieces.of(40, WIDTH, 2.4, 13);
        RollPlan across = ROLL.withCuts(Cuts.ACROSS).plan(pieces);
        double longest = pieces.stream()
                .mapToDouble(p -> Math.max(p.width(), p.length()))
                .max()
                .orElseThrow();
        assertThat(across.pulls()).hasSizeGreaterThan(8).allMatch(pull -> pull.length() <= longest + 1e-9);
        for (Pull pull : across.pulls()) {
            assertThat(pull.placements().stream()
                            .mapToDouble(Placement::along)
                            .max()
                            .orElseThrow())
                    .isCloseTo(pull.length(), within(1e-8));
        }
    }
}
