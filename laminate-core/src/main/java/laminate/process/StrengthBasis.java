package laminate.process;

/** How the strength of a laid ply is reckoned, chosen by name. Measured ply strengths stand under either. */
public enum StrengthBasis {
    /** From the figures of fibre and resin by micromechanics; any fibre whose figures are known. */
    LIBRARY("library"),
    /**
     * By formulas in the glass content, in the manner of ISO 12215-5:2008, Annex C: E-glass only. The coefficients are
     * those of classification rules, from memory; that the standard prints the same is not verified.
     */
    ISO_12215_5("iso-12215-5");

    private final String word;

    StrengthBasis(String word) {
        this.word = word;
    }

    /**
     * The word in files.
     *
     * @return the word
     */
    public String word() {
        return word;
    }
}
