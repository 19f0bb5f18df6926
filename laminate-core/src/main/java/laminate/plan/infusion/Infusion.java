package laminate.plan.infusion;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.part.infusion.InfusionPlan;
import laminate.plan.Inflow;

/**
 * One infusion of a moulding: the resin let in once, under one bag.
 *
 * @param zone the name of the zone that plans it, empty where the part plans it as a whole
 * @param zones the names of the zones that it fills
 * @param count how many alike a moulding takes: as many as there are such zones, one for a part as a whole
 * @param plan the plan
 * @param figures what it is reckoned from
 * @param fill how the front runs
 * @param inflow how the resin is drawn in, for a plan of its mixes
 * @param gel the fill time against the gel time
 * @param reach how far it gets within the usable time, empty where the gel time is not known
 * @param hose what the feed hose takes, empty where the plan has none
 * @param leak the drop test that the bag has to pass
 * @param held resin in lines, mesh, grooves and pot
 * @param buckets the mixes to draw from, empty where it never fills or the gel time is not known
 * @param cautions what to mind
 */
public record Infusion(
        Optional<String> zone,
        List<String> zones,
        int count,
        InfusionPlan plan,
        FlowFigures figures,
        Fill fill,
        Inflow inflow,
        GelMargin gel,
        Optional<Reach> reach,
        Optional<HoseLoss> hose,
        LeakLimit leak,
        HeldResin held,
        Optional<Buckets> buckets,
        List<Caution> cautions) {

    /** Copies the lists. */
    public Infusion {
        Objects.requireNonNull(zone, "zone");
        zones = List.copyOf(zones);
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(figures, "figures");
        Objects.requireNonNull(fill, "fill");
        Objects.requireNonNull(inflow, "inflow");
        Objects.requireNonNull(gel, "gel");
        Objects.requireNonNull(reach, "reach");
        Objects.requireNonNull(hose, "hose");
        Objects.requireNonNull(leak, "leak");
        Objects.requireNonNull(held, "held");
        Objects.requireNonNull(buckets, "buckets");
        cautions = List.copyOf(cautions);
    }
}
