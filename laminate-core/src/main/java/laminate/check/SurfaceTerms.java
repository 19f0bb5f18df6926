package laminate.check;

import java.util.Objects;
import laminate.theory.LaminateLoad.Term;

/**
 * The first-ply failure surface that is wanted of every load case.
 *
 * @param x term of the first axis
 * @param y term of the second axis
 * @param rays how many points it has at most
 */
public record SurfaceTerms(Term x, Term y, int rays) {
    /**
     * Checks the terms.
     *
     * @param x term of the first axis
     * @param y term of the second axis
     * @param rays how many points it has at most
     * @throws IllegalArgumentException if the terms are of one pair, or there are fewer than three rays
     */
    public SurfaceTerms {
        Objects.requireNonNull(x, "x");
        if (x == y || x.conjugate() == y) {
            throw new IllegalArgumentException(
                    "the terms of a failure surface must not be of one pair, were " + x + " and " + y);
        }
        if (rays < 3) {
            throw new IllegalArgumentException("a failure surface has three rays or more, not " + rays);
        }
    }
}
