package laminate.unit;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A text of the form "amount currency" or "amount currency/basis", taken apart and its amount and currency checked.
 *
 * @param amount the amount
 * @param amountStart place of the amount in the text
 * @param currency code of ISO 4217, known to exist
 * @param per what stands behind the stroke, if there is one
 * @param perStart place behind the stroke, or the end of the text
 */
record PriceText(BigDecimal amount, int amountStart, String currency, Optional<String> per, int perStart) {
    /** No budget needs more, and it keeps a slip from costing time. */
    private static final int MOST_CHARACTERS = 18;

    static PriceText read(String text, String example) {
        refuseSignInFront(text, example);
        NumberText split = NumberText.split(text, example);
        BigDecimal amount = amount(split, example);
        if (split.rest().isEmpty()) {
            throw new QuantityException(
                    NumberText.quoted(text) + " has no currency; write it like " + split.number()
                            + example.substring(example.indexOf(' ')),
                    split.restStart());
        }
        int stroke = split.rest().indexOf('/');
        String currency = (stroke < 0 ? split.rest() : split.rest().substring(0, stroke)).strip();
        checkCurrency(currency, split);
        Optional<String> per = stroke < 0
                ? Optional.empty()
                : Optional.of(split.rest().substring(stroke + 1).strip());
        int perStart = stroke < 0 ? text.length() : text.indexOf('/', split.restStart()) + 1;
        return new PriceText(amount, split.start(), currency, per, perStart);
    }

    private static void refuseSignInFront(String text, String example) {
        String stripped = text.strip();
        if (!stripped.isEmpty() && Character.getType(stripped.codePointAt(0)) == Character.CURRENCY_SYMBOL) {
            throw new QuantityException(
                    NumberText.quoted(text)
                            + " begins with a currency sign; write the amount, then the ISO 4217 code, like " + example,
                    text.indexOf(stripped.charAt(0)));
        }
    }

    private static BigDecimal amount(NumberText split, String example) {
        if (split.hasExponent()) {
            throw new QuantityException(
                    NumberText.quoted(split.text()) + " has an exponent; write money in full, like " + example,
                    split.start());
        }
        if (split.number().length() > MOST_CHARACTERS) {
            throw new QuantityException(
                    NumberText.quoted(split.number()) + " is too long for an amount of money; at most "
                            + MOST_CHARACTERS + " characters are read",
                    split.start());
        }
        return new BigDecimal(split.number());
    }

    private static void checkCurrency(String currency, NumberText split) {
        try {
            Currencies.fractionDigits(currency);
        } catch (IllegalArgumentException e) {
            throw new QuantityException(e.getMessage(), split.restStart());
        }
    }
}
