package laminate.print.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.plan.JobSheet;
import laminate.plan.JobSheet.Page;
import laminate.plan.JobSheet.Reading;
import laminate.plan.JobSheet.Step;
import laminate.plan.Mix;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageLayer;
import laminate.plan.StageResin;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.MouldingPlan;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Dimension;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/** Tells the sheets that the crew takes to the mould: a document for each stage, to be ticked off and filled in by hand. */
public final class JobSheetReport {
    private static final String BOX = "[ ]";
    private static final String BLANK = "____________";

    private final Measures measures;

    /**
     * How sheets are told.
     *
     * @param system the reader's units
     */
    public JobSheetReport(UnitSystem system) {
        this.measures = new Measures(system);
    }

    /**
     * Tells the sheets of a part.
     *
     * @param plan the plan of a moulding
     * @return a document for each stage, in order
     */
    public List<Report> of(MouldingPlan plan) {
        List<Report> reports = new ArrayList<>();
        for (Page page : plan.jobSheet().pages()) {
            reports.add(page(plan.mixes(), page, plan.infusionsOf(page.stage())));
        }
        return reports;
    }

    private Report page(MixPlan plan, Page page, List<Infusion> infusions) {
        Stage stage = page.stage();
        Report.Builder report = new Report.Builder()
                .heading(
                        1,
                        plan.part() + ", stage " + stage.number() + " of "
                                + plan.stages().size() + ": " + stage.name());
        addHead(report, plan, stage);
        report.bullets(page.cautions().stream().map(Caution::text).toList());
        report.heading(2, "Tick off").grid(steps(page));
        new InfusionSheet(measures).addTo(report, stage, infusions);
        report.heading(2, "Write down").grid(readings(page, MixWords.isOneDay(plan), infusions));
        return report.build();
    }

    private void addHead(Report.Builder report, MixPlan plan, Stage stage) {
        boolean oneDay = MixWords.isOneDay(plan);
        report.fact("moulding", BLANK + " of " + plan.mouldings() + ", date " + BLANK);
        report.fact(
                "planned for",
                Measures.plain(plan.temperature(), measures.temperature()) + ", "
                        + (plan.crew() == 1 ? "one person" : plan.crew() + " people"));
        report.fact(
                "clock",
                MixWords.clock(stage.start(), oneDay) + ", used up by " + MixWords.clock(stage.end(), oneDay)
                        + stage.gelled()
                                .map(time -> ", gelled at " + MixWords.clock(time, oneDay))
                                .orElse(""));
        stage.bond().ifPresent(bond -> report.fact("laid onto", bond.text()));
    }

    private Table steps(Page page) {
        Table.Builder table = new Table.Builder(Column.words("done"), Column.numbers("", ""), Column.words("what"));
        int number = 1;
        for (Step step : page.steps()) {
            table.row(BOX, Integer.toString(number++), what(step, page.stage()));
        }
        return table.build();
    }

    private String what(Step step, Stage stage) {
        if (step.mix().isPresent()) {
            return when(step.mix().get(), stage) + weigh(step.mix().get());
        }
        return step.layer().map(layer -> lay(step, layer)).orElse(step.action().words());
    }

    /** A hose that has drawn its bucket empty draws air. */
    private static String when(Mix mix, Stage stage) {
        if (mix.number() == 1) {
            return "";
        }
        Optional<StageResin> drawn =
                stage.drawn().filter(resin -> resin.resin().id().equals(mix.material()));
        return drawn.map(resin -> "by minute " + MixWords.minutes(drawnBefore(mix, resin))
                        + " of infusing, before the hose has drawn the one before empty, ")
                .orElse("when the one before is used up, ");
    }

    private static double drawnBefore(Mix mix, StageResin resin) {
        return resin.mixes().stream()
                .limit(mix.number() - 1)
                .mapToDouble(Mix::workTime)
                .sum();
    }

    private String weigh(Mix mix) {
        String strokes = mix.strokes().isPresent() ? ", " + mix.strokes().getAsInt() + " pump strokes" : "";
        String use = mix.usableTime().isPresent()
                ? "; use up within " + MixWords.minutes(mix.usableTime().getAsDouble()) + " min"
                : "; its gel time is not known, so mix a little first";
        return "mix " + mix.number() + ": weigh " + scale(mix.resin()) + " of "
                + mix.material() + " and " + scale(mix.catalyst()) + " ("
                + Measures.text(mix.catalystVolume(), measures.smallVolume()) + strokes + ") of " + mix.agent() + use;
    }

    /** As a scale shows it. */
    private String scale(double mass) {
        return Measures.column(List.of(mass), measures.smallMass()).get(0) + " "
                + measures.smallMass().symbol();
    }

    private String lay(Step step, StageLayer layer) {
        StringBuilder text = new StringBuilder(step.action().words() + " " + layer.material() + ": ");
        text.append(layer.zone()).append(step.action() == JobSheet.Action.COAT ? ", coat " : ", layer ");
        text.append(layer.number()).append("; ");
        text.append(layer.pieces() == 1 ? "one piece, " : layer.pieces() + " pieces, together ");
        text.append(Measures.text(layer.area(), measures.area()));
        if (layer.angle().isPresent()) {
            text.append(", ")
                    .append(Measures.plain(layer.angle().getAsDouble()))
                    .append("°");
        }
        text.append(layer.turned() ? ", turned" : "");
        if (layer.lapShare() > 0) {
            text.append(", laps ")
                    .append(Measures.plain(layer.lapShare() * 100))
                    .append(" %");
        }
        return text.toString();
    }

    private Table readings(Page page, boolean oneDay, List<Infusion> infusions) {
        Table.Builder table = new Table.Builder(
                Column.words("reading"),
                Column.words("in"),
                Column.numbers("planned", ""),
                Column.words("written down"));
        for (Reading reading : page.readings()) {
            table.row(
                    reading.words(),
                    reading.dimension().map(this::unit).orElse(""),
                    planned(reading, page.stage(), oneDay, infusions),
                    BLANK);
        }
        return table.build();
    }

    /** What the plan expects of a reading, empty where it says nothing of it. */
    private String planned(Reading reading, Stage stage, boolean oneDay, List<Infusion> infusions) {
        return switch (reading) {
            case START -> MixWords.clock(stage.start(), oneDay);
            case END -> MixWords.clock(stage.end(), oneDay);
            case GELLED ->
                stage.gelled().map(time -> MixWords.clock(time, oneDay)).orElse("");
            case RESIN_USED ->
                Measures.number(
                        stage.resins().stream().mapToDouble(StageResin::need).sum(), measures.mass());
            case VACUUM -> InfusionSheet.vacuum(infusions);
            case PRESSURE_DROP -> InfusionSheet.drop(infusions);
            default -> "";
        };
    }

    private String unit(Dimension dimension) {
        Unit unit = dimension == Dimension.PRESSURE
                ? Unit.MILLIBAR
                : measures.system().unit(dimension);
        return unit.symbol();
    }
}
