package laminate.plan.infusion;

import java.util.Objects;
import laminate.material.Figure;

/**
 * Resin that one infusion leaves outside the laminate, and in the openings of its cores (kg).
 *
 * @param hose in the feed hose
 * @param spiral in the spiral tube
 * @param mesh in the flow mesh
 * @param catchPot run over into the catch pot
 * @param bucket left in the feed bucket, so that it draws no air
 * @param grooves in the grooves, holes and kerfs of the cores; this is in the part and counted there
 */
public record HeldResin(Figure hose, Figure spiral, Figure mesh, Figure catchPot, Figure bucket, double grooves) {

    /** Checks that nothing is missing. */
    public HeldResin {
        Objects.requireNonNull(hose, "hose");
        Objects.requireNonNull(spiral, "spiral");
        Objects.requireNonNull(mesh, "mesh");
        Objects.requireNonNull(catchPot, "catchPot");
        Objects.requireNonNull(bucket, "bucket");
    }

    /**
     * Resin in hose and spiral tube.
     *
     * @return the sum (kg)
     */
    public double lines() {
        return hose.value() + spiral.value();
    }

    /**
     * All that is thrown away: lines, mesh, catch pot and bucket, without the grooves.
     *
     * @return the sum (kg)
     */
    public double lost() {
        return lines() + mesh.value() + catchPot.value() + bucket.value();
    }
}
