package laminate.order.packs;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Covers a need at the least cost, exactly: minimise Σ n·price subject to Σ n·amount ≥ need, n whole, and n = 0 or
 * minimum ≤ n ≤ available.
 *
 * <p>Pack by pack, the worst value for money first, the purchases so far are extended by every number of that pack, and
 * those dropped that another one equals in amount at no more cost (dynamic programming on the undominated states:
 * G. L. Nemhauser, Z. Ullmann, Discrete dynamic programming and capital allocation, Management Science 15 (1969)
 * 494-505; from memory). What is still needed costs at least the best value for money: a purchase that cannot come below
 * one already known is dropped too.
 */
final class PackSearch {
    /** Better value for money first, of equal value the larger pack. */
    private static final Comparator<Pack> VALUE = ((Comparator<Pack>) PackSearch::compareValue)
            .thenComparing(Pack::amount, Comparator.reverseOrder())
            .thenComparing(Pack::name);

    /** Cheaper first, of equal cost the larger amount, then the fewer packs. */
    private static final Comparator<Purchase> ORDER = Comparator.comparing(Purchase::cost)
            .thenComparing(Purchase::amount, Comparator.reverseOrder())
            .thenComparing(Purchase::count);

    private static final BigDecimal FEW = BigDecimal.valueOf(20);

    private final List<Pack> packs;
    private final BigDecimal need;
    private final Pack best;
    private final BigDecimal known;

    /** How many of each pack are bought, and what they hold and cost. */
    private record Purchase(BigDecimal amount, BigDecimal cost, List<Integer> counts) {
        Purchase plus(Pack pack, int place, int more) {
            BigDecimal factor = BigDecimal.valueOf(more);
            List<Integer> together = new ArrayList<>(counts);
            together.set(place, counts.get(place) + more);
            return new Purchase(
                    amount.add(pack.amount().multiply(factor)),
                    cost.add(pack.price().amount().multiply(factor)),
                    together);
        }

        int count() {
            return counts.stream().mapToInt(Integer::intValue).sum();
        }
    }

    PackSearch(List<Pack> given, BigDecimal need) {
        packs = given.stream().filter(Pack::isToBeHad).sorted(VALUE).toList();
        this.need = need;
        BigDecimal simple = costOfBestValueFirst();
        best = packs.get(0);
        known = simple.min(costByPart().orElse(simple));
    }

    /** What is bought, the largest pack first. */
    List<PackCount> cheapest() {
        List<Integer> counts = purchase().counts();
        return IntStream.range(0, packs.size())
                .filter(i -> counts.get(i) > 0)
                .mapToObj(i -> new PackCount(packs.get(i), counts.get(i)))
                .sorted(PackCount.LARGEST_FIRST)
                .toList();
    }

    private Purchase purchase() {
        List<Purchase> purchases =
                List.of(new Purchase(BigDecimal.ZERO, BigDecimal.ZERO, Collections.nCopies(packs.size(), 0)));
        for (int i = packs.size() - 1; i > 0; i--) {
            purchases = packs.get(i).available().isPresent()
                    ? extendedByLimited(purchases, i)
                    : packs.get(i).minimum() > 1 ? extendedFromMinimum(purchases, i) : extended(purchases, i);
        }
        return purchases.stream()
                .map(this::filledUp)
                .filter(this::covers)
                .min(ORDER)
                .orElseThrow();
    }

    /** With the rest made up of the best value, of which any other number covers too little or costs more. */
    private Purchase filledUp(Purchase purchase) {
        return purchase.plus(best, 0, toCover(best, left(purchase)));
    }

    private BigDecimal left(Purchase purchase) {
        return need.subtract(purchase.amount()).max(BigDecimal.ZERO);
    }

    private static int compareValue(Pack one, Pack other) {
        BigDecimal ones = one.price().amount().multiply(other.amount());
        return ones.compareTo(other.price().amount().multiply(one.amount()));
    }

    /** A purchase that can be made; it refuses a need that cannot be met. */
    private BigDecimal costOfBestValueFirst() {
        BigDecimal cost = BigDecimal.ZERO;
        BigDecimal left = need;
        for (Pack pack : packs) {
            BigDecimal count = BigDecimal.valueOf(toCover(pack, left));
            cost = cost.add(pack.price().amount().multiply(count));
            left = left.subtract(pack.amount().multiply(count)).max(BigDecimal.ZERO);
        }
        if (left.signum() > 0) {
            throw new IllegalArgumentException("all packs that can be had hold "
                    + need.subtract(left).toPlainString() + ", of " + need.toPlainString() + " to be bought");
        }
        return cost;
    }

