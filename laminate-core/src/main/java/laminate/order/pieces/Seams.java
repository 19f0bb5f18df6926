package laminate.order.pieces;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts a width into strips no wider than the roll that lap at their seams, with the seams of one layer away from those of
 * the layer before.
 *
 * <p>Between seams lies the roll less the lap, p. The fewest strips are n = ⌈(V − lap)/p⌉ for a width V; the first may be as
 * narrow as V − (n − 1)·p, so that there is room to shift the seams. Where there is none, every other layer is laid in one
 * strip more.
 */
final class Seams {
    private static final double ROUNDING = 1e-9;

    /** Places of the first seam in its room, in thirds: layers that follow each other lie far apart. */
    private static final int[] PLACES = {0, 2, 1, 3};

    private final double roll;
    private final double lap;
    private final double stagger;

    /**
     * Seams of strips off a roll.
     *
     * @param roll width of the roll (m)
     * @param lap how far strips lap (m)
     * @param stagger how far apart seams of layers that follow each other lie at least (m)
     */
    Seams(double roll, double lap, double stagger) {
        this.roll = roll;
        this.lap = lap;
        this.stagger = stagger;
    }

    /**
     * The strips of a layer.
     *
     * @param width what they cover (m)
     * @param turn how many layers with seams lie before it
     * @return from and to of each strip (m), from the near edge
     * @throws IllegalArgumentException if there is more than one, and the roll is not wider than two laps
     */
    List<double[]> strips(double width, int turn) {
        if (width <= roll * (1 + ROUNDING)) {
            return List.<double[]>of(new double[] {0, width});
        }
        if (!(roll > 2 * lap)) {
            throw new IllegalArgumentException(
                    "strips of " + roll + " m cannot lap by " + lap + " m; a wider roll is wanted");
        }
        double pitch = roll - lap;
        int count = (int) Math.ceil((width - lap) / pitch - ROUNDING);
        double room = most(width, count) - least(width, count);
        int places = (int) Math.min(PLACES.length, 1 + Math.floor(Math.max(0, room) / Math.max(stagger, ROUNDING)));
        if (places == 1 && turn % 2 == 1 && stagger > 0) {
            return strips(width, count + 1, Math.max(least(width, count + 1), roll / 2));
        }
        int place = places == PLACES.length ? PLACES[turn % places] : turn % places;
        double share = places == 1 ? 1 : place / (places - 1.0);
        return strips(width, count, least(width, count) + Math.max(0, room) * share);
    }

    /** The least width of the first of so many strips. */
    private double least(double width, int count) {
        return Math.max(width - (count - 1) * (roll - lap), 2 * lap);
    }

    /** The greatest width of the first of so many strips, all of which are wanted. */
    private double most(double width, int count) {
        return Math.min(roll, width - (count - 2) * (roll - lap) - 2 * lap);
    }

    private List<double[]> strips(double width, int count, double first) {
        List<double[]> strips = new ArrayList<>();
        double to = Math.min(first, roll);
        strips.add(new double[] {0, to});
        for (int i = 1; i < count; i++) {
            double from = to - lap;
            to = i == count - 1 ? width : Math.min(width, from + roll);
            strips.add(new double[] {from, to});
        }
        return strips;
    }
}
