package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.part.Measured;
import laminate.process.Range;

/** Sets what was measured against the plan. */
final class Comparisons {

    private Comparisons() {}

    static List<Comparison> of(PartEstimate estimate) {
        List<Comparison> comparisons = new ArrayList<>();
        Measured whole = estimate.part().measured();
        if (whole.mass().isPresent()) {
            comparisons.add(
                    new Comparison("mass", estimate.massEach(), whole.mass().getAsDouble(), true));
        }
        if (whole.meanThickness().isPresent()) {
            comparisons.add(new Comparison(
                    "mean thickness",
                    estimate.meanThicknessWithCoatings(),
                    whole.meanThickness().getAsDouble(),
                    false));
        }
        for (ZoneEstimate zone : estimate.zones()) {
            Measured measured = zone.zone().measured();
            String name = zone.zone().name();
            if (measured.mass().isPresent()) {
                Range planned = zone.massPerArea().times(zone.zone().area());
                comparisons.add(new Comparison(
                        "mass of " + name, planned, measured.mass().getAsDouble(), true));
            }
            if (measured.meanThickness().isPresent()) {
                comparisons.add(new Comparison(
                        "thickness of " + name,
                        zone.thicknessWithCoatings(),
                        measured.meanThickness().getAsDouble(),
                        false));
            }
        }
        return comparisons;
    }
}
