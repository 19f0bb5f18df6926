package laminate.part;

/** The kinds of failure that a part may ask a reserve against. */
public enum ReserveKind {
    /** The first ply of a laminate fails. */
    FIRST_PLY("first-ply"),
    /** The last ply fails, after the load has gone over to it from those that failed before. */
    LAST_PLY("last-ply"),
    /** The core of a sandwich shears. */
    CORE_SHEAR("core-shear"),
    /** The core is crushed through its thickness. */
    CRUSHING("crushing"),
    /** A face in compression buckles in short waves against its core. */
    WRINKLING("wrinkling"),
    /** A face in compression buckles within the cells of a honeycomb. */
    DIMPLING("dimpling"),
    /** A sandwich under compression fails in shear of its core across a short length. */
    SHEAR_CRIMPING("shear-crimping"),
    /** A face is pressed into its core under a load or at a support. */
    INDENTATION("indentation"),
    /** The panel as a whole buckles. */
    BUCKLING("buckling");

    private final String word;

    ReserveKind(String word) {
        this.word = word;
    }

    /**
     * The word in files.
     *
     * @return for example "core-shear"
     */
    public String word() {
        return word;
    }
}
