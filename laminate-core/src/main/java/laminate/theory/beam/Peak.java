package laminate.theory.beam;

import laminate.theory.Require;

/**
 * The largest value of something along a beam, by magnitude.
 *
 * @param x where it is: distance from the start; the first place if there are several (m)
 * @param value the value there with its sign, in the unit of what was asked
 */
public record Peak(double x, double value) {
    /**
     * Checks the numbers.
     *
     * @param x where it is (m)
     * @param value the value there
     * @throws IllegalArgumentException if one is not finite
     */
    public Peak {
        Require.finite("x", x);
        Require.finite("largest value", value);
    }
}
