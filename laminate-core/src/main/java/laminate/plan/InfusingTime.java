package laminate.plan;

import java.util.List;

/**
 * How long a stage takes to infuse, and what tells so: the flow through the layers where the infusion is planned, else the
 * time that the workshop's labour reckons with. Infusions of one stage follow each other.
 *
 * @param planned by the plans of its infusions (s)
 * @param byLabour by the operation {@code infusion} of the workshop's labour, for the zones that no plan fills (s)
 * @param plannedZones the names of the zones that the first holds for
 * @param neverFull the names of the zones whose plan never fills them, so that the second holds for them
 */
public record InfusingTime(double planned, double byLabour, List<String> plannedZones, List<String> neverFull) {

    /** Copies the lists. */
    public InfusingTime {
        plannedZones = List.copyOf(plannedZones);
        neverFull = List.copyOf(neverFull);
    }

    /**
     * All of it.
     *
     * @return time (s)
     */
    public double time() {
        return planned + byLabour;
    }
}
