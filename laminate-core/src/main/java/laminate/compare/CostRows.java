package laminate.compare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import laminate.estimate.Cost;
import laminate.estimate.CostHead;
import laminate.estimate.PartEstimate;
import laminate.unit.Money;

/** The cost of one part by every alternative, line by line. */
final class CostRows {
    private final List<PartEstimate> estimates;

    private CostRows(List<Alternative> alternatives) {
        this.estimates = alternatives.stream().map(Alternative::estimate).toList();
    }

    /** The lines of each head, its sum, and at last the total; nothing where no alternative has prices. */
    static List<CostRow> of(List<Alternative> alternatives) {
        CostRows rows = new CostRows(alternatives);
        if (rows.estimates.stream().allMatch(estimate -> estimate.cost().isEmpty())) {
            return List.of();
        }
        List<CostRow> all = new ArrayList<>();
        for (Cost.Category head : Cost.Category.values()) {
            all.addAll(rows.of(head));
        }
        all.add(rows.row(Optional.empty(), "", estimate -> estimate.cost().flatMap(Cost::total)));
        return all;
    }

    private List<CostRow> of(Cost.Category head) {
        Set<String> names = new LinkedHashSet<>();
        estimates.forEach(estimate -> names.addAll(new CostHead(estimate, head).names()));
        List<CostRow> rows = new ArrayList<>();
        for (String name : names) {
            rows.add(row(Optional.of(head), name, estimate -> new CostHead(estimate, head).of(name)));
        }
        if (!names.isEmpty()) {
            rows.add(row(Optional.of(head), "", estimate -> new CostHead(estimate, head).sum()));
        }
        return rows;
    }

    private CostRow row(Optional<Cost.Category> head, String name, Function<PartEstimate, Optional<Money>> cost) {
        return new CostRow(
                head,
                name,
                estimates.stream()
                        .map(estimate -> cost.apply(estimate)
                                .map(money -> each(money, estimate.part().count())))
                        .toList());
    }

    private static Money each(Money all, int count) {
        BigDecimal each =
                all.amount().divide(BigDecimal.valueOf(count), all.amount().scale(), RoundingMode.HALF_UP);
        return new Money(each, all.currency());
    }
}
