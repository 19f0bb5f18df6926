package laminate.part.infusion;

/** Where the resin enters and how its front spreads from there. */
public enum FeedKind {
    /** From a line along one edge to a vent along the opposite one: a straight front. */
    LINE("line"),
    /** From a port in the middle outwards to a vent around it: a growing ring. */
    CENTRE("centre"),
    /** From a line around the rim inwards to a vent in the middle: a closing ring. */
    RIM("rim");

    private final String word;

    FeedKind(String word) {
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
