package laminate.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.order.cut.Lengths;
import laminate.order.pieces.MaterialCut;

/**
 * Lays what a plan pulls of a material on the rolls in stock and on those that are bought, so that no pull reaches over the
 * end of a roll. Sheets are pulls as long as the sheet.
 */
final class Laying {
    private static final String PLANNED = "roll";

    private final MaterialCut cut;
    private final List<Reel> stock;
    private final Map<Pack, Reel> sold;

    /**
     * A roll as it lies in the store or is sold.
     *
     * @param name what it is called
     * @param width its width (m)
     * @param length its length (m), infinite if it is not known
     */
    record Reel(String name, double width, double length) {}

    /**
     * A way to lay all pulls.
     *
     * @param rolls the rolls that are taken from
     * @param area what is pulled, and the ends that are too short for the next pull (m²)
     */
    record Taken(List<TakenRoll> rolls, double area) {}

    Laying(MaterialCut cut, List<Reel> stock, Map<Pack, Reel> sold) {
        this.cut = cut;
        this.stock = stock;
        this.sold = sold;
    }

    /** Empty if the pulls do not fit on the stock and these packs. */
    Optional<Taken> on(List<PackCount> packs) {
        List<Reel> reels = new ArrayList<>(stock);
        for (PackCount bought : packs) {
            reels.addAll(Collections.nCopies(bought.count(), sold.get(bought.pack())));
        }
        return on(reels, cut.lengths());
    }

    /** On the fewest rolls of those that it was planned for, where nothing is known of how it is sold. */
    Taken onPlannedRolls() {
        Taken taken = onPlannedRolls(cut.lengths().size()).orElseThrow();
        int rolls = (int) taken.rolls().stream()
                .filter(roll -> roll.name().equals(PLANNED))
                .count();
        for (Optional<Taken> fewer = onPlannedRolls(rolls); fewer.isPresent(); fewer = onPlannedRolls(--rolls)) {
            taken = fewer.get();
        }
        return taken;
    }

    /** On the stock and so many rolls; one for each pull is always enough, and fewer than none is not. */
    private Optional<Taken> onPlannedRolls(int count) {
        if (count < 0) {
            return Optional.empty();
        }
        Reel roll = new Reel(PLANNED, cut.width(), cut.stockLength().orElse(Double.POSITIVE_INFINITY));
        List<Reel> reels = new ArrayList<>(stock);
        reels.addAll(Collections.nCopies(count, roll));
        return on(reels, cut.lengths());
    }

    private static Optional<Taken> on(List<Reel> reels, List<Double> lengths) {
        return Lengths.lay(lengths, reels.stream().map(Reel::length).toList())
                .map(places -> taken(reels, lengths, places));
    }

    /** The end that is left longest can still serve, and so can those that another pull would fit on; the others are lost. */
    private static Taken taken(List<Reel> reels, List<Double> lengths, List<Integer> places) {
        List<TakenRoll> rolls = new ArrayList<>();
        double longestPull = Collections.max(lengths);
        double area = 0;
        double longestLost = 0;
        double longestServing = 0;
        List<List<Integer>> byReel = pulls(places, reels.size());
        for (int place = 0; place < reels.size(); place++) {
            Reel reel = reels.get(place);
            List<Integer> pulls = byReel.get(place);
            double used =
                    pulls.stream().mapToDouble(pull -> lengths.get(pull - 1)).sum();
            double left = Math.max(0, reel.length() - used);
            double end = Double.isInfinite(left) ? 0 : left * reel.width();
            boolean serves = pulls.isEmpty() || left >= longestPull;
            if (!pulls.isEmpty()) {
                rolls.add(new TakenRoll(reel.name(), reel.width(), reel.length(), pulls));
            }
            area += used * reel.width() + (serves ? 0 : end);
            longestServing = Math.max(longestServing, serves ? end : 0);
            longestLost = Math.max(longestLost, serves ? 0 : end);
        }
        return new Taken(rolls, area - (longestLost > longestServing ? longestLost : 0));
    }

    /** The numbers of the pulls on each reel. */
    private static List<List<Integer>> pulls(List<Integer> places, int reels) {
        List<List<Integer>> pulls = new ArrayList<>();
        for (int reel = 0; reel < reels; reel++) {
            pulls.add(new ArrayList<>());
        }
        for (int pull = 1; pull <= places.size(); pull++) {
            pulls.get(places.get(pull - 1)).add(pull);
        }
        return pulls;
    }
}
