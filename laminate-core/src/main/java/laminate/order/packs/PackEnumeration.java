package laminate.order.packs;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The cheapest packs that cover a need and serve besides, whatever that takes: choices are tried the cheapest first, by what
 * they cost and what the rest costs at least (best-first search: P. E. Hart, N. J. Nilsson, B. Raphael, A formal basis for the
 * heuristic determination of minimum cost paths, IEEE Transactions on Systems Science and Cybernetics 4 (1968) 100-107; from
 * memory). A need of very many packs is covered by one kind of pack alone.
 */
final class PackEnumeration {
    private static final int MOST_CHOICES = 20_000;

    /** Whether packs serve may take some time to find out. */
    private static final int MOST_TRIALS = 300;

    /** One kind of pack is not tried in greater numbers above the need: it is too small for what it is to serve. */
    private static final int MOST_MORE = 10_000;

    private final List<Pack> packs;
    private final BigDecimal need;
    private final Predicate<List<PackCount>> serves;
    private final BigDecimal costPerAmount;
    private int trials;

    /** The numbers of packs; those behind the last one that was added are still open. */
    private record Choice(List<Integer> counts, int last, BigDecimal amount, BigDecimal cost, BigDecimal atLeast) {}

    PackEnumeration(List<Pack> given, BigDecimal need, Predicate<List<PackCount>> serves) {
        packs = given.stream().filter(Pack::isToBeHad).toList();
        this.need = need;
        this.serves = serves;
        costPerAmount = packs.stream()
                .map(pack -> pack.price().amount().divide(pack.amount(), MathContext.DECIMAL64))
                .min(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
    }

    /** What is bought; empty if no number of packs serves. */
    Optional<List<PackCount>> cheapest() {
        Comparator<Choice> order = Comparator.comparing(Choice::atLeast)
                .thenComparing(Choice::amount, Comparator.reverseOrder())
                .thenComparing(choice -> choice.counts().toString());
        PriorityQueue<Choice> waiting = new PriorityQueue<>(order);
        waiting.add(
                new Choice(Collections.nCopies(packs.size(), 0), 0, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO));
        for (int i = 0; i < MOST_CHOICES && trials < MOST_TRIALS && !waiting.isEmpty(); i++) {
            Choice choice = waiting.remove();
            if (isEnough(choice)) {
                return Optional.of(bought(choice.counts()));
            }
            for (int place = choice.last(); place < packs.size(); place++) {
                larger(choice, place).ifPresent(waiting::add);
            }
        }
        return waiting.isEmpty() ? Optional.empty() : cheapestOfOneKind();
    }

    private boolean isEnough(Choice choice) {
        if (choice.amount().compareTo(need) < 0) {
            return false;
        }
        trials++;
        return serves.test(bought(choice.counts()));
    }

    private Optional<Choice> larger(Choice choice, int place) {
        Pack pack = packs.get(place);
        int more = choice.counts().get(place) == 0 ? pack.minimum() : 1;
        List<Integer> counts = new ArrayList<>(choice.counts());
        counts.set(place, counts.get(place) + more);
        if (counts.get(place) > pack.available().orElse(Integer.MAX_VALUE)) {
            return Optional.empty();
        }
        BigDecimal amount = choice.amount().add(pack.amount().multiply(BigDecimal.valueOf(more)));
        BigDecimal cost = choice.cost().add(pack.price().amount().multiply(BigDecimal.valueOf(more)));
        BigDecimal rest = need.subtract(amount).max(BigDecimal.ZERO).multiply(costPerAmount, MathContext.DECIMAL64);
        return Optional.of(new Choice(counts, place, amount, cost, cost.add(rest)));
    }

    private List<PackCount> bought(List<Integer> counts) {
        return IntStream.range(0, packs.size())
                .filter(i -> counts.get(i) > 0)
                .mapToObj(i -> new PackCount(packs.get(i), counts.get(i)))
                .sorted(PackCount.LARGEST_FIRST)
                .toList();
    }

    private Optional<List<PackCount>> cheapestOfOneKind() {
        return packs.stream()
                .flatMap(pack -> fewest(pack).stream())
                .min(Comparator.comparing(count -> count.cost().amount()))
                .map(List::of);
    }

    /** By halving: more packs than serve do too. */
    private Optional<PackCount> fewest(Pack pack) {
        int from = Math.max(PackSearch.toCover(pack, need), pack.minimum());
        int enough = (int) Math.min(pack.available().orElse(Integer.MAX_VALUE), (long) from + MOST_MORE);
        if (!isEnough(pack, enough)) {
            return Optional.empty();
        }
        int tooFew = from - 1;
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) >>> 1;
            if (isEnough(pack, middle)) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return Optional.of(new PackCount(pack, enough));
    }

    private boolean isEnough(Pack pack, int count) {
        PackCount some = new PackCount(pack, count);
        return some.amount().compareTo(need) >= 0 && serves.test(List.of(some));
    }
}
