package laminate.material;

/** The form of a reinforcement, which decides how closely its fibres pack and how they carry load. */
public enum Form {
    /** Chopped strand or continuous filament mat: random in plane. */
    MAT("mat", Architecture.RANDOM),
    /** Surface tissue or veil: random in plane, rich in resin. */
    TISSUE("tissue", Architecture.RANDOM),
    /** Heavy woven rovings. */
    WOVEN_ROVING("woven roving", Architecture.WOVEN),
    /** Finer woven cloth. */
    WOVEN_CLOTH("woven cloth", Architecture.WOVEN),
    /** Stitched straight plies: biaxial, triaxial, quadriaxial. */
    STITCHED("stitched", Architecture.STRAIGHT),
    /** All fibres in one direction. */
    UNIDIRECTIONAL("unidirectional", Architecture.STRAIGHT);

    /** How the fibres of one ply lie. */
    public enum Architecture {
        /** In every direction of the plane alike. */
        RANDOM,
        /** Crossed at right angles, over and under. */
        WOVEN,
        /** Straight in one direction. */
        STRAIGHT
    }

    private final String word;
    private final Architecture architecture;

    Form(String word, Architecture architecture) {
        this.word = word;
        this.architecture = architecture;
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
     * How the fibres lie.
     *
     * @return the architecture
     */
    public Architecture architecture() {
        return architecture;
    }
}
