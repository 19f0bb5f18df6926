package laminate.print.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import laminate.part.Item;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.quote.QuotationText;
import laminate.quote.Quote;
import laminate.unit.Money;

/**
 * A quotation for a customer, free of any format: what is offered, in which numbers, at which price, until when, and the
 * yard's own words. No cost, rate, hour or margin is in it.
 */
public final class Quotation {
    private final Letter letter;

    /**
     * How quotations are told.
     *
     * @param letter to whom, of which day and until when
     */
    public Quotation(Letter letter) {
        this.letter = letter;
    }

    /**
     * Tells all that is quoted together as one quotation: of a project its mouldings and the price of a set.
     *
     * @param quoted a set, or parts by themselves
     * @return the document
     */
    public Report of(QuotedSet quoted) {
        List<QuotedPart> parts = quoted.parts();
        Report.Builder report = new Report.Builder().heading(1, "Quotation");
        union(parts, QuotationText::yard).forEach(report::paragraph);
        letter.customer().ifPresent(customer -> report.fact("for", customer));
        report.fact("date", letter.date().toString());
        letter.validUntil(parts).ifPresent(day -> report.fact("valid until", day.toString()));
        if (quoted.project().isPresent()) {
            addSet(quoted, report);
        } else {
            parts.forEach(part -> add(part, report));
        }
        if (quoted.project().isEmpty() && parts.size() > 1) {
            addTotals(quoted, report);
        }
        addPoints("Included", union(parts, QuotationText::scope), report);
        addPoints("Not included", union(parts, QuotationText::exclusions), report);
        addPoints("Terms", union(parts, QuotationText::terms), report);
        return report.build();
    }

    private static List<String> union(List<QuotedPart> parts, Function<QuotationText, List<String>> lines) {
        return parts.stream()
                .flatMap(part -> lines.apply(part.text()).stream())
                .distinct()
                .toList();
    }

    private static void addPoints(String heading, List<String> points, Report.Builder report) {
        if (!points.isEmpty()) {
            report.heading(2, heading).bullets(points);
        }
    }

    private static void add(QuotedPart part, Report.Builder report) {
        report.heading(2, part.name()).paragraph(description(part)).grid(prices(part));
        addDiscount(part, report);
    }

    private static void addSet(QuotedSet quoted, Report.Builder report) {
        List<String> contents = new ArrayList<>();
        for (QuotedPart part : quoted.parts()) {
            String described = description(part);
            contents.add(part.quote().part().count() + " × " + part.name() + ". " + described);
        }
        report.heading(2, quoted.project().orElseThrow()).paragraph("A set is:").bullets(contents);
        report.grid(totals(quoted, "sets"));
        addDiscount(quoted.parts().get(0), report);
    }

    /** All of a yard is let off alike. */
    private static void addDiscount(QuotedPart part, Report.Builder report) {
        double discount = part.quote().terms().pricing().discount();
        if (discount > 0) {
            report.paragraph("A discount of " + Rates.percent(discount) + " is in the prices.");
        }
    }

    private static String description(QuotedPart part) {
        List<String> fitted = new ArrayList<>();
        for (Item item : part.quote().part().items()) {
            fitted.add((item.count() == 1 ? "" : item.count() + " × ") + item.name());
        }
        return "About " + Measures.number(part.mass()) + " kg each"
                + (fitted.isEmpty() ? "." : ", with " + String.join(", ", fitted) + ".");
    }

    private static Table prices(QuotedPart part) {
        boolean taxed = part.quote().terms().pricing().tax().isPresent();
        String tax = Rates.tax(part.quote().terms().pricing());
        Table.Builder table = new Table.Builder(columns("number", "each", part.currency(), taxed, tax));
        for (Quote.Offer offer : part.quote().offers()) {
            table.row(row(offer.price().direct().count(), line -> line.of(offer.price()), taxed));
        }
        return table.build();
    }

    /** Where no tax is due, there is one price and no word of tax. */
    private static List<Column> columns(String number, String each, String currency, boolean taxed, String tax) {
        String without = taxed ? ", without tax" : "";
        List<Column> columns = new ArrayList<>(List.of(
                Column.numbers(number, ""),
                Column.numbers(each + without, currency),
                Column.numbers("all" + without, currency)));
        if (taxed) {
            columns.add(Column.numbers(tax, currency));
            columns.add(Column.numbers("to pay", currency));
        }
        return columns;
    }

    private static List<String> row(int number, Function<PriceLine, Money> amounts, boolean taxed) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(number)));
        for (PriceLine line : List.of(PriceLine.UNIT_NET, PriceLine.NET, PriceLine.TAX, PriceLine.GROSS)) {
            if (taxed || line == PriceLine.UNIT_NET || line == PriceLine.NET) {
                row.add(Rates.amount(amounts.apply(line)));
            }
        }
        return row;
    }

    private static void addTotals(QuotedSet quoted, Report.Builder report) {
        Table totals = totals(quoted, "of each");
        if (!totals.rows().isEmpty()) {
            report.heading(2, "All together").grid(totals);
        }
    }

    private static Table totals(QuotedSet quoted, String number) {
        List<QuotedPart> parts = quoted.parts();
        List<String> taxes = parts.stream()
                .map(part -> Rates.tax(part.quote().terms().pricing()))
                .distinct()
                .toList();
        boolean taxed = parts.stream()
                .anyMatch(part -> part.quote().terms().pricing().tax().isPresent());
        String tax = taxes.size() == 1 ? taxes.get(0) : "tax";
        Table.Builder table = new Table.Builder(columns(number, "a set", quoted.currency(), taxed, tax));
        for (BatchTotal total : BatchTotal.of(quoted)) {
            table.row(row(total.count(), total::of, taxed));
        }
        return table.build();
    }
}
