package laminate.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ResinUse;

/**
 * Shares out what the estimate says is to be mixed over the items that take it, for one moulding: in proportion to the
 * resin that stays in each. What is lost in pots, bags and lines goes along in that proportion, and all shares of a pot
 * sum to it.
 */
final class NeedShares {
    private final Map<ResinUse, Taken> taken = new LinkedHashMap<>();
    private final List<ResinQuantity> quantities;
    private final int mouldings;

    NeedShares(PartEstimate estimate, List<WorkItem> items) {
        quantities = estimate.quantities().resins();
        mouldings = estimate.part().count();
        for (WorkItem item : items) {
            add(item.use(), item.resin());
            if (item.bed().isPresent()) {
                add(item.bed().get(), item.bedResin());
            }
        }
    }

    private void add(ResinUse use, double resin) {
        Taken sum = taken.getOrDefault(use, new Taken(quantity(use), 0, 0));
        taken.put(use, new Taken(sum.quantity, sum.resin + resin, sum.items + 1));
    }

    private ResinQuantity quantity(ResinUse use) {
        for (ResinQuantity quantity : quantities) {
            if (quantity.use().equals(use)) {
                return quantity;
            }
        }
        throw new IllegalArgumentException(
                "the estimate mixes no " + use.resin().id() + " for " + use.use());
    }

    /** Resin to mix, without its agent, for an item that keeps so much of it (kg). */
    double toMix(ResinUse use, double resin) {
        return share(use, resin) * taken.get(use).quantity.toMix() / mouldings;
    }

    /** Styrene that an item gives off as it is laid and cures (kg). */
    double styrene(ResinUse use, double resin) {
        return use.resin().family().isStyrenic()
                ? share(use, resin) * taken.get(use).quantity.evaporated() / mouldings
                : 0;
    }

    /** Items that keep nothing of a pot, which only fills lines and bags, take even parts of it. */
    private double share(ResinUse use, double resin) {
        Taken sum = taken.get(use);
        return sum.resin > 0 ? resin / sum.resin : 1.0 / sum.items;
    }

    private record Taken(ResinQuantity quantity, double resin, int items) {}
}
