package laminate.plan.infusion;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.estimate.PartEstimate;
import laminate.plan.Inflow;

/**
 * All infusions of a moulding.
 *
 * @param estimate the part as it lies
 * @param infusions the infusion of the part as a whole, if it plans one, then those of its zones in their order
 * @param balances where the infused resin of one moulding goes, for each resin that is infused
 * @param cautions what to mind of all of them
 */
public record PartInfusion(
        PartEstimate estimate, List<Infusion> infusions, List<ResinBalance> balances, List<Caution> cautions) {

    /** Copies the lists. */
    public PartInfusion {
        Objects.requireNonNull(estimate, "estimate");
        infusions = List.copyOf(infusions);
        balances = List.copyOf(balances);
        cautions = List.copyOf(cautions);
    }

    /**
     * The infusion of the part as a whole.
     *
     * @return it, empty where the part plans none
     */
    public Optional<Infusion> ofPart() {
        return infusions.stream().filter(each -> each.zone().isEmpty()).findFirst();
    }

    /**
     * How the resin of its infusions is drawn in, for {@link laminate.plan.MixPlanner#plan(PartEstimate, List)}.
     *
     * @return one for each infusion
     */
    public List<Inflow> inflows() {
        return infusions.stream().map(Infusion::inflow).toList();
    }

    /**
     * The infusion that a zone plans for itself.
     *
     * @param zone the name of the zone
     * @return it, empty where the zone plans none
     */
    public Optional<Infusion> ofZone(String zone) {
        return infusions.stream()
                .filter(each -> each.zone().equals(Optional.of(zone)))
                .findFirst();
    }
}
