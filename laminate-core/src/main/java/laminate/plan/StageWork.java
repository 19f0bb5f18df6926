package laminate.plan;

import java.util.List;

/**
 * A stage before it stands on the clock.
 *
 * @param groups what each zone adds to it
 * @param name its name, with the number of its part
 * @param resins its resins and their mixes
 * @param layers what is laid, zone by zone
 * @param dryTime time that the crew takes before resin is mixed (s)
 * @param wetTime time that the crew takes to mix and to use up (s)
 * @param bagTime time that the crew takes to bag what is wet (s)
 * @param styrene styrene that it gives off (kg)
 */
record StageWork(
        List<StageGroup> groups,
        String name,
        List<StageResin> resins,
        List<StageLayer> layers,
        double dryTime,
        double wetTime,
        double bagTime,
        double styrene) {

    StageGroup first() {
        return groups.get(0);
    }

    Stage.Kind kind() {
        return first().kind();
    }

    double thickness() {
        double most = 0;
        for (StageGroup group : groups) {
            most = Math.max(most, group.thickness());
        }
        return most;
    }

    double duration() {
        return dryTime + wetTime + bagTime;
    }
}
