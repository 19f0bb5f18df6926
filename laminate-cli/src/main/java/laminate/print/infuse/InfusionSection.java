package laminate.print.infuse;

import java.util.List;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.InfusionPath;
import laminate.plan.infusion.Buckets;
import laminate.plan.infusion.FlowFigures;
import laminate.plan.infusion.HeldResin;
import laminate.plan.infusion.HoseLoss;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.Reach;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.process.flow.FrontPoint;
import laminate.unit.Unit;

/** One infusion: when it is full, how far a feed reaches, where the front stands, and what all of it is reckoned from. */
final class InfusionSection {
    private final Measures measures;
    private final InfusionWords words;

    InfusionSection(Measures measures) {
        this.measures = measures;
        this.words = new InfusionWords(measures);
    }

    void addTo(Report.Builder report, Infusion infusion) {
        report.heading(2, infusion.zone().map(zone -> "Zone " + zone).orElse("The infusion"));
        addFacts(report, infusion);
        addFront(report, infusion.fill().front());
        report.heading(3, "Reckoned from").grid(figures(infusion)).paragraph("1 µm² is 1e-12 m².");
        if (infusion.figures().isPermeabilityFromMemory()) {
            report.paragraph(InfusionWords.fromMemory(infusion.figures()));
        }
        report.heading(3, "Resin outside the laminate").grid(held(infusion.held()));
        infusion.buckets().ifPresent(buckets -> addBuckets(report, buckets));
    }

    private void addFacts(Report.Builder report, Infusion infusion) {
        report.fact("fills", InfusionWords.fills(infusion));
        report.fact("way", words.way(infusion.plan().path()));
        report.fact("full after", InfusionWords.fillTime(infusion.fill()));
        report.fact("gels in", InfusionWords.gelTime(infusion.gel()));
        if (infusion.fill().throughTime().isPresent()) {
            report.fact("soaks through", "in " + minutes(infusion.fill().throughTime()) + " min from one face");
        }
        words.lag(infusion.fill()).ifPresent(lag -> report.fact("laminate lags", lag));
        infusion.reach()
                .ifPresent(reach ->
                        report.fact("feed reaches", reach(reach, infusion.plan().path())));
        infusion.hose().ifPresent(hose -> report.fact("feed hose", hose(hose)));
        report.fact("drop test", InfusionWords.leak(infusion.leak()));
    }

    private String reach(Reach reach, InfusionPath path) {
        String apart = switch (path.feed()) {
            case LINE -> "; feed lines at most ";
            case CENTRE -> "; ports on a square grid at most ";
            case RIM -> "; a rim at most ";
        };
        String across = path.feed() == FeedKind.RIM ? " across" : " apart";
        return longText(reach.greatest()) + " in " + Measures.text(reach.within(), Unit.MINUTE) + apart
                + longText(reach.spacing()) + across + ", to be sure " + longText(reach.sureSpacing());
    }

    private String longText(double metres) {
        return Measures.text(metres, measures.longLength());
    }

    private static String hose(HoseLoss hose) {
        return "takes " + Measures.text(hose.pressure(), Unit.MILLIBAR) + " at "
                + Measures.number(hose.flow() * 60, Unit.MILLILITRE) + " ml/min half way; "
                + Measures.text(hose.delay(), Unit.MINUTE) + " longer for it";
    }

    private void addFront(Report.Builder report, List<FrontPoint> front) {
        Table.Builder table = new Table.Builder(
                Column.numbers("after", Unit.MINUTE.symbol()),
                Column.numbers("front at", measures.length().symbol()));
        for (FrontPoint point : front) {
            table.row(
                    Measures.beside(InfusionWords.last(front), point.time(), Unit.MINUTE),
                    Measures.number(point.position(), measures.length()));
        }
        report.heading(3, "The front, from the feed").grid(table.build());
    }

    private Table figures(Infusion infusion) {
        FlowFigures figures = infusion.figures();
        Table.Builder table = new Table.Builder(
                Column.words("figure"), Column.words("value"), Column.words("from"), Column.words("status"));
        row("driving pressure", text(figures.drivingPressure(), Unit.MILLIBAR), figures.drivingPressure(), table);
        row("viscosity", text(figures.viscosity(), Unit.MILLIPASCAL_SECOND), figures.viscosity(), table);
        figures.viscosityTime().ifPresent(time -> row("grows 2.72-fold in", text(time, Unit.MINUTE), time, table));
        row("infused thickness", text(figures.thickness(), measures.length()), figures.thickness(), table);
        row("porosity", text(figures.porosity(), Unit.PERCENT), figures.porosity(), table);
        row("permeability", permeability(figures.permeability().value()), figures.permeability(), table);
        if (infusion.plan().mesh().isPresent()) {
            table.row(
                    "with flow mesh",
                    permeability(figures.effectivePermeability()),
                    "layers and mesh side by side",
                    "");
        }
        infusion.gel().gelTime().ifPresent(time -> row("gel time", text(time, Unit.MINUTE), time, table));
        return table.build();
    }

    private static String text(Figure figure, Unit unit) {
        return Measures.text(figure.value(), unit);
    }

    /** In square micrometres: a permeability in m² is all noughts. */
    private static String permeability(double squareMetres) {
        return Measures.text(squareMetres, Unit.SQUARE_MICROMETRE_PERMEABILITY);
    }

    private static void row(String name, String value, Figure figure, Table.Builder table) {
        table.row(name, value, figure.source(), figure.status().word());
    }

    private Table held(HeldResin held) {
        Unit gram = measures.smallMass();
        Table.Builder table =
                new Table.Builder(Column.words("where"), Column.numbers("resin", gram.symbol()), Column.words("from"));
        addHeld("feed hose", held.hose(), table);
        addHeld("spiral tube", held.spiral(), table);
        addHeld("flow mesh", held.mesh(), table);
        addHeld("catch pot", held.catchPot(), table);
        addHeld("left in the bucket", held.bucket(), table);
        table.total("thrown away", Measures.number(held.lost(), gram), "");
        return table.build();
    }

    private void addHeld(String where, Figure resin, Table.Builder table) {
        table.row(where, Measures.number(resin.value(), measures.smallMass()), resin.source());
    }

    private void addBuckets(Report.Builder report, Buckets buckets) {
        Table.Builder table = new Table.Builder(
                Column.numbers("bucket", ""),
                Column.numbers("from", Unit.MINUTE.symbol()),
                Column.numbers("to", Unit.MINUTE.symbol()),
                Column.numbers("resin", measures.mass().symbol()));
        List<Buckets.Bucket> mixes = buckets.mixes();
        for (int i = 0; i < mixes.size(); i++) {
            Buckets.Bucket mix = mixes.get(i);
            table.row(
                    Integer.toString(i + 1),
                    Measures.number(mix.from(), Unit.MINUTE),
                    Measures.number(mix.to(), Unit.MINUTE),
                    Measures.number(mix.mass(), measures.mass()));
        }
        table.total("", "", "", Measures.number(buckets.mass(), measures.mass()));
        report.heading(3, "Buckets to draw from, one after the other").grid(table.build());
    }

    private static String minutes(OptionalDouble seconds) {
        return Measures.number(seconds, Unit.MINUTE);
    }
}
