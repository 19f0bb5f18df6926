package laminate.check;

import java.util.List;
import java.util.Objects;
import laminate.estimate.ZoneEstimate;
import laminate.part.BeamPlan;
import laminate.theory.beam.BeamResponse;
import laminate.theory.beam.Deflection;

/**
 * A beam or strip, reckoned: free to curl across its width, with the shear of its core.
 *
 * @param plan the beam
 * @param zone the zone whose laminate it is made of
 * @param response moment, shear force and deflection along it
 * @param reserves the least reserve factor of each kind that arises, least first
 * @param worst what the plies carry at {@code worstPlace}, in axes of which x runs along the beam
 * @param worstPlace where a ply comes nearest to failure, or where the moment is largest if no ply is judged (m from the
 *     start); a core has its place with its reserve factor
 * @param limits the limits that hold for it, worst first
 */
public record BeamCheck(
        BeamPlan plan,
        ZoneEstimate zone,
        BeamResponse response,
        List<Reserve> reserves,
        LaminateCheck worst,
        double worstPlace,
        List<LimitCheck> limits) {
    /**
     * Keeps copies.
     *
     * @param plan the beam
     * @param zone the zone whose laminate it is made of
     * @param response moment, shear force and deflection along it
     * @param reserves the least reserve factor of each kind
     * @param worst what the plies carry at the worst place
     * @param worstPlace the worst place (m from the start)
     * @param limits the limits that hold for it
     */
    public BeamCheck {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(response, "response");
        Objects.requireNonNull(worst, "worst");
        reserves = List.copyOf(reserves);
        limits = List.copyOf(limits);
    }

    /**
     * The largest deflection with its parts by bending and shear.
     *
     * @return where it is and how large, positive towards +z
     */
    public Deflection deflection() {
        return response.largestDeflection();
    }
}
