package laminate.print.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import laminate.estimate.Caution;
import laminate.plan.InfusingTime;
import laminate.plan.Mix;
import laminate.plan.Stage;
import laminate.plan.StageResin;
import laminate.plan.infusion.Infusion;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.print.infuse.InfusionWords;
import laminate.process.flow.FrontPoint;
import laminate.unit.Unit;

/** What the page of an infused stage says of its infusions: vacuum, drop test, feed and vents, the front, the buckets. */
final class InfusionSheet {
    private static final String BLANK = "________";

    private final Measures measures;
    private final InfusionWords words;

    InfusionSheet(Measures measures) {
        this.measures = measures;
        this.words = new InfusionWords(measures);
    }

    /** Adds nothing where no infusion of the stage is planned. */
    void addTo(Report.Builder report, Stage stage, List<Infusion> infusions) {
        for (Infusion infusion : infusions) {
            addInfusion(report, infusion);
        }
        if (!infusions.isEmpty() && stage.drawn().isPresent()) {
            addMixes(report, stage, stage.drawn().get(), infusions);
        }
    }

    private void addInfusion(Report.Builder report, Infusion infusion) {
        report.heading(2, infusion.zone().map(zone -> "Infusion of " + zone).orElse("Infusion"));
        report.fact("fills", InfusionWords.fills(infusion));
        report.fact("feed and vent", words.way(infusion.plan().path()));
        report.fact("vacuum", vacuum(List.of(infusion)) + " mbar below the air outside, at the vent");
        report.fact("drop test", InfusionWords.leak(infusion.leak()));
        report.fact("full after", InfusionWords.fillTime(infusion.fill()));
        report.fact("gels in", InfusionWords.gelTime(infusion.gel()));
        report.fact(infusion.gel().verdict().word(), infusion.gel().reason());
        words.lag(infusion.fill()).ifPresent(lag -> report.fact("laminate lags", lag));
        report.fact("catch pot", "room for " + grams(infusion.held().catchPot().value()) + " and more");
        if (infusion.figures().isPermeabilityFromMemory()) {
            report.paragraph(InfusionWords.fromMemory(infusion.figures()));
        }
        report.bullets(infusion.cautions().stream().map(Caution::text).toList());
        report.heading(3, "The front, from the feed").grid(front(infusion.fill().front()));
    }

    private Table front(List<FrontPoint> front) {
        String length = measures.length().symbol();
        Table.Builder table = new Table.Builder(
                Column.numbers("after", Unit.MINUTE.symbol()),
                Column.numbers("front at", length),
                Column.words("seen at, " + length));
        for (FrontPoint point : front) {
            table.row(
                    Measures.beside(InfusionWords.last(front), point.time(), Unit.MINUTE),
                    Measures.number(point.position(), measures.length()),
                    BLANK);
        }
        return table.build();
    }

    private void addMixes(Report.Builder report, Stage stage, StageResin resin, List<Infusion> infusions) {
        report.heading(2, "Buckets to draw from, one after the other");
        stage.infusing().ifPresent(infusing -> report.paragraph(counted(infusing, infusions)));
        if (!resin.fits()) {
            report.paragraph("No mix fits: " + resin.problem().orElseThrow() + ".");
            return;
        }
        Table.Builder table = new Table.Builder(
                Column.numbers("bucket", ""),
                Column.numbers("from", Unit.MINUTE.symbol()),
                Column.numbers("to", Unit.MINUTE.symbol()),
                Column.numbers("resin", measures.smallMass().symbol()),
                Column.numbers("gels in", Unit.MINUTE.symbol()));
        double from = 0;
        for (Mix mix : resin.mixes()) {
            double to = from + mix.workTime();
            table.row(
                    Integer.toString(mix.number()),
                    Measures.number(from, Unit.MINUTE),
                    Measures.number(to, Unit.MINUTE),
                    Measures.column(List.of(mix.resin()), measures.smallMass()).get(0),
                    Measures.number(mix.gelTime(), Unit.MINUTE));
            from = to;
        }
        report.grid(table.build());
    }

    private static String counted(InfusingTime infusing, List<Infusion> infusions) {
        boolean one = infusions.size() == 1 && infusions.get(0).count() == 1 && infusing.byLabour() == 0;
        String since = one ? "Minutes since the feed was opened" : "Minutes of infusing, one infusion after the other";
        return since + ": " + MixWords.infusing(infusing)
                + ". Have each stirred before the one before it is empty: a hose"
                + " that has drawn its bucket empty draws air.";
    }

    /** The vacuum of infusions in millibar, each value once. */
    static String vacuum(List<Infusion> infusions) {
        List<Double> pressures = new ArrayList<>();
        infusions.forEach(infusion -> pressures.add(infusion.plan().drivingPressure()));
        return millibar(pressures);
    }

    /** What the vacuum may fall by in the drop tests of infusions, in millibar, each value once. */
    static String drop(List<Infusion> infusions) {
        List<Double> pressures = new ArrayList<>();
        infusions.forEach(infusion -> pressures.add(infusion.leak().drop()));
        return millibar(pressures);
    }

    private static String millibar(List<Double> pressures) {
        return pressures.stream()
                .map(pressure -> Measures.number(pressure, Unit.MILLIBAR))
                .distinct()
                .collect(Collectors.joining(" and "));
    }

    private String grams(double mass) {
        return Measures.text(mass, measures.smallMass());
    }
}
