package laminate.order.cut;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CutRefusalTest {
    private static List<Piece> piece(double width, double length, Turn turn) {
        return List.of(new Piece("hull 3", width, length, turn));
    }

    @Test
    void aPieceWiderThanTheRollIsSentBackForASeam() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(1.27).plan(piece(1.6, 3.2, Turn.NONE)))
                .withMessage("piece hull 3 is 1.6 m across, the roll only 1.27 m; divide it into pieces that are joined"
                        + " by a seam with a lap, or take a wider roll");
    }

    @Test
    void aQuarterTurnIsNamedWhereItWouldDo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(1.27).plan(piece(1.6, 1.2, Turn.NONE)))
                .withMessageEndingWith(", or let it be turned by a quarter if the fabric is balanced");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(1.27).plan(piece(1.6, 1.3, Turn.QUARTER)))
                .withMessageContaining("is 1.3 m across")
                .withMessageEndingWith("or take a wider roll");
    }

    @Test
    void aPieceLargerThanASheetIsSentBack() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SheetPlanner.of(1.22, 2.44).plan(piece(1.0, 2.6, Turn.QUARTER)))
                .withMessage("piece hull 3 of 1 m by 2.6 m is larger than a sheet of 1.22 m by 2.44 m; divide it into"
                        + " pieces that are joined, or take a larger sheet");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SheetPlanner.of(1.22, 2.44).plan(piece(2.0, 1.0, Turn.NONE)))
                .withMessageContaining("let it be turned by a quarter if the material has no direction");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aSizeIsPositiveAndFinite(double size) {
        String told = String.valueOf(size);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Piece("a", size, 1, Turn.NONE))
                .withMessageContaining(told);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Piece("a", 1, size, Turn.NONE))
                .withMessageContaining(told);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(size))
                .withMessageContaining(told);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SheetPlanner.of(1, size))
                .withMessageContaining(told);
    }

    @Test
    void nothingToCutAndSizesOutOfProportionAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> RollPlanner.of(1).plan(List.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(1).plan(piece(1e-12, 1, Turn.NONE)))
                .withMessageContaining("1.0E-12");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(1).plan(piece(1, 1e9, Turn.NONE)))
                .withMessageContaining("check its unit");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RollPlanner.of(1).withSteps(0))
                .withMessageContaining("0");
    }

    @Test
    void aPieceThatKeepsItsDirectionIsNotPlacedTurned() {
        Piece kept = new Piece("stringer", 0.1, 1, Turn.NONE);
        assertThatIllegalArgumentException().isThrownBy(() -> new Placement(kept, 0, 0, true));
    }
}
