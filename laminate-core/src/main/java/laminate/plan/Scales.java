package laminate.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.Mixing;

/**
 * Rounds a mix to what the scales read or the dispenser gives, so that the dose holds.
 *
 * <p>Resin is rounded up to its scale and the agent to the reading nearest to the dose of the rounded resin; with a
 * dispenser the agent comes in whole strokes and the resin follows. The dose stays within the resin's range and within
 * {@link #TOLERANCE} of what is planned; below {@link #smallest()} no reading of the scales holds it.
 */
final class Scales {
    /**
     * How far rounding may move the dose (1): gel time goes with dose to the power of −0.8 to −1, so it moves by no more,
     * well within the 12 to 20 % that the gel times themselves scatter by. Common practice.
     */
    static final double TOLERANCE = 0.05;

    /** Sums of decimal steps may be off by so much and still count as whole. */
    private static final double SLACK = 1e-9;

    private final double resinStep;
    private final double agentStep;
    private final boolean pumped;
    private final double ratio;
    private final double least;
    private final double most;

    Scales(Mixing mixing, Resin resin, Dose dose) {
        resinStep = mixing.resinStep();
        pumped = mixing.pumpStroke().isPresent();
        agentStep = pumped ? mixing.pumpStroke().getAsDouble() * dose.agent().density() : mixing.agentStep();
        ratio = dose.ratio();
        Resin.Cure cure = resin.cureBy(dose.agent().id())
                .orElseThrow(() -> new IllegalArgumentException(dose.agent().id() + " does not cure " + resin.id()));
        least = Math.max(cure.from().value(), ratio * (1 - TOLERANCE));
        most = Math.min(cure.to().value(), ratio * (1 + TOLERANCE));
    }

    /**
     * The smallest mix that holds the dose: one step of either measure moves it no further than the room that there is.
     *
     * @return resin (kg), empty where the resin leaves no room at all
     */
    OptionalDouble smallest() {
        if (!(most > least)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(pumped ? resinFor(fewestStrokes()) : up(agentStep / (most - least), resinStep));
    }

    /**
     * The least mix that covers a need.
     *
     * @param resin resin needed (kg)
     * @return the mix, no smaller than {@link #smallest()}
     */
    Weighed cover(double resin) {
        return pumped
                ? pump(resin)
                : weigh(Math.max(up(resin, resinStep), smallest().orElseThrow()));
    }

    private Weighed weigh(double resin) {
        long readings = clamp(ratio * resin / agentStep, least * resin / agentStep, most * resin / agentStep);
        return new Weighed(resin, readings * agentStep, OptionalInt.empty());
    }

    private Weighed pump(double resin) {
        long strokes = Math.max(fewestStrokes(), (long) (resin * least / agentStep));
        while (resinFor(strokes) < resin * (1 - 1e-13)) {
            strokes++;
        }
        return new Weighed(resinFor(strokes), strokes * agentStep, OptionalInt.of(Math.toIntExact(strokes)));
    }

    private long fewestStrokes() {
        return (long) Math.max(1, Math.ceil(resinStep / (agentStep * (1 / least - 1 / most)) - SLACK));
    }

    private double resinFor(long strokes) {
        double agent = strokes * agentStep;
        return resinStep * clamp(agent / ratio / resinStep, agent / most / resinStep, agent / least / resinStep);
    }

    /** The whole number nearest to a value among those within two bounds. */
    private static long clamp(double value, double low, double high) {
        return (long) Math.min(Math.floor(high + SLACK), Math.max(Math.ceil(low - SLACK), Math.rint(value)));
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step * (1 - 1e-13)) * step;
    }
}
