package laminate.theory.panel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Polynomials piece by piece between breakpoints, continuous with a kink at each: they follow a load that starts and
 * stops within the panel, which one polynomial over the whole length does late.
 *
 * <p>The functions are those of the ends, {@link Line#ONE} to {@link Line#AT_END} (the latter two over the first and
 * last piece alone), a roof over each breakpoint, and over each piece the straight family of {@link Shapes} from power
 * 2 up, which vanishes at both ends of the piece.
 */
final class Pieces implements Line {
    private static final int ENDS = 4;

    private final double[] breaks;
    private final int order;
    private final int count;
    private final int pieces;
    private final List<Shapes> shapes = new ArrayList<>();

    /**
     * Functions between breakpoints.
     *
     * @param breaks rising, from 0 to the length (m)
     * @param order highest power
     */
    Pieces(double[] breaks, int order) {
        this.breaks = breaks.clone();
        this.order = order;
        pieces = breaks.length - 1;
        count = ENDS + (pieces - 1) + pieces * (order - 1);
        for (int piece = 0; piece < pieces; piece++) {
            shapes.add(new Shapes(breaks[piece + 1] - breaks[piece], order, false));
        }
    }

    private int roof(int breakpoint) {
        return ENDS + breakpoint - 1;
    }

    private int bubble(int piece, int k) {
        return ENDS + pieces - 1 + piece * (order - 1) + k - 2;
    }

    /** The piece that alone a function lives on, vanishing at its ends; −1 for the others. */
    int pieceOf(int function) {
        int first = ENDS + pieces - 1;
        return function < first ? -1 : (function - first) / (order - 1);
    }

    /** Whether a function is other than zero on a piece. */
    boolean touches(int function, int piece) {
        if (function >= ENDS + pieces - 1) {
            return pieceOf(function) == piece;
        }
        return switch (function) {
            case ONE, LINEAR -> true;
            case AT_START -> piece == 0;
            case AT_END -> piece == pieces - 1;
            default -> piece == function - ENDS || piece == function - ENDS + 1;
        };
    }

    int count() {
        return pieces;
    }

    @Override
    public double length() {
        return breaks[pieces];
    }

    @Override
    public int order() {
        return order;
    }

    @Override
    public int[] inner() {
        return IntStream.range(ENDS, count).toArray();
    }

    /** Breakpoints need not lie evenly, so no use is made of symmetry. */
    @Override
    public int parity(int function) {
        return 0;
    }

    /** By place; what spans the whole length comes last. */
    @Override
    public int rank(int function) {
        int piece = pieceOf(function);
        if (piece >= 0) {
            return 2 * piece + 1;
        }
        return switch (function) {
            case ONE, LINEAR -> 2 * pieces + 1;
            case AT_START -> 0;
            case AT_END -> 2 * pieces;
            default -> 2 * (function - ENDS + 1);
        };
    }

    @Override
    public boolean mayCouple(int left, int right) {
        return IntStream.range(0, pieces).anyMatch(piece -> touches(left, piece) && touches(right, piece));
    }

    @Override
    public double[][] at(double x) {
        int piece = Arrays.binarySearch(breaks, x);
        piece = Math.min(pieces - 1, piece >= 0 ? piece : -piece - 2);
        double[][] local = shapes.get(piece).at(x - breaks[piece]);
        double[][] values = new double[local.length][count];
        values[0][ONE] = 1;
        values[0][LINEAR] = 2 * x / length() - 1;
        values[1][LINEAR] = 2 / length();
        int start = piece == 0 ? AT_START : roof(piece);
        int end = piece == pieces - 1 ? AT_END : roof(piece + 1);
        for (int d = 0; d < local.length; d++) {
            values[d][start] = local[d][AT_START];
            values[d][end] = local[d][AT_END];
            System.arraycopy(local[d], ENDS, values[d], bubble(piece, 2), order - 1);
        }
        return values;
    }

    @Override
    public double[][][][] products() {
        double[][][][] integrals = new double[3][3][count][count];
        for (int piece = 0; piece < pieces; piece++) {
            int[] here = onPiece(piece);
            Gauss gauss = Gauss.on(breaks[piece], breaks[piece + 1], order + 1);
            for (int k = 0; k < gauss.size(); k++) {
                double[][] values = at(gauss.point(k));
                for (int d = 0; d < 3; d++) {
                    for (int e = 0; e < 3; e++) {
                        addProducts(integrals[d][e], here, values[d], values[e], gauss.weight(k));
                    }
                }
            }
        }
        return integrals;
    }

    private int[] onPiece(int piece) {
        return IntStream.range(0, count).filter(f -> touches(f, piece)).toArray();
    }

    private static void addProducts(double[][] sums, int[] here, double[] left, double[] right, double weight) {
        for (int i : here) {
            double scaled = weight * left[i];
            for (int j : here) {
                sums[i][j] += scaled * right[j];
            }
        }
    }

    @Override
    public double[] integrals(Ramp ramp) {
        double[] sums = new double[count];
        for (int piece = 0; piece < pieces; piece++) {
            double from = Math.max(ramp.from(), breaks[piece]);
            double to = Math.min(ramp.to(), breaks[piece + 1]);
            if (from < to) {
                Gauss gauss = Gauss.on(from, to, order / 2 + 2);
                for (int k = 0; k < gauss.size(); k++) {
                    double[] values = at(gauss.point(k))[0];
                    double weight = gauss.weight(k) * ramp.at(gauss.point(k));
                    IntStream.range(0, count).forEach(f -> sums[f] += weight * values[f]);
                }
            }
        }
        return sums;
    }

    @Override
    public List<Gauss> rules(int points) {
        return IntStream.range(0, pieces)
                .mapToObj(piece -> Gauss.on(breaks[piece], breaks[piece + 1], points))
                .toList();
    }
}
