package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetPlanTest {
    private static final SheetPlanner FOAM = SheetPlanner.of(1.22, 2.44).withSteps(500_000);

    private static List<Piece> equal(int count, double width, double length, Turn turn) {
        return Collections.nCopies(count, new Piece("panel", width, length, turn));
    }

    @Test
    void onePieceIsOneSheetWithTheRestToServe() {
        SheetPlan plan = FOAM.plan(equal(1, 1.0, 0.44, Turn.NONE));
        assertThat(plan.sheets()).hasSize(1);
        assertThat(plan.lowerBound()).isEqualTo(1);
        List<Offcut> offcuts = plan.sheets().get(0).offcuts();
        assertThat(offcuts.get(0).area()).isCloseTo(1.22 * 2.0, within(1e-9));
        assertThat(offcuts.get(1).area()).isCloseTo(0.22 * 0.44, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // Eight to a sheet, with nothing left; the ninth begins another.
        "8, 0.61, 0.61, 1",
        "9, 0.61, 0.61, 2",
        "24, 0.61, 0.61, 3",
        // Larger than half a sheet either way: one to a sheet, although two thirds of the area lie idle.
        "4, 0.62, 1.23, 4",
        // Two side by side but not end to end.
        "4, 0.61, 1.23, 2"
    })
    void equalPiecesTakeAsManySheetsAsTheyMust(int count, double width, double length, int sheets) {
        List<Piece> pieces = equal(count, width, length, Turn.NONE);
        SheetPlan plan = FOAM.plan(pieces);
        Soundness.check(plan, pieces);
        assertThat(plan.sheets()).hasSize(sheets);
        assertThat(plan.lowerBound()).isEqualTo(sheets);
    }

    @Test
    void exactlyFilledSheetsHaveNothingLeft() {
        SheetPlan plan = FOAM.plan(equal(16, 0.61, 0.61, Turn.QUARTER));
        assertThat(plan.yieldFraction()).isCloseTo(1, within(1e-9));
        assertThat(plan.sheets()).hasSize(2).allMatch(sheet -> sheet.offcuts().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void everyPlanIsSound(long seed) {
        List<Piece> pieces = RandomPieces.of(1 + new Random(seed).nextInt(60), 1.22, 1.22, seed);
        SheetPlan plan = FOAM.plan(pieces);
        Soundness.check(plan, pieces);
        assertThat(plan.sheets().size()).isLessThanOrEqualTo(plan.lowerBound() + 2);
    }

    @Test
    void theOrderInWhichPiecesAreGivenDoesNotCount() {
        List<Piece> pieces = new ArrayList<>(RandomPieces.of(30, 1.22, 1.22, 7));
        SheetPlan plan = FOAM.plan(pieces);
        Collections.shuffle(pieces, new Random(8));
        assertThat(FOAM.plan(pieces)).isEqualTo(plan);
    }
}
