package laminate.compare;

import java.util.Objects;
import java.util.Optional;
import laminate.estimate.Estimator;
import laminate.estimate.PriceList;
import laminate.part.Part;
import laminate.process.Workshop;

/**
 * One way to make a part: its lay-up, where it is made and what things cost.
 *
 * @param name what tells it from the others, for example the process
 * @param part the part
 * @param workshop the workshop's figures
 * @param prices the price list, empty for none
 */
public record Candidate(String name, Part part, Workshop workshop, Optional<PriceList> prices) {
    /**
     * Checks that nothing is missing.
     *
     * @param name what tells it from the others
     * @param part the part
     * @param workshop the workshop's figures
     * @param prices the price list
     * @throws IllegalArgumentException if the name is blank
     */
    public Candidate {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(prices, "prices");
        if (name.isBlank()) {
            throw new IllegalArgumentException("each way to make a part needs a name");
        }
    }

    Estimator estimator() {
        return new Estimator(workshop, prices);
    }
}
