package laminate.print.quote;

import java.util.Locale;
import laminate.print.Measures;
import laminate.quote.price.Overhead;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.unit.Money;

/** By what rate of what base each line of a price is reckoned, in words. */
final class Rates {
    private final QuotedPart part;
    private final Pricing pricing;

    Rates(QuotedPart part) {
        this.part = part;
        this.pricing = part.quote().terms().pricing();
    }

    /** An amount without its currency. */
    static String amount(Money money) {
        return money.amount().toPlainString();
    }

    /** A share in per cent as it was set. */
    static String percent(double share) {
        return Measures.plain(share * 100) + " %";
    }

    /** A share in per cent that was computed. */
    static String reckoned(double share) {
        return Measures.percent(share) + " %";
    }

    String of(PriceLine line) {
        return switch (line) {
            case MATERIALS -> part.asBought() ? "in whole packs" : "as used up, with waste";
            case CONSUMABLES, ITEMS -> "as used up";
            case LABOUR -> part.quote().offers().get(0).price().direct().rate() + " for paid hours";
            case REJECTS -> rejects();
            case OVERHEAD -> percent(pricing.overhead().rate()) + " of " + overheadBase();
            case MOULD_SHARE -> "by the pull";
            case CONTINGENCY -> percent(pricing.contingency()) + " of all above";
            case MARGIN -> profit();
            case DISCOUNT -> pricing.discount() == 0 ? "none" : percent(pricing.discount()) + " of cost and margin";
            case NET -> "cost and margin less discount";
            case TAX ->
                pricing.tax()
                        .map(tax -> tax.name() + " " + percent(tax.rate()) + " of net")
                        .orElse("none");
            case GROSS -> "net and tax";
            case UNIT_NET -> "net by good parts";
        };
    }

    /** p of the pulls, which is p/(1 − p) of what the good ones cost. */
    private String rejects() {
        double share = pricing.rejects();
        return share == 0
                ? "none"
                : percent(share) + " of pulls, so " + reckoned(share / (1 - share)) + " of direct cost";
    }

    private String overheadBase() {
        String base = pricing.overhead().base() == Overhead.Base.LABOUR ? "labour" : "all direct cost";
        return pricing.rejects() == 0 ? base : base + ", that of rejects too";
    }

    /** The rate of tax on prices, as told to a customer. */
    static String tax(Pricing pricing) {
        return pricing.tax().map(tax -> tax.name() + " " + percent(tax.rate())).orElse("tax");
    }

    /** Margin and mark-up both, that first which was chosen. */
    String profit() {
        Profit profit = pricing.profit();
        String margin = (profit instanceof Profit.Margin ? percent(profit.margin()) : reckoned(profit.margin()))
                + " of the price";
        String markUp = (profit instanceof Profit.MarkUp ? percent(profit.markUp()) : reckoned(profit.markUp()))
                + " of the cost";
        return profit instanceof Profit.Margin ? margin + ", " + markUp : markUp + ", " + margin;
    }

    /** By how much an input is moved, with its sign. */
    static String change(double change) {
        return String.format(Locale.ROOT, "%.0f %%", change * 100);
    }
}
