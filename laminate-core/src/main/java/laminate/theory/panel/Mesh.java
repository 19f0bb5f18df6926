package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Where the polynomials of a panel may kink: at the sides of its patches, and between a small patch and a far edge at
 * distances that grow, as the moments about a patch rise with the logarithm of the distance.
 *
 * @param x breakpoints along the length, from 0 to it (m)
 * @param y breakpoints along the width, from 0 to it (m)
 * @param watched places where the solution must settle besides the usual ones (m)
 */
record Mesh(double[] x, double[] y, List<double[]> watched) {
    /** From the side of a patch to the next breakpoint, in sizes of the patch; from there on this much farther each. */
    private static final double NEXT = 1.4;

    private static final double GROWTH = 6;
    /** The edge must be this much farther than a breakpoint for it to be worth while. */
    private static final double ROOM = 1.6;
    /** Breakpoints nearer to each other than this share of the side are one. */
    private static final double APART = 1e-3;

    static Mesh of(Panel panel, List<PanelLoad> loads) {
        List<PanelLoad.Patch> patches = loads.stream()
                .filter(PanelLoad.Patch.class::isInstance)
                .map(PanelLoad.Patch.class::cast)
                .toList();
        TreeSet<Double> x = new TreeSet<>();
        TreeSet<Double> y = new TreeSet<>();
        List<double[]> watched = new ArrayList<>();
        for (PanelLoad.Patch p : patches) {
            split(x, p.x(), p.alongX(), panel.length());
            split(y, p.y(), p.alongY(), panel.width());
            watch(watched, p);
        }
        return new Mesh(breaks(x, panel.length()), breaks(y, panel.width()), watched);
    }

    private static void split(TreeSet<Double> breaks, double centre, double size, double side) {
        double from = centre - size / 2;
        double to = centre + size / 2;
        breaks.add(from);
        breaks.add(to);
        for (double away = NEXT * size; away * ROOM < from; away *= GROWTH) {
            breaks.add(from - away);
        }
        for (double away = NEXT * size; away * ROOM < side - to; away *= GROWTH) {
            breaks.add(to + away);
        }
    }

    private static double[] breaks(TreeSet<Double> wanted, double side) {
        List<Double> breaks = new ArrayList<>(List.of(0.0));
        for (double at : wanted) {
            if (at - breaks.get(breaks.size() - 1) > APART * side && side - at > APART * side) {
                breaks.add(at);
            }
        }
        breaks.add(side);
        return breaks.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The middle of a patch and of its sides, from within. */
    private static void watch(List<double[]> watched, PanelLoad.Patch p) {
        watched.add(new double[] {p.x(), p.y()});
        for (int side = -1; side <= 1; side += 2) {
            watched.add(new double[] {p.x() + side * p.alongX() / 2, p.y()});
            watched.add(new double[] {p.x(), p.y() + side * p.alongY() / 2});
        }
    }

    /** Whether there is any breakpoint. */
    boolean isDivided() {
        return x.length + y.length > 4;
    }
}
