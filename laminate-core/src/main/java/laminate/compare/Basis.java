package laminate.compare;

/** What is held equal when a part is made in several ways. Each answers another question. */
public enum Basis {
    /** Nothing is changed: the same layers, made otherwise. What does the other process do to this lay-up? */
    SAME_REINFORCEMENT("same reinforcement"),
    /** The same bending stiffness per width, 1/d<sub>11</sub>, zone by zone. What replaces it in a panel or a strip? */
    SAME_STIFFNESS("same bending stiffness"),
    /** The same mass per area with coatings, zone by zone. What does the weight buy? */
    SAME_WEIGHT("same weight");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /**
     * The words in a report and on a command line.
     *
     * @return for example "same bending stiffness"
     */
    public String words() {
        return words;
    }
}
