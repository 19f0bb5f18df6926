package laminate.compare;

/** What is compared. All of the part are of one part. */
public enum Measure {
    /** Thickness of the layers and cores of a part, without coatings: the mean over the area of its zones (m). */
    MEAN_THICKNESS("mean thickness", "m"),
    /** Thickness of the layers and cores of a zone, without coatings (m). */
    THICKNESS("thickness", "m"),
    /** Mass of one finished part with its items (kg). */
    MASS("mass", "kg"),
    /** Mass per area of a zone with its coatings (kg/m²). */
    MASS_PER_AREA("mass per area", "kg/m²"),
    /** Fibre mass fraction of the reinforced layers. */
    FIBRE_MASS_FRACTION("fibre mass fraction", "1"),
    /** Fibre volume fraction of the reinforced layers. */
    FIBRE_VOLUME_FRACTION("fibre volume fraction", "1"),
    /** Void volume fraction of the reinforced layers. */
    VOID_FRACTION("void fraction", "1"),
    /** Dry reinforcement in one part (kg). */
    FIBRE("fibre in the part", "kg"),
    /** Resin in one part: in layers, cores and beds, coatings left out (kg). */
    RESIN_IN_PART("resin in the part", "kg"),
    /** Resin to mix for one part, coatings left out (kg). */
    RESIN_TO_MIX("resin to mix", "kg"),
    /** Mixed resin and coating left in pots, bags, lines and trimmings, for one part (kg). */
    RESIN_WASTE("resin wasted", "kg"),
    /** Reinforcement, core and bulking mat cut away, for one part (kg). */
    SHEET_WASTE("reinforcement and core cut away", "kg"),
    /** Styrene given off by one part (kg). */
    STYRENE("styrene given off", "kg"),
    /** Working time of one person on one part (s). */
    TIME("working time", "s"),
    /** Bending stiffness per width along x of a narrow strip, 1/d11 (N·m, that is N·m² per m of width). */
    BENDING_STIFFNESS_X("bending stiffness per width along x", "N·m"),
    /** Bending stiffness per width along y, 1/d22 (N·m). */
    BENDING_STIFFNESS_Y("bending stiffness per width along y", "N·m"),
    /** Bending modulus along x, 12/(d11 t³): what is left of a difference in stiffness once thickness is taken out (Pa). */
    BENDING_MODULUS_X("bending modulus along x", "Pa"),
    /** Bending modulus along y, 12/(d22 t³) (Pa). */
    BENDING_MODULUS_Y("bending modulus along y", "Pa"),
    /** Largest deflection of a panel or beam, its magnitude (m). */
    DEFLECTION("deflection", "m"),
    /** Least reserve factor of a load case, a panel or a beam. */
    RESERVE_FACTOR("least reserve factor", "1");

    private final String words;
    private final String symbol;

    Measure(String words, String symbol) {
        this.words = words;
        this.symbol = symbol;
    }

    /**
     * The words in a report.
     *
     * @return for example "resin to mix"
     */
    public String words() {
        return words;
    }

    /**
     * The symbol of its SI unit.
     *
     * @return for example "kg"; "1" for a bare number
     */
    public String symbol() {
        return symbol;
    }
}
