package laminate.compare;

/**
 * A way to make a part that cannot be, for example an open-celled core by infusion.
 *
 * @param name what tells it from the others
 * @param reason why it cannot be
 */
public record Refusal(String name, String reason) {
    /**
     * Checks that it says which and why.
     *
     * @param name what tells it from the others
     * @param reason why it cannot be
     * @throws IllegalArgumentException if either is blank
     */
    public Refusal {
        if (name.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("a refusal says which and why, was '" + name + "': '" + reason + "'");
        }
    }
}
