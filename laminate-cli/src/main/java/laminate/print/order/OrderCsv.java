package laminate.print.order;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.order.Need;
import laminate.order.OrderLine;
import laminate.order.packs.PackCount;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.unit.Money;
import laminate.unit.PriceBasis;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/**
 * Prints one table of an order as comma-separated values. Amounts are in the unit that stands beside them, and have all
 * their digits; a field is empty where nothing is known or it does not apply.
 */
public final class OrderCsv implements Printer<OrderSheet> {

    /** The tables there are. */
    public enum Which {
        /** A material a row: need, stock, what to buy, cost, days. */
        LINES,
        /** A kind of pack a row, as an order is written. */
        PACKS,
        /** A piece a row, in order of lay-up. */
        PIECES,
        /** A piece a row, as it lies on its roll or sheet; it has one row for each time that it is cut. */
        PLACES;

        /**
         * Whether it is about cutting.
         *
         * @return true for pieces and places
         */
        public boolean isOfCutting() {
            return this == PIECES || this == PLACES;
        }

        /**
         * The word that stands for the table.
         *
         * @return the word
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final Which which;
    private final Measures measures;
    private final OrderWords words;

    /**
     * A printer.
     *
     * @param which the table wanted
     * @param system the reader's units
     */
    public OrderCsv(Which which, UnitSystem system) {
        this.which = which;
        this.measures = new Measures(system);
        this.words = new OrderWords(measures);
    }

    @Override
    public void print(List<OrderSheet> sheets, Appendable out) throws IOException {
        CsvWriter.write(out, csv -> {
            csv.headings(headings());
            for (OrderSheet sheet : sheets) {
                if (which.isOfCutting()) {
                    new CuttingCsv(measures, csv).print(sheet.cutting(), sheet.order(), which);
                } else {
                    sheet.order().lines().forEach(line -> print(line, csv));
                }
            }
        });
    }

    private List<String> headings() {
        String thickness = "thickness_" + CsvWriter.symbol(measures.length());
        return switch (which) {
            case LINES ->
                List.of(
                        "group",
                        "material",
                        thickness,
                        "unit",
                        "need",
                        "in_parts",
                        "laps",
                        "trimmed",
                        "waste",
                        "in_stock",
                        "buy",
                        "surplus",
                        "surplus_value",
                        "cost",
                        "currency",
                        "lead_time_days",
                        "order_by",
                        "shelf_life_days",
                        "delivered_from");
            case PACKS ->
                List.of("group", "material", thickness, "pack", "amount", "unit", "count", "price", "cost", "currency");
            default -> CuttingCsv.headings(which, CsvWriter.symbol(measures.length()));
        };
    }

    private void print(OrderLine line, CsvWriter csv) {
        switch (which) {
            case LINES -> line(line, csv);
            default -> line.packs().forEach(packs -> packs(line, packs, csv));
        }
    }

    private CsvWriter start(OrderLine line, CsvWriter csv) {
        return csv.text(line.need().group().word())
                .text(line.material())
                .number(line.need().quantity().thickness(), measures.length());
    }

    private void line(OrderLine line, CsvWriter csv) {
        Need need = line.need();
        start(line, csv).text(words.symbol(line.measure()));
        for (double share : new double[] {1, need.inParts(), need.laps(), need.trimmed(), need.wasted()}) {
            amount(Math.max(0, share) * line.amount(), line.measure(), csv);
        }
        amount(line.inStock(), line.measure(), csv);
        amount(line.bought(), line.measure(), csv);
        amount(line.surplus(), line.measure(), csv);
        csv.text(OrderWords.money(line.surplusValue()))
                .text(OrderWords.money(line.cost()))
                .text(line.cost().map(Money::currency).orElse(""));
        days(line.delivery().leadDays(), csv);
        csv.text(OrderWords.day(line.delivery().orderBy()));
        days(line.delivery().shelfDays(), csv);
        csv.text(OrderWords.day(line.delivery().deliveredFrom())).end();
    }

    private void packs(OrderLine line, PackCount packs, CsvWriter csv) {
        start(line, csv).text(packs.pack().name());
        amount(packs.pack().amount().doubleValue(), line.measure(), csv);
        csv.text(words.symbol(line.measure()))
                .number(packs.count())
                .text(packs.pack().price().amount().toPlainString())
                .text(packs.cost().amount().toPlainString())
                .text(packs.cost().currency())
                .end();
    }

    private void amount(double amount, PriceBasis measure, CsvWriter csv) {
        Optional<Unit> unit = words.unit(measure);
        if (unit.isPresent()) {
            csv.number(measure.unit().orElseThrow().toSi(amount), unit.get());
        } else {
            csv.number(amount);
        }
    }

    private static void days(OptionalInt days, CsvWriter csv) {
        if (days.isPresent()) {
            csv.number(days.getAsInt());
        } else {
            csv.nothing();
        }
    }
}
