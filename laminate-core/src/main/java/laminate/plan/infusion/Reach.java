package laminate.plan.infusion;

import laminate.theory.Require;

/**
 * How far the resin gets from a feed within a time, and how far apart feeds may lie.
 *
 * @param within the usable time of the resin (s)
 * @param greatest the greatest flow length that fills within it (m)
 * @param spacing the largest spacing of feeds that fits (m): twice the flow length for parallel feed lines with a vent half
 *     way; √2 times the radius for ports on a square grid; twice the radius, as a diameter, for a rim
 * @param sureSpacing the same with the permeability at the lower end of its scatter (m)
 */
public record Reach(double within, double greatest, double spacing, double sureSpacing) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if one is negative, NaN or infinite
     */
    public Reach {
        Require.notNegative("usable time", within);
        Require.notNegative("greatest flow length", greatest);
        Require.notNegative("spacing of feeds", spacing);
        Require.notNegative("sure spacing of feeds", sureSpacing);
    }
}
