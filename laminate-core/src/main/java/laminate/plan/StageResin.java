package laminate.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.Dose;

/**
 * A resin that a stage takes, and its mixes.
 *
 * <p>There are no mixes where none can be made that is used up in time, or that the scales hold: {@link #problem()} then
 * says why, and {@link #suggestions()} what would help.
 *
 * @param resin the resin
 * @param dose its agent and the planned dose
 * @param use what it is mixed for: the stage's name, {@code laminate}, {@code bonding}, or what the coating is
 * @param need resin to mix for one moulding, without agent, not rounded (kg)
 * @param workTime time that the crew takes to use it up (s)
 * @param gelTime gel time at the planned dose in a thin film or small cup (s), empty where it is not known
 * @param gelTimeStatus how the gel time relates to its source, empty where it is not known
 * @param gelTimeSource the source of the gel time, or why it is not known
 * @param mixes the mixes, empty if no plan fits
 * @param problem why no plan fits, empty if one does
 * @param suggestions what would make it fit
 */
public record StageResin(
        Resin resin,
        Dose dose,
        String use,
        double need,
        double workTime,
        OptionalDouble gelTime,
        Optional<Status> gelTimeStatus,
        String gelTimeSource,
        List<Mix> mixes,
        Optional<String> problem,
        List<Suggestion> suggestions) {

    /**
     * Checks that there are mixes or a reason why not.
     *
     * @throws IllegalArgumentException if there are both or neither
     */
    public StageResin {
        mixes = List.copyOf(mixes);
        suggestions = List.copyOf(suggestions);
        if (mixes.isEmpty() != problem.isPresent()) {
            throw new IllegalArgumentException(resin.id() + " has mixes or a reason why not, not both or neither");
        }
    }

    /**
     * Whether mixes could be made.
     *
     * @return true if each is used up in time
     */
    public boolean fits() {
        return problem.isEmpty();
    }

    /**
     * Resin of all mixes, rounded.
     *
     * @return resin without agent (kg)
     */
    public double mixed() {
        double sum = 0;
        for (Mix mix : mixes) {
            sum += mix.resin();
        }
        return sum;
    }

    /**
     * Agent of all mixes, rounded.
     *
     * @return catalyst or hardener (kg)
     */
    public double agent() {
        double sum = 0;
        for (Mix mix : mixes) {
            sum += mix.catalyst();
        }
        return sum;
    }

    /**
     * What rounding and the least pot leave over.
     *
     * @return resin (kg), 0 where there are no mixes
     */
    public double surplus() {
        return mixes.isEmpty() ? 0 : mixed() - need;
    }
}
