package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.estimate.SafetyCautions;
import laminate.plan.JobSheet.Action;
import laminate.plan.JobSheet.Page;
import laminate.plan.JobSheet.Reading;
import laminate.plan.JobSheet.Step;

/**
 * Writes the page of a stage, mixes and layers in the order of the work: a mix stands before the layer that it is the first
 * to wet, though it may be stirred only within that layer, as the one before is used up. What is infused lies dry, its cores
 * bedded, bagged and tight before its resin is mixed, and the first mix is ready before the feed is opened.
 */
final class JobSheets {
    /** A layer that is covered but for rounding needs no further mix. */
    private static final double SLACK = 1e-9;

    private final Stage stage;
    private final List<Step> steps = new ArrayList<>();
    private final int[] stirred;

    private JobSheets(Stage stage) {
        this.stage = stage;
        this.stirred = new int[stage.resins().size()];
    }

    static Page page(Stage stage) {
        JobSheets sheet = new JobSheets(stage);
        sheet.addSteps();
        List<Caution> cautions = new ArrayList<>(stage.cautions());
        cautions.addAll(SafetyCautions.ofMixing(
                stage.resins().stream().map(StageResin::resin).toList(),
                stage.resins().stream().anyMatch(resin -> !resin.dose().agent().isHardener())));
        return new Page(stage, sheet.steps, readings(stage), cautions);
    }

    private void addSteps() {
        if (stage.bond().isPresent() && stage.bond().get().verdict() == Bond.Verdict.PREPARE) {
            add(Action.PREPARE_SURFACE);
        }
        if (stage.kind() == Stage.Kind.INFUSION) {
            addInfusion();
        } else {
            addWet();
        }
        if (stage.bagTime() > 0) {
            add(Action.BAG);
        }
        add(Action.AWAIT_GEL);
    }

    private void addInfusion() {
        for (int i = 0; i < stirred.length; i++) {
            if (!isDrawn(i)) {
                stirUntil(i, 1);
            }
        }
        for (StageLayer layer : stage.layers()) {
            steps.add(new Step(Action.LAY_DRY, Optional.empty(), Optional.of(layer)));
        }
        add(Action.BAG);
        stirUntil(2 * SLACK);
        add(Action.INFUSE);
        stirUntil(1);
    }

    private void addWet() {
        double all = 0;
        for (StageLayer layer : stage.layers()) {
            all += layer.resin();
        }
        double laid = 0;
        for (StageLayer layer : stage.layers()) {
            laid += layer.resin();
            stirUntil(all > 0 ? Math.max(laid / all, 2 * SLACK) : 1);
            Action action = stage.kind().isCoat() ? Action.COAT : Action.LAY;
            steps.add(new Step(action, Optional.empty(), Optional.of(layer)));
        }
        stirUntil(1);
    }

    /** Stirs mixes of each resin until they cover this share of the stage. */
    private void stirUntil(double share) {
        for (int i = 0; i < stirred.length; i++) {
            stirUntil(i, share);
        }
    }

    private void stirUntil(int resin, double share) {
        List<Mix> mixes = stage.resins().get(resin).mixes();
        while (stirred[resin] < mixes.size() && (double) stirred[resin] / mixes.size() < share - SLACK) {
            steps.add(new Step(Action.MIX, Optional.of(mixes.get(stirred[resin]++)), Optional.empty()));
        }
    }

    private boolean isDrawn(int resin) {
        return stage.drawn().filter(stage.resins().get(resin)::equals).isPresent();
    }

    private void add(Action action) {
        steps.add(new Step(action, Optional.empty(), Optional.empty()));
    }

    private static List<Reading> readings(Stage stage) {
        List<Reading> readings = new ArrayList<>(List.of(
                Reading.AIR_TEMPERATURE,
                Reading.RESIN_TEMPERATURE,
                Reading.HUMIDITY,
                Reading.RESIN_BATCH,
                Reading.AGENT_BATCH));
        if (stage.kind().isCoat()) {
            readings.add(Reading.FILM_THICKNESS);
        } else {
            readings.addAll(List.of(Reading.REINFORCEMENT_BATCH, Reading.DRY_MASS));
        }
        if (stage.bagTime() > 0 || stage.kind() == Stage.Kind.INFUSION) {
            readings.addAll(List.of(Reading.VACUUM, Reading.PRESSURE_DROP));
        }
        readings.addAll(List.of(Reading.START, Reading.END, Reading.GELLED, Reading.RESIN_USED));
        if (!stage.kind().isCoat()) {
            readings.add(Reading.THICKNESS);
        }
        readings.add(Reading.INITIALS);
        return readings;
    }
}
