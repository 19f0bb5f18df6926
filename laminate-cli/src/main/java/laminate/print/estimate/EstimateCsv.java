package laminate.print.estimate;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import laminate.estimate.PartEstimate;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.unit.UnitSystem;

/**
 * Prints one table of estimates as comma-separated values, one thing a row, all parts below each other, so that a
 * spreadsheet can filter and sum it. The unit stands in the heading, as {@code fibre_g_m2}; numbers have all their
 * digits; a field is empty where it does not apply.
 */
public final class EstimateCsv implements Printer<PartEstimate> {

    /** The tables there are. */
    public enum Which {
        /** Coatings and layers, per area. */
        LAYERS,
        /** Resins to mix. */
        RESINS,
        /** Materials and consumables to buy. */
        MATERIALS,
        /** The cutting list. */
        CUTS,
        /** The lines of the cost. */
        COST;

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
    private final CsvTables tables;

    /**
     * A printer.
     *
     * @param which the table wanted
     * @param system the reader's units
     */
    public EstimateCsv(Which which, UnitSystem system) {
        this.which = which;
        this.tables = new CsvTables(new Measures(system));
    }

    @Override
    public void print(List<PartEstimate> estimates, Appendable out) throws IOException {
        CsvWriter.write(out, csv -> {
            csv.headings(tables.headings(which));
            for (PartEstimate estimate : estimates) {
                print(estimate, csv);
            }
        });
    }

    private void print(PartEstimate estimate, CsvWriter csv) {
        switch (which) {
            case LAYERS -> tables.layers(estimate, csv);
            case RESINS -> tables.resins(estimate, csv);
            case MATERIALS -> tables.materials(estimate, csv);
            case CUTS -> tables.cuts(estimate, csv);
            case COST -> tables.cost(estimate, csv);
        }
    }
}
