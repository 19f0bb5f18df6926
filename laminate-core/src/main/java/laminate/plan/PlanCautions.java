package laminate.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import laminate.estimate.Caution;
import laminate.estimate.PartEstimate;
import laminate.estimate.WorkCautions;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.Workshop;

/** What to mind throughout a plan: its assumptions, accelerator and waste, and the estimate's cautions of safety. */
final class PlanCautions {
    private static final String COMMON_PRACTICE = "common practice, no source";

    private PlanCautions() {}

    static List<Caution> of(PartEstimate estimate, List<Stage> stages, Workshop workshop) {
        List<Caution> cautions = new ArrayList<>();
        addAssumptions(stages, workshop, cautions);
        workshop.shopFloor().mixing().largestMix().ifPresent(largest -> addLargest(largest, stages, cautions));
        cautions.addAll(WorkCautions.ofMixing(estimate, workshop));
        estimate.cautions().stream()
                .filter(caution -> caution.kind() == Caution.Kind.SAFETY)
                .forEach(cautions::add);
        addSafety(stages, cautions);
        return cautions;
    }

    private static void addAssumptions(List<Stage> stages, Workshop workshop, List<Caution> cautions) {
        if (workshop.temperature().isEmpty()) {
            cautions.add(schedule(String.format(
                    Locale.ROOT,
                    "The workshop states no temperature: planned at %.0f °C. Gel times halve with every 10 °C or so.",
                    workshop.plannedTemperature() - 273.15)));
        }
        if (stages.stream().anyMatch(stage -> !stage.mixes().isEmpty())) {
            cautions.add(
                    schedule("Gel times scatter by a fifth and more between batches: time a cup of this batch, at this"
                            + " temperature and dose, before the first mix."));
        }
    }

    private static void addSafety(List<Stage> stages, List<Caution> cautions) {
        if (takesPeroxide(stages)) {
            cautions.add(safety(
                    "Where a resin is not pre-accelerated, stir the accelerator into the resin first, all through,"
                            + " and the peroxide last: never one to the other."));
        }
        if (!stages.isEmpty()) {
            cautions.add(
                    safety("Let left-over mixes cure in water, in the open, before they are thrown away. Uncured resin,"
                            + " peroxide and solvent are hazardous waste: none into a drain or a common bin."));
        }
    }

    /** The workshop may mix more than the heat of a pot is known for; the plan does not. */
    private static void addLargest(double largest, List<Stage> stages, List<Caution> cautions) {
        Set<Resin.Family> families = EnumSet.noneOf(Resin.Family.class);
        for (Stage stage : stages) {
            for (StageResin resin : stage.resins()) {
                families.add(resin.resin().family());
            }
        }
        for (Resin.Family family : families) {
            double known = PotLife.largestPot(family);
            if (largest > known) {
                cautions.add(schedule(String.format(
                        Locale.ROOT,
                        "The workshop mixes up to %.1f kg at once; %s is planned in pots of up to %.1f kg with its agent, beyond"
                                + " which no gel time is known.",
                        largest,
                        family.word(),
                        known)));
            }
        }
    }

    private static boolean takesPeroxide(List<Stage> stages) {
        return stages.stream()
                .flatMap(stage -> stage.resins().stream())
                .anyMatch(resin -> !resin.dose().agent().isHardener());
    }

    private static Caution schedule(String text) {
        return new Caution(Caution.Kind.SCHEDULE, text, COMMON_PRACTICE, Status.COMMON_PRACTICE);
    }

    private static Caution safety(String text) {
        return new Caution(Caution.Kind.SAFETY, text, "from memory", Status.MEMORY);
    }
}
