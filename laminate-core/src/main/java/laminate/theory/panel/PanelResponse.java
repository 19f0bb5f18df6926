package laminate.theory.panel;

import java.util.ArrayList;
import java.util.List;
import laminate.theory.Deformation;
import laminate.theory.Resultants;
import laminate.theory.Vector3;

/** The state of a panel under load: deflection, strain, moments and shear forces at every point. */
public final class PanelResponse {
    /** Points along each side where the most strained one is looked for; odd, so that the middle is among them. */
    private static final int GRID = 17;

    private final PanelState state;
    private final Section section;
    private final ShearMethod shearMethod;
    private final Convergence convergence;
    private final PanelPoint mostDeflected;

    PanelResponse(Refinement refinement, Section section) {
        state = refinement.state();
        this.section = section;
        shearMethod = refinement.shearMethod();
        convergence = refinement.convergence();
        double[] place = new DeflectionPeak(state).place();
        mostDeflected = at(place[0], place[1]);
    }

    /**
     * Deflection at a point.
     *
     * @param x place along the length, from 0 (m)
     * @param y place along the width, from 0 (m)
     * @return w, positive towards +z (m)
     * @throws IllegalArgumentException if the point lies outside the panel
     */
    public double deflection(double x, double y) {
        checkInside(x, y);
        return state.deflection(x, y);
    }

    /**
     * Everything at a point.
     *
     * @param x place along the length, from 0 (m)
     * @param y place along the width, from 0 (m)
     * @return the point
     * @throws IllegalArgumentException if the point lies outside the panel
     */
    public PanelPoint at(double x, double y) {
        checkInside(x, y);
        double[][][] fields = state.fields(x, y);
        double[] strain = state.strain(fields);
        double[] resultants = section.times(strain);
        double[] shear = shearMethod.shear(state, section, fields);
        return new PanelPoint(
                x,
                y,
                fields[Field.W.ordinal()][0][0],
                new Deformation(vector(strain, 0), vector(strain, 3)),
                new Resultants(vector(resultants, 0), vector(resultants, 3)),
                shear[0],
                shear[1]);
    }

    private void checkInside(double x, double y) {
        checkWithin("x", x, state.basis().panel().length());
        checkWithin("y", y, state.basis().panel().width());
    }

    private static void checkWithin(String axis, double value, double side) {
        if (!(value >= 0 && value <= side)) {
            throw new IllegalArgumentException(axis + " must lie from 0 to " + side + ", was " + value);
        }
    }

    private static Vector3 vector(double[] rows, int from) {
        return new Vector3(rows[from], rows[from + 1], rows[from + 2]);
    }

    /**
     * The point that moves most, in either direction.
     *
     * @return the point
     */
    public PanelPoint mostDeflected() {
        return mostDeflected;
    }

    /**
     * Points among which the most strained one is to be looked for: a grid of 17 by 17 that takes in the edges, the
     * middles of the edges and the centre, and the point that moves most. A corner has no finite value in theory where
     * edges of different kinds or a laminate that shears when bent meet; what stands there depends on the order.
     *
     * @return the points
     */
    public List<PanelPoint> candidates() {
        Panel panel = state.basis().panel();
        List<PanelPoint> points = new ArrayList<>();
        points.add(mostDeflected);
        for (int i = 0; i < GRID; i++) {
            for (int j = 0; j < GRID; j++) {
                points.add(at(panel.length() * i / (GRID - 1), panel.width() * j / (GRID - 1)));
            }
        }
        return points;
    }

    /**
     * How far the numbers have settled.
     *
     * @return order and changes
     */
    public Convergence convergence() {
        return convergence;
    }

    /**
     * Strain energy, ½ ∫∫ N·ε + M·κ + Q·γ dx dy, integrated from the strains.
     *
     * @return the energy (J)
     */
    public double strainEnergy() {
        double energy = 0;
        for (Gauss alongX : rules(state.basis().alongX())) {
            for (Gauss alongY : rules(state.basis().alongY())) {
                energy += strainEnergy(alongX, alongY);
            }
        }
        return energy;
    }

    private static List<Gauss> rules(Line line) {
        return line.rules(2 * line.order() + 1);
    }

    private double strainEnergy(Gauss alongX, Gauss alongY) {
        double energy = 0;
        for (int i = 0; i < alongX.size(); i++) {
            for (int j = 0; j < alongY.size(); j++) {
                double[] strain = state.strain(state.fields(alongX.point(i), alongY.point(j)));
                energy += alongX.weight(i) * alongY.weight(j) * dot(strain, section.times(strain)) / 2;
            }
        }
        return energy;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /**
     * Loads times the displacements of this response, Σ p w. Under small deflection half of it is the strain energy;
     * between two load cases it is what the theorem of Betti makes equal.
     *
     * @param loads any loads on the panel
     * @return the product (J)
     */
    public double virtualWork(List<PanelLoad> loads) {
        return dot(LoadVector.of(state.basis(), section, loads), state.factors());
    }

    PanelState state() {
        return state;
    }
}
