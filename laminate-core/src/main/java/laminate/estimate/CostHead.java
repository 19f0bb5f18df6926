package laminate.estimate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import laminate.part.Item;
import laminate.unit.Money;

/**
 * One head of what a part costs, which knows what the part calls for: a sum is told only if nothing of it lacks a price.
 *
 * @param estimate the part
 * @param category the head
 */
public record CostHead(PartEstimate estimate, Cost.Category category) {
    /**
     * Checks that both are there.
     *
     * @param estimate the part
     * @param category the head
     */
    public CostHead {
        Objects.requireNonNull(estimate, "estimate");
        Objects.requireNonNull(category, "category");
    }

    /**
     * All that the part calls for under this head, priced or not.
     *
     * @return names, those that have a line first as in the cost
     */
    public Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        lines().forEach(line -> names.add(line.name()));
        names.addAll(needed());
        return names;
    }

    /**
     * What all mouldings cost in one name.
     *
     * @param name a material, an item, "labour"
     * @return the sum of its lines, zero if the part does not call for it; empty if it has no price, or is a share of
     *     others that have none
     */
    public Optional<Money> of(String name) {
        return estimate.cost().flatMap(cost -> {
            List<Cost.Line> lines =
                    lines().stream().filter(line -> line.name().equals(name)).toList();
            boolean spoiled =
                    lines.isEmpty() ? needed().contains(name) : lines.stream().anyMatch(this::isShareOfUnknown);
            return spoiled ? Optional.empty() : Optional.of(sum(cost, lines));
        });
    }

    /**
     * What all mouldings cost under this head.
     *
     * @return the sum; empty without prices, or if one is missing
     */
    public Optional<Money> sum() {
        return estimate.cost()
                .filter(cost -> names().stream().allMatch(name -> of(name).isPresent()))
                .map(cost -> sum(cost, lines()));
    }

    private static Money sum(Cost cost, List<Cost.Line> lines) {
        return lines.stream().map(Cost.Line::cost).reduce(Money.zero(cost.currency()), Money::plus);
    }

    private List<Cost.Line> lines() {
        return estimate.cost().stream()
                .flatMap(cost -> cost.lines().stream())
                .filter(line -> line.category() == category)
                .toList();
    }

    /** A line without a price of its own is a share of the materials. */
    private boolean isShareOfUnknown(Cost.Line line) {
        return line.price().isEmpty()
                && new CostHead(estimate, Cost.Category.MATERIALS).sum().isEmpty();
    }

    private List<String> needed() {
        return switch (category) {
            case MATERIALS -> materials(estimate.quantities().materials());
            case CONSUMABLES -> materials(estimate.consumables());
            case ITEMS -> estimate.part().items().stream().map(Item::name).toList();
            case LABOUR -> estimate.time() > 0 ? List.of(Cost.LABOUR) : List.of();
        };
    }

    private static List<String> materials(List<MaterialQuantity> quantities) {
        return quantities.stream().map(MaterialQuantity::material).distinct().toList();
    }
}
