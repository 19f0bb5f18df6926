package laminate.theory.sandwich;

/** A way a sandwich fails that laminate theory does not see. */
public enum LocalMode {
    /** Short waves of a compressed face. */
    WRINKLING("wrinkling"),
    /** A compressed face buckles into the cells of a honeycomb. */
    DIMPLING("dimpling"),
    /** The whole sandwich shears away under compression. */
    SHEAR_CRIMPING("shear_crimping"),
    /** The faces crush the core between them as they bend. */
    FLEXURAL_CRUSHING("flexural_crushing"),
    /** The core is crushed under a pressure on the face. */
    BEARING("bearing"),
    /** The face breaks into the core under a line load. */
    INDENTATION("indentation");

    private final String id;

    LocalMode(String id) {
        this.id = id;
    }

    /**
     * Its name in files.
     *
     * @return lower case, words joined by underscores
     */
    public String id() {
        return id;
    }
}
