package laminate.plan;

import java.util.Optional;
import laminate.estimate.LaidLayer;
import laminate.estimate.ResinUse;

/**
 * Something laid or applied on a zone in one piece of work: a layer, a core with its bed, or one coat.
 *
 * @param zone the place of the zone in the part, from 0
 * @param use the pot it takes
 * @param bed the pot of its bed, empty without one
 * @param operation the operation that its time is counted as, by the names of {@link laminate.process.Operation}
 * @param workArea the area that work is counted by, of one moulding (m²)
 * @param resin what it takes of its pot, without losses, for one moulding (kg)
 * @param bedResin what it takes of the pot of its bed (kg)
 * @param laid the layer as it lies, empty for a coat
 * @param shown how a plan shows it
 */
record WorkItem(
        int zone,
        ResinUse use,
        Optional<ResinUse> bed,
        String operation,
        double workArea,
        double resin,
        double bedResin,
        Optional<LaidLayer> laid,
        StageLayer shown) {}
