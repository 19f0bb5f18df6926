package laminate.theory.panel;

/**
 * How the supported edges of a panel are held in its plane. Matters for an unsymmetric laminate and for large
 * deflection; a symmetric laminate bends the same either way as long as the deflection is small.
 */
public enum InPlane {
    /**
     * Supported edges may move at right angles to themselves, so that the panel can pull in. Along themselves hard
     * supported and clamped edges do not move.
     */
    FREE_TO_PULL_IN,
    /** Supported edges do not move in the plane at all. */
    HELD
}
