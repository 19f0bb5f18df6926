package laminate.material;

/** The kinds of material, by the word that stands for each in files. */
public enum MaterialKind {
    /** A fibre, as used in reinforcements. */
    FIBRE("fibre"),
    /** A resin, gelcoat, flowcoat, paste or paint. */
    RESIN("resin"),
    /** A peroxide that starts the cure and does not become part of the matrix. */
    CATALYST("catalyst"),
    /** The second part of a two-part resin. */
    HARDENER("hardener"),
    /** A dry reinforcement off the roll. */
    REINFORCEMENT("reinforcement"),
    /** A core. */
    CORE("core"),
    /** A bulking mat, laid wet and counted at its impregnated thickness. */
    BULKER("bulker"),
    /** What the process uses up. */
    CONSUMABLE("consumable");

    private final String word;

    MaterialKind(String word) {
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
