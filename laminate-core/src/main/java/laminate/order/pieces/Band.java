package laminate.order.pieces;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle seen along a warp that lies askew to it: u runs along the warp, v across it, both from the middle.
 *
 * <p>With the warp at θ from the rectangle's length l towards its width w, a point lies inside where
 * |u·cos θ − v·sin θ| ≤ l/2 and |u·sin θ + v·cos θ| ≤ w/2. Across the warp it measures l·|sin θ| + w·|cos θ|. What a strip
 * between two v needs along the warp is the reach in u of the part between: a convex shape reaches farthest at its
 * corners, those of the rectangle within the strip and those where the strip's edges cut it.
 */
final class Band {
    private final double length;
    private final double width;
    private final double cos;
    private final double sin;

    /**
     * A rectangle under a warp.
     *
     * @param length size of the rectangle along x (m)
     * @param width size along y (m)
     * @param degrees angle of the warp from x towards y
     */
    Band(double length, double width, double degrees) {
        this.length = length;
        this.width = width;
        double folded = Math.IEEEremainder(degrees, 180);
        boolean isAcross = Math.abs(folded) == 90;
        cos = folded == 0 ? 1 : isAcross ? 0 : StrictMath.cos(Math.toRadians(folded));
        sin = folded == 0 ? 0 : isAcross ? 1 : StrictMath.sin(Math.toRadians(folded));
    }

    /** Size across the warp (m). */
    double across() {
        return length * Math.abs(sin) + width * Math.abs(cos);
    }

    /** What a strip from one distance of the near edge to another needs along the warp (m). */
    double along(double from, double to) {
        double low = from - across() / 2;
        double high = to - across() / 2;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double u : corners(low, high)) {
            least = Math.min(least, u);
            most = Math.max(most, u);
        }
        return most - least;
    }

    private List<Double> corners(double low, double high) {
        List<Double> all = new ArrayList<>();
        for (double x : new double[] {-length / 2, length / 2}) {
            for (double y : new double[] {-width / 2, width / 2}) {
                double v = y * cos - x * sin;
                if (v >= low && v <= high) {
                    all.add(x * cos + y * sin);
                }
            }
        }
        addCrossings(Math.max(low, -across() / 2), all);
        addCrossings(Math.min(high, across() / 2), all);
        return all;
    }

    /** Where the line at a distance v from the middle leaves the rectangle. */
    private void addCrossings(double v, List<Double> all) {
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        if (cos != 0) {
            double middle = v * sin / cos;
            double reach = length / 2 / Math.abs(cos);
            least = middle - reach;
            most = middle + reach;
        }
        if (sin != 0) {
            double middle = -v * cos / sin;
            double reach = width / 2 / Math.abs(sin);
            least = Math.max(least, middle - reach);
            most = Math.min(most, middle + reach);
        }
        if (least <= most) {
            all.add(least);
            all.add(most);
        }
    }
}
