package laminate.compare;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Cost;
import laminate.unit.Money;

/**
 * One line of the cost of a part by every alternative: what the choice costs or saves in that line.
 *
 * @param head the head of the cost; empty for the total
 * @param name what it is for; empty text for the sum of a head and for the total
 * @param each for one part, in the order of the alternatives: zero where an alternative needs none of it, empty where a
 *     price is missing or there are none
 */
public record CostRow(Optional<Cost.Category> head, String name, List<Optional<Money>> each) {
    /**
     * Keeps a copy.
     *
     * @param head the head of the cost
     * @param name what it is for
     * @param each for one part, in the order of the alternatives
     */
    public CostRow {
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(name, "name");
        each = List.copyOf(each);
    }

    /**
     * What an alternative costs more than the first.
     *
     * @param alternative its number, the first is 0
     * @return for one part, below zero for a saving; empty where one of both is unknown or in another currency
     */
    public Optional<Money> extra(int alternative) {
        return each.get(0)
                .flatMap(first -> each.get(alternative)
                        .filter(other -> other.currency().equals(first.currency()))
                        .map(other -> new Money(other.amount().subtract(first.amount()), other.currency())));
    }

    /**
     * The difference of an alternative to the first.
     *
     * @param alternative its number, the first is 0
     * @return a share of the first: 0.12 for 12 % more; empty where one of both is unknown, or the first is zero and the
     *     other is not
     */
    public OptionalDouble difference(int alternative) {
        return extra(alternative).isEmpty() ? OptionalDouble.empty() : Row.difference(amount(0), amount(alternative));
    }

    private OptionalDouble amount(int alternative) {
        return each.get(alternative).stream()
                .mapToDouble(money -> money.amount().doubleValue())
                .findFirst();
    }
}
