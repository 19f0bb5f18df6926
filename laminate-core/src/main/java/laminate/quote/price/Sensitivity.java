package laminate.quote.price;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import laminate.unit.Money;

/**
 * Which inputs move the price of a moulding most: each is moved alone, both ways, and the price is built up again. What others
 * pull off a mould that is shared stays.
 */
public final class Sensitivity {

    /** What is moved. */
    public enum Input {
        /** What goes into the mouldings. */
        MATERIALS("materials"),
        /** What the process uses up. */
        CONSUMABLES("consumables"),
        /** Bought-in items. */
        ITEMS("items"),
        /**
         * Paid hours. What an hour is paid is not moved beside them: labour is hours times rate, and where the cost of moulds
         * stays nothing else hangs on either, so that both move the price alike.
         */
        HOURS("hours"),
        /** Share of mouldings that cannot be sold. */
        REJECTS("rejects"),
        /** Rate of overhead. */
        OVERHEAD("overhead rate"),
        /** Works cost of moulds and plugs. */
        MOULDS("cost of moulds"),
        /** Contingency. */
        CONTINGENCY("contingency"),
        /** Margin, where the profit is stated as one. */
        MARGIN("margin"),
        /** Mark-up, where the profit is stated as one. */
        MARK_UP("mark-up");

        private final String word;

        Input(String word) {
            this.word = word;
        }

        /**
         * What it is called.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    /**
     * What comes of moving an input.
     *
     * @param input what is moved
     * @param change by how much of itself, up and down
     * @param lower net price of one moulding with the input lowered
     * @param higher net price of one moulding with the input raised
     */
    public record Swing(Input input, double change, Money lower, Money higher) {
        /**
         * How far the price moves.
         *
         * @return higher less lower, without sign
         */
        public Money size() {
            Money difference = higher.plus(lower.times(-1));
            return difference.times(difference.amount().signum() < 0 ? -1 : 1);
        }
    }

    /** A margin cannot reach the whole price. */
    private static final double MOST_MARGIN = 0.99;

    private Sensitivity() {}

    /**
     * Moves every input by the same share of itself.
     *
     * @param price what makes the price
     * @param change the share, 0.1 for 10 % up and down
     * @return the swings, the largest first; those that move nothing left out
     * @throws IllegalArgumentException if the share is not above 0 and below 1
     */
    public static List<Swing> of(BuildUp price, double change) {
        List<Swing> swings = new ArrayList<>();
        for (Input input : Input.values()) {
            Swing swing = swing(price, input, change);
            if (swing.size().amount().signum() > 0) {
                swings.add(swing);
            }
        }
        swings.sort(Comparator.comparing((Swing swing) -> swing.size().amount()).reversed());
        return List.copyOf(swings);
    }

    /**
     * Moves one input.
     *
     * @param price what makes the price
     * @param input what is moved
     * @param change the share of itself, up and down
     * @return the price of one moulding either way
     * @throws IllegalArgumentException if the share is not above 0 and below 1
     */
    public static Swing swing(BuildUp price, Input input, double change) {
        if (!(change > 0 && change < 1)) {
            throw new IllegalArgumentException(
                    "an input is moved by more than 0 and less than 100 %, not by " + change);
        }
        return new Swing(
                input,
                change,
                moved(price, input, 1 - change).price().unitNet(),
                moved(price, input, 1 + change).price().unitNet());
    }

    private static BuildUp moved(BuildUp from, Input input, double factor) {
        Pricing rates = from.pricing();
        return switch (input) {
            case MATERIALS, CONSUMABLES, ITEMS, HOURS ->
                new BuildUp(moved(from.direct(), input, factor), from.moulds(), rates);
            case MOULDS -> new BuildUp(from.direct(), moved(from.moulds(), factor), rates);
            case REJECTS -> with(from, rates.withRejects(rates.rejects() * factor));
            case OVERHEAD ->
                with(
                        from,
                        rates.withOverhead(new Overhead(
                                rates.overhead().rate() * factor,
                                rates.overhead().base())));
            case CONTINGENCY -> with(from, rates.withContingency(rates.contingency() * factor));
            case MARGIN, MARK_UP -> with(from, rates.withProfit(moved(rates.profit(), input, factor)));
        };
    }

    private static BuildUp with(BuildUp from, Pricing rates) {
        return new BuildUp(from.direct(), from.moulds(), rates);
    }

    private static DirectCost moved(DirectCost from, Input input, double factor) {
        return new DirectCost(
                from.count(),
                input == Input.MATERIALS ? from.materials().times(factor) : from.materials(),
                input == Input.CONSUMABLES ? from.consumables().times(factor) : from.consumables(),
                input == Input.ITEMS ? from.items().times(factor) : from.items(),
                input == Input.HOURS ? from.time() * factor : from.time(),
                from.rate());
    }

    private static List<Mould> moved(List<Mould> moulds, double factor) {
        List<Mould> moved = new ArrayList<>();
        for (Mould mould : moulds) {
            moved.add(mould.times(factor));
        }
        return moved;
    }

    /** A profit is moved as it is told: a margin as a share of the price, a mark-up as one of the cost. */
    private static Profit moved(Profit from, Input input, double factor) {
        if (from instanceof Profit.Margin margin) {
            return input == Input.MARGIN ? new Profit.Margin(Math.min(margin.margin() * factor, MOST_MARGIN)) : from;
        }
        return input == Input.MARK_UP ? new Profit.MarkUp(from.markUp() * factor) : from;
    }
}
