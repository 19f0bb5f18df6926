package laminate.plan.infusion;

import java.util.List;
import laminate.estimate.PartEstimate;
import laminate.process.Workshop;

/** Reckons the infusions of parts in a workshop. */
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
     * @param estimate the part as it lies
     * @return the infusions; none where nothing is planned
     * @throws IllegalArgumentException if a plan lacks what the layers and the library do not tell, or contradicts them
     */
    public PartInfusion infuse(PartEstimate estimate) {
        throw new UnsupportedOperationException(workshop + " " + List.of(estimate));
    }
}
