package laminate.print.mix;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.plan.FreshAir;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageResin;
import laminate.print.Cautions;
import laminate.print.Measures;
import laminate.print.Report;
import laminate.print.Table;
import laminate.print.Table.Column;
import laminate.unit.Unit;
import laminate.unit.UnitSystem;

/** Tells a plan of stages and mixes as a document, free of any format: the day at a glance, then stage by stage. */
public final class MixReport {
    private static final double SECONDS_AN_HOUR = 3600;

    private final Measures measures;

    /**
     * How plans are told.
     *
     * @param system the reader's units
     */
    public MixReport(UnitSystem system) {
        this.measures = new Measures(system);
    }

    /**
     * Tells a plan.
     *
     * @param plan the plan
     * @return the document
     */
    public Report of(MixPlan plan) {
        Report.Builder report = new Report.Builder().heading(1, plan.part());
        addFacts(report, plan);
        report.heading(2, "The stages").grid(stages(plan));
        StageSection section = new StageSection(measures, MixWords.isOneDay(plan));
        plan.stages().forEach(stage -> section.addTo(report, stage));
        report.heading(2, "Resin to have at hand").grid(new MixTotals(measures).table(plan));
        addSources(report, plan);
        Cautions.addTo(report, "To mind in this plan", Caution.Kind.SCHEDULE, plan.cautions());
        Cautions.addTo(report, "Safety", Caution.Kind.SAFETY, plan.cautions());
        return report.build();
    }

    /**
     * Tells the doses against temperature of a plan's resins, for the wall.
     *
     * @param plan the plan
     * @return the document
     */
    public Report doses(MixPlan plan) {
        Report.Builder report = new Report.Builder();
        DoseSection section = new DoseSection(measures);
        plan.doses().forEach(table -> section.addTo(report, table));
        return report.build();
    }

    private void addFacts(Report.Builder report, MixPlan plan) {
        report.fact(
                "plan of",
                plan.mouldings() == 1 ? "one moulding" : "one moulding, to be repeated for " + plan.mouldings());
        String assumed = plan.temperatureAssumed() ? ", assumed: the workshop states none" : "";
        report.fact("temperature", Measures.plain(plan.temperature(), measures.temperature()) + assumed);
        report.fact("hands", Integer.toString(plan.crew()));
        report.fact("mixes fit", fit(plan));
        plan.freshAir().ifPresent(air -> report.fact("fresh air", freshAir(air)));
    }

    private static String fit(MixPlan plan) {
        List<String> open = new ArrayList<>();
        for (Stage stage : plan.stages()) {
            if (!stage.fits()) {
                open.add(Integer.toString(stage.number()));
            }
        }
        if (open.isEmpty()) {
            return isEveryGelTimeKnown(plan)
                    ? "yes, each is used up before it gels"
                    : "as far as gel times are known; see the stages";
        }
        return "no, not in stage " + String.join(", ", open) + "; there it says why";
    }

    private static boolean isEveryGelTimeKnown(MixPlan plan) {
        return plan.stages().stream()
                .allMatch(stage -> stage.resins().stream()
                        .allMatch(resin -> resin.gelTime().isPresent()));
    }

    private static void addSources(Report.Builder report, MixPlan plan) {
        Map<String, String> sources = new LinkedHashMap<>();
        for (Stage stage : plan.stages()) {
            for (StageResin resin : stage.resins()) {
                resin.gelTimeStatus()
                        .ifPresent(status -> sources.put(
                                resin.resin().id() + " with "
                                        + resin.dose().agent().id(),
                                resin.gelTimeSource() + " (" + status.word() + ")"));
            }
        }
        if (!sources.isEmpty()) {
            report.heading(2, "Where the gel times come from");
            sources.forEach(report::fact);
        }
    }

    private static String freshAir(FreshAir air) {
        return Measures.number(air.flow() * SECONDS_AN_HOUR) + " m³/h in stage " + air.stage() + " to dilute "
                + Measures.text(air.styrene(), Unit.GRAMS) + " of styrene, given off in " + MixWords.minutes(air.time())
                + " min, to " + Measures.number(air.limit() * 1e6)
                + " mg/m³; an estimate, which replaces no measurement (" + air.source() + ", "
                + air.status().word()
                + ")";
    }

    private static Table stages(MixPlan plan) {
        boolean oneDay = MixWords.isOneDay(plan);
        Table.Builder table = new Table.Builder(
                Column.numbers("", ""),
                Column.words("stage"),
                Column.words("resin"),
                Column.numbers("mixes", ""),
                Column.numbers("work", Unit.MINUTE.symbol()),
                Column.words("start"),
                Column.words("used up"),
                Column.words("gelled"));
        for (Stage stage : plan.stages()) {
            table.row(
                    Integer.toString(stage.number()),
                    stage.name(),
                    MixWords.resins(stage),
                    stage.fits() ? Integer.toString(stage.mixes().size()) : "none fits",
                    MixWords.minutes(stage.dryTime() + stage.wetTime() + stage.bagTime()),
                    MixWords.clock(stage.start(), oneDay),
                    MixWords.clock(stage.end(), oneDay),
                    Optional.of(stage)
                            .flatMap(Stage::gelled)
                            .map(time -> MixWords.clock(time, oneDay))
                            .orElse("not known"));
        }
        return table.build();
    }
}
