package laminate.theory.panel;

import java.util.Objects;
import laminate.theory.Laminate;
import laminate.theory.Require;

/**
 * A flat rectangular panel of one laminate.
 *
 * @param laminate what it is made of; its x runs along the length
 * @param length size along x (m)
 * @param width size along y (m)
 * @param edges how its edges are held
 * @param inPlane how the supported edges are held in the plane
 */
public record Panel(Laminate laminate, double length, double width, Edges edges, InPlane inPlane) {
    /**
     * Checks the panel.
     *
     * @param laminate what it is made of; its x runs along the length
     * @param length size along x (m)
     * @param width size along y (m)
     * @param edges how its edges are held
     * @param inPlane how the supported edges are held in the plane
     * @throws IllegalArgumentException if a size is not positive
     */
    public Panel {
        Objects.requireNonNull(laminate, "laminate");
        Require.positive("length", length);
        Require.positive("width", width);
        Objects.requireNonNull(edges, "edges");
        Objects.requireNonNull(inPlane, "inPlane");
    }

    /**
     * A panel whose supported edges are free to pull in.
     *
     * @param laminate what it is made of; its x runs along the length
     * @param length size along x (m)
     * @param width size along y (m)
     * @param edges how its edges are held
     * @return the panel
     * @throws IllegalArgumentException if a size is not positive
     */
    public static Panel of(Laminate laminate, double length, double width, Edges edges) {
        return new Panel(laminate, length, width, edges, InPlane.FREE_TO_PULL_IN);
    }

    /**
     * The panel with another laminate.
     *
     * @param other the laminate
     * @return the copy
     */
    public Panel with(Laminate other) {
        return new Panel(other, length, width, edges, inPlane);
    }

    /**
     * This panel with other edges.
     *
     * @param other how the edges are held
     * @return the copy
     */
    public Panel with(Edges other) {
        return new Panel(laminate, length, width, other, inPlane);
    }

    /**
     * This panel held otherwise in its plane.
     *
     * @param other how the supported edges are held in the plane
     * @return the copy
     */
    public Panel with(InPlane other) {
        return new Panel(laminate, length, width, edges, other);
    }

    /**
     * The shorter side, the span that a deflection limit is a share of.
     *
     * @return the smaller of length and width (m)
     */
    public double span() {
        return Math.min(length, width);
    }
}
