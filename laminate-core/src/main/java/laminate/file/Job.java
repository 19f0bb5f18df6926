package laminate.file;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.estimate.PriceList;
import laminate.material.Materials;
import laminate.part.Part;
import laminate.process.Workshop;
import laminate.quote.QuotationText;
import laminate.quote.Quote;
import laminate.quote.Quoting;
import laminate.quote.Terms;
import laminate.quote.WholePacks;

/**
 * What a part file comes to: the part, where it is made and what things cost.
 *
 * @param part the part, its materials resolved
 * @param workshop the workshop's figures; {@link Workshop#USUAL} where no workshop is named
 * @param prices the price list, empty where none is named
 * @param materials the library with the user's own materials laid over it
 * @param alternatives the names of schedules, each with those that stand to choice in its place, see
 *     {@link Overrides#schedules}
 * @param terms what the yard quotes by, empty where the workshop states no pricing
 * @param quotation what the yard writes on its quotations
 * @param files the files all this was read from: the part file, and those that it or an override names
 */
public record Job(
        Part part,
        Workshop workshop,
        Optional<PriceList> prices,
        Materials materials,
        Map<String, List<String>> alternatives,
        Optional<Terms> terms,
        QuotationText quotation,
        List<Path> files)
        implements Work {

    /** Checks that nothing is missing. */
    public Job {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(materials, "materials");
        Objects.requireNonNull(terms, "terms");
        Objects.requireNonNull(quotation, "quotation");
        files = List.copyOf(files);
        alternatives = Collections.unmodifiableMap(new LinkedHashMap<>(alternatives));
    }

    @Override
    public List<Job> jobs() {
        return List.of(this);
    }

    @Override
    public List<Job> mouldings() {
        return List.of(this);
    }

    /**
     * This job with the part in another number.
     *
     * @param count how many mouldings
     * @return the job
     * @throws IllegalArgumentException if the number is below one
     */
    public Job withCount(int count) {
        return with(part.withCount(count), files);
    }

    /** This job with the part changed, and the files that it is of. */
    Job with(Part other, List<Path> of) {
        return new Job(other, workshop, prices, materials, alternatives, terms, quotation, of);
    }

    /**
     * Estimates the part in its workshop at its prices.
     *
     * @return thickness, mass, fibre content, stiffness, quantities, hours and cost
     * @throws IllegalArgumentException if a layer cannot be laid as stated, see {@link Estimator#estimate}
     */
    public PartEstimate estimate() {
        return new Estimator(workshop, prices).estimate(part);
    }

    private Quoting quoting(Terms by) {
        return new Quoting(new Estimator(workshop, prices), workshop, by);
    }

    /**
     * Quotes the part in its workshop at its prices.
     *
     * @param counts the numbers of good mouldings asked for
     * @return an offer for each number
     * @throws IllegalArgumentException if the workshop states no pricing, or a price is missing, saying which
     */
    public Quote quote(List<Integer> counts) {
        return quoting(stated()).quote(part, counts);
    }

    /**
     * Quotes the part with its materials at the whole packs that are bought for the batch alone.
     *
     * @param counts the numbers of good mouldings asked for
     * @return an offer for each number
     * @throws IllegalArgumentException if the workshop states no pricing, or a price is missing, saying which
     */
    public Quote quoteAsBought(List<Integer> counts) {
        return new Quoting(new Estimator(workshop, prices), workshop, stated(), new WholePacks(listed()))
                .quote(part, counts);
    }

    /** The prices, which a quote needs. */
    PriceList listed() {
        return prices.orElseThrow(() -> new IllegalArgumentException(part.name()
                + " has no price list; a quote needs a price for everything: add prices:"
                + " with the name of a price file"));
    }

    /** The terms, which a quote needs. */
    Terms stated() {
        return terms.orElseThrow(() -> new IllegalArgumentException(part.name()
                + ": the workshop states no pricing; add pricing: to the workshop file, as in {margin: 25 %}"));
    }
}
