package laminate.print.mix;

import java.io.IOException;
import java.util.List;
import laminate.plan.MixPlan;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.unit.UnitSystem;

/**
 * Prints one table of plans of mixes as comma-separated values, all parts below each other. The unit stands in the heading;
 * numbers have all their digits; a field is empty where nothing is known or it does not apply.
 */
public final class MixCsv implements Printer<MixPlan> {

    /** The tables there are. */
    public enum Which {
        /** Every mix. */
        MIXES,
        /** Every stage with its clock. */
        STAGES,
        /** What is laid in each stage. */
        LAYERS,
        /** Gel time by dose and temperature, for the wall. */
        DOSES,
        /** Dose by wanted working time and temperature, for the wall. */
        WORKING_TIMES;

        /**
         * The word that stands for the table.
         *
         * @return the word
         */
        public String word() {
            return MixWords.word(this).replace(' ', '-');
        }
    }

    private final Which which;
    private final MixTables tables;
    private final DoseCsv doses;

    /**
     * A printer.
     *
     * @param which the table wanted
     * @param system the reader's units
     */
    public MixCsv(Which which, UnitSystem system) {
        this.which = which;
        this.tables = new MixTables(new Measures(system));
        this.doses = new DoseCsv(new Measures(system));
    }

    @Override
    public void print(List<MixPlan> plans, Appendable out) throws IOException {
        CsvWriter.write(out, csv -> {
            switch (which) {
                case MIXES -> tables.mixes(plans, csv);
                case STAGES -> tables.stages(plans, csv);
                case LAYERS -> tables.layers(plans, csv);
                case DOSES -> doses.gelTimes(plans, csv);
                case WORKING_TIMES -> doses.workingTimes(plans, csv);
            }
        });
    }
}
