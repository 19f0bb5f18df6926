package laminate.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinUse;
import laminate.process.Operation;
import laminate.process.Process;
import laminate.process.Workshop;

/** Works out what each stage takes: layers with their resin, pots with their mixes, and the time of the crew. */
final class StageWorks {
    private final PartEstimate estimate;
    private final List<Inflow> inflows;
    private final int crew;
    private final double mixingTime;
    private final MixSizing sizing;

    StageWorks(PartEstimate estimate, Workshop workshop, List<Inflow> inflows) {
        this.estimate = estimate;
        this.inflows = inflows;
        this.crew = workshop.shopFloor().crew();
        this.mixingTime = workshop.shopFloor().mixing().mixingTime().value();
        this.sizing = new MixSizing(
                workshop.plannedTemperature(), crew, workshop.shopFloor().mixing());
    }

    List<StageWork> of(List<List<StageGroup>> stages) {
        NeedShares shares = new NeedShares(estimate, items(stages));
        WorkTimes times = new WorkTimes(estimate, stages);
        StageFlow flow = new StageFlow(inflows, times, shares);
        List<String> names = names(stages);
        List<StageWork> works = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            List<StageGroup> stage = stages.get(i);
            works.add(
                    isInfused(stage)
                            ? infused(names.get(i), stage, shares, times, flow.of(stage))
                            : laid(names.get(i), stage, shares, times));
        }
        return works;
    }

    private static List<WorkItem> items(List<List<StageGroup>> stages) {
        List<WorkItem> items = new ArrayList<>();
        for (List<StageGroup> stage : stages) {
            items.addAll(itemsOf(stage));
        }
        return items;
    }

    private static List<WorkItem> itemsOf(List<StageGroup> stage) {
        List<WorkItem> items = new ArrayList<>();
        for (StageGroup group : stage) {
            items.addAll(group.items());
        }
        return items;
    }

    /** Stages of one name tell which of them they are. */
    private static List<String> names(List<List<StageGroup>> stages) {
        Map<String, Integer> counts = new HashMap<>();
        for (List<StageGroup> stage : stages) {
            counts.merge(stage.get(0).name(), 1, Integer::sum);
        }
        Map<String, Integer> met = new HashMap<>();
        List<String> names = new ArrayList<>();
        for (List<StageGroup> stage : stages) {
            String name = stage.get(0).name();
            int number = met.merge(name, 1, Integer::sum);
            names.add(counts.get(name) == 1 ? name : name + ", " + number + " of " + counts.get(name));
        }
        return names;
    }

    private StageWork laid(String name, List<StageGroup> stage, NeedShares shares, WorkTimes times) {
        double handTime = times.of(Operation.GELCOAT, stage)
                + times.of(Operation.LAY_UP, stage)
                + times.of(Operation.CORE, stage);
        List<PotNeed> pots = new PotShares(shares).laid(itemsOf(stage), handTime);
        List<StageResin> resins = sized(pots);
        double bagging = times.of(Operation.BAGGING, stage) / crew;
        boolean bagsWet = stage.get(0).first().use().process() == Process.VACUUM_BAG;
        return new StageWork(
                stage,
                name,
                resins,
                layers(stage, shares),
                times.of(Operation.DRY_LAY_UP, stage) / crew + (bagsWet ? 0 : bagging),
                handTime / crew + mixes(resins) * mixingTime,
                bagsWet ? bagging : 0,
                Optional.empty(),
                styrene(pots));
    }

    private StageWork infused(
            String name, List<StageGroup> stage, NeedShares shares, WorkTimes times, StageFlow.Infused flow) {
        double bedTime = times.of(Operation.CORE, stage);
        List<PotNeed> pots = new PotShares(shares).infused(itemsOf(stage), bedTime, flow.draw());
        List<StageResin> resins = sized(pots);
        double dry = times.of(Operation.DRY_LAY_UP, stage) + bedTime + times.of(Operation.BAGGING, stage);
        return new StageWork(
                stage,
                name,
                resins,
                layers(stage, shares),
                dry / crew + bedMixes(pots, resins) * mixingTime,
                mixingTime + flow.time().time(),
                0,
                Optional.of(flow.time()),
                styrene(pots));
    }

    private List<StageResin> sized(List<PotNeed> pots) {
        List<StageResin> resins = new ArrayList<>();
        for (PotNeed pot : pots) {
            resins.add(sizing.size(pot));
        }
        return resins;
    }

    private static int mixes(List<StageResin> resins) {
        int mixes = 0;
        for (StageResin resin : resins) {
            mixes += resin.mixes().size();
        }
        return mixes;
    }

    /** The mixes that are spread before the infusion begins. */
    private static int bedMixes(List<PotNeed> pots, List<StageResin> resins) {
        int mixes = 0;
        for (int i = 0; i < pots.size(); i++) {
            mixes += pots.get(i).isDrawn() ? 0 : resins.get(i).mixes().size();
        }
        return mixes;
    }

    private static double styrene(List<PotNeed> pots) {
        double sum = 0;
        for (PotNeed pot : pots) {
            sum += pot.styrene();
        }
        return sum;
    }

    private static boolean isInfused(List<StageGroup> stage) {
        return stage.get(0).kind() == Stage.Kind.INFUSION;
    }

    private static List<StageLayer> layers(List<StageGroup> stage, NeedShares shares) {
        List<StageLayer> layers = new ArrayList<>();
        for (WorkItem item : itemsOf(stage)) {
            double resin = shares.toMix(item.use(), item.resin());
            if (item.bed().isPresent()) {
                ResinUse bed = item.bed().get();
                resin += shares.toMix(bed, item.bedResin());
            }
            layers.add(item.shown().withResin(resin));
        }
        return layers;
    }
}
