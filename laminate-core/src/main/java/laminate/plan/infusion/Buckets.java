package laminate.plan.infusion;

import java.util.List;

/**
 * The mixes that the hose draws from, one after the other, each used up before it gets too thick in the bucket.
 *
 * @param largest the largest mix that the workshop or the resin allows (kg of resin with its hardener)
 * @param mixes the mixes in turn
 */
public record Buckets(double largest, List<Bucket> mixes) {

    /**
     * One mix.
     *
     * @param from when the hose begins to draw from it, after the feed was opened (s)
     * @param to when it is drawn empty (s)
     * @param mass resin with its hardener (kg)
     */
    public record Bucket(double from, double to, double mass) {}

    /** Copies the mixes. */
    public Buckets {
        mixes = List.copyOf(mixes);
    }

    /**
     * All mixes together.
     *
     * @return the sum (kg)
     */
    public double mass() {
        return mixes.stream().mapToDouble(Bucket::mass).sum();
    }
}
