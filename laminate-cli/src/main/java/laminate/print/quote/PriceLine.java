package laminate.print.quote;

import java.util.Locale;
import java.util.function.Function;
import laminate.quote.price.BatchPrice;
import laminate.unit.Money;

/** The lines of the price of a batch, in the order in which they make it. */
public enum PriceLine {
    /** What goes into the mouldings. */
    MATERIALS("materials", price -> price.direct().materials()),
    /** What the process uses up. */
    CONSUMABLES("consumables", price -> price.direct().consumables()),
    /** Bought-in items. */
    ITEMS("bought-in items", price -> price.direct().items()),
    /** Paid hours at their rate. */
    LABOUR("labour", price -> price.direct().labour()),
    /** What mouldings cost that cannot be sold. */
    REJECTS("rejects", BatchPrice::rejects),
    /** Costs that no part causes. */
    OVERHEAD("overhead", BatchPrice::overhead),
    /** The share of moulds and plugs. */
    MOULD_SHARE("share of moulds", BatchPrice::mouldShare),
    /** For what is not foreseen. */
    CONTINGENCY("contingency", BatchPrice::contingency),
    /** The profit. */
    MARGIN("margin", BatchPrice::margin),
    /** What the customer is let off; to be taken off the lines above it. */
    DISCOUNT("discount", BatchPrice::discount),
    /** All above. */
    NET("net", BatchPrice::net),
    /** Tax on net. */
    TAX("tax", BatchPrice::tax),
    /** Net and tax. */
    GROSS("gross", BatchPrice::gross),
    /** Net for one. */
    UNIT_NET("net for one", BatchPrice::unitNet);

    private final String word;
    private final Function<BatchPrice, Money> amount;

    PriceLine(String word, Function<BatchPrice, Money> amount) {
        this.word = word;
        this.amount = amount;
    }

    /**
     * The line in words.
     *
     * @return the words
     */
    public String word() {
        return word;
    }

    /**
     * The line in data.
     *
     * @return the key, for example {@code mould_share}
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The amount of the line.
     *
     * @param price a price
     * @return the amount, a discount above zero
     */
    public Money of(BatchPrice price) {
        return amount.apply(price);
    }
}
