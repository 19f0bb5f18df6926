package laminate.print.check;

import java.util.List;
import java.util.Objects;
import laminate.check.PartCheck;
import laminate.check.ZoneComparison;
import laminate.estimate.Estimator;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.part.Zone;

/**
 * What is to be printed of a part.
 *
 * @param check its check
 * @param comparisons zones of it compared with one of them, maybe none
 */
public record CheckedPart(PartCheck check, List<ComparedZone> comparisons) {
    /**
     * Keeps a copy.
     *
     * @param check its check
     * @param comparisons zones of it compared with one of them
     */
    public CheckedPart {
        Objects.requireNonNull(check, "check");
        comparisons = List.copyOf(comparisons);
    }

    /**
     * A check without comparisons.
     *
     * @param check the check
     * @return what is to be printed
     */
    public static CheckedPart of(PartCheck check) {
        return new CheckedPart(check, List.of());
    }

    /**
     * A check with every other zone compared with one.
     *
     * @param reference the name of the zone that may be replaced
     * @param check the check
     * @param estimator of the workshop, by whose prices cost is compared
     * @return what is to be printed
     * @throws IllegalArgumentException if no zone, or more than one, is called so, or there is no other
     */
    public static CheckedPart comparedWith(String reference, PartCheck check, Estimator estimator) {
        PartEstimate estimate = check.estimate();
        Zone zone = estimate.part().zone(reference);
        List<ZoneEstimate> zones = estimate.zones();
        ZoneEstimate replaced = zones.get(estimate.part().zones().indexOf(zone));
        List<ComparedZone> comparisons = zones.stream()
                .filter(other -> other != replaced)
                .map(other -> ZoneComparison.of(replaced, other, check.options()))
                .map(comparison -> ComparedZone.of(comparison, estimator))
                .toList();
        if (comparisons.isEmpty()) {
            throw new IllegalArgumentException("there is no other zone to compare '" + reference + "' with");
        }
        return new CheckedPart(check, comparisons);
    }

    /**
     * Whether there is nothing to say.
     *
     * @return true if nothing was checked and nothing compared
     */
    public boolean isEmpty() {
        return check.isEmpty() && comparisons.isEmpty();
    }
}
