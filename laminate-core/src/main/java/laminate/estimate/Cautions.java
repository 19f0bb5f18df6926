package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import laminate.process.Workshop;

/** All cautions that a part calls for: those of its schedule first, then those of health, fire and strength. */
final class Cautions {

    private Cautions() {}

    static List<Caution> of(PartEstimate estimate, Workshop workshop) {
        LinkedHashSet<Caution> cautions = new LinkedHashSet<>();
        estimate.zones().forEach(zone -> cautions.addAll(new ScheduleCautions(zone).list()));
        cautions.addAll(WorkCautions.of(estimate, workshop));
        cautions.addAll(SafetyCautions.of(estimate));
        return new ArrayList<>(cautions);
    }
}
