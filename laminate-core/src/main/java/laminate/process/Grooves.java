package laminate.process;

/**
 * Grooves cut in the faces of a core.
 *
 * @param width w (m)
 * @param depth d (m)
 * @param pitch s, from groove to groove (m)
 * @param faces how many faces are grooved, 1 or 2
 * @param ways 1 for grooves one way, 2 for a grid
 */
public record Grooves(double width, double depth, double pitch, int faces, int ways) {

    /** Usual grooves of an infusion core: 2 mm by 2 mm at 20 mm, one way, both faces; common practice, no source. */
    public static final Grooves USUAL = new Grooves(0.002, 0.002, 0.020, 2, 1);

    /**
     * Checks the grooves.
     *
     * @throws IllegalArgumentException if a length is not above zero, a groove is as wide as the pitch, or faces or
     *     ways are not 1 or 2
     */
    public Grooves {
        if (!(width > 0 && depth > 0 && pitch > width) || !Double.isFinite(depth) || !Double.isFinite(pitch)) {
            throw new IllegalArgumentException(
                    "grooves need a width and depth above zero and a pitch above the width, not " + width + " m, "
                            + depth + " m, " + pitch + " m");
        }
        if (faces < 1 || faces > 2 || ways < 1 || ways > 2) {
            throw new IllegalArgumentException(
                    "grooves are on 1 or 2 faces and run 1 or 2 ways, not " + faces + ", " + ways);
        }
    }
}
