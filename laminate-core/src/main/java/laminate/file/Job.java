package laminate.file;

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

/**
 * What a part file comes to: the part, where it is made and what things cost.
 *
 * @param part the part, its materials resolved
 * @param workshop the workshop's figures; {@link Workshop#USUAL} where no workshop is named
 * @param prices the price list, empty where none is named
 * @param materials the library with the user's own materials laid over it
 * @param alternatives the names of schedules, each with those that stand to choice in its place, see
 *     {@link Overrides#schedules}
 */
public record Job(
        Part part,
        Workshop workshop,
        Optional<PriceList> prices,
        Materials materials,
        Map<String, List<String>> alternatives) {

    /** Checks that nothing is missing. */
    public Job {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(workshop, "workshop");
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(materials, "materials");
        alternatives = Collections.unmodifiableMap(new LinkedHashMap<>(alternatives));
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
}
