package laminate.compare;

/** What of a lay-up is changed until it is as stiff or as heavy as another. */
public enum Means {
    /**
     * The areal weight of all reinforcement by one factor, and the thickness of sheets given by their lamina by the same;
     * then the nearest whole layers. Cores, bulking mats and coatings stay.
     */
    REINFORCEMENT("reinforcement"),
    /** The thickness of the cores alone, all by one factor. */
    CORE("core thickness");

    private final String words;

    Means(String words) {
        this.words = words;
    }

    /**
     * The words in a report.
     *
     * @return for example "core thickness"
     */
    public String words() {
        return words;
    }
}
