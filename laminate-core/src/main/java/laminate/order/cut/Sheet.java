package laminate.order.cut;

import java.util.List;

/**
 * One sheet with the pieces cut from it.
 *
 * @param placements the pieces, along the sheet and then across
 * @param offcuts free rectangles that can serve for something else, none over another, largest first
 */
public record Sheet(List<Placement> placements, List<Offcut> offcuts) {
    /**
     * Keeps copies.
     *
     * @param placements the pieces
     * @param offcuts free rectangles
     * @throws IllegalArgumentException if no piece is cut from it
     */
    public Sheet {
        placements = List.copyOf(placements);
        offcuts = List.copyOf(offcuts);
        if (placements.isEmpty()) {
            throw new IllegalArgumentException("a sheet has no piece on it; leave it out");
        }
    }
}
