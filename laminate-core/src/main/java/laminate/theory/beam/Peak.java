package laminate.theory.beam;

/**
 * The largest value of something along a beam, by magnitude.
 *
 * @param x where it is: distance from the start; the first place if there are several (m)
 * @param value the value there with its sign, in the unit of what was asked
 */
public record Peak(double x, double value) {}
