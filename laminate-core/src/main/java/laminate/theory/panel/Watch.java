package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;

/**
 * Values of a state at the points by which convergence is judged. Of a state of thin-plate theory the deflection alone
 * is made use of, and watched.
 */
final class Watch {
    private static final double[] PLACES = {0, 0.25, 0.5, 0.75, 1};

    private final List<double[]> deflections = new ArrayList<>();
    private final List<double[]> moments = new ArrayList<>();
    private final List<double[]> shearByStrain = new ArrayList<>();
    private final List<double[]> shearByEquilibrium = new ArrayList<>();
    private final PanelState state;
    private final Section section;
    private final Panel panel;

    Watch(PanelState state, Section section, List<double[]> watched) {
        this.state = state;
        this.section = section;
        panel = state.basis().panel();
        for (double x : PLACES) {
            for (double y : PLACES) {
                add(x * panel.length(), y * panel.width(), isWatched(x, y));
            }
        }
        watched.forEach(place -> add(place[0], place[1], true));
    }

    private void add(double x, double y, boolean withMoments) {
        double[][][] fields = state.fields(x, y);
        deflections.add(new double[] {fields[Field.W.ordinal()][0][0]});
        if (withMoments && state.basis().kinematics() == Kinematics.FIRST_ORDER) {
            double[] r = section.times(state.strain(fields));
            double arm = panel.laminate().thickness() / 6;
            moments.add(new double[] {r[3], r[4], r[5], arm * r[0], arm * r[1], arm * r[2]});
            shearByStrain.add(ShearMethod.STRAIN.shear(state, section, fields));
            shearByEquilibrium.add(ShearMethod.EQUILIBRIUM.shear(state, section, fields));
        }
    }

    /** Within the panel and on clamped edges, but not in corners. */
    private boolean isWatched(double x, double y) {
        Edges edges = panel.edges();
        boolean onX = x % 1 == 0;
        boolean onY = y % 1 == 0;
        if (onX && onY) {
            return false;
        }
        Edge edge = onX ? (x == 0 ? edges.xStart() : edges.xEnd()) : y == 0 ? edges.yStart() : edges.yEnd();
        return !onX && !onY || edge == Edge.CLAMPED;
    }

    double deflectionChange(Watch before) {
        return change(deflections, before.deflections);
    }

    double momentChange(Watch before) {
        return change(moments, before.moments);
    }

    double shearChange(Watch before, ShearMethod method) {
        return method == ShearMethod.STRAIN
                ? change(shearByStrain, before.shearByStrain)
                : change(shearByEquilibrium, before.shearByEquilibrium);
    }

    /** The largest change as a share of the largest value; zero where all is zero. */
    private static double change(List<double[]> now, List<double[]> before) {
        double change = 0;
        double largest = 0;
        for (int i = 0; i < now.size(); i++) {
            for (int k = 0; k < now.get(i).length; k++) {
                change = Math.max(change, Math.abs(now.get(i)[k] - before.get(i)[k]));
                largest = Math.max(largest, Math.abs(now.get(i)[k]));
            }
        }
        return change == 0 ? 0 : change / largest;
    }
}
