package laminate.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import laminate.estimate.Cost;
import laminate.estimate.PartEstimate;
import laminate.part.Tooling;
import laminate.quote.Quoting;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/** What a run of parts costs: the estimated parts, the set-up and the moulds. */
final class CostRun {
    private final Optional<UnitPrice> rate;
    private final Quoting quoting;
    private final PartEstimate estimate;
    private final Tooling tooling;
    private final List<String> missing;

    CostRun(Candidate candidate, PartEstimate estimate) {
        this.rate = candidate.workshop().labour().rate();
        this.quoting = candidate.quoting();
        this.estimate = estimate;
        this.tooling = estimate.part().toolingInUse();
        this.missing = estimate.cost().map(this::missing).orElse(List.of());
    }

    /** What has no price, in the part or in what it is made on, once each. */
    List<String> missing() {
        return missing;
    }

    private List<String> missing(Cost cost) {
        Stream<String> ofSetUp = tooling.setUpTime() > 0 && rate.isEmpty() ? Stream.of(Cost.LABOUR) : Stream.empty();
        Stream<String> ofMould = tooling.mould().stream().flatMap(mould -> quoting.missing(mould).stream());
        return Stream.of(cost.missing().stream(), ofSetUp, ofMould)
                .flatMap(names -> names)
                .distinct()
                .toList();
    }

    Optional<CostCurve> curve() {
        return missing.isEmpty() ? estimate.cost().flatMap(Cost::total).map(this::curve) : Optional.empty();
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
                quoting.mould(estimate.part()),
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
