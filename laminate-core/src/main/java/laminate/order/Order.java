package laminate.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.unit.Money;

/**
 * What to buy for one or more parts.
 *
 * @param wanted the day of use, empty if it is not known
 * @param lines what is needed, group by group; a line whose need lies in stock buys nothing
 * @param missing what has no price that it can be bought at; while anything is missing there is no total
 * @param remarks what to mind: stock past its day, stock in another measure, what is not ordered here
 */
public record Order(Optional<LocalDate> wanted, List<OrderLine> lines, List<String> missing, List<String> remarks) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if lines are in several currencies
     */
    public Order {
        Objects.requireNonNull(wanted, "wanted");
        lines = List.copyOf(lines);
        missing = List.copyOf(missing);
        remarks = List.copyOf(remarks);
        List<String> currencies = lines.stream()
                .flatMap(line -> line.cost().stream())
                .map(Money::currency)
                .distinct()
                .toList();
        if (currencies.size() > 1) {
            throw new IllegalArgumentException(
                    "an order is in one currency, not in " + String.join(" and ", currencies));
        }
    }

    /**
     * This order with one more remark.
     *
     * @param remark what whoever orders should know, in a sentence without a full stop
     * @return the order
     */
    public Order withRemark(String remark) {
        List<String> more = new ArrayList<>(remarks);
        more.add(remark);
        return new Order(wanted, lines, missing, more);
    }

    /**
     * The lines of a group.
     *
     * @param group the group
     * @return its lines, in their order
     */
    public List<OrderLine> lines(Group group) {
        return lines.stream().filter(line -> line.need().group() == group).toList();
    }

    /**
     * The sum of all lines that have a price.
     *
     * @return the known total; empty if no line has one
     */
    public Optional<Money> knownTotal() {
        return lines.stream().flatMap(line -> line.cost().stream()).reduce(Money::plus);
    }

    /**
     * What the order costs.
     *
     * @return the sum of the lines; empty while a price is missing
     */
    public Optional<Money> total() {
        return missing.isEmpty() ? knownTotal() : Optional.empty();
    }

    /**
     * What the surplus of all lines has cost.
     *
     * @return the sum of the lines; empty if no line has a price
     */
    public Optional<Money> surplusValue() {
        return lines.stream().flatMap(line -> line.surplusValue().stream()).reduce(Money::plus);
    }
}
