package laminate.theory.failure;

import java.util.OptionalDouble;

/** A failure index a R² + b R + c along a load factor R. */
record Quadratic(double a, double b, double c) {

    double at(double x) {
        return c + x * (b + x * a);
    }

    /**
     * The first R of an interval at which the index is at least 1, in closed form.
     *
     * @param from start, at least 0
     * @param to end, may be infinite
     * @return R; empty if the index stays below 1
     */
    OptionalDouble firstReached(double from, double to) {
        if (!(at(from) < 1)) {
            return OptionalDouble.of(from);
        }
        double root = firstRootAbove(from);
        return root <= to && root < Double.POSITIVE_INFINITY ? OptionalDouble.of(root) : OptionalDouble.empty();
    }

    /** Smallest root of a R² + b R + c − 1 above a number, without cancellation; infinite if there is none. */
    private double firstRootAbove(double from) {
        double rest = c - 1;
        double discriminant = b * b - 4 * a * rest;
        if (discriminant < 0) {
            return Double.POSITIVE_INFINITY;
        }
        double half = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
        return Math.min(above(from, half / a), above(from, rest / half));
    }

    private static double above(double from, double root) {
        return root > from ? root : Double.POSITIVE_INFINITY;
    }
}
