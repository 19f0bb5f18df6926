package laminate.compare;

import java.util.List;
import java.util.Optional;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;

/** Which zone of the first part a zone of another stands for. */
final class ZoneMatch {
    private ZoneMatch() {}

    /**
     * The zone of the first in the same place, if both have zones of the same names in the same order; else the one of its
     * name; else the only one.
     *
     * @param first the part that is compared with
     * @param other another part
     * @param number number of the zone of the other, counted from 0
     * @return the zone, empty if none can be told
     */
    static Optional<ZoneEstimate> of(PartEstimate first, PartEstimate other, int number) {
        if (names(first).equals(names(other))) {
            return Optional.of(first.zones().get(number));
        }
        String name = names(other).get(number);
        List<ZoneEstimate> named = first.zones().stream()
                .filter(zone -> zone.zone().name().equals(name))
                .toList();
        List<ZoneEstimate> found = named.isEmpty() ? first.zones() : named;
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    static List<String> names(PartEstimate estimate) {
        return estimate.zones().stream().map(zone -> zone.zone().name()).toList();
    }
}
