package laminate.theory.panel;

import java.util.List;
import laminate.theory.Vector3;

/** Work of loads on each unknown of a basis. */
final class LoadVector {
    private LoadVector() {}

    static double[] of(Basis basis, Section section, List<PanelLoad> loads) {
        double[] vector = new double[basis.size()];
        for (PanelLoad load : loads) {
            add(vector, basis, section, load);
        }
        return vector;
    }

    private static void add(double[] vector, Basis basis, Section section, PanelLoad load) {
        Ramp x = Ramp.even(0, basis.panel().length());
        Ramp y = Ramp.even(0, basis.panel().width());
        if (load instanceof PanelLoad.Uniform uniform) {
            addPressure(vector, basis, uniform.pressure(), x, y);
        } else if (load instanceof PanelLoad.Head head) {
            addHead(vector, basis, head);
        } else if (load instanceof PanelLoad.Patch patch) {
            addPatch(vector, basis, patch);
        } else if (load instanceof PanelLoad.EdgeForces forces) {
            addEdgeForces(vector, basis, section, forces);
        }
    }

    private static void addHead(double[] vector, Basis basis, PanelLoad.Head head) {
        Ramp x = Ramp.even(0, basis.panel().length());
        Ramp y = Ramp.even(0, basis.panel().width());
        double greatest = head.greatestPressure();
        switch (head.upright()) {
            case WIDTH ->
                addPressure(
                        vector,
                        basis,
                        greatest,
                        x,
                        depth(head.head(), basis.panel().width()));
            case LENGTH ->
                addPressure(
                        vector,
                        basis,
                        greatest,
                        depth(head.head(), basis.panel().length()),
                        y);
            case NONE -> addPressure(vector, basis, greatest, x, y);
        }
    }

    /** Depth as a share of the head, from the lowest edge up to the water line or the upper edge. */
    private static Ramp depth(double head, double side) {
        double wet = Math.min(head, side);
        return new Ramp(0, wet, 1, (head - wet) / head);
    }

    private static void addPatch(double[] vector, Basis basis, PanelLoad.Patch patch) {
        Ramp x = within("x", patch.x(), patch.alongX(), basis.panel().length());
        Ramp y = within("y", patch.y(), patch.alongY(), basis.panel().width());
        addPressure(vector, basis, patch.force() / patch.alongX() / patch.alongY(), x, y);
    }

    private static Ramp within(String axis, double centre, double size, double side) {
        double slack = 1e-9 * side;
        double from = centre - size / 2;
        double to = centre + size / 2;
        if (!(from >= -slack && to <= side + slack)) {
            throw new IllegalArgumentException("the patch must lie within the panel, " + axis + " from 0 to " + side
                    + " m, but reaches from " + from + " to " + to + " m");
        }
        return Ramp.even(Math.max(0, from), Math.min(side, to));
    }

    private static void addPressure(double[] vector, Basis basis, double pressure, Ramp x, Ramp y) {
        double[] alongX = basis.alongX().integrals(x);
        double[] alongY = basis.alongY().integrals(y);
        for (int i = 0; i < vector.length; i++) {
            Basis.Unknown u = basis.unknown(i);
            if (u.field() == Field.W) {
                vector[i] += pressure * alongX[u.x()] * alongY[u.y()];
            }
        }
    }

    /** Work of the moments that would hold the panel flat, −∫∫ M·κ: the panel is without them. */
    private static void addEdgeForces(double[] vector, Basis basis, Section section, PanelLoad.EdgeForces n) {
        Vector3 moment = section.momentOf(section.strainOf(n));
        if (moment.equals(Vector3.ZERO)) {
            return;
        }
        double[][] alongX = totals(basis.alongX());
        double[][] alongY = totals(basis.alongY());
        double[] byRow = {0, 0, 0, moment.x(), moment.y(), moment.xy(), 0, 0};
        for (int i = 0; i < vector.length; i++) {
            Basis.Unknown u = basis.unknown(i);
            for (Kinematics.Term t : basis.kinematics().terms()) {
                if (t.field() == u.field()) {
                    vector[i] -= byRow[t.row()] * t.factor() * alongX[t.dx()][u.x()] * alongY[t.dy()][u.y()];
                }
            }
        }
    }

    /** Integrals of the functions and of their derivatives over the length. */
    private static double[][] totals(Line shapes) {
        double[][] near = shapes.at(0);
        double[][] far = shapes.at(shapes.length());
        return new double[][] {
            shapes.integrals(Ramp.even(0, shapes.length())), rise(near[0], far[0]), rise(near[1], far[1])
        };
    }

    private static double[] rise(double[] near, double[] far) {
        double[] rise = new double[far.length];
        for (int f = 0; f < far.length; f++) {
            rise[f] = far[f] - near[f];
        }
        return rise;
    }
}
