package laminate.compare;

import java.util.Objects;
import java.util.Optional;
import laminate.estimate.Estimator;
import laminate.estimate.PriceList;
import laminate.part.Part;
import laminate.process.Workshop;
import laminate.quote.Quoting;
import laminate.quote.Terms;

/**
 * One way to make a part: its lay-up, where it is made and what things cost.
 *
 * @param name what tells it from the others, for example the process
 * @param part the part
 * @param workshop the workshop's figures
 * @param prices the price list, empty for none
 * @param terms what the yard quotes by, for the works cost of moulds that it makes
 */
public record Candidate(String name, Part part, Workshop workshop, Optional<PriceList> prices, Terms terms) {
    /**
     * Checks that nothing is missing.
     *
     * @param name what tells it from the others
     * @param part the part
     * @param workshop the workshop's figures
     * @param prices the price list
     * @param terms what the yard quotes by
     * @throws IllegalArgumentException if the name is blank
     */
    public Candidate {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(terms, "terms");
        if (name.isBlank()) {
            throw new IllegalArgumentException("each way to make a part needs a name");
        }
    }

    /**
     * A way to make a part in a yard that reckons its moulds without overhead.
     *
     * @param name what tells it from the others
     * @param part the part
     * @param workshop the workshop's figures
     * @param prices the price list, empty for none
     * @throws IllegalArgumentException if the name is blank
     */
    public Candidate(String name, Part part, Workshop workshop, Optional<PriceList> prices) {
        this(name, part, workshop, prices, Terms.AT_COST);
    }

    Quoting quoting() {
        return new Quoting(estimator(), workshop, terms);
    }

    Estimator estimator() {
        return new Estimator(workshop, prices);
    }
}
