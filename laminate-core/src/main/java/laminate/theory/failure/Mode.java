package laminate.theory.failure;

/** In which way a ply, mat or core fails. */
public enum Mode {
    /** Tension along direction 1. */
    TENSION_1("tension along 1", true),
    /** Compression along direction 1. */
    COMPRESSION_1("compression along 1", true),
    /** Tension along direction 2. */
    TENSION_2("tension along 2", false),
    /** Compression along direction 2. */
    COMPRESSION_2("compression along 2", false),
    /** Shear in the plane of the ply. */
    SHEAR_12("in-plane shear", false),
    /** Fibres pulled apart, by Hashin's criterion. */
    FIBRE_TENSION("fibre tension", true),
    /** Fibres crushed or buckled, by Hashin's criterion. */
    FIBRE_COMPRESSION("fibre compression", true),
    /** Cracks between fibres that open, by Hashin's criterion. */
    MATRIX_TENSION("matrix tension", false),
    /** Cracks between fibres that slide, by Hashin's criterion. */
    MATRIX_COMPRESSION("matrix compression", false),
    /** Principal tension of a mat. */
    MAT_TENSION("tension", true),
    /** Principal compression of a mat. */
    MAT_COMPRESSION("compression", true),
    /** Greatest shear of a mat. */
    MAT_SHEAR("shear", true),
    /** Shear of a core across the thickness. */
    CORE_SHEAR("core shear", true),
    /** Compression of a core through the thickness. */
    CRUSHING("core crushing", true);

    private final String text;
    private final boolean breaksPly;

    Mode(String text, boolean breaksPly) {
        this.text = text;
        this.breaksPly = breaksPly;
    }

    /**
     * The name in a report.
     *
     * @return a few words of the trade
     */
    public String text() {
        return text;
    }

    /** Whether it is a core that fails. */
    boolean isOfCore() {
        return this == CORE_SHEAR || this == CRUSHING;
    }

    /**
     * Whether the ply no longer carries anything; otherwise its fibres along direction 1 still do.
     *
     * @return true for failure along direction 1, and for mats and cores
     */
    public boolean breaksPly() {
        return breaksPly;
    }
}
