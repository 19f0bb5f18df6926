package laminate.order.cut;

import java.util.List;
import laminate.unit.JsonNumbers;

/** What is refused before a plan is made, with what to do about it. */
final class Pieces {
    private Pieces() {}

    static void requireSome(List<Piece> pieces) {
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("there are no pieces to cut");
        }
    }

    static void requireEffort(long steps) {
        if (steps < 1) {
            throw new IllegalArgumentException("at least 1 step of search is wanted, was " + steps);
        }
    }

    static void requireFits(Piece piece, double roll) {
        if (!fits(piece, roll, Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("piece " + piece.name() + " is "
                    + metres(piece.turn() == Turn.NONE ? piece.width() : Math.min(piece.width(), piece.length()))
                    + " across, the roll only " + metres(roll)
                    + "; divide it into pieces that are joined by a seam with a lap, or take a wider roll"
                    + (piece.turn() == Turn.NONE && piece.length() <= roll
                            ? ", or let it be turned by a quarter if the fabric is balanced"
                            : ""));
        }
    }

    static void requireFits(Piece piece, double width, double length) {
        if (!fits(piece, width, length)) {
            throw new IllegalArgumentException("piece " + piece.name() + " of " + metres(piece.width()) + " by "
                    + metres(piece.length()) + " is larger than a sheet of " + metres(width) + " by "
                    + metres(length)
                    + (piece.turn() == Turn.NONE && piece.width() <= length && piece.length() <= width
                            ? "; let it be turned by a quarter if the material has no direction, or "
                            : "; ")
                    + "divide it into pieces that are joined, or take a larger sheet");
        }
    }

    private static boolean fits(Piece piece, double width, double length) {
        boolean asItIs = piece.width() <= width && piece.length() <= length;
        boolean turned = piece.length() <= width && piece.width() <= length;
        return asItIs || (turned && piece.turn() == Turn.QUARTER);
    }

    private static String metres(double length) {
        return JsonNumbers.format(length) + " m";
    }
}
