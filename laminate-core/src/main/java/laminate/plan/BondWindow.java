package laminate.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Resin;
import laminate.material.Status;

/**
 * How long a resin that has gelled still bonds to what is laid on it, without preparation.
 *
 * @param ideal the time that is best not exceeded (s), with its source
 * @param most the time beyond which the surface is prepared first (s), with its source
 */
record BondWindow(Figure ideal, Figure most) {
    private static final double HOUR = 3600;

    private static final Figure DAY = new Figure(24 * HOUR, "24 h ideal, from memory", Status.MEMORY);
    private static final Figure FIVE_DAYS = new Figure(
            120 * HOUR,
            "Rules for Classification of FRP Ships 2014: unwaxed resin bonds unprepared for up to 5 days",
            Status.PRINTED);
    private static final Figure COAT_DAY =
            new Figure(24 * HOUR, "gelcoat: next coat or layer within 24 h, from memory", Status.MEMORY);
    private static final Figure HALF_DAY =
            new Figure(12 * HOUR, "epoxy: within 12 to 24 h, from memory", Status.MEMORY);
    private static final Figure EPOXY_DAY =
            new Figure(24 * HOUR, "epoxy: after 12 to 24 h it is washed and abraded, from memory", Status.MEMORY);
    private static final Figure WAX = new Figure(
            0, "Rules for Classification of FRP Ships 2014: waxed resin is ground after 24 h", Status.PRINTED);
    private static final Figure PAINT = new Figure(
            0, "common practice, no source: paint holds on an abraded, clean surface", Status.COMMON_PRACTICE);

    /** The window of a resin for what is laid over it. */
    static BondWindow of(Resin under, Resin over) {
        if (over.use() == Resin.Use.PAINT && under.use() != Resin.Use.PAINT) {
            return new BondWindow(PAINT, PAINT);
        }
        if (under.waxed()) {
            return new BondWindow(WAX, WAX);
        }
        if (!under.family().isStyrenic()) {
            return new BondWindow(HALF_DAY, EPOXY_DAY);
        }
        return under.use().isCoating() ? new BondWindow(DAY, COAT_DAY) : new BondWindow(DAY, FIVE_DAYS);
    }

    /** How a gap stands to the window. */
    Bond judge(Resin under, double gap) {
        boolean always = most.value() == 0;
        Bond.Verdict verdict = always || gap > most.value()
                ? Bond.Verdict.PREPARE
                : gap > ideal.value() ? Bond.Verdict.LATE : Bond.Verdict.KEPT;
        Figure decisive = verdict == Bond.Verdict.PREPARE ? most : ideal;
        return new Bond(
                under.id(),
                gap,
                verdict,
                ideal.value(),
                always ? OptionalDouble.empty() : OptionalDouble.of(most.value()),
                text(under, gap, verdict),
                decisive.source(),
                decisive.status());
    }

    private String text(Resin under, double gap, Bond.Verdict verdict) {
        String after = String.format(Locale.ROOT, "%.1f h after %s", gap / HOUR, under.id());
        if (most.value() == 0) {
            return under.id() + ": abrade or grind it, and clean it, before this stage, unless it was under peel ply";
        }
        return switch (verdict) {
            case KEPT ->
                String.format(Locale.ROOT, "%s: it bonds unprepared; best within %.0f h", after, ideal.value() / HOUR);
            case LATE ->
                String.format(
                        Locale.ROOT,
                        "%s: later than the best %.0f h, still within %.0f h; wash it first",
                        after,
                        ideal.value() / HOUR,
                        most.value() / HOUR);
            case PREPARE ->
                String.format(
                        Locale.ROOT,
                        "%s: overdue (%.0f h); abrade or grind it, and clean it, first, unless it was under peel ply",
                        after,
                        most.value() / HOUR);
        };
    }
}
