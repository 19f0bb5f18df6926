package laminate.unit;

import java.util.Currency;
import java.util.List;
import java.util.Locale;

/** Currency codes of ISO 4217, as the JDK knows them. */
final class Currencies {
    /** Candidates for "did you mean"; among all 200-odd codes a slip is near to too many. */
    private static final List<String> COMMON =
            List.of("GBP", "EUR", "USD", "CAD", "AUD", "NZD", "CHF", "DKK", "NOK", "SEK", "PLN", "JPY");

    private Currencies() {}

    /**
     * Digits after the point in which the currency is kept.
     *
     * @throws IllegalArgumentException if the code is none, or stands for something without coins, such as gold
     */
    static int fractionDigits(String code) {
        int digits = find(code).getDefaultFractionDigits();
        if (digits < 0) {
            throw new IllegalArgumentException(code + " is no currency to pay in; write one such as GBP, EUR or USD");
        }
        return digits;
    }

    private static Currency find(String code) {
        try {
            return Currency.getInstance(code);
        } catch (IllegalArgumentException e) {
            String hint = Nearest.of(code.toUpperCase(Locale.ROOT), COMMON)
                    .map(known -> "; did you mean " + known + "?")
                    .orElse("");
            throw new IllegalArgumentException(
                    NumberText.quoted(code) + " is not a currency; write an ISO 4217 code such as GBP, EUR or USD"
                            + hint,
                    e);
        }
    }
}
