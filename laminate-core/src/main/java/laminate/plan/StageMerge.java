package laminate.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Joins the stages of zones: each zone keeps its order, and stages that are the same work out of the same pots are laid on
 * all zones at once. What only some zones take comes as late as their own order allows, but coats at the mould face stay
 * before all layers, and coats on the inner face after them.
 */
final class StageMerge {
    private final List<List<StageGroup>> stages = new ArrayList<>();

    /** The stages, each with what every zone adds to it. */
    List<List<StageGroup>> stages() {
        return stages;
    }

    void add(List<StageGroup> zone) {
        int from = 0;
        for (int i = 0; i < zone.size(); i++) {
            int place = find(zone.get(i), from);
            if (place < 0) {
                place = placeFor(zone, i, from);
                stages.add(place, new ArrayList<>());
            }
            stages.get(place).add(zone.get(i));
            from = place + 1;
        }
    }

    private int find(StageGroup group, int from) {
        for (int i = from; i < stages.size(); i++) {
            if (stages.get(i).get(0).joins(group)) {
                return i;
            }
        }
        return -1;
    }

    private int placeFor(List<StageGroup> zone, int index, int from) {
        int end = endOfPhase(phase(zone.get(index).kind()), from);
        for (StageGroup later : zone.subList(index + 1, zone.size())) {
            int met = find(later, from);
            if (met >= 0) {
                return Math.min(met, end);
            }
        }
        return end;
    }

    private int endOfPhase(int phase, int from) {
        int end = from;
        while (end < stages.size() && phase(stages.get(end).get(0).kind()) <= phase) {
            end++;
        }
        return end;
    }

    private static int phase(Stage.Kind kind) {
        return switch (kind) {
            case MOULD_COAT -> 0;
            case LAMINATE, CORE, INFUSION -> 1;
            case INNER_COAT -> 2;
        };
    }
}
