package laminate.unit;

/** Text that is no quantity, price or amount of the wanted kind: what is wrong, what is accepted, and where. */
public final class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Place in the text, counted from 0. */
    private final int offset;

    /**
     * Makes the exception.
     *
     * @param message what is wrong; what is accepted
     * @param offset place of the offending character in the text, counted from 0
     */
    public QuantityException(String message, int offset) {
        super(message);
        this.offset = offset;
    }

    /**
     * Where in the text the trouble begins.
     *
     * @return place of the character, counted from 0; the length of the text where something is missing at its end
     */
    public int offset() {
        return offset;
    }
}
