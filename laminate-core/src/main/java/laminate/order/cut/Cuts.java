package laminate.order.cut;

/** How the roll is cut. */
public enum Cuts {
    /** Pieces are cut from the roll as it is laid out; those of one length may reach into the next. */
    FREE,
    /** The roll is pulled and cut straight across at the length of a piece, and the other pieces out of that pull. */
    ACROSS
}
