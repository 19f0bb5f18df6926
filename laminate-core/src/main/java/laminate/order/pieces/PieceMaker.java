package laminate.order.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.order.cut.Turn;
import laminate.part.Outline;

/** Parts what a layer covers into strips that can be cut from the roll or sheet. */
final class PieceMaker {
    private static final double ROUNDING = 1e-9;

    private final CuttingRules rules;

    PieceMaker(CuttingRules rules) {
        this.rules = rules;
    }

    /**
     * Strips of a layer, and how their warp lies.
     *
     * @param strips the strips as laid, side by side and then along
     * @param angle how the warp lies (degrees)
     * @param isSeamed whether there is a seam along the warp
     */
    record Laid(List<Strip> strips, double angle, boolean isSeamed) {
        double area() {
            return strips.stream().mapToDouble(Strip::area).sum();
        }
    }

    /**
     * The fewest strips, of equally few those of the least area. What may be turned by a quarter is tried both ways.
     *
     * @param outline the outline, its margin included
     * @param fabric what is cut
     * @param size the roll or sheet
     * @param before how many layers with seams lie before it
     * @throws IllegalArgumentException if the roll is too narrow for its laps
     */
    Laid lay(Outline outline, Fabric fabric, StockSize size, int before) {
        double angle = fabric.isRandom() ? 0 : fabric.angle();
        Laid straight = lay(outline, fabric, size, before, angle);
        if (fabric.turn() == Turn.NONE) {
            return straight;
        }
        Laid turned = lay(outline, fabric, size, before, angle + 90);
        int fewer = Integer.compare(turned.strips().size(), straight.strips().size());
        boolean isLess = turned.area() < straight.area() * (1 - ROUNDING);
        return fewer < 0 || fewer == 0 && isLess ? turned : straight;
    }

    private Laid lay(Outline outline, Fabric fabric, StockSize size, int before, double angle) {
        double lap = fabric.isLapped() ? rules.lap() : 0;
        Band band = new Band(outline.length(), outline.width(), angle);
        List<double[]> edges = new Seams(size.width(), lap, rules.stagger()).strips(band.across(), before);
        List<Strip> strips = new ArrayList<>();
        for (double[] edge : edges) {
            // A difference of sums may come out a hair wider than the roll.
            double width = Math.min(edge[1] - edge[0], size.width());
            addLengths(width, band.along(edge[0], edge[1]), lap, size.length(), strips);
        }
        return new Laid(strips, angle, edges.size() > 1);
    }

    /** A strip longer than the sheet is laid in equal lengths. */
    private static void addLengths(
            double width, double length, double lap, OptionalDouble longest, List<Strip> strips) {
        double most = longest.orElse(Double.POSITIVE_INFINITY);
        int count = length <= most * (1 + ROUNDING) ? 1 : (int) Math.ceil((length - lap) / (most - lap) - ROUNDING);
        double each = Math.min(most, (length + (count - 1) * lap) / count);
        for (int i = 0; i < count; i++) {
            strips.add(new Strip(width, each));
        }
    }
}
