package laminate.order.cut;

/**
 * How well a piece suits a place: by the number of its edges that meet a neighbour's end. A piece as wide as the room
 * leaves no gap beside it; one as long as a neighbour stands proud leaves no step.
 *
 * <p>After the rules of S. C. H. Leung, D. Zhang, K. M. Sim, A two-stage intelligent search algorithm for the
 * two-dimensional strip packing problem, European Journal of Operational Research 215 (2011) 57-69 (from memory), but
 * with a count in place of their table.
 */
enum Fit {
    /** Every edge counts the same. */
    EDGES(1),
    /** To fill the room counts double. */
    ROOM(2);

    private final int weightOfRoom;

    Fit(int weightOfRoom) {
        this.weightOfRoom = weightOfRoom;
    }

    /**
     * The score of a piece.
     *
     * @param across its size across
     * @param along its size along
     * @param room width of the place
     * @param left how far the neighbour on the left stands above the place
     * @param right the same on the right
     * @return the higher, the better, from 0
     */
    int score(long across, long along, long room, long left, long right) {
        if (across == room) {
            return weightOfRoom + (along == left ? 1 : 0) + (along == right ? 1 : 0);
        }
        return along == left || along == right ? 1 : 0;
    }
}
