package laminate.material;

/** How far a figure can be trusted to say what its source says. */
public enum Status {
    /** Seen printed in the source named. */
    PRINTED("printed"),
    /** Recalled from the source named, not seen in print. */
    MEMORY("memory"),
    /** A habit of the trade without a published source. */
    COMMON_PRACTICE("common practice"),
    /** Stated by the user, in a file of their own or through the library. */
    USER("user");

    private final String word;

    Status(String word) {
        this.word = word;
    }

    /**
     * The word that stands for this status in files and print.
     *
     * @return the word, in lower case
     */
    public String word() {
        return word;
    }
}
