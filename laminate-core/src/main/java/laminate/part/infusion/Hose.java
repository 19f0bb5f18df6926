package laminate.part.infusion;

/**
 * A round hose, or a spiral tube.
 *
 * @param bore the inner diameter (m)
 * @param length the length (m)
 */
public record Hose(double bore, double length) {

    /**
     * Checks the hose.
     *
     * @throws IllegalArgumentException if a size is not above zero
     */
    public Hose {
        Checks.positive("bore of a hose", bore, "m");
        Checks.positive("length of a hose", length, "m");
    }

    /**
     * What it holds.
     *
     * @return volume (m³)
     */
    public double volume() {
        return Math.PI / 4 * bore * bore * length;
    }
}
