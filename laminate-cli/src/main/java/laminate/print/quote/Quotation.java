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
     * Tells the offers of parts as one quotation.
     *
     * @param parts the parts, one at least
     * @return the document
     */
    public Report of(List<QuotedPart> parts) {
        Report.Builder report = new Report.Builder().heading(1, "Quotation");
        union(parts, QuotationText::yard).forEach(report::paragraph);
        letter.customer().ifPresent(customer -> report.fact("for", customer));
        report.fact("date", letter.date().toString());
        letter.validUntil(parts).ifPresent(day -> report.fact("valid until", day.toString()));
        parts.forEach(part -> add(part, report));
        if (parts.size() > 1) {
            addTotals(parts, report);
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

    private static void addTotals(List<QuotedPart> parts, Report.Builder report) {
        List<String> taxes = parts.stream()
                .map(part -> Rates.tax(part.quote().terms().pricing()))
                .distinct()
                .toList();
        boolean taxed = parts.stream()
                .anyMatch(part -> part.quote().terms().pricing().tax().isPresent());
        String tax = taxes.size() == 1 ? taxes.get(0) : "tax";
        Table.Builder table =
                new Table.Builder(columns("of each", "a set", parts.get(0).currency(), taxed, tax));
        for (BatchTotal total : BatchTotal.of(parts)) {
            table.row(row(total.count(), total::of, taxed));
        }
        if (!table.build().rows().isEmpty()) {
            report.heading(2, "All together").grid(table.build());
        }
    }
}
