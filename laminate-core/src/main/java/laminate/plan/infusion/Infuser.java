package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.part.infusion.InfusionPlan;
import laminate.process.Process;
import laminate.process.Workshop;

/**
 * Reckons the infusions of parts in a workshop.
 *
 * <pre>{@code
 * PartInfusion infused = new Infuser(workshop).infuse(new Estimator(workshop).estimate(part));
 * OptionalDouble seconds = infused.infusions().get(0).fill().time();
 * }</pre>
 *
 * <p>A plan of the part holds for all its infused zones that have no plan of their own, and is reckoned for each of them;
 * what is told is the zone that fills last.
 */
public final class Infuser {
    private final Workshop workshop;

    /**
     * An infuser.
     *
     * @param workshop the workshop's temperature, losses and ways to mix
     */
    public Infuser(Workshop workshop) {
        this.workshop = workshop;
    }

    /**
     * Reckons every infusion that a part or its zones plan.
     *
     * @param estimate the part as it lies, estimated in the same workshop
     * @return the infusions; none where nothing is planned
     * @throws IllegalArgumentException if a plan lacks what the layers and the library do not tell, or contradicts them
     */
    public PartInfusion infuse(PartEstimate estimate) {
        List<Infusion> infusions = new ArrayList<>();
        Optional<InfusionPlan> whole = estimate.part().infusion();
        if (whole.isPresent()) {
            List<ZoneEstimate> zones = withoutPlan(estimate);
            if (!zones.isEmpty()) {
                infusions.add(OneInfusion.ofPart(whole.get(), zones, workshop));
            }
        }
        for (ZoneEstimate zone : estimate.zones()) {
            if (zone.zone().infusion().isPresent()) {
                infusions.add(OneInfusion.ofZone(zone.zone().infusion().get(), checked(zone), workshop));
            }
        }
        if (whole.isPresent() && infusions.isEmpty()) {
            throw new IllegalArgumentException(estimate.part().name()
                    + " plans an infusion, but none of its layers is laid by infusion; set process: infusion");
        }
        return new PartInfusion(
                estimate,
                infusions,
                new Balances(estimate, infusions, workshop).all(),
                InfusionCautions.ofAll(estimate, infusions));
    }

    private static ZoneEstimate checked(ZoneEstimate zone) {
        if (!InfusedLaminate.isIn(zone)) {
            throw new IllegalArgumentException("zone " + zone.zone().name()
                    + " plans an infusion, but none of its reinforcement is laid by infusion; set process: infusion");
        }
        return zone;
    }

    /** The infused zones that have no plan of their own; zones of given plies only where no layer is infused. */
    private static List<ZoneEstimate> withoutPlan(PartEstimate estimate) {
        List<ZoneEstimate> zones = estimate.zones().stream()
                .filter(zone -> zone.zone().infusion().isEmpty() && InfusedLaminate.isIn(zone))
                .toList();
        List<ZoneEstimate> infused = zones.stream()
                .filter(zone -> zone.fibreVolumeFraction(Process.INFUSION).isPresent())
                .toList();
        return infused.isEmpty() ? zones : infused;
    }
}
