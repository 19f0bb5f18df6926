package laminate.order.cut;

/** Against which neighbour a piece is laid that does not fill its place. */
enum Side {
    LEFT,
    TALLER,
    LOWER;

    /** Whether a piece goes to the left end; one that is as long as a neighbour stands proud lies beside that one. */
    boolean left(long along, long left, long right) {
        if (along == left || along == right) {
            return along == left;
        }
        return switch (this) {
            case LEFT -> true;
            case TALLER -> left >= right;
            case LOWER -> left <= right;
        };
    }
}
