package laminate.theory.panel;

/** How one edge of a panel is held across the panel. In its plane see {@link InPlane}. */
public enum Edge {
    /**
     * Hard simple support: deflection and rotation along the edge are zero over the whole edge face, turning about the
     * edge is free. What is meant by "simply supported" unless said otherwise.
     */
    SIMPLY_SUPPORTED(true, false, true),
    /**
     * Soft simple support: only the deflection is zero. On a sandwich it lets the panel deflect more than the hard one,
     * as the edge face may shear along the edge.
     */
    SOFT_SIMPLY_SUPPORTED(true, false, false),
    /** Deflection and both rotations are zero. */
    CLAMPED(true, true, true),
    /** Nothing is held. */
    FREE(false, false, false);

    private final boolean deflectionHeld;
    private final boolean turningHeld;
    private final boolean twistHeld;

    Edge(boolean deflectionHeld, boolean turningHeld, boolean twistHeld) {
        this.deflectionHeld = deflectionHeld;
        this.turningHeld = turningHeld;
        this.twistHeld = twistHeld;
    }

    /** w = 0. */
    boolean holdsDeflection() {
        return deflectionHeld;
    }

    /** The rotation that leans the edge face out of upright, φ normal to the edge, is zero. */
    boolean holdsTurning() {
        return turningHeld;
    }

    /** The rotation of the edge face along the edge, φ tangential to it, is zero. */
    boolean holdsTwist() {
        return twistHeld;
    }
}
