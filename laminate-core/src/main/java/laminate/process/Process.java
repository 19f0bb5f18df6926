package laminate.process;

/** How a laminate is wetted out and pressed. */
public enum Process {
    /** Wetted out by brush and roller, open to the air. */
    HAND_LAY_UP("hand lay-up"),
    /** Wetted out by hand, then pressed under a bag while it cures. */
    VACUUM_BAG("vacuum bag"),
    /** Laid dry under a bag, then filled with resin by vacuum. */
    INFUSION("infusion");

    private final String word;

    Process(String word) {
        this.word = word;
    }

    /**
     * The word in files and print.
     *
     * @return the word
     */
    public String word() {
        return word;
    }
}
