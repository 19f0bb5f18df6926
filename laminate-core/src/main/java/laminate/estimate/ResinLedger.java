package laminate.estimate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Sums what must be mixed, pot by pot, in the order in which the pots are first needed. */
final class ResinLedger {
    private final Map<ResinUse, ResinQuantity> byUse = new LinkedHashMap<>();

    void add(ResinUse use, double inPart, ResinLoss loss, double evaporated) {
        byUse.merge(use, new ResinQuantity(use, inPart, loss, evaporated), ResinQuantity::plus);
    }

    List<ResinQuantity> quantities() {
        return List.copyOf(byUse.values());
    }
}
