package laminate.plan.infusion;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.plan.infusion.GelMargin.Verdict;
import laminate.unit.Significant;

/** Weighs a fill time against the gel time. */
final class GelVerdict {
    private static final Figure USUAL_SHARE =
            new Figure(0.5, "full within half of the gel time, from memory", Status.MEMORY);

    private GelVerdict() {}

    static Figure share(OptionalDouble stated) {
        return stated.isPresent() ? Figure.stated(stated.getAsDouble()) : USUAL_SHARE;
    }

    static GelMargin of(Fill fill, GelReading gel, Figure share) {
        Optional<Figure> time = gel.time();
        OptionalDouble usable =
                time.isPresent() ? OptionalDouble.of(share.value() * time.get().value()) : OptionalDouble.empty();
        Verdict verdict = verdict(fill, usable);
        return new GelMargin(verdict, time, share, usable, reason(verdict, fill, gel, share, usable));
    }

    private static Verdict verdict(Fill fill, OptionalDouble usable) {
        if (fill.time().isEmpty()) {
            return Verdict.NEVER_FULL;
        }
        if (usable.isEmpty()) {
            return Verdict.NOT_JUDGED;
        }
        if (fill.time().getAsDouble() > usable.getAsDouble()) {
            return Verdict.TOO_LATE;
        }
        boolean sure = fill.slowest().isPresent() && fill.slowest().getAsDouble() <= usable.getAsDouble();
        return sure ? Verdict.IN_TIME : Verdict.DOUBTFUL;
    }

    private static String reason(Verdict verdict, Fill fill, GelReading gel, Figure share, OptionalDouble usable) {
        return switch (verdict) {
            case NEVER_FULL -> "the resin sets, or the driving pressure is used up, before the vent is reached";
            case NOT_JUDGED -> "full after " + minutes(fill.time()) + "; " + gel.why();
            case TOO_LATE -> "full after " + minutes(fill.time()) + ", later than " + within(share, gel, usable);
            case DOUBTFUL ->
                "full after " + minutes(fill.time()) + ", within " + within(share, gel, usable)
                        + ", but not at the lower end of the permeability's scatter";
            case IN_TIME ->
                "full after " + minutes(fill.time()) + ", at the latest " + minutes(fill.slowest()) + ", within "
                        + within(share, gel, usable);
        };
    }

    private static String within(Figure share, GelReading gel, OptionalDouble usable) {
        double time = gel.time().orElseThrow().value();
        return minutes(usable) + ", which is " + Significant.format(share.value() * 100, 3) + " % of the gel time of "
                + minutes(OptionalDouble.of(time));
    }

    private static String minutes(OptionalDouble seconds) {
        return Significant.format(seconds.orElseThrow() / 60, 3) + " min";
    }
}
