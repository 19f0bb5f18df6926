package laminate.plan;

import java.util.List;
import laminate.estimate.ResinUse;

/**
 * What one zone adds to a stage.
 *
 * @param kind what is done
 * @param name the name of the stage without the number of its part
 * @param items what is laid, in order
 */
record StageGroup(Stage.Kind kind, String name, List<WorkItem> items) {

    WorkItem first() {
        return items.get(0);
    }

    int zone() {
        return first().zone();
    }

    double thickness() {
        double sum = 0;
        for (WorkItem item : items) {
            sum += item.shown().thickness();
        }
        return sum;
    }

    /**
     * Whether this and what another zone adds are one stage: the same work out of the same pots. A coating is the same
     * whatever the process of the layers behind it.
     */
    boolean joins(StageGroup other) {
        return kind == other.kind
                && name.equals(other.name)
                && (kind.isCoat() ? isSamePot(first().use(), other.first().use()) : takesTheSame(other));
    }

    private boolean takesTheSame(StageGroup other) {
        return first().use().equals(other.first().use())
                && first().bed().equals(other.first().bed());
    }

    static boolean isSamePot(ResinUse one, ResinUse other) {
        return one.resin().id().equals(other.resin().id())
                && one.dose().agent().id().equals(other.dose().agent().id())
                && one.dose().ratio() == other.dose().ratio();
    }
}
