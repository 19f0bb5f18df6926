package laminate.order.cut;

/** How a piece may be turned on the roll; half a turn gives the same rectangle and is always allowed. */
public enum Turn {
    /** The warp of the fabric keeps its direction on the part: half a turn at most. */
    NONE,
    /** A quarter turn too, where the fabric is balanced or the core has no direction. */
    QUARTER
}
