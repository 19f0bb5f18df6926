package laminate.print.quote;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a quotation says beside the offer.
 *
 * @param customer for whom it is
 * @param date of which day it is
 * @param statedEnd the last day on which it holds, empty for as long as the yard's offers usually do
 */
public record Letter(Optional<String> customer, LocalDate date, Optional<LocalDate> statedEnd) {

    /**
     * Checks the days.
     *
     * @throws IllegalArgumentException if the offer ends before its day
     */
    public Letter {
        Objects.requireNonNull(customer, "customer");
        if (statedEnd.orElse(date).isBefore(date)) {
            throw new IllegalArgumentException(
                    "a quotation of " + date + " cannot be valid until " + statedEnd.get() + ", which is before it");
        }
    }

    /** The last day on which all parts are offered, empty where nothing states one. */
    Optional<LocalDate> validUntil(List<QuotedPart> parts) {
        if (statedEnd.isPresent()) {
            return statedEnd;
        }
        return parts.stream()
                .map(part -> part.text().validDays())
                .filter(days -> days > 0)
                .min(Long::compare)
                .map(date::plusDays);
    }
}
