package laminate.part.infusion;

import java.util.OptionalDouble;

/**
 * How the dry layers yield under the bag: V<sub>f</sub>(P) = V (P/P₀)<sup>b</sup>, with V the fibre volume fraction of the
 * laminate, which it has under the full driving pressure P₀. Behind the front the resin carries part of the pressure, so
 * that the bed opens towards the feed.
 *
 * @param exponent b (1): 0.02 to 0.3 for glass reinforcements
 * @param leastPressure the pressure on the fibres below which the bed opens no further (Pa), empty for the usual
 */
public record BedCompaction(double exponent, OptionalDouble leastPressure) {

    /**
     * Checks the law.
     *
     * @throws IllegalArgumentException if the exponent is not above zero and below one, or the pressure not above zero
     */
    public BedCompaction {
        Checks.fraction("compaction exponent", exponent);
        Checks.positive("least pressure", leastPressure, "Pa");
    }
}
