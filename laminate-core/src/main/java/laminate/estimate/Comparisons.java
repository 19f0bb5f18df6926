package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import laminate.part.Measured;

/** Sets what was measured against the plan. */
final class Comparisons {

    private Comparisons() {}

    static List<Comparison> of(PartEstimate estimate) {
        List<Comparison> comparisons = new ArrayList<>();
        Measured whole = estimate.part().measured();
        whole.mass().ifPresent(mass -> comparisons.add(new Comparison("mass", estimate.massEach(), mass, true)));
        whole.meanThickness()
                .ifPresent(thickness -> comparisons.add(
                        new Comparison("mean thickness", estimate.meanThicknessWithCoatings(), thickness, false)));
        for (ZoneEstimate zone : estimate.zones()) {
            Measured measured = zone.zone().measured();
            String name = zone.zone().name();
            measured.mass()
                    .ifPresent(mass -> comparisons.add(new Comparison(
                            "mass of " + name,
                            zone.massPerArea().times(zone.zone().area()),
                            mass,
                            true)));
            measured.meanThickness()
                    .ifPresent(thickness -> comparisons.add(
                            new Comparison("thickness of " + name, zone.thicknessWithCoatings(), thickness, false)));
        }
        return comparisons;
    }
}
