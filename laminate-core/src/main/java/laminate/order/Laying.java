package laminate.order;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.order.cut.Lengths;
import laminate.order.packs.Pack;
import laminate.order.packs.PackCount;
import laminate.order.pieces.MaterialCut;

/**
 * Lays what a plan pulls of a material on the rolls in stock and on those that are bought, so that no pull reaches over the
 * end of a roll. Sheets are pulls as long as the sheet.
 */
final class Laying {
    private static final String PLANNED = "roll";

    private final MaterialCut cut;
    private final List<Roll> stock;
    private final Map<Pack, Roll> sold;

    /**
     * A roll as it lies in the store or is sold.
     *
     * @param name what it is called
     * @param width its width (m)
     * @param length its length (m), infinite if it is not known
     */
    record Roll(String name, double width, double length) {}

    /**
     * A way to lay all pulls.
     *
     * @param rolls the rolls that are taken from
     * @param area what is pulled, and the ends that are too short for the next pull (m²)
     */
    record Taken(List<TakenRoll> rolls, double area) {}

    Laying(MaterialCut cut, List<Roll> stock, Map<Pack, Roll> sold) {
        this.cut = cut;
        this.stock = stock;
        this.sold = sold;
    }

    /** Empty if the pulls do not fit on the stock and these packs. */
    Optional<Taken> on(List<PackCount> packs) {
        List<Roll> rolls = new ArrayList<>(stock);
        for (PackCount bought : packs) {
            rolls.addAll(Collections.nCopies(bought.count(), sold.get(bought.pack())));
        }
        return on(rolls, cut.lengths());
    }

    /** On the fewest rolls of those that it was planned for, where nothing is known of how it is sold. */
    Taken onPlannedRolls() {
        Taken taken = onPlannedRolls(cut.lengths().size()).orElseThrow();
        int count = (int) taken.rolls().stream()
                .filter(roll -> roll.name().equals(PLANNED))
                .count();
        for (Optional<Taken> fewer = onPlannedRolls(count); fewer.isPresent(); fewer = onPlannedRolls(--count)) {
            taken = fewer.get();
        }
        return taken;
    }

    /** On the stock and so many rolls; one for each pull is always enough, and fewer than none is not. */
    private Optional<Taken> onPlannedRolls(int count) {
        if (count < 0) {
            return Optional.empty();
        }
        Roll roll = new Roll(PLANNED, cut.width(), cut.stockLength().orElse(Double.POSITIVE_INFINITY));
        List<Roll> rolls = new ArrayList<>(stock);
        rolls.addAll(Collections.nCopies(count, roll));
        return on(rolls, cut.lengths());
    }

    private static Optional<Taken> on(List<Roll> rolls, List<Double> lengths) {
        return Lengths.lay(lengths, rolls.stream().map(Roll::length).toList())
                .map(places -> taken(rolls, lengths, places));
    }

    /** The end that is left largest can still serve, and so can those that another pull would fit on; the others are lost. */
    private static Taken taken(List<Roll> rolls, List<Double> lengths, List<Integer> places) {
        List<TakenRoll> from = new ArrayList<>();
        double longestPull = Collections.max(lengths);
        double area = 0;
        double largestLost = 0;
        double largestServing = 0;
        List<List<Integer>> byRoll = pulls(places, rolls.size());
        for (int place = 0; place < rolls.size(); place++) {
            Roll roll = rolls.get(place);
            List<Integer> pulls = byRoll.get(place);
            double used =
                    pulls.stream().mapToDouble(pull -> lengths.get(pull - 1)).sum();
            double left = Math.max(0, roll.length() - used);
            double end = Double.isInfinite(left) ? 0 : left * roll.width();
            boolean serves = pulls.isEmpty() || left >= longestPull;
            if (!pulls.isEmpty()) {
                from.add(new TakenRoll(roll.name(), roll.width(), roll.length(), pulls));
            }
            area += used * roll.width() + (serves ? 0 : end);
            largestServing = Math.max(largestServing, serves ? end : 0);
            largestLost = Math.max(largestLost, serves ? 0 : end);
        }
        return new Taken(from, area - (largestLost > largestServing ? largestLost : 0));
    }

    /** The numbers of the pulls on each roll. */
    private static List<List<Integer>> pulls(List<Integer> places, int rolls) {
        List<List<Integer>> pulls = new ArrayList<>();
        for (int roll = 0; roll < rolls; roll++) {
            pulls.add(new ArrayList<>());
        }
        for (int pull = 1; pull <= places.size(); pull++) {
            pulls.get(places.get(pull - 1)).add(pull);
        }
        return pulls;
    }
}
