package laminate.quote.price;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import laminate.unit.Money;

/**
 * All that makes the price of a batch.
 *
 * <p>Worked by hand: materials 50, labour 50, rejects 5 %, overhead 100 % of labour. Rejects 100·0.05/0.95 = 5.26, of which
 * half is labour; overhead 50/0.95 = 52.63; together 157.89.
 *
 * @param direct what the good mouldings cost directly
 * @param moulds the moulds and plugs it bears a share of
 * @param pricing the yard's rates
 */
public record BuildUp(DirectCost direct, List<Mould> moulds, Pricing pricing) {

    /** Copies the moulds. */
    public BuildUp {
        Objects.requireNonNull(direct, "direct");
        Objects.requireNonNull(pricing, "pricing");
        moulds = List.copyOf(moulds);
    }

    /**
     * The price, line by line.
     *
     * @return the price of the batch
     * @throws IllegalArgumentException if amounts are in more than one currency
     */
    public BatchPrice price() {
        Money rejects = direct.total().times(pricing.rejects() / (1 - pricing.rejects()));
        Money overhead = overhead();
        Money mouldShare = mouldShare();
        Money uncertain = direct.total().plus(rejects).plus(overhead).plus(mouldShare);
        Money contingency = uncertain.times(pricing.contingency());
        Money cost = uncertain.plus(contingency);
        Money margin = cost.times(pricing.profit().markUp());
        Money discount = cost.plus(margin).times(pricing.discount());
        Money net = cost.plus(margin).plus(minus(discount));
        Money tax = pricing.tax().map(due -> net.times(due.rate())).orElse(Money.zero(net.currency()));
        return new BatchPrice(
                direct,
                rejects,
                overhead,
                mouldShare,
                contingency,
                margin,
                discount,
                net,
                tax,
                net.plus(tax),
                net.dividedBy(direct.count()),
                marginOf(net, cost));
    }

    private Money overhead() {
        Money base = pricing.overhead().base() == Overhead.Base.LABOUR ? direct.labour() : direct.total();
        return base.times(pricing.overhead().rate() / (1 - pricing.rejects()));
    }

    private Money mouldShare() {
        Money sum = Money.zero(direct.materials().currency());
        double pulls = pricing.pulls(direct.count());
        for (Mould mould : moulds) {
            sum = sum.plus(mould.share(pulls));
        }
        return sum;
    }

    private static double marginOf(Money net, Money cost) {
        double price = net.amount().doubleValue();
        return price == 0 ? 0 : net.plus(minus(cost)).amount().doubleValue() / price;
    }

    private static Money minus(Money money) {
        return money.times(BigDecimal.ONE.negate());
    }
}
