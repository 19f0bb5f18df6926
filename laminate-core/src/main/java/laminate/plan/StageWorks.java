package laminate.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinUse;
import laminate.process.Operation;
import laminate.process.Process;
import laminate.process.Workshop;

/** Works out what each stage takes: layers with their resin, pots with their mixes, and the time of the crew. */
final class StageWorks {
    private final PartEstimate estimate;
    private final int crew;
    private final double mixingTime;
    private final MixSizing sizing;

    StageWorks(PartEstimate estimate, Workshop workshop, double temperature) {
        this.estimate = estimate;
        this.crew = workshop.shopFloor().crew();
        this.mixingTime = workshop.shopFloor().mixing().mixingTime().value();
        this.sizing = new MixSizing(temperature, crew, workshop.shopFloor().mixing());
    }

    List<StageWork> of(List<List<StageGroup>> stages) {
        NeedShares shares = new NeedShares(estimate, items(stages));
        WorkTimes times = new WorkTimes(estimate, stages);
        List<String> names = names(stages);
        List<StageWork> works = new ArrayList<>();
        for (int i = 0; i < stages.size(); i++) {
            works.add(work(names.get(i), stages.get(i), shares, times));
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

    private StageWork work(String name, List<StageGroup> stage, NeedShares shares, WorkTimes times) {
        double handTime = handTime(stage, times);
        double flowTime = times.of(Operation.INFUSION, stage);
        List<PotNeed> pots = new PotShares(shares).of(itemsOf(stage), handTime, flowTime);
        List<StageResin> resins = new ArrayList<>();
        double wetTime = handTime / crew + flowTime;
        double styrene = 0;
        for (PotNeed pot : pots) {
            StageResin sized = sizing.size(pot);
            resins.add(sized);
            wetTime += sized.mixes().size() * mixingTime;
            styrene += pot.styrene();
        }
        double bagging = times.of(Operation.BAGGING, stage) / crew;
        boolean bagsWet = stage.get(0).first().use().process() == Process.VACUUM_BAG;
        return new StageWork(
                stage,
                name,
                resins,
                layers(stage, shares),
                dryTime(stage, times) + (bagsWet ? 0 : bagging),
                wetTime,
                bagsWet ? bagging : 0,
                styrene);
    }

    private static double handTime(List<StageGroup> stage, WorkTimes times) {
        double core = isInfused(stage) ? 0 : times.of(Operation.CORE, stage);
        return times.of(Operation.GELCOAT, stage) + times.of(Operation.LAY_UP, stage) + core;
    }

    private double dryTime(List<StageGroup> stage, WorkTimes times) {
        double core = isInfused(stage) ? times.of(Operation.CORE, stage) : 0;
        return (times.of(Operation.DRY_LAY_UP, stage) + core) / crew;
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
