package laminate.plan;

import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;

/**
 * The stages and mixes of one moulding.
 *
 * @param part the name of the part
 * @param mouldings how many mouldings the plan is repeated for
 * @param temperature the temperature it holds for (K)
 * @param temperatureAssumed whether the workshop states none, so that the temperature is an assumption
 * @param crew the hands that lay at once
 * @param stages the stages, in order
 * @param doses a table for the wall for each resin and agent of the plan that has gel times
 * @param freshAir the fresh air that styrene calls for, empty where none is given off
 * @param cautions what to mind throughout
 */
public record MixPlan(
        String part,
        int mouldings,
        double temperature,
        boolean temperatureAssumed,
        int crew,
        List<Stage> stages,
        List<DoseTable> doses,
        Optional<FreshAir> freshAir,
        List<Caution> cautions) {

    /** Copies the lists. */
    public MixPlan {
        stages = List.copyOf(stages);
        doses = List.copyOf(doses);
        cautions = List.copyOf(cautions);
    }

    /**
     * Whether every stage has mixes that are used up in time.
     *
     * @return true if nothing is left to solve
     */
    public boolean fits() {
        return stages.stream().allMatch(Stage::fits);
    }
}