    /**
     * A purchase near the cheapest: most of a great need in the best value, and a few packs' worth of it searched, besides
     * what it takes to buy the others in their least numbers.
     */
    private Optional<BigDecimal> costByPart() {
        BigDecimal few = best.amount().multiply(FEW);
        for (Pack pack : packs) {
            few = few.add(pack.amount().multiply(BigDecimal.valueOf(pack.minimum() - 1)));
        }
        if (best.available().isPresent() || need.compareTo(few.add(few)) <= 0) {
            return Optional.empty();
        }
        BigDecimal count = need.subtract(few).divideToIntegralValue(best.amount());
        if (count.compareTo(BigDecimal.valueOf(best.minimum())) < 0) {
            return Optional.empty();
        }
        BigDecimal rest = need.subtract(best.amount().multiply(count));
        BigDecimal costOfRest = new PackSearch(packs, rest).purchase().cost();
        return Optional.of(best.price().amount().multiply(count).add(costOfRest));
    }

    /** The fewest that cover an amount, as far as there are so many; none to cover nothing. */
    static int toCover(Pack pack, BigDecimal amount) {
        int most = pack.available().orElse(Integer.MAX_VALUE);
        int count = amount.divide(pack.amount(), 0, RoundingMode.CEILING)
                .min(BigDecimal.valueOf(most))
                .intValueExact();
        return count == 0 ? 0 : Math.max(count, pack.minimum());
    }

    /**
     * Every purchase with every number of a pack that is of use. Cheapest first: one that holds no more than a cheaper one
     * is dropped with all that would follow from it.
     */
    private List<Purchase> extended(List<Purchase> purchases, int place) {
        Pack pack = packs.get(place);
        PriorityQueue<Purchase> waiting = new PriorityQueue<>(ORDER);
        waiting.addAll(purchases);
        List<Purchase> kept = new ArrayList<>();
        BigDecimal most = BigDecimal.ONE.negate();
        while (!waiting.isEmpty()) {
            Purchase purchase = waiting.remove();
            if (purchase.amount().compareTo(most) > 0) {
                kept.add(purchase);
                most = purchase.amount();
                Purchase larger = purchase.plus(pack, place, 1);
                if (!covers(purchase) && isWorthwhile(larger)) {
                    waiting.add(larger);
                }
            }
        }
        return kept;
    }

    /**
     * The same for a pack that is sold from a number: a purchase without it cannot go on one by one, and so may not stand
     * for those that can.
     */
    private List<Purchase> extendedFromMinimum(List<Purchase> purchases, int place) {
        Pack pack = packs.get(place);
        List<Purchase> begun = purchases.stream()
                .filter(purchase -> !covers(purchase))
                .map(purchase -> purchase.plus(pack, place, pack.minimum()))
                .filter(this::isWorthwhile)
                .toList();
        List<Purchase> all = new ArrayList<>(purchases);
        all.addAll(extended(begun, place));
        return undominated(all);
    }

    /** The same for a pack of which there are only so many: a purchase that has used up some may not stand for others. */
    private List<Purchase> extendedByLimited(List<Purchase> purchases, int place) {
        Pack pack = packs.get(place);
        List<Purchase> extended = new ArrayList<>(purchases);
        for (Purchase purchase : purchases) {
            int most = toCover(pack, left(purchase));
            Purchase larger = purchase.plus(pack, place, pack.minimum());
            for (int count = pack.minimum(); count <= most && isWorthwhile(larger); count++) {
                extended.add(larger);
                larger = purchase.plus(pack, place, count + 1);
            }
        }
        return undominated(extended);
    }

    private boolean covers(Purchase purchase) {
        return purchase.amount().compareTo(need) >= 0;
    }

    /** Whether it can still come to no more than the cost known, the rest bought at the best value. */
    private boolean isWorthwhile(Purchase purchase) {
        BigDecimal toSpend = known.subtract(purchase.cost());
        return left(purchase).multiply(best.price().amount()).compareTo(toSpend.multiply(best.amount())) <= 0;
    }

    private static List<Purchase> undominated(List<Purchase> purchases) {
        purchases.sort(ORDER);
        List<Purchase> kept = new ArrayList<>();
        BigDecimal most = BigDecimal.ONE.negate();
        for (Purchase purchase : purchases) {
            if (purchase.amount().compareTo(most) > 0) {
                kept.add(purchase);
                most = purchase.amount();
            }
        }
        return kept;
    }
}
