package laminate.part;

import java.util.List;
import java.util.Objects;
import laminate.theory.Laminate;
import laminate.theory.panel.Edges;
import laminate.theory.panel.InPlane;
import laminate.theory.panel.Panel;
import laminate.theory.panel.PanelLoad;

/**
 * A flat rectangular panel of a zone's laminate, with what it has to carry. Its length runs along the laminate's x.
 *
 * @param name the name
 * @param zone the name of the zone that it is a piece of
 * @param length size along x (m)
 * @param width size along y (m)
 * @param edges how its edges are held across the panel
 * @param inPlane how its supported edges are held in the plane
 * @param loads what acts on it, all at once; at least one, and at most one patch and one set of edge forces
 * @param limits what is asked of it
 */
public record PanelPlan(
        String name,
        String zone,
        double length,
        double width,
        Edges edges,
        InPlane inPlane,
        List<PanelLoad> loads,
        Limits limits) {

    /**
     * Checks the panel.
     *
     * @throws IllegalArgumentException if a name is blank, a size not above zero, nothing acts on it, or a patch lies
     *     beyond its edges
     */
    public PanelPlan {
        Objects.requireNonNull(edges, "edges");
        Objects.requireNonNull(inPlane, "inPlane");
        Objects.requireNonNull(limits, "limits");
        loads = List.copyOf(loads);
        if (name.isBlank() || zone.isBlank()) {
            throw new IllegalArgumentException("a panel needs a name and a zone");
        }
        Lengths.check(name, "length", length);
        Lengths.check(name, "width", width);
        if (loads.isEmpty()) {
            throw new IllegalArgumentException(name + ": a panel needs a load");
        }
        for (PanelLoad load : loads) {
            if (load instanceof PanelLoad.Patch patch) {
                checkWithin("length", patch.x(), patch.alongX(), length);
                checkWithin("width", patch.y(), patch.alongY(), width);
            }
        }
    }

    /**
     * A panel whose supported edges are free to pull in, with no limits of its own.
     *
     * @param name the name
     * @param zone the name of the zone that it is a piece of
     * @param length size along x (m)
     * @param width size along y (m)
     * @param edges how its edges are held
     * @param loads what acts on it
     * @return the panel
     */
    public static PanelPlan of(String name, String zone, double length, double width, Edges edges, PanelLoad... loads) {
        return new PanelPlan(name, zone, length, width, edges, InPlane.FREE_TO_PULL_IN, List.of(loads), Limits.NONE);
    }

    /**
     * This panel in its zone's laminate.
     *
     * @param laminate the laminate of the zone
     * @return the panel to reckon with
     */
    public Panel in(Laminate laminate) {
        return new Panel(laminate, length, width, edges, inPlane);
    }

    /**
     * The shorter side, which a deflection may be limited by.
     *
     * @return the smaller of length and width (m)
     */
    public double span() {
        return Math.min(length, width);
    }

    /** With a little room, as a half and a whole that add up to the edge may differ from it by a rounding. */
    private static void checkWithin(String side, double centre, double size, double whole) {
        double room = 1e-9 * whole;
        if (centre - size / 2 < -room || centre + size / 2 > whole + room) {
            throw new IllegalArgumentException("a patch of " + size + " m with its centre at " + centre
                    + " m reaches beyond the " + side + " of the panel, " + whole + " m");
        }
    }
}
