package laminate.theory.sandwich;

/** One of the two faces of a core. */
public enum Face {
    /** The face on the mould side of the core, towards −z. */
    MOULD_FACE,
    /** The face on the inner side of the core, towards +z. */
    INNER_FACE
}
