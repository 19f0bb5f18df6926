package laminate.part;

/** The waters that a head may be of, with their densities; both rounded up to what is reckoned with in practice. */
public enum Water {
    /** Fresh water: 1000 kg/m³; at 4 °C it has 999.97 kg/m³, from memory. */
    FRESH("fresh", 1000),
    /** Salt water of the open sea: 1025 kg/m³, common practice. */
    SALT("salt", 1025);

    private final String word;
    private final double density;

    Water(String word, double density) {
        this.word = word;
        this.density = density;
    }

    /**
     * The word in files.
     *
     * @return fresh or salt
     */
    public String word() {
        return word;
    }

    /**
     * The density.
     *
     * @return mass per volume (kg/m³)
     */
    public double density() {
        return density;
    }
}
