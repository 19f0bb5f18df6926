package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.ResinUse;

/** Gathers what the items of a stage take into pots: one for each resin at one dose, the bed of a core before its core. */
final class PotShares {
    private final NeedShares shares;
    private final List<Open> open = new ArrayList<>();

    PotShares(NeedShares shares) {
        this.shares = shares;
    }

    /**
     * The pots of a stage that is laid by hand; its time goes to each in proportion to what it holds.
     *
     * @param items what is laid
     * @param handTime time of one person on all of it (s)
     */
    List<PotNeed> laid(List<WorkItem> items, double handTime) {
        fill(items);
        double all = 0;
        for (Open pot : open) {
            all += pot.need;
        }
        List<PotNeed> pots = new ArrayList<>();
        for (Open pot : open) {
            if (pot.need > 0) {
                pots.add(pot.closed(handTime * pot.need / all, Draw.NONE));
            }
        }
        return pots;
    }

    /**
     * The pots of a stage that is infused. What its cores are bedded in is spread before, and the time of bedding goes to each
     * in proportion to what it holds.
     *
     * @param items what is laid dry
     * @param bedTime time of one person on bedding (s)
     * @param draw how the resin is drawn in
     */
    List<PotNeed> infused(List<WorkItem> items, double bedTime, Draw draw) {
        fill(items);
        ResinUse drawn = items.get(0).use();
        double beds = 0;
        for (Open pot : open) {
            beds += StageGroup.isSamePot(pot.use, drawn) ? 0 : pot.need;
        }
        List<PotNeed> pots = new ArrayList<>();
        for (Open pot : open) {
            boolean isDrawn = StageGroup.isSamePot(pot.use, drawn);
            if (pot.need > 0) {
                pots.add(isDrawn ? pot.closed(0, draw) : pot.closed(bedTime * pot.need / beds, Draw.NONE));
            }
        }
        return pots;
    }

    private void fill(List<WorkItem> items) {
        for (WorkItem item : items) {
            if (item.bed().isPresent()) {
                add(item.bed().get(), item.bedResin());
            }
            add(item.use(), item.resin());
        }
    }

    private void add(ResinUse use, double resin) {
        Open pot = find(use);
        pot.need += shares.toMix(use, resin);
        pot.styrene += shares.styrene(use, resin);
    }

    private Open find(ResinUse use) {
        for (Open pot : open) {
            if (StageGroup.isSamePot(pot.use, use)) {
                return pot;
            }
        }
        Open pot = new Open(use);
        open.add(pot);
        return pot;
    }

    /** A pot that is still being added to. */
    private static final class Open {
        private final ResinUse use;
        private double need;
        private double styrene;

        Open(ResinUse use) {
            this.use = use;
        }

        PotNeed closed(double handTime, Draw draw) {
            return new PotNeed(use.resin(), use.dose(), use.use(), need, styrene, handTime, draw);
        }
    }
}
