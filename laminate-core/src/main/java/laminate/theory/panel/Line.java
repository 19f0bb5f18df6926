package laminate.theory.panel;

import java.util.List;

/** Functions of one coordinate from 0 to a length, of which the fields of a panel are products. */
interface Line {
    /** The constant 1. */
    int ONE = 0;
    /** Straight from −1 to 1. */
    int LINEAR = 1;
    /** 1 at the start, zero at the end. */
    int AT_START = 2;
    /** 1 at the end, zero at the start. */
    int AT_END = 3;

    /** The length (m). */
    double length();

    /** Highest power. */
    int order();

    /** The functions that vanish at both ends. */
    int[] inner();

    /** Whether a function changes sign when mirrored about the middle: 1 odd, 0 even or neither. */
    int parity(int function);

    /** Where a function stands in an order in which those that couple are neighbours. */
    int rank(int function);

    /** False for two functions of which every product of derivatives has an integral of zero. */
    boolean mayCouple(int left, int right);

    /**
     * All functions and their derivatives at a place.
     *
     * @param x the place (m)
     * @return [derivative by x 0, 1 or 2][function]
     */
    double[][] at(double x);

    /**
     * Integrals over the length of the products of all functions and derivatives; those that vanish but for rounding
     * are zero.
     *
     * @return [derivative][derivative][function][function]
     */
    double[][][][] products();

    /** Integrals of all functions, weighted by a straight ramp; those that vanish but for rounding are zero. */
    double[] integrals(Ramp ramp);

    /** Rules that together integrate products of the functions over the length, each over a smooth part of it. */
    List<Gauss> rules(int count);
}
