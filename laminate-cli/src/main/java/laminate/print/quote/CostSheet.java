package laminate.print.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.quote.Quote;
import laminate.quote.price.BatchPrice;
import laminate.quote.price.Mould;
import laminate.quote.price.Sensitivity.Swing;
import laminate.unit.Money;

/** Tells the yard what a part costs and what is asked for it, free of any format: the price stands first. Not for customers. */
public final class CostSheet {

    /** How costs are told. */
    public CostSheet() {}

    /**
     * Tells all that is quoted together.
     *
     * @param quoted a set, or parts by themselves
     * @return of a set a document that tells its price and its moulds; then one for each part
     */
    public List<Report> of(QuotedSet quoted) {
        List<Report> sheets = new ArrayList<>();
        if (quoted.project().isPresent()) {
            sheets.add(new SetSheet(quoted).report());
        }
        quoted.parts().forEach(part -> sheets.add(of(part, quoted.project().isPresent())));
        return sheets;
    }

    static String paragraph(String currency) {
        return "Internal cost sheet, all amounts in " + currency
                + ". Each line is rounded once; net is the sum of the rounded lines.";
    }

    private static Report of(QuotedPart part, boolean inSet) {
        Report.Builder report = new Report.Builder().heading(1, part.name()).paragraph(paragraph(part.currency()));
        report.heading(2, "Price").grid(prices(part));
        report.heading(2, "How it is made up").grid(buildUp(part));
        addProfit(part, report);
        if (!inSet) {
            addMoulds(part, report);
        }
        report.heading(2, "What it earns").grid(returns(part));
        report.paragraph(
                "An hour earns what is left of net when materials, consumables, items and moulds are paid: labour,"
                        + " overhead, contingency and profit are in it. The margin is that of the net price after discount."
                        + " At break-even the price has paid for all moulds that are needed. Days are those that the mould"
                        + " is taken." + (inSet ? " Other parts of the set are held in their number." : ""));
        addSensitivity(part, report);
        return report.build();
    }

    private static Table prices(QuotedPart part) {
        Table.Builder table = new Table.Builder(
                Column.numbers("number", ""),
                Column.numbers("each, net", part.currency()),
                Column.numbers("net", part.currency()),
                Column.numbers(Rates.tax(part.quote().terms().pricing()), part.currency()),
                Column.numbers("gross", part.currency()));
        for (Quote.Offer offer : part.quote().offers()) {
            BatchPrice price = offer.price();
            table.row(
                    count(offer),
                    Rates.amount(price.unitNet()),
                    Rates.amount(price.net()),
                    Rates.amount(price.tax()),
                    Rates.amount(price.gross()));
        }
        return table.build();
    }

    private static Table buildUp(QuotedPart part) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("line"), Column.words("by")));
        for (Quote.Offer offer : part.quote().offers()) {
            int group = columns.size() - 1;
            columns.add(Column.numbers("for " + count(offer), part.currency()).in(group));
        }
        Rates rates = new Rates(part);
        return BuildUpTable.of(
                columns,
                line -> row(part, line.word(), rates.of(line), line::of),
                row(part, "direct cost", "sum", price -> price.direct().total()),
                row(part, "cost", "sum of the lines", BatchPrice::cost));
    }

    private static List<String> row(QuotedPart part, String name, String by, Function<BatchPrice, Money> amount) {
        List<String> cells = new ArrayList<>(List.of(name, by));
        part.quote().offers().forEach(offer -> cells.add(Rates.amount(amount.apply(offer.price()))));
        return cells;
    }

    private static void addProfit(QuotedPart part, Report.Builder report) {
        report.fact("margin", new Rates(part).profit());
        report.fact("discount", Rates.percent(part.quote().terms().pricing().discount()));
        report.fact("times", times(part));
    }

    private static String times(QuotedPart part) {
        double rate = part.quote().terms().learning().rate();
        String paid = Measures.plain(part.quote().terms().paid()) + " h paid for an hour of work; ";
        return paid
                + (rate == 1
                        ? "no learning"
                        : Rates.percent(rate) + " of the mean time with each doubling, from "
                                + part.quote().terms().learning().countedOn() + " on which the times are counted");
    }

    private static void addMoulds(QuotedPart part, Report.Builder report) {
        Table.Builder table = new Table.Builder(
                Column.words("mould"),
                Column.numbers("one costs", part.currency()),
                Column.numbers("life", "pulls"),
                Column.numbers("planned", "pulls"),
                Column.words("made on or with"));
        part.quote().offers().get(0).build().moulds().forEach(mould -> addRows(mould, table));
        if (!table.build().rows().isEmpty()) {
            report.heading(2, "Moulds and plugs, at works cost").grid(table.build());
        }
    }

    private static void addRows(Mould mould, Table.Builder table) {
        table.row(
                mould.name(),
                Rates.amount(mould.worksCost()),
                mould.life().isPresent() ? Integer.toString(mould.life().getAsInt()) : "",
                mould.plannedPulls().isPresent()
                        ? Integer.toString(mould.plannedPulls().getAsInt())
                        : "",
                String.join(", ", mould.madeOn().stream().map(Mould::name).toList()));
        mould.madeOn().forEach(plug -> addRows(plug, table));
    }

    private static Table returns(QuotedPart part) {
        Table.Builder table = new Table.Builder(
                Column.numbers("number", ""),
                Column.numbers("paid time", "h"),
                Column.numbers("an hour earns", part.currency()),
                Column.numbers("margin", "%"),
                Column.numbers("break-even", ""),
                Column.numbers("mould", "days"));
        for (Quote.Offer offer : part.quote().offers()) {
            table.row(
                    count(offer),
                    Measures.number(offer.price().direct().hours()),
                    offer.price().direct().time() > 0 ? Rates.amount(offer.hourly()) : "",
                    Measures.percent(offer.price().marginAfterDiscount()),
                    offer.breakEven().isPresent() ? "from " + offer.breakEven().getAsInt() : "never",
                    Integer.toString(offer.mouldTime().days()));
        }
        return table.build();
    }

    private static void addSensitivity(QuotedPart part, Report.Builder report) {
        report.heading(2, "What moves the price most");
        report.grid(swings(part, Quote.Offer::swings));
        report.heading(2, "If materials or hours were misjudged");
        report.grid(swings(part, offer -> List.of(offer.materials(), offer.hours())));
    }

    private static Table swings(QuotedPart part, Function<Quote.Offer, List<Swing>> swings) {
        Table.Builder table = new Table.Builder(
                Column.numbers("number", ""),
                Column.words("input"),
                Column.numbers("by", ""),
                Column.numbers("each if less", part.currency()),
                Column.numbers("each if more", part.currency()));
        for (Quote.Offer offer : part.quote().offers()) {
            for (Swing swing : swings.apply(offer)) {
                table.row(
                        count(offer),
                        swing.input().word(),
                        "±" + Rates.change(swing.change()),
                        Rates.amount(swing.lower()),
                        Rates.amount(swing.higher()));
            }
        }
        return table.build();
    }

    static String count(Quote.Offer offer) {
        return Integer.toString(offer.price().direct().count());
    }
}
