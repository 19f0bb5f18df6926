package laminate.process;

import java.util.List;
import laminate.material.FibrePly;
import laminate.material.Resin;

/**
 * A set of nominal fibre contents, chosen by name.
 *
 * <p>{@link #TRADE} is what a workshop reaches; the two others are the nominal glass contents of ISO 12215-5:2008,
 * Annex C (from memory), for a simple and a complex surface. The standard's contents go with its thickness formula,
 * which knows no voids.
 */
public enum ContentSet {
    /** What the trade reaches, by process, form, fibre and resin. */
    TRADE("trade"),
    /** ISO 12215-5 nominal contents, simple surface. */
    ISO_NOMINAL_SIMPLE("iso-nominal"),
    /** ISO 12215-5 nominal contents, complex surface. */
    ISO_NOMINAL_COMPLEX("iso-nominal");

    private final String word;

    ContentSet(String word) {
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

    /**
     * Whether this is a standard's set, which takes no voids.
     *
     * @return true for the ISO sets
     */
    public boolean isStandard() {
        return this != TRADE;
    }

    /**
     * The contents of a reinforcement's plies in this set.
     *
     * @param process the process
     * @param plies the make-up of one reinforcement
     * @param family the resin's chemistry
     * @return one band for each ply
     * @throws IllegalArgumentException if the set has no content for a ply
     */
    public List<ContentBand> bands(Process process, List<FibrePly> plies, Resin.Family family) {
        return switch (this) {
            case TRADE -> TradeContents.bands(process, plies, family);
            case ISO_NOMINAL_SIMPLE -> IsoNominalContents.bands(process, plies, family, true);
            case ISO_NOMINAL_COMPLEX -> IsoNominalContents.bands(process, plies, family, false);
        };
    }
}
