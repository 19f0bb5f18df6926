package laminate.print.infuse;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import laminate.plan.infusion.Buckets;
import laminate.plan.infusion.GelMargin;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.PartInfusion;
import laminate.plan.infusion.Reach;
import laminate.plan.infusion.ResinBalance;
import laminate.print.CsvWriter;
import laminate.print.Measures;
import laminate.print.Printer;
import laminate.process.flow.FrontPoint;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/**
 * Prints one table of infusions as comma-separated values, all parts below each other. The unit stands in the heading;
 * numbers have all their digits; a field is empty where nothing is known or it does not apply. Permeability is in m²
 * whatever the reader's units.
 */
public final class InfuseCsv implements Printer<PartInfusion> {

    /** The tables there are. */
    public enum Which {
        /** An infusion a row: whether it fills before it gels. */
        INFUSIONS,
        /** Where the front stands at times. */
        FRONT,
        /** Where the infused resin goes. */
        RESIN,
        /** The mixes to draw from. */
        BUCKETS;

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
    public InfuseCsv(Which which, UnitSystem system) {
        this.which = which;
        this.measures = new Measures(system);
    }

    @Override
    public void print(List<PartInfusion> parts, Appendable out) throws IOException {
        CsvWriter.write(out, csv -> {
            csv.headings(headings());
            for (PartInfusion part : parts) {
                print(part, csv);
            }
        });
    }

    private List<String> headings() {
        String length = CsvWriter.symbol(measures.length());
        String metre = CsvWriter.symbol(measures.longLength());
        String kg = CsvWriter.symbol(measures.mass());
        String g = CsvWriter.symbol(measures.smallMass());
        return switch (which) {
            case INFUSIONS ->
                List.of(
                        "part",
                        "zone",
                        "verdict",
                        "fill_time_min",
                        "fill_time_least_min",
                        "fill_time_most_min",
                        "gel_time_min",
                        "usable_time_min",
                        "effective_permeability_m2",
                        "permeability_from_memory",
                        "lag_" + length,
                        "greatest_flow_length_" + metre,
                        "feed_spacing_" + metre,
                        "sure_feed_spacing_" + metre,
                        "resin_in_lines_" + g,
                        "resin_thrown_away_" + g);
            case FRONT -> List.of("part", "zone", "time_min", "position_" + length);
            case RESIN -> List.of("part", "resin", "use", "place", "estimated_" + kg, "planned_" + kg);
            case BUCKETS -> List.of("part", "zone", "bucket", "from_min", "to_min", "resin_" + kg);
        };
    }

    private void print(PartInfusion part, CsvWriter csv) {
        String name = part.estimate().part().name();
        if (which == Which.RESIN) {
            part.balances().forEach(balance -> balance(name, balance, csv));
            return;
        }
        for (Infusion infusion : part.infusions()) {
            switch (which) {
                case INFUSIONS -> infusion(name, infusion, csv);
                case FRONT -> front(name, infusion, csv);
                default -> buckets(name, infusion, csv);
            }
        }
    }

    private void infusion(String part, Infusion infusion, CsvWriter csv) {
        GelMargin gel = infusion.gel();
        Optional<Reach> reach = infusion.reach();
        start(part, infusion, csv)
                .text(gel.verdict().word())
                .number(infusion.fill().time(), Unit.MINUTE)
                .number(infusion.fill().quickest(), Unit.MINUTE)
                .number(infusion.fill().slowest(), Unit.MINUTE);
        if (gel.gelTime().isPresent()) {
            csv.number(gel.gelTime().get().value(), Unit.MINUTE);
        } else {
            csv.nothing();
        }
        csv.number(gel.usableTime(), Unit.MINUTE)
                .number(infusion.figures().effectivePermeability())
                .text(infusion.figures().isPermeabilityFromMemory() ? "yes" : "no")
                .number(infusion.fill().lag(), measures.length());
        if (reach.isPresent()) {
            csv.number(reach.get().greatest(), measures.longLength())
                    .number(reach.get().spacing(), measures.longLength())
                    .number(reach.get().sureSpacing(), measures.longLength());
        } else {
            csv.nothing().nothing().nothing();
        }
        csv.number(infusion.held().lines(), measures.smallMass())
                .number(infusion.held().lost(), measures.smallMass())
                .end();
    }

    private void front(String part, Infusion infusion, CsvWriter csv) {
        for (FrontPoint point : infusion.fill().front()) {
            start(part, infusion, csv)
                    .number(point.time(), Unit.MINUTE)
                    .number(point.position(), measures.length())
                    .end();
        }
    }

    private void balance(String part, ResinBalance balance, CsvWriter csv) {
        for (ResinBalance.Share share : balance.shares()) {
            csv.text(part)
                    .text(balance.use().resin().id())
                    .text(balance.use().use())
                    .text(share.place().word())
                    .number(share.estimated(), measures.mass())
                    .number(share.planned(), measures.mass())
                    .end();
        }
    }

    private void buckets(String part, Infusion infusion, CsvWriter csv) {
        int number = 1;
        for (Buckets.Bucket bucket : infusion.buckets().map(Buckets::mixes).orElse(List.of())) {
            start(part, infusion, csv)
                    .number(number++)
                    .number(bucket.from(), Unit.MINUTE)
                    .number(bucket.to(), Unit.MINUTE)
                    .number(bucket.mass(), measures.mass())
                    .end();
        }
    }

    private static CsvWriter start(String part, Infusion infusion, CsvWriter csv) {
        return csv.text(part).text(infusion.zone().orElse(""));
    }
}
