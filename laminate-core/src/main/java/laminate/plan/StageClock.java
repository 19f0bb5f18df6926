package laminate.plan;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.material.Figure;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.WorkingDay;

/**
 * Puts stages on the clock one after another. A stage starts when the crew is free and what lies under it in each of its
 * zones has gelled; where a gel time is not known, the next morning. A gelcoat is left an hour more, and a laminate three
 * hours where it and the next are together thicker than their resin bears at once. Nothing is laid in a mould that is under
 * a bag: what was bagged or infused has gelled first, in whatever zone.
 */
final class StageClock {
    private static final Figure AFTER_COAT = new Figure(
            3600,
            "trade technical page, supplier not named: layers follow 1 to 2 h after the gelcoat has gelled",
            Status.PRINTED);
    private static final Figure BETWEEN_LAMINATES = new Figure(
            3 * 3600,
            "FRP ship repair standard, Nippon Foundation 1999: layers of test plates are laid 3 h apart or more",
            Status.PRINTED);

    private final ShopClock clock;
    private final Map<Integer, Surface> surfaces = new HashMap<>();
    private double bagIsOff;

    StageClock(WorkingDay day) {
        clock = new ShopClock(day);
    }

    double dayLength() {
        return clock.length();
    }

    /** When a stage is done. */
    record Slot(double start, double end, Optional<Double> gelled, Optional<Bond> bond, Optional<Caution> cooling) {}

    Slot take(StageWork work) {
        double ready = bagIsOff;
        for (StageGroup group : work.groups()) {
            Surface under = surfaces.get(group.zone());
            ready = under == null ? ready : Math.max(ready, readyFor(group, under));
        }
        Optional<Caution> cooling = cooling(work, ready);
        double start = clock.take(ready, work.duration());
        double end = start + work.duration();
        Optional<Bond> bond = bond(work, start + work.dryTime());
        Optional<Double> gelled = gelled(work, start + work.dryTime() + work.wetTime());
        lay(work, end, gelled);
        return new Slot(start, end, gelled.map(time -> Math.max(time, end)), bond, cooling);
    }

    private static double readyFor(StageGroup group, Surface under) {
        return heatTogether(under.top, group)
                ? Math.max(under.ready, under.end + BETWEEN_LAMINATES.value())
                : under.ready;
    }

    /** Why a stage waits longer than for the gelling of what lies under it. */
    private Optional<Caution> cooling(StageWork work, double ready) {
        for (StageGroup group : work.groups()) {
            Surface under = surfaces.get(group.zone());
            if (under != null
                    && heatTogether(under.top, group)
                    && ready > under.ready
                    && ready == readyFor(group, under)) {
                Resin resin = group.first().use().resin();
                return Optional.of(new Caution(
                        Caution.Kind.SCHEDULE,
                        String.format(
                                Locale.ROOT,
                                "Let the laminate below cool for %.0f h first: with it this is %.1f mm, and %s bears %.1f mm at"
                                        + " once.",
                                BETWEEN_LAMINATES.value() / 3600,
                                (under.top.thickness() + group.thickness()) * 1000,
                                resin.id(),
                                resin.stageThickness().orElseThrow() * 1000),
                        BETWEEN_LAMINATES.source(),
                        BETWEEN_LAMINATES.status()));
            }
        }
        return Optional.empty();
    }

    /** Whether two laminates on each other are thicker than their resin bears at once, so that the first must cool. */
    private static boolean heatTogether(StageGroup under, StageGroup over) {
        double bearable = over.first().use().resin().stageThickness().orElse(Double.MAX_VALUE);
        return under.kind() == Stage.Kind.LAMINATE
                && over.kind() == Stage.Kind.LAMINATE
                && under.thickness() + over.thickness() > bearable;
    }

    /** The worst of what the zones say. */
    private Optional<Bond> bond(StageWork work, double wet) {
        Optional<Bond> worst = Optional.empty();
        for (StageGroup group : work.groups()) {
            Surface under = surfaces.get(group.zone());
            if (under != null) {
                Bond bond = BondWindow.of(under.resin(), over(group)).judge(under.resin(), wet - under.end);
                worst = worst.isEmpty() || isWorse(bond, worst.get()) ? Optional.of(bond) : worst;
            }
        }
        return worst;
    }

    private static Resin over(StageGroup group) {
        return group.first().bed().orElse(group.first().use()).resin();
    }

    private static boolean isWorse(Bond one, Bond other) {
        int verdicts = one.verdict().compareTo(other.verdict());
        return verdicts > 0 || verdicts == 0 && one.gap() > other.gap();
    }

    /** The last mix of each resin is stirred before it is used up. */
    private static Optional<Double> gelled(StageWork work, double usedUp) {
        double latest = usedUp;
        for (StageResin resin : work.resins()) {
            if (resin.gelTime().isEmpty() || !resin.fits()) {
                return Optional.empty();
            }
            double lastMix = resin.mixes().get(resin.mixes().size() - 1).workTime();
            latest = Math.max(latest, usedUp - lastMix + resin.gelTime().getAsDouble());
        }
        return Optional.of(latest);
    }

    private void lay(StageWork work, double end, Optional<Double> gelled) {
        double wait = work.kind() == Stage.Kind.MOULD_COAT ? AFTER_COAT.value() : 0;
        double ready = gelled.isPresent() ? Math.max(end, gelled.get() + wait) : clock.morningAfter(end);
        for (StageGroup group : work.groups()) {
            surfaces.put(group.zone(), new Surface(group, end, ready));
        }
        bagIsOff = work.isBagged() ? ready : bagIsOff;
    }

    /** What lies uppermost in a zone. */
    private record Surface(StageGroup top, double end, double ready) {
        Resin resin() {
            return top.items().get(top.items().size() - 1).use().resin();
        }
    }
}
