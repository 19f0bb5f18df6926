package laminate.estimate;

import laminate.material.Resin;
import laminate.process.Dose;

/**
 * A resin to mix for one use, for all mouldings.
 *
 * <p>Mixed = in the part + lost + evaporated. A peroxide is a line of its own beside what is mixed; a hardener is part of
 * it: to mix = (in the part + lost + evaporated)/(1 + ratio).
 *
 * @param use what it is mixed for
 * @param inPart matrix in the parts (kg)
 * @param loss left in pots, bags, lines and trimmings
 * @param evaporated styrene or solvent gone to the air (kg)
 */
public record ResinQuantity(ResinUse use, double inPart, ResinLoss loss, double evaporated) {

    /** What is mixed for the same use elsewhere in the part joins this. */
    ResinQuantity plus(ResinQuantity other) {
        return new ResinQuantity(use, inPart + other.inPart, loss.plus(other.loss), evaporated + other.evaporated);
    }

    /**
     * What is neither in the part nor in the air.
     *
     * @return left in pots, bags, lines and trimmings together (kg)
     */
    public double lost() {
        return loss.total();
    }

    /**
     * The resin.
     *
     * @return the resin
     */
    public Resin resin() {
        return use.resin();
    }

    /**
     * Its agent and ratio.
     *
     * @return the dose
     */
    public Dose dose() {
        return use.dose();
    }

    /**
     * Everything mixed, with its hardener if it has one and without a catalyst.
     *
     * @return in the part + lost + evaporated (kg)
     */
    public double mixed() {
        return inPart + lost() + evaporated;
    }

    /**
     * The resin component alone.
     *
     * @return resin to mix (kg)
     */
    public double toMix() {
        return dose().agent().isHardener() ? mixed() / (1 + dose().ratio()) : mixed();
    }

    /**
     * The agent.
     *
     * @return catalyst or hardener (kg)
     */
    public double agent() {
        return dose().massFor(toMix());
    }

    /**
     * The agent by volume, from its own density.
     *
     * @return catalyst or hardener (m³)
     */
    public double agentVolume() {
        return agent() / dose().agent().density();
    }
}
