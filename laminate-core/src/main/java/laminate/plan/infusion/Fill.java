package laminate.plan.infusion;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import laminate.process.flow.FrontPoint;

/**
 * How the front runs.
 *
 * @param time until the resin stands at the vent through the whole thickness (s), empty if it never does: the viscosity
 *     rises too soon, or the resin does not climb so high
 * @param quickest the same with the permeability at the upper end of its scatter (s)
 * @param slowest the same with the permeability at the lower end of its scatter (s), empty if it then never fills
 * @param lag how far the laminate is behind the mesh (m), empty without a mesh or a permeability through the thickness
 * @param meshTime until the resin in the mesh reaches the vent (s), empty as the lag
 * @param throughTime until resin that stands over one face has soaked through the thickness (s), empty without a
 *     permeability through the thickness
 * @param front where the front stands at times, the last point at the vent if it fills
 */
public record Fill(
        OptionalDouble time,
        OptionalDouble quickest,
        OptionalDouble slowest,
        OptionalDouble lag,
        OptionalDouble meshTime,
        OptionalDouble throughTime,
        List<FrontPoint> front) {

    /** Copies the front. */
    public Fill {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(quickest, "quickest");
        Objects.requireNonNull(slowest, "slowest");
        Objects.requireNonNull(lag, "lag");
        Objects.requireNonNull(meshTime, "meshTime");
        Objects.requireNonNull(throughTime, "throughTime");
        front = List.copyOf(front);
    }
}
