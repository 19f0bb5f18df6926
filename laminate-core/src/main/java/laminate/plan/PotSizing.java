package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.Mixing;

/**
 * How many equal mixes a pot takes at one dose, temperature and number of hands: the fewest that are each used up in time,
 *
 * <pre>
 *   t_work,i ≤ s t_gel(m) − t_mix
 * </pre>
 *
 * <p>with t_work,i the crew's time on mix i (s), which by hand is the time on the whole need through their number, and drawn
 * in is longest where the resin flows slowest, s the usable share of the gel time, t_gel(m) the gel
 * time of a pot of mass m (s), and t_mix the time of mixing (s). More mixes are smaller, gel later and are used up sooner,
 * so that the fewest are found by halving.
 */
final class PotSizing {
    private final PotNeed pot;
    private final Mixing mixing;
    private final int crew;
    private final Scales scales;
    private final PotLife life;

    PotSizing(PotNeed pot, double temperature, int crew, Mixing mixing) {
        this.pot = pot;
        this.mixing = mixing;
        this.crew = crew;
        this.scales = new Scales(mixing, pot.resin(), pot.dose());
        this.life = PotLife.of(pot.resin(), pot.dose(), temperature);
    }

    PotLife life() {
        return life;
    }

    double workTime() {
        return pot.workTime(crew);
    }

    /** The fewest mixes that fit, 0 if none do. */
    int count() {
        if (life.refusal().isPresent() || scales.smallest().isEmpty() || !fits(mostMixes())) {
            return 0;
        }
        int tooFew = 0;
        int enough = mostMixes();
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) >>> 1;
            if (fits(middle)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return enough;
    }

    /** As many as there may be without making them smaller than the scales hold. */
    private int mostMixes() {
        return (int) Math.max(
                1, Math.min(1e6, Math.floor(pot.need() / scales.smallest().orElseThrow())));
    }

    private boolean fits(int mixes) {
        Weighed weighed = scales.cover(pot.need() / mixes);
        if (isTooLarge(weighed)) {
            return false;
        }
        OptionalDouble usable = usable(weighed);
        return usable.isEmpty() || usable.getAsDouble() > 0 && longest(mixes) <= usable.getAsDouble();
    }

    /** The time of the mix that takes longest (s). */
    private double longest(int mixes) {
        double longest = 0;
        for (int mix = 0; mix < mixes; mix++) {
            longest = Math.max(longest, pot.workTime(crew, mix, mixes));
        }
        return longest;
    }

    private boolean isTooLarge(Weighed weighed) {
        boolean beyondOwn = mixing.largestMix().isPresent()
                && weighed.resin() > mixing.largestMix().getAsDouble() * (1 + 1e-9);
        return beyondOwn || weighed.resin() + weighed.agent() > life.largestPot() * (1 + 1e-9);
    }

    private OptionalDouble gelTime(Weighed weighed) {
        return life.isKnown()
                ? OptionalDouble.of(life.inPot(weighed.resin() + weighed.agent()))
                : OptionalDouble.empty();
    }

    private OptionalDouble usable(Weighed weighed) {
        OptionalDouble gel = gelTime(weighed);
        return gel.isEmpty() ? gel : OptionalDouble.of(mixing.usableTime(gel.getAsDouble()));
    }

    /** So many mixes, equal but for their number and the time they take. */
    List<Mix> mixes(int count) {
        double needed = pot.need() / count;
        Weighed weighed = scales.cover(needed);
        Mix first = new Mix(
                1,
                pot.resin().id(),
                pot.dose().agent().id(),
                needed,
                weighed.resin(),
                weighed.resin() / pot.resin().densityLiquid(),
                weighed.agent(),
                weighed.agent() / pot.dose().agent().density(),
                weighed.strokes(),
                gelTime(weighed),
                usable(weighed),
                pot.workTime(crew, 0, count));
        List<Mix> mixes = new ArrayList<>();
        for (int number = 1; number <= count; number++) {
            mixes.add(first.numbered(number, pot.workTime(crew, number - 1, count)));
        }
        return mixes;
    }

    /** Why no mixes fit. */
    String problem() {
        if (life.refusal().isPresent()) {
            return life.refusal().get();
        }
        String resin = pot.resin().id();
        Optional<Weighed> smallest = Optional.empty();
        if (scales.smallest().isPresent()) {
            smallest = Optional.of(scales.cover(pot.need() / mostMixes()));
        }
        if (smallest.isEmpty()) {
            return resin + " takes one dose of " + pot.dose().agent().id()
                    + " exactly, which leaves no room for what a scale reads";
        }
        return isTooLarge(smallest.get()) ? tooLarge(smallest.get()) : tooLate(smallest.get());
    }

    private String tooLarge(Weighed smallest) {
        double largest = Math.min(mixing.largestMix().orElse(life.largestPot()), life.largestPot());
        return String.format(
                Locale.ROOT,
                "the smallest mix in which the scales hold the dose of %s is %.0f g, the largest mix %.0f g; read the agent"
                        + " finer",
                pot.resin().id(),
                smallest.resin() * 1000,
                largest * 1000);
    }

    private String tooLate(Weighed smallest) {
        double usable = usable(smallest).orElseThrow();
        return String.format(
                Locale.ROOT,
                "the smallest mix of %s that the scales hold, %.0f g, takes %.1f min to use up; it gels in %.1f min, of which"
                        + " %.1f min are left after mixing",
                pot.resin().id(),
                smallest.resin() * 1000,
                longest(mostMixes()) / 60,
                gelTime(smallest).orElseThrow() / 60,
                usable / 60);
    }
}
