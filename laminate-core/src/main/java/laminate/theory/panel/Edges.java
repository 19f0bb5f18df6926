package laminate.theory.panel;

import java.util.List;
import java.util.Objects;

/**
 * The four edges of a panel, which together must leave no rigid motion.
 *
 * @param xStart the edge x = 0
 * @param xEnd the edge x = length
 * @param yStart the edge y = 0
 * @param yEnd the edge y = width
 */
public record Edges(Edge xStart, Edge xEnd, Edge yStart, Edge yEnd) {
    /**
     * Checks that the panel cannot move as a rigid body: one edge is clamped, or two are supported.
     *
     * @param xStart the edge x = 0
     * @param xEnd the edge x = length
     * @param yStart the edge y = 0
     * @param yEnd the edge y = width
     * @throws IllegalArgumentException if it can
     */
    public Edges {
        Objects.requireNonNull(xStart, "xStart");
        Objects.requireNonNull(xEnd, "xEnd");
        Objects.requireNonNull(yStart, "yStart");
        Objects.requireNonNull(yEnd, "yEnd");
        List<Edge> all = List.of(xStart, xEnd, yStart, yEnd);
        long supported = all.stream().filter(Edge::holdsDeflection).count();
        if (!all.contains(Edge.CLAMPED) && supported < 2) {
            throw new IllegalArgumentException("a panel needs one clamped edge or two supported ones, was " + all);
        }
    }

    /**
     * Four edges alike.
     *
     * @param edge any but free
     * @return the edges
     * @throws IllegalArgumentException if free
     */
    public static Edges all(Edge edge) {
        return new Edges(edge, edge, edge, edge);
    }
}
