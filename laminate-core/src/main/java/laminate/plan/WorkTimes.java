package laminate.plan;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import laminate.estimate.OperationTime;
import laminate.estimate.PartEstimate;
import laminate.process.Operation;
import laminate.process.Process;

/**
 * Shares out the estimate's hours of coating, laying, bedding, bagging and infusing over the stages of one moulding, by
 * the area that each stage works on. Mould preparation, trimming and fitting are no part of a stage.
 */
final class WorkTimes {
    private static final List<String> NAMES = List.of(
            Operation.GELCOAT,
            Operation.LAY_UP,
            Operation.DRY_LAY_UP,
            Operation.CORE,
            Operation.BAGGING,
            Operation.INFUSION);

    private final Map<String, Double> secondsPerArea = new HashMap<>();

    WorkTimes(PartEstimate estimate, List<List<StageGroup>> stages) {
        for (String name : NAMES) {
            double area = 0;
            for (List<StageGroup> stage : stages) {
                area += area(name, stage);
            }
            secondsPerArea.put(name, area > 0 ? time(estimate, name) / area : 0);
        }
    }

    /** Time of one person on an operation in a stage (s). */
    double of(String operation, List<StageGroup> stage) {
        return secondsPerArea.get(operation) * area(operation, stage);
    }

    private static double time(PartEstimate estimate, String name) {
        double sum = 0;
        for (OperationTime time : estimate.operations()) {
            sum += time.operation().name().equals(name) ? time.time() : 0;
        }
        return sum / estimate.part().count();
    }

    private static double area(String operation, List<StageGroup> stage) {
        return switch (operation) {
            case Operation.BAGGING -> coveredArea(stage, true);
            case Operation.INFUSION -> isInfused(stage) ? coveredArea(stage, false) : 0;
            default -> laidArea(operation, stage);
        };
    }

    private static boolean isInfused(List<StageGroup> stage) {
        return stage.get(0).kind() == Stage.Kind.INFUSION;
    }

    private static double coveredArea(List<StageGroup> stage, boolean bagged) {
        StageGroup first = stage.get(0);
        if (bagged && (first.kind().isCoat() || first.first().use().process() == Process.HAND_LAY_UP)) {
            return 0;
        }
        double sum = 0;
        Set<Integer> zones = new HashSet<>();
        for (StageGroup group : stage) {
            sum += zones.add(group.zone()) ? group.first().workArea() : 0;
        }
        return sum;
    }

    private static double laidArea(String operation, List<StageGroup> stage) {
        double sum = 0;
        for (StageGroup group : stage) {
            for (WorkItem item : group.items()) {
                sum += operation.equals(item.operation()) ? item.workArea() : 0;
            }
        }
        return sum;
    }
}
