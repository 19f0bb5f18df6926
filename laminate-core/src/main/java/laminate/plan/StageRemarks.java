package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;

/** What to mind in a stage: no plan, an unknown gel time, a bag that comes too late, a stage too thick or too long. */
final class StageRemarks {
    private final double day;
    private final double mixingTime;

    /**
     * Remarks for a working day.
     *
     * @param day its length (s)
     * @param mixingTime how long a mix is stirred (s)
     */
    StageRemarks(double day, double mixingTime) {
        this.day = day;
        this.mixingTime = mixingTime;
    }

    List<Caution> of(StageWork work) {
        List<Caution> found = new ArrayList<>();
        for (StageResin resin : work.resins()) {
            addPot(resin, found);
        }
        addBag(work, found);
        addFill(work, found);
        addReady(work, found);
        addThickness(work, found);
        StageHeat.of(work).ifPresent(found::add);
        if (work.duration() > day) {
            add(
                    "It takes %.1f h, longer than the working day: part it by zones, or take more hands.",
                    found, work.duration() / 3600);
        }
        return found;
    }

    private static void addPot(StageResin resin, List<Caution> found) {
        if (!resin.fits()) {
            add("No mix fits: %s.", found, resin.problem().orElseThrow());
        } else if (resin.gelTime().isEmpty()) {
            add("%s. The mixes are no larger than the usual pot, that is all.", found, resin.gelTimeSource());
        }
        if (resin.fits() && resin.surplus() > resin.need()) {
            add(
                    "%s: %.0f g are needed, and the scales hold the dose from %.0f g on: most of the mix is left over.",
                    found,
                    resin.resin().id(),
                    resin.need() * 1000,
                    resin.mixes().get(0).resin() * 1000);
        }
    }

    /** The resin laid first must still flow as the vacuum is drawn. */
    private static void addBag(StageWork work, List<Caution> found) {
        for (StageResin resin : work.resins()) {
            double wet = work.wetTime() + work.bagTime();
            if (work.bagTime() > 0
                    && resin.gelTime().isPresent()
                    && wet > resin.gelTime().getAsDouble()) {
                add(
                        "%s gels after %.0f min, and laying and bagging take %.0f min: the first layers gel before the vacuum"
                                + " presses them. Lower the dose, take a slower hardener or more hands, or bag smaller areas.",
                        found, resin.resin().id(), resin.gelTime().getAsDouble() / 60, wet / 60);
            }
        }
    }

    /** What is drawn in first flows furthest. */
    private static void addFill(StageWork work, List<Caution> found) {
        work.infusing().ifPresent(infusing -> addNeverFull(infusing, found));
        Optional<StageResin> slow = work.drawn()
                .filter(resin -> resin.gelTime().isPresent()
                        && resin.workTime() > resin.gelTime().getAsDouble());
        if (slow.isPresent()) {
            add(
                    "Infusing is reckoned at %.0f min, and %s gels after %.0f min: what is drawn in first may gel before"
                            + " the mould is full.",
                    found,
                    slow.get().workTime() / 60,
                    slow.get().resin().id(),
                    slow.get().gelTime().getAsDouble() / 60);
        }
    }

    private static void addNeverFull(InfusingTime infusing, List<Caution> found) {
        if (!infusing.neverFull().isEmpty()) {
            add(
                    "The resin never fills %s as its infusion is planned; the plan of the infusion says why. The time for it"
                            + " here is the usual one of the labour, and holds for no such infusion.",
                    found, String.join(", ", infusing.neverFull()));
        }
    }

    /** Mixes that are drawn sooner than the next can be stirred are stirred before the feed is opened. */
    private void addReady(StageWork work, List<Caution> found) {
        if (mixingTime == 0 || work.drawn().isEmpty()) {
            return;
        }
        int ready = ready(work.drawn().get().mixes());
        if (ready > 1) {
            add(
                    "The first mixes are drawn sooner than one can be stirred in %.1f min: have %d ready before the feed is"
                            + " opened, or let several stir.",
                    found, mixingTime / 60, ready);
        }
    }

    /** The fewest that have to be ready so that one person who stirs on has each of the others ready in time. */
    private int ready(List<Mix> mixes) {
        int ready = 1;
        double start = 0;
        for (int i = 1; i < mixes.size(); i++) {
            start += mixes.get(i - 1).workTime();
            int stirredSince = (int) Math.floor(start / mixingTime + 1e-9);
            ready = Math.max(ready, i + 1 - stirredSince);
        }
        return ready;
    }

    private static void addThickness(StageWork work, List<Caution> found) {
        for (StageResin resin : work.resins()) {
            Resin material = resin.resin();
            double thickness = StageHeat.thickness(work);
            if (thickness > material.stageThickness().orElse(Double.MAX_VALUE) * (1 + 1e-9)) {
                Figure most = material.figures().find(Property.STAGE_THICKNESS).orElseThrow();
                found.add(new Caution(
                        Caution.Kind.SCHEDULE,
                        String.format(
                                Locale.ROOT,
                                "%.1f mm at once; %s bears %.1f mm, beyond which it can overheat, shrink and crack.",
                                thickness * 1000,
                                material.id(),
                                most.value() * 1000),
                        most.source(),
                        most.status()));
            }
        }
    }

    private static void add(String text, List<Caution> found, Object... values) {
        found.add(new Caution(
                Caution.Kind.SCHEDULE,
                String.format(Locale.ROOT, text, values),
                "reckoned by this plan",
                Status.COMMON_PRACTICE));
    }
}
