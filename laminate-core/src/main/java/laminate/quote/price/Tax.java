package laminate.quote.price;

/**
 * A tax on the net price. Its rate depends on place, customer and date; whether it is due is for the yard's accountant.
 *
 * @param name what it is called where the yard is, for example VAT
 * @param rate the share of the net price
 */
public record Tax(String name, double rate) {

    /**
     * Checks name and rate.
     *
     * @throws IllegalArgumentException if the name is blank, or the rate below zero or not finite
     */
    public Tax {
        Shares.checkNotNegative("a tax", rate);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a tax needs a name");
        }
    }
}
