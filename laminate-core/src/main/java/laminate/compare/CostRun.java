package laminate.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import laminate.estimate.Cost;
import laminate.estimate.PartEstimate;
import laminate.part.Tooling;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/** What a run of parts costs: the estimated parts, the set-up and the moulds. */
final class CostRun {
    private final Optional<UnitPrice> rate;
    private final PartEstimate estimate;
    private final Tooling tooling;

    CostRun(Optional<UnitPrice> rate, PartEstimate estimate) {
        this.rate = rate;
        this.estimate = estimate;
        this.tooling = estimate.part().toolingInUse();
    }

    /** What has no price, once each. */
    List<String> missing() {
        Stream<String> ofEstimate = estimate.cost().stream().flatMap(cost -> cost.missing().stream());
        Stream<String> ofSetUp = estimate.cost().isPresent() && tooling.setUpTime() > 0 && rate.isEmpty()
                ? Stream.of(Cost.LABOUR)
                : Stream.empty();
        return Stream.concat(ofEstimate, ofSetUp).distinct().toList();
    }

    Optional<CostCurve> curve() {
        return missing().isEmpty() ? estimate.cost().flatMap(Cost::total).map(this::curve) : Optional.empty();
    }

    private CostCurve curve(Money total) {
        List<Money> setUp = new ArrayList<>();
        if (tooling.setUpTime() > 0) {
            setUp.add(rate.orElseThrow().cost(tooling.setUpTime() / 3600));
        }
        tooling.setUpPrice().ifPresent(setUp::add);
        Stream.concat(setUp.stream(), tooling.price().stream()).forEach(money -> checkCurrency(money, total));
        return new CostCurve(
                setUp.stream().reduce(Money.zero(total.currency()), Money::plus),
                tooling.price(),
                tooling.life(),
                total,
                estimate.part().count());
    }

    private static void checkCurrency(Money money, Money total) {
        if (!money.currency().equals(total.currency())) {
            throw new IllegalArgumentException(
                    "tooling is priced in " + money.currency() + ", the price list in " + total.currency());
        }
    }
}
