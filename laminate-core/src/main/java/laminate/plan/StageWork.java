package laminate.plan;

import java.util.List;
import java.util.Optional;

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
 * @param infusing what it takes of the wet time to infuse, empty where nothing is
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
        Optional<InfusingTime> infusing,
        double styrene) {

    StageGroup first() {
        return groups.get(0);
    }

    Stage.Kind kind() {
        return first().kind();
    }

    /** The resin that is drawn in, empty for a stage that is not infused. */
    Optional<StageResin> drawn() {
        return Stage.drawn(kind(), resins);
    }

    /** Whether it gels under a bag. */
    boolean isBagged() {
        return bagTime > 0 || kind() == Stage.Kind.INFUSION;
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
