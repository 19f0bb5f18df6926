package laminate.unit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The price of one kilogram, square metre, hour …; it may be finer than the currency's coins.
 *
 * @param amount the price of one, not negative
 * @param currency code of ISO 4217
 * @param basis what it is the price of one of
 */
public record UnitPrice(BigDecimal amount, String currency, PriceBasis basis) {
    private static final String EXAMPLE = "3.10 GBP/";

    /**
     * Checks amount and currency.
     *
     * @param amount the price of one, not negative
     * @param currency code of ISO 4217
     * @param basis what it is the price of one of
     * @throws IllegalArgumentException if the amount is negative, the currency unknown, or the basis missing
     */
    public UnitPrice {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("a price is not negative; " + amount.toPlainString() + " is");
        }
        if (basis == null) {
            throw new IllegalArgumentException(
                    "a price is per " + PriceBasis.accepted() + "; " + amount + " is per nothing");
        }
        Currencies.fractionDigits(currency);
    }

    /**
     * Reads a price such as "3.10 GBP/kg".
     *
     * @param text the text
     * @return the price
     * @throws QuantityException if the text is not a plain decimal, a currency and what it is per
     */
    public static UnitPrice parse(String text) {
        return parse(text, PriceBasis.KG);
    }

    /**
     * Reads a price such as "28 GBP/h" where it is known what it should be per.
     *
     * @param text the text
     * @param usual what a message shows as the right way to write it; a price per something else is read all the same
     * @return the price
     * @throws QuantityException if the text is not a plain decimal, a currency and what it is per
     */
    public static UnitPrice parse(String text, PriceBasis usual) {
        String example = EXAMPLE + usual;
        PriceText read = PriceText.read(text, example);
        if (read.amount().signum() < 0) {
            throw new QuantityException(
                    NumberText.quoted(text) + " is negative; write a price of zero or more", read.amountStart());
        }
        return new UnitPrice(read.amount(), read.currency(), basis(text, read, example));
    }

    private static PriceBasis basis(String text, PriceText read, String example) {
        String per = read.per().orElse("");
        if (per.isEmpty()) {
            throw new QuantityException(
                    NumberText.quoted(text) + " does not say per what; write it like " + example + "; accepted: per "
                            + PriceBasis.accepted(),
                    read.perStart());
        }
        Optional<PriceBasis> basis = PriceBasis.find(per);
        if (basis.isEmpty()) {
            throw new QuantityException(
                    "unknown basis " + NumberText.quoted(per) + " of a price; accepted: per " + PriceBasis.accepted(),
                    read.perStart());
        }
        return basis.get();
    }

    /**
     * What an amount costs.
     *
     * @param quantity how much or how many, in the basis (kg, m², m, l, h, pieces, rolls)
     * @return price times quantity, rounded half-up once to the currency's digits
     * @throws IllegalArgumentException if the quantity is NaN or infinite
     */
    public Money cost(double quantity) {
        return new Money(amount.multiply(Decimals.of(quantity)), currency);
    }

    /**
     * The price as text that reads back.
     *
     * @return for example "3.10 GBP/kg"
     */
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency + "/" + basis;
    }
}
