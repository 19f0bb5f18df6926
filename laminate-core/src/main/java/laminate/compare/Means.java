package laminate.compare;

/** What of a lay-up is changed until it is as stiff or as heavy as another. */
public enum Means {
    /**
     * The areal weight of all reinforcement by one factor, and the thickness of sheets given by their lamina by the same;
     * then the nearest whole layers. Cores, bulking mats and coatings stay.
     */
    REINFORCEMENT("reinforcement", "reinforcement"),
    /** The thickness of the cores alone, all by one factor. */
    CORE("core thickness", "core");

    private final String words;
    private final String what;

    Means(String words, String what) {
        this.words = words;
        this.what = what;
    }

    /**
     * The words in a report.
     *
     * @return for example "core thickness"
     */
    public String words() {
        return words;
    }

    /** The part of a lay-up that is changed, such as "core". */
    String what() {
        return what;
    }
}
