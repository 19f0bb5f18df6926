package laminate.print.mix;

import java.util.ArrayList;
import java.util.List;
import laminate.estimate.Caution;
import laminate.plan.Stage;
import laminate.plan.StageResin;
import laminate.plan.Suggestion;
import laminate.print.Measures;
import laminate.print.Report;

/** One stage: what is laid when, and the mixes for it. */
final class StageSection {
    private final Measures measures;
    private final boolean oneDay;

    StageSection(Measures measures, boolean oneDay) {
        this.measures = measures;
        this.oneDay = oneDay;
    }

    void addTo(Report.Builder report, Stage stage) {
        report.heading(2, "Stage " + stage.number() + ": " + stage.name());
        addFacts(report, stage);
        for (StageResin resin : stage.resins()) {
            addResin(report, resin);
        }
        report.bullets(cautions(stage));
    }

    /** Why no mix fits is told with the resin already. */
    private static List<String> cautions(Stage stage) {
        List<String> texts = new ArrayList<>();
        for (Caution caution : stage.cautions()) {
            boolean told = stage.resins().stream()
                    .flatMap(resin -> resin.problem().stream())
                    .anyMatch(problem -> caution.text().contains(problem));
            if (!told) {
                texts.add(caution.text());
            }
        }
        return texts;
    }

    private void addFacts(Report.Builder report, Stage stage) {
        report.fact("lays", MixWords.layers(stage.layers()));
        report.fact("thickness", Measures.text(stage.thickness(), measures.length()));
        report.fact("work", work(stage));
        stage.infusing().ifPresent(infusing -> report.fact("infusing", MixWords.infusing(infusing)));
        stage.bond().ifPresent(bond -> report.fact("laid onto", bond.text()));
    }

    private String work(Stage stage) {
        String dry = stage.dryTime() > 0 ? MixWords.minutes(stage.dryTime()) + " min before resin is mixed, " : "";
        String bag = stage.bagTime() > 0 ? ", " + MixWords.minutes(stage.bagTime()) + " min to fit the bag" : "";
        return dry + MixWords.minutes(stage.wetTime()) + " min wet" + bag + "; " + MixWords.clock(stage.start(), oneDay)
                + " to "
                + MixWords.clock(stage.end(), oneDay)
                + stage.gelled()
                        .map(time -> ", gelled at " + MixWords.clock(time, oneDay))
                        .orElse("");
    }

    private void addResin(Report.Builder report, StageResin resin) {
        report.fact(resin.use(), resin.resin().id() + " with " + MixWords.agent(resin) + ": " + need(resin));
        report.fact("gel time", gelTime(resin));
        if (resin.fits()) {
            report.grid(new MixTable(measures).of(resin.mixes()));
        } else {
            report.bullets(problem(resin));
        }
    }

    private String need(StageResin resin) {
        String need = Measures.text(resin.need(), measures.mass()) + " to use up in "
                + MixWords.minutes(resin.workTime()) + " min of work";
        return resin.fits() ? need + ", " + Measures.text(resin.surplus(), measures.smallMass()) + " over" : need;
    }

    private static String gelTime(StageResin resin) {
        if (resin.gelTime().isEmpty()) {
            return "not known: " + resin.gelTimeSource();
        }
        String status = resin.gelTimeStatus().map(known -> ", " + known.word()).orElse("");
        return MixWords.minutes(resin.gelTime().getAsDouble()) + " min in a small cup" + status;
    }

    private static List<String> problem(StageResin resin) {
        List<String> texts = new ArrayList<>();
        texts.add("No mix fits: " + resin.problem().orElseThrow() + ".");
        for (Suggestion suggestion : resin.suggestions()) {
            texts.add("It fits " + change(suggestion) + ": then " + count(suggestion.mixes()) + ".");
        }
        if (resin.suggestions().isEmpty() && resin.gelTime().isPresent()) {
            texts.add(
                    "Neither more hands nor another dose within its range help: a cooler place, a slower agent, or finer"
                            + " scales, which hold smaller mixes, may.");
        }
        return texts;
    }

    private static String change(Suggestion suggestion) {
        List<String> changes = new ArrayList<>();
        suggestion.dose().ifPresent(dose -> changes.add("a dose of " + Measures.number(dose * 100) + " %"));
        suggestion.crew().ifPresent(crew -> changes.add(crew + " hands"));
        return "with " + String.join(" and ", changes);
    }

    private static String count(int mixes) {
        return mixes == 1 ? "one mix" : mixes + " mixes";
    }
}
