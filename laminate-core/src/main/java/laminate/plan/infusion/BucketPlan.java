package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import laminate.plan.infusion.Buckets.Bucket;
import laminate.process.LayUp;
import laminate.process.Mixing;
import laminate.process.cure.MassEffect;

/**
 * Sizes the mixes that the hose draws from: each as large as is drawn before it gets too thick in the bucket, where it gels
 * sooner than in the laminate by its own heat. As few as that allows, and alike if they then last as well.
 *
 * @param layUp resin and dose
 * @param gelTime of 100 g (s)
 * @param mixing the workshop's largest mix, mixing time and usable share of the gel time
 */
record BucketPlan(LayUp layUp, double gelTime, Mixing mixing) {
    /** More than that many mixes are no plan: the resin is too quick or the flow too slow. */
    private static final int MOST = 50;

    /** The least that is worth mixing (kg). */
    private static final double LEAST = 0.05;

    /**
     * The mixes.
     *
     * @param drawn what has been drawn by a time (s), with what is to be left in the bucket at the end (kg)
     * @param end when the last is drawn (s)
     * @return the mixes, empty where the family's largest mix is not known, or they would be too many or too small
     */
    Optional<Buckets> of(DoubleUnaryOperator drawn, double end) {
        Optional<MassEffect> effect = MassEffect.of(layUp.resin().family());
        if (effect.isEmpty()) {
            return Optional.empty();
        }
        double largest = largest(effect.get());
        List<Bucket> fewest = mixes(drawn, end, effect.get(), largest);
        if (fewest.isEmpty()) {
            return Optional.empty();
        }
        List<Bucket> alike = mixes(drawn, end, effect.get(), drawn.applyAsDouble(end) / fewest.size());
        return Optional.of(new Buckets(largest, alike.size() == fewest.size() ? alike : fewest));
    }

    /** None where they would be too many or too small. */
    private List<Bucket> mixes(DoubleUnaryOperator drawn, double end, MassEffect effect, double atMost) {
        double total = drawn.applyAsDouble(end);
        List<Bucket> mixes = new ArrayList<>();
        double mixed = 0;
        double time = 0;
        while (total - mixed > 1e-9 * total) {
            double mass = largestDrawn(drawn, effect, mixed, time, Math.min(atMost, total - mixed));
            if (mixes.size() == MOST || mass < Math.min(LEAST, total - mixed)) {
                return List.of();
            }
            mixed += mass;
            double empty = when(drawn, mixed, time, end);
            mixes.add(new Bucket(time, empty, mass));
            time = empty;
        }
        return mixes;
    }

    /** Of resin with its hardener. */
    private double largest(MassEffect effect) {
        double resin = mixing.largestMix().orElse(effect.largestMass());
        double hardener = layUp.dose().agent().isHardener() ? layUp.dose().ratio() : 0;
        return Math.min(resin * (1 + hardener), effect.largestMass());
    }

    private double usable(MassEffect effect, double mass) {
        return mixing.usableTime(gelTime * effect.factor(mass).planned());
    }

    /** The root of what is drawn in the usable time less the mass, which falls with the mass: by halving. */
    private double largestDrawn(
            DoubleUnaryOperator drawn, MassEffect effect, double before, double from, double atMost) {
        if (isDrawn(drawn, effect, before, from, atMost)) {
            return atMost;
        }
        double low = 0;
        double high = atMost;
        for (int step = 0; step < 50; step++) {
            double middle = (low + high) / 2;
            if (isDrawn(drawn, effect, before, from, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean isDrawn(DoubleUnaryOperator drawn, MassEffect effect, double before, double from, double mass) {
        return drawn.applyAsDouble(from + usable(effect, mass)) >= (before + mass) * (1 - 1e-12);
    }

    private static double when(DoubleUnaryOperator drawn, double mass, double from, double end) {
        double low = from;
        double high = end;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            if (drawn.applyAsDouble(middle) >= mass * (1 - 1e-12)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}
