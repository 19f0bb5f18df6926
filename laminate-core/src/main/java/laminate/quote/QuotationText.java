package laminate.quote;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a yard writes on a quotation in words of its own. No list has an entry that is not written.
 *
 * @param yard the yard as it names itself: name, then address, telephone and the like, a line each
 * @param scope what the price includes, a point each
 * @param exclusions what it does not include
 * @param terms the terms of delivery and payment
 * @param validFor how long an offer holds (s), empty where not stated
 */
public record QuotationText(
        List<String> yard, List<String> scope, List<String> exclusions, List<String> terms, OptionalDouble validFor) {

    /** Nothing written. */
    public static final QuotationText NONE =
            new QuotationText(List.of(), List.of(), List.of(), List.of(), OptionalDouble.empty());

    /** What counts as a day of the calendar (s). */
    private static final double DAY = 24 * 3600;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if an offer would hold for less than a day
     */
    public QuotationText {
        yard = List.copyOf(yard);
        scope = List.copyOf(scope);
        exclusions = List.copyOf(exclusions);
        terms = List.copyOf(terms);
        if (!(validFor.orElse(DAY) >= DAY) || !Double.isFinite(validFor.orElse(DAY))) {
            throw new IllegalArgumentException(
                    "an offer holds for a day or more, not for " + validFor.getAsDouble() + " s");
        }
    }

    /**
     * How long an offer holds in days of the calendar.
     *
     * @return whole days, a day begun left out; zero where not stated
     */
    public long validDays() {
        return (long) (validFor.orElse(0) / DAY);
    }
}
