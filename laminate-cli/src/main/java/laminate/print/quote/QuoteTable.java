package laminate.print.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import laminate.quote.Quote;
import laminate.quote.Sensitivity.Swing;
import laminate.unit.JsonNumbers;
import laminate.unit.Money;

/**
 * Quotes as rows for the books, free of any format.
 *
 * @param headings a name for each column
 * @param rows the rows, each with a cell for each column
 */
record QuoteTable(List<String> headings, List<List<Cell>> rows) {

    /** What stands in a row. */
    sealed interface Cell permits Text, Number {}

    /**
     * A text, which is never a formula.
     *
     * @param text the text
     */
    record Text(String text) implements Cell {}

    /**
     * A number with the decimals it is told with.
     *
     * @param value the number
     */
    record Number(BigDecimal value) implements Cell {
        static Number of(Money money) {
            return new Number(money.amount());
        }

        static Number of(double value) {
            return new Number(new BigDecimal(JsonNumbers.format(value)));
        }
    }

    /** A table of all parts below each other. */
    static QuoteTable of(QuoteCsv.Which which, List<QuotedPart> parts) {
        QuoteTable table = new QuoteTable(headings(which), new ArrayList<>());
        for (QuotedPart part : parts) {
            for (Quote.Offer offer : part.quote().offers()) {
                switch (which) {
                    case PRICES -> table.rows.add(prices(part, offer));
                    case BUILD_UP -> table.addBuildUp(part, offer);
                    case SENSITIVITY -> table.addSwings(part, offer);
                }
            }
        }
        return table;
    }

    private static List<String> headings(QuoteCsv.Which which) {
        List<String> headings = new ArrayList<>(List.of("part", "count", "currency"));
        switch (which) {
            case PRICES -> {
                for (PriceLine line : PriceLine.values()) {
                    headings.add(line.key());
                }
                headings.addAll(
                        List.of("hours", "hourly_return", "margin_after_discount_percent", "break_even", "mould_days"));
            }
            case BUILD_UP -> headings.addAll(List.of("line", "by", "amount"));
            case SENSITIVITY ->
                headings.addAll(List.of("input", "change_percent", "unit_net_lower", "unit_net_higher"));
        }
        return List.copyOf(headings);
    }

    private static List<Cell> start(QuotedPart part, Quote.Offer offer) {
        return new ArrayList<>(
                List.of(new Text(part.name()), Number.of(offer.price().direct().count()), new Text(part.currency())));
    }

    private static List<Cell> prices(QuotedPart part, Quote.Offer offer) {
        List<Cell> row = start(part, offer);
        for (PriceLine line : PriceLine.values()) {
            row.add(Number.of(line.of(offer.price())));
        }
        row.add(Number.of(offer.price().direct().hours()));
        row.add(offer.price().direct().time() > 0 ? Number.of(offer.hourly()) : new Text(""));
        row.add(Number.of(offer.price().marginAfterDiscount() * 100));
        row.add(offer.breakEven().isPresent() ? Number.of(offer.breakEven().getAsInt()) : new Text(""));
        row.add(Number.of(offer.mouldTime().days()));
        return row;
    }

    private void addBuildUp(QuotedPart part, Quote.Offer offer) {
        Rates rates = new Rates(part);
        for (PriceLine line : PriceLine.values()) {
            List<Cell> row = start(part, offer);
            row.add(new Text(line.word()));
            row.add(new Text(rates.of(line)));
            row.add(Number.of(line.of(offer.price())));
            rows.add(row);
        }
    }

    private void addSwings(QuotedPart part, Quote.Offer offer) {
        offer.swings().forEach(swing -> rows.add(swing(part, offer, swing)));
        rows.add(swing(part, offer, offer.materials()));
        rows.add(swing(part, offer, offer.hours()));
    }

    private static List<Cell> swing(QuotedPart part, Quote.Offer offer, Swing swing) {
        List<Cell> row = start(part, offer);
        row.add(new Text(swing.input().word()));
        row.add(Number.of(swing.change() * 100));
        row.add(Number.of(swing.lower()));
        row.add(Number.of(swing.higher()));
        return row;
    }

    /** The name of a table for a reader. */
    static String title(QuoteCsv.Which which) {
        String word = which.word().replace('-', ' ');
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
