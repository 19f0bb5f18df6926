package laminate.order.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The pieces in grid steps and in an order of their own, so that the order in which they were given does not count. */
final class Sizes {
    private final List<Piece> pieces;
    private final long[] across;
    private final long[] along;
    private final boolean[] turns;

    Sizes(List<Piece> given, Grid grid) {
        pieces = new ArrayList<>(given);
        pieces.sort(largeFirst(grid));
        across = new long[pieces.size()];
        along = new long[pieces.size()];
        turns = new boolean[pieces.size()];
        for (int i = 0; i < pieces.size(); i++) {
            across[i] = across(pieces.get(i), grid);
            along[i] = along(pieces.get(i), grid);
            turns[i] = pieces.get(i).turn() == Turn.QUARTER && across[i] != along[i];
        }
    }

    /** Compares whole steps only, so that the same pieces in another unit come in the same order. */
    private static Comparator<Piece> largeFirst(Grid grid) {
        return Comparator.comparingLong((Piece piece) -> along(piece, grid))
                .thenComparingLong(piece -> across(piece, grid))
                .reversed()
                .thenComparing(Piece::turn)
                .thenComparing(Piece::name);
    }

    private static long across(Piece piece, Grid grid) {
        return grid.steps("width of piece " + piece.name(), piece.width());
    }

    private static long along(Piece piece, Grid grid) {
        return grid.steps("length of piece " + piece.name(), piece.length());
    }

    int count() {
        return pieces.size();
    }

    Piece piece(int item) {
        return pieces.get(item);
    }

    /** Size across the stock (steps), turned by a quarter or not. */
    long across(int item, boolean turned) {
        return turned ? along[item] : across[item];
    }

    /** Size along the stock (steps), turned by a quarter or not. */
    long along(int item, boolean turned) {
        return turned ? across[item] : along[item];
    }

    /** Whether a quarter turn is allowed and makes a difference. */
    boolean turns(int item) {
        return turns[item];
    }

    /** Area in square steps. */
    double area(int item) {
        return (double) across[item] * along[item];
    }
}
