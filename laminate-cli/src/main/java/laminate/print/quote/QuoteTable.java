package laminate.print.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import laminate.quote.Quote;
import laminate.quote.SetQuote;
import laminate.quote.price.Sensitivity.Swing;
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

    /** A table of all parts below each other, or of the sets of a project. */
    static QuoteTable of(QuoteCsv.Which which, QuotedSet quoted) {
        QuoteTable table = new QuoteTable(headings(which), new ArrayList<>());
        if (which == QuoteCsv.Which.SETS) {
            BatchTotal.of(quoted).forEach(total -> table.rows.add(set(quoted, total)));
        } else if (which == QuoteCsv.Which.TOOLING) {
            quoted.batches().forEach(batch -> table.addTools(quoted, batch));
        } else {
            quoted.parts().forEach(part -> table.addPart(which, part));
        }
        return table;
    }

    private void addPart(QuoteCsv.Which which, QuotedPart part) {
        for (Quote.Offer offer : part.quote().offers()) {
            if (which == QuoteCsv.Which.PRICES) {
                rows.add(prices(part, offer));
            } else if (which == QuoteCsv.Which.BUILD_UP) {
                addBuildUp(part, offer);
            } else {
                addSwings(part, offer);
            }
        }
    }

    private static List<String> headings(QuoteCsv.Which which) {
        String what = which.isOfProject() ? "project" : "part";
        List<String> headings = new ArrayList<>(List.of(what, "count", "currency"));
        switch (which) {
            case PRICES -> {
                addLines(headings);
                headings.addAll(
                        List.of("hours", "hourly_return", "margin_after_discount_percent", "break_even", "mould_days"));
            }
            case BUILD_UP -> headings.addAll(List.of("line", "by", "amount"));
            case SENSITIVITY ->
                headings.addAll(List.of("input", "change_percent", "unit_net_lower", "unit_net_higher"));
            case SETS -> {
                addLines(headings);
                headings.add("hours");
            }
            case TOOLING ->
                headings.addAll(List.of(
                        "tool",
                        "works_cost",
                        "life",
                        "planned_pulls",
                        "pulls",
                        "made",
                        "to_make",
                        "cost",
                        "paid_by",
                        "paid_pulls",
                        "paid"));
        }
        return List.copyOf(headings);
    }

    private static void addLines(List<String> headings) {
        for (PriceLine line : PriceLine.values()) {
            headings.add(line.key());
        }
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
        row.add(orBlank(offer.breakEven()));
        row.add(Number.of(offer.mouldTime().days()));
        return row;
    }

    private static List<Cell> set(QuotedSet quoted, BatchTotal total) {
        List<Cell> row = start(quoted, total.count());
        for (PriceLine line : PriceLine.values()) {
            row.add(Number.of(total.of(line)));
        }
        row.add(Number.of(total.hours()));
        return row;
    }

    private static List<Cell> start(QuotedSet quoted, int sets) {
        return new ArrayList<>(
                List.of(new Text(quoted.project().orElse("")), Number.of(sets), new Text(quoted.currency())));
    }

    private void addTools(QuotedSet quoted, SetQuote.Batch batch) {
        for (SetQuote.ToolCost tool : batch.tools()) {
            for (SetQuote.Share share : tool.shares()) {
                List<Cell> row = start(quoted, batch.sets());
                row.add(new Text(tool.use().name()));
                row.add(Number.of(tool.each()));
                row.add(orBlank(tool.use().tooling().life()));
                row.add(orBlank(tool.use().tooling().plannedPulls()));
                row.add(Number.of(tool.use().pulls()));
                row.add(Number.of(tool.use().made()));
                row.add(Number.of(tool.use().toMake()));
                row.add(Number.of(tool.all()));
                row.add(new Text(share.by()));
                row.add(Number.of(share.pulls()));
                row.add(Number.of(share.bears()));
                rows.add(row);
            }
        }
        for (QuotedPart part : quoted.parts()) {
            part.setUpPrice().ifPresent(price -> rows.add(setUp(quoted, batch, part, price)));
        }
    }

    private static List<Cell> setUp(QuotedSet quoted, SetQuote.Batch batch, QuotedPart part, Money price) {
        List<Cell> row = start(quoted, batch.sets());
        row.add(new Text("set-up"));
        row.add(Number.of(price));
        row.addAll(Collections.nCopies(5, new Text("")));
        row.add(Number.of(price));
        row.add(new Text(part.name()));
        row.add(new Text(""));
        row.add(Number.of(price));
        return row;
    }

    private static Cell orBlank(OptionalInt number) {
        return number.isPresent() ? Number.of(number.getAsInt()) : new Text("");
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
