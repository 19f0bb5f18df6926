package laminate.print.check;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import laminate.check.PartCheck;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.unit.UnitSystem;

/**
 * Prints one table of checks as comma-separated values, one thing a row, all parts below each other. The unit stands in the
 * heading, as {@code stress_1_MPa}; numbers have all their digits; a field is empty where it does not apply.
 */
public final class CheckCsv implements Printer<CheckedPart> {

    /** The tables there are. */
    public enum Which {
        /** Three points a ply, of every load case and of the worst place of every panel and beam. */
        PLIES,
        /** Panels. */
        PANELS,
        /** Beams and strips. */
        BEAMS,
        /** Limits, worst first. */
        LIMITS,
        /** Zones compared with one of them. */
        COMPARISON,
        /** Points of the failure surfaces of load cases. */
        SURFACE;

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

    /**
     * A printer.
     *
     * @param which the table wanted
     * @param system the reader's units
     */
    public CheckCsv(Which which, UnitSystem system) {
        this.which = which;
        this.measures = new Measures(system);
    }

    @Override
    public void print(List<CheckedPart> parts, Appendable out) throws IOException {
        List<PartCheck> checks = parts.stream().map(CheckedPart::check).toList();
        CsvWriter.write(out, csv -> {
            switch (which) {
                case PLIES -> new PlyCsv(measures, csv).print(checks);
                case PANELS -> new BendingCsv(measures, csv).panels(checks);
                case BEAMS -> new BendingCsv(measures, csv).beams(checks);
                case LIMITS -> new LimitCsv(measures, csv).print(checks);
                case COMPARISON -> ComparisonCsv.print(parts, csv);
                case SURFACE -> new SurfaceCsv(measures, csv).print(checks);
            }
        });
    }
}
