package laminate.order.pieces;

import java.util.Objects;
import laminate.order.cut.Cuts;
import laminate.theory.Require;

/**
 * How layers are parted into pieces, and pieces cut from the roll.
 *
 * @param lap how far strips of a layer lap at a seam (m)
 * @param stagger how far apart seams of layers that follow each other lie at least (m)
 * @param cuts whether each pull is cut straight across the roll
 */
public record CuttingRules(double lap, double stagger, Cuts cuts) {
    /** Laps of 50 mm and seams 100 mm apart: common practice, no source. */
    public static final CuttingRules USUAL = new CuttingRules(0.05, 0.1, Cuts.FREE);

    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if a length is negative or not finite
     */
    public CuttingRules {
        Objects.requireNonNull(cuts, "cuts");
        Require.notNegative("lap", lap);
        Require.notNegative("stagger", stagger);
    }

    /**
     * The same with other cuts.
     *
     * @param wanted whether each pull is cut straight across the roll
     * @return the rules
     */
    public CuttingRules withCuts(Cuts wanted) {
        return new CuttingRules(lap, stagger, wanted);
    }
}
