package laminate.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An amount of money that can be paid: always whole in the currency's smallest unit (pennies, cents).
 *
 * <p>Every result is rounded half-up (away from zero) to the currency's digits, so that lines that are printed sum to
 * the total that is printed.
 *
 * @param amount the amount, rounded half-up to the currency's default fraction digits when the record is made
 * @param currency code of ISO 4217
 */
public record Money(BigDecimal amount, String currency) {
    private static final String EXAMPLE = "9.00 GBP";

    /**
     * Checks the currency and rounds the amount.
     *
     * @param amount any amount; it is kept rounded half-up
     * @param currency code of ISO 4217
     * @throws IllegalArgumentException if the currency is unknown or has no coins
     */
    public Money {
        amount = amount.setScale(Currencies.fractionDigits(currency), RoundingMode.HALF_UP);
    }

    /**
     * No money.
     *
     * @param currency code of ISO 4217
     * @return zero in that currency
     * @throws IllegalArgumentException if the currency is unknown or has no coins
     */
    public static Money zero(String currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /**
     * Reads an amount such as "9.00 GBP".
     *
     * @param text the text
     * @return the amount
     * @throws QuantityException if the text is not a plain decimal with a currency, or is finer than its coins
     */
    public static Money parse(String text) {
        PriceText read = PriceText.read(text, EXAMPLE);
        if (read.per().isPresent()) {
            throw new QuantityException(
                    NumberText.quoted(text) + " is a price per something; write an amount like " + EXAMPLE,
                    read.perStart());
        }
        Money money = new Money(read.amount(), read.currency());
        if (money.amount().compareTo(read.amount()) != 0) {
            throw new QuantityException(
                    NumberText.quoted(text) + " is finer than the coins of " + read.currency() + "; write it like "
                            + money,
                    read.amountStart());
        }
        return money;
    }

    /**
     * Adds an amount of the same currency.
     *
     * @param other the amount to add
     * @return the sum, exact
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("amounts of one currency can be added, not " + this + " and " + other
                    + "; there is no exchange rate");
        }
        return new Money(amount.add(other.amount), currency);
    }

    /**
     * Multiplies by an exact factor.
     *
     * @param factor any number
     * @return the product, rounded half-up once
     */
    public Money times(BigDecimal factor) {
        return new Money(amount.multiply(factor), currency);
    }

    /**
     * Multiplies by a factor.
     *
     * @param factor any finite number; taken as the decimal it was written as
     * @return the product, rounded half-up once
     * @throws IllegalArgumentException if the factor is NaN or infinite
     */
    public Money times(double factor) {
        return times(Decimals.of(factor));
    }

    /**
     * What one of several equal shares comes to.
     *
     * @param shares the number of shares
     * @return the quotient, rounded half-up once
     * @throws IllegalArgumentException if there are no shares
     */
    public Money dividedBy(int shares) {
        if (shares < 1) {
            throw new IllegalArgumentException(this + " can be shared among one or more, not " + shares);
        }
        return new Money(amount.divide(BigDecimal.valueOf(shares), amount.scale(), RoundingMode.HALF_UP), currency);
    }

    /**
     * The amount as text that reads back.
     *
     * @return for example "9.00 GBP"
     */
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency;
    }
}
