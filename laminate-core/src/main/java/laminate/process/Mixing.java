package laminate.process;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Status;

/**
 * How a workshop mixes.
 *
 * @param usableShare share of the gel time in which a mix has to be used up (1)
 * @param resinStep what the scale for resin reads (kg)
 * @param agentStep what the scale for catalyst and hardener reads (kg)
 * @param pumpStroke what one stroke of the pump for the agent gives (m³), empty for no pump
 * @param largestMix the most resin in one mix (kg), empty for the usual of the resin's family
 * @param mixingTime time from adding the agent to the first wetting (s)
 */
public record Mixing(
        Figure usableShare,
        double resinStep,
        double agentStep,
        OptionalDouble pumpStroke,
        OptionalDouble largestMix,
        Figure mixingTime) {

    /** A workshop that states nothing. */
    public static final Mixing USUAL = new Mixing(
            new Figure(
                    0.70,
                    "common practice: the last third of the gel time is no good for wetting",
                    Status.COMMON_PRACTICE),
            0.005,
            0.0001,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            new Figure(120, "common practice: stir for two minutes, scraping the pot", Status.COMMON_PRACTICE));

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the share is not above 0 and at most 1, the mixing time below zero, or another
     *     value not above zero
     */
    public Mixing {
        Objects.requireNonNull(usableShare, "usableShare");
        Objects.requireNonNull(mixingTime, "mixingTime");
        double share = usableShare.value();
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("the usable share must be above 0 and at most 1, not " + share);
        }
        if (mixingTime.value() < 0) {
            throw new IllegalArgumentException("mixing time must be zero or more, not " + mixingTime.value() + " s");
        }
        checkPositive("what the resin scale reads", resinStep, "kg");
        checkPositive("what the agent scale reads", agentStep, "kg");
        checkPositive("a pump stroke", pumpStroke.orElse(1), "m³");
        checkPositive("the largest mix", largestMix.orElse(1), "kg");
    }

    /**
     * What a gel time leaves to use a mix up: t<sub>use</sub> = s t<sub>gel</sub> − t<sub>mix</sub>, with s the usable share.
     *
     * @param gelTime gel time of the mix (s)
     * @return time (s), 0 where mixing takes all of the usable share
     */
    public double usableTime(double gelTime) {
        return Math.max(0, usableShare.value() * gelTime - mixingTime.value());
    }

    /**
     * The reverse of {@link #usableTime}: the gel time that leaves so long to use a mix up.
     *
     * @param usableTime time to use it up (s), above zero
     * @return gel time (s)
     */
    public double gelTimeFor(double usableTime) {
        return (usableTime + mixingTime.value()) / usableShare.value();
    }

    private static void checkPositive(String what, double value, String unit) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value + " " + unit);
        }
    }
}
