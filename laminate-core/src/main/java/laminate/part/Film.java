package laminate.part;

/**
 * How thick a coating is applied.
 *
 * @param basis how it is stated
 * @param value thickness (m), or mass per area (kg/m²)
 */
public record Film(Basis basis, double value) {

    /** The ways to state a film. */
    public enum Basis {
        /** Thickness as a wet-film gauge reads it (m). */
        WET("wet-film"),
        /** Thickness when cured (m). */
        CURED("thickness"),
        /** Mass of liquid applied per area (kg/m²). */
        AREAL_WEIGHT("areal-weight");

        private final String key;

        Basis(String key) {
            this.key = key;
        }

        /**
         * The key in files.
         *
         * @return the key
         */
        public String key() {
            return key;
        }
    }

    /**
     * Checks the film.
     *
     * @throws IllegalArgumentException if the value is not above zero and finite
     */
    public Film {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(basis.key() + " must be above zero, not " + value);
        }
    }
}
