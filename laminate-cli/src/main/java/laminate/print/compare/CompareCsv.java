package laminate.print.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import laminate.check.Subject;
import laminate.compare.Alternative;
import laminate.compare.BreakEven;
import laminate.compare.CostCurve;
import laminate.compare.CostRow;
import laminate.compare.Row;
import laminate.compare.SideBySide;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.print.estimate.CostWords;
import laminate.unit.Money;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/**
 * Prints one table of a comparison as comma-separated values, with a column for each alternative under its name. Numbers
 * have all their digits; a field is empty where nothing is known or it does not apply.
 */
public final class CompareCsv implements Printer<SideBySide> {

    /** The tables there are. */
    public enum Which {
        /** Every figure, of the part, zones, load cases, panels and beams. */
        FIGURES,
        /** Every line of the cost of one part. */
        COSTS,
        /** Cost against number of parts. */
        CURVE,
        /** The numbers of parts at which one overtakes another. */
        BREAK_EVEN;

        /**
         * The word that stands for the table.
         *
         * @return the word
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final Which which;
    private final Scale scale;

    /**
     * A printer.
     *
     * @param which the table wanted
     * @param system the reader's units
     */
    public CompareCsv(Which which, UnitSystem system) {
        this.which = which;
        this.scale = new Scale(new Measures(system));
    }

    @Override
    public void print(List<SideBySide> comparisons, Appendable out) throws IOException {
        CsvWriter.write(out, csv -> {
            for (SideBySide ways : comparisons) {
                print(ways, csv);
            }
        });
    }

    private void print(SideBySide ways, CsvWriter csv) {
        switch (which) {
            case FIGURES -> figures(ways, csv);
            case COSTS -> costs(ways, csv);
            case CURVE -> curve(ways, csv);
            case BREAK_EVEN -> breakEvens(ways, csv);
        }
    }

    private void figures(SideBySide ways, CsvWriter csv) {
        List<String> headings = new ArrayList<>(List.of("of", "name", "zone", "measure", "unit"));
        addNames(ways, "difference_percent", headings);
        csv.headings(headings);
        for (Row row : ways.rows()) {
            csv.text(row.subject().kind().word())
                    .text(row.subject().name())
                    .text(
                            row.subject().kind() == Subject.Kind.PART
                                    ? ""
                                    : row.subject().zone())
                    .text(row.measure().words())
                    .text(scale.symbol(row.measure()));
            for (int i = 0; i < row.values().size(); i++) {
                OptionalDouble value = row.values().get(i);
                if (value.isPresent()) {
                    csv.number(scale.number(row.measure(), value.getAsDouble()));
                } else {
                    csv.nothing();
                }
                if (i > 0) {
                    csv.number(row.difference(i), Unit.PERCENT);
                }
            }
            csv.end();
        }
    }

    private static void costs(SideBySide ways, CsvWriter csv) {
        List<String> headings = new ArrayList<>(List.of("head", "name", "currency"));
        addNames(ways, "extra", headings);
        csv.headings(headings);
        for (CostRow row : ways.costs()) {
            csv.text(row.head().map(CostWords::word).orElse("total"))
                    .text(row.name())
                    .text(currency(row));
            for (int i = 0; i < row.each().size(); i++) {
                csv.amount(row.each().get(i));
                if (i > 0) {
                    csv.amount(row.extra(i));
                }
            }
            csv.end();
        }
    }

    private static String currency(CostRow row) {
        return row.each().stream()
                .flatMap(money -> money.stream())
                .map(Money::currency)
                .findFirst()
                .orElse("");
    }

    private static void curve(SideBySide ways, CsvWriter csv) {
        List<String> headings = new ArrayList<>(List.of("parts"));
        for (Alternative way : ways.alternatives()) {
            headings.add(way.name() + " total");
            headings.add(way.name() + " each");
        }
        csv.headings(headings);
        for (int parts : ways.counts()) {
            csv.number(parts);
            for (Alternative way : ways.alternatives()) {
                if (way.curve().isPresent()) {
                    CostCurve.Point point = way.curve().get().at(parts);
                    csv.amount(point.total()).amount(point.each());
                } else {
                    csv.nothing().nothing();
                }
            }
            csv.end();
        }
    }

    private static void breakEvens(SideBySide ways, CsvWriter csv) {
        csv.headings(List.of("from_part", "is_cheaper", "than", "for_good_from_part"));
        for (BreakEven point : ways.breakEvens()) {
            csv.number(point.parts()).text(point.overtaking()).text(point.overtaken());
            if (point.forGood().isPresent()) {
                csv.number(point.forGood().getAsInt());
            } else {
                csv.nothing();
            }
            csv.end();
        }
    }

    private static void addNames(SideBySide ways, String beside, List<String> headings) {
        for (int i = 0; i < ways.alternatives().size(); i++) {
            headings.add(ways.alternatives().get(i).name());
            if (i > 0) {
                headings.add(ways.alternatives().get(i).name() + " " + beside);
            }
        }
    }
}
