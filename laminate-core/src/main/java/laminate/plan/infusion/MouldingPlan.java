package laminate.plan.infusion;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.plan.JobSheet;
import laminate.plan.MixPlan;
import laminate.plan.MixPlanner;
import laminate.plan.Stage;
import laminate.plan.StageLayer;
import laminate.process.Workshop;

/**
 * One moulding from gelcoat to the last gel: its stages and mixes, and the infusions that they go by.
 *
 * <pre>{@code
 * MouldingPlan plan = MouldingPlan.of(new Estimator(workshop).estimate(part), workshop);
 * JobSheet sheets = plan.jobSheet();
 * }</pre>
 *
 * @param mixes stages, mixes and clock; where an infusion is planned, its flow tells how long the stage takes
 * @param infusion the planned infusions, empty where nothing is infused
 */
public record MouldingPlan(MixPlan mixes, Optional<PartInfusion> infusion) {

    /** Checks that nothing is missing. */
    public MouldingPlan {
        Objects.requireNonNull(mixes, "mixes");
        Objects.requireNonNull(infusion, "infusion");
    }

    /**
     * Plans one moulding.
     *
     * @param estimate the part as estimated in the same workshop
     * @param workshop the workshop's temperature, hands, scales, hours and losses
     * @return the plan
     * @throws IllegalArgumentException if a layer is infused and the plan of an infusion lacks what the layers and the library
     *     do not tell, or contradicts them
     */
    public static MouldingPlan of(PartEstimate estimate, Workshop workshop) {
        Optional<PartInfusion> infusion =
                isInfused(estimate) ? Optional.of(new Infuser(workshop).infuse(estimate)) : Optional.empty();
        MixPlan mixes = new MixPlanner(workshop)
                .plan(estimate, infusion.map(PartInfusion::inflows).orElse(List.of()));
        return new MouldingPlan(mixes, infusion);
    }

    /** Laid by hand, say, a part needs no plan of how it would be infused. */
    private static boolean isInfused(PartEstimate estimate) {
        for (ZoneEstimate zone : estimate.zones()) {
            if (!InfusedZone.uses(zone).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /**
     * What the crew takes to the mould.
     *
     * @return a page for each stage
     */
    public JobSheet jobSheet() {
        return JobSheet.of(mixes);
    }

    /**
     * The planned infusions of a stage, in the order that its mixes are drawn.
     *
     * @param stage a stage of this plan
     * @return those that fill a zone of it; none for a stage that is not infused or whose infusion is not planned
     */
    public List<Infusion> infusionsOf(Stage stage) {
        if (stage.kind() != Stage.Kind.INFUSION || infusion.isEmpty()) {
            return List.of();
        }
        List<String> zones =
                stage.layers().stream().map(StageLayer::zone).distinct().toList();
        return infusion.get().infusions().stream()
                .filter(each -> each.zones().stream().anyMatch(zones::contains))
                .toList();
    }
}
