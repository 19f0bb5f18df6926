package laminate.print.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.quote.Quote;
import laminate.quote.SetQuote;
import laminate.quote.SetQuote.ToolCost;
import laminate.unit.Money;

/** Tells the yard what a set of mouldings comes to, and which moulds and plugs it takes, made once for all. */
final class SetSheet {
    private final QuotedSet set;
    private final List<BatchTotal> totals;

    SetSheet(QuotedSet set) {
        this.set = set;
        this.totals = BatchTotal.of(set);
    }

    Report report() {
        Report.Builder report = new Report.Builder()
                .heading(1, set.project().orElseThrow())
                .paragraph(CostSheet.paragraph(set.currency()))
                .fact("a set", contents());
        report.heading(2, "Price").grid(prices());
        report.heading(2, "Price of each part").grid(parts());
        report.heading(2, "How it is made up").grid(buildUp());
        if (set.batches().stream().anyMatch(batch -> !batch.tools().isEmpty())) {
            addTools(report);
        }
        return report.build();
    }

    private String contents() {
        List<String> contents = new ArrayList<>();
        for (QuotedPart part : set.parts()) {
            contents.add(part.quote().part().count() + " × " + part.name());
        }
        return String.join(", ", contents);
    }

    private Table prices() {
        Table.Builder table = new Table.Builder(
                Column.numbers("sets", ""),
                money("a set, net"),
                money("net"),
                money(Rates.tax(set.parts().get(0).quote().terms().pricing())),
                money("gross"),
                Column.numbers("paid time", "h"));
        for (BatchTotal total : totals) {
            table.row(
                    Integer.toString(total.count()),
                    Rates.amount(total.of(PriceLine.UNIT_NET)),
                    Rates.amount(total.of(PriceLine.NET)),
                    Rates.amount(total.of(PriceLine.TAX)),
                    Rates.amount(total.of(PriceLine.GROSS)),
                    Measures.number(total.hours()));
        }
        return table.build();
    }

    private Table parts() {
        Table.Builder table = new Table.Builder(
                Column.numbers("sets", ""),
                Column.words("part"),
                Column.numbers("number", ""),
                money("each, net"),
                money("net"));
        for (int i = 0; i < totals.size(); i++) {
            for (QuotedPart part : set.parts()) {
                Quote.Offer offer = part.quote().offers().get(i);
                table.row(
                        Integer.toString(totals.get(i).count()),
                        part.name(),
                        CostSheet.count(offer),
                        Rates.amount(offer.price().unitNet()),
                        Rates.amount(offer.price().net()));
            }
        }
        return table.build();
    }

    private Table buildUp() {
        List<Column> columns = new ArrayList<>(List.of(Column.words("line")));
        for (BatchTotal total : totals) {
            columns.add(money("for " + total.count()).in(columns.size()));
        }
        return BuildUpTable.of(
                columns,
                line -> row(line == PriceLine.UNIT_NET ? "net for a set" : line.word(), total -> total.of(line)),
                row("direct cost", BatchTotal::direct),
                row("cost", BatchTotal::cost));
    }

    private List<String> row(String name, Function<BatchTotal, Money> amount) {
        List<String> cells = new ArrayList<>(List.of(name));
        totals.forEach(total -> cells.add(Rates.amount(amount.apply(total))));
        return cells;
    }

    private void addTools(Report.Builder report) {
        report.heading(2, "Moulds and plugs, at works cost").grid(tools());
        report.paragraph(
                "Pulls are those of all that is made on it, rejects among them; each mould paid for is a pull of its plug."
                        + " All is for as many as are paid for, planned pulls counted, with what is bought to set up and"
                        + " with the plug's share. To make, or to buy, is what these sets need now, without those in hand.");
        report.heading(2, "Who pays for them").grid(payers());
        report.paragraph(
                "Each pays by its pulls. What a mould pays of its plug is in what the mould costs. Where more pulls are"
                        + " planned than these sets ask for, the rest is left to later orders.");
    }

    private Table tools() {
        Table.Builder table = new Table.Builder(
                Column.numbers("sets", ""),
                Column.words("mould or plug"),
                Column.numbers("pulls", ""),
                Column.numbers("planned", ""),
                Column.numbers("life", ""),
                Column.numbers("paid for", ""),
                Column.numbers("to make", ""),
                money("one"),
                money("all"));
        for (SetQuote.Batch batch : set.batches()) {
            for (ToolCost tool : batch.tools()) {
                table.row(
                        Integer.toString(batch.sets()),
                        tool.use().name(),
                        Measures.number(tool.use().pulls()),
                        text(tool.use().tooling().plannedPulls()),
                        text(tool.use().tooling().life()),
                        Integer.toString(tool.use().made()),
                        Integer.toString(tool.use().toMake()),
                        Rates.amount(tool.each()),
                        Rates.amount(tool.all()));
            }
        }
        return table.build();
    }

    private static String text(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private Table payers() {
        Table.Builder table = new Table.Builder(
                Column.numbers("sets", ""),
                Column.words("for"),
                Column.words("paid by"),
                Column.numbers("pulls", ""),
                money("pays"));
        for (SetQuote.Batch batch : set.batches()) {
            for (ToolCost tool : batch.tools()) {
                addPayers(batch, tool, table);
            }
            addSetUps(batch, table);
        }
        return table.build();
    }

    private void addSetUps(SetQuote.Batch batch, Table.Builder table) {
        for (QuotedPart part : set.parts()) {
            if (part.setUpPrice().isPresent()) {
                String price = Rates.amount(part.setUpPrice().get());
                table.row(Integer.toString(batch.sets()), "set-up", part.name(), "", price);
            }
        }
    }

    private static void addPayers(SetQuote.Batch batch, ToolCost tool, Table.Builder table) {
        String sets = Integer.toString(batch.sets());
        for (SetQuote.Share share : tool.shares()) {
            table.row(sets, tool.use().name(), share.by(), Measures.number(share.pulls()), Rates.amount(share.bears()));
        }
        Money rest = tool.all().plus(tool.borne().times(-1));
        if (rest.amount().signum() > 0) {
            table.row(sets, tool.use().name(), "later orders", "", Rates.amount(rest));
        }
    }

    private Column money(String heading) {
        return Column.numbers(heading, set.currency());
    }
}
