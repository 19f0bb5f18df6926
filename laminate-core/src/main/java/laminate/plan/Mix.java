package laminate.plan;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One pot of resin with its agent: weighed, stirred, and used up before it gels.
 *
 * @param number its place among the mixes of its stage, from 1
 * @param material the id of the resin
 * @param agent the id of the catalyst or hardener
 * @param needed the share of the need that it covers, not rounded (kg of resin without agent)
 * @param resin resin to weigh out, rounded up to the scale (kg)
 * @param resinVolume the same by volume, from the density of the liquid (m³)
 * @param catalyst catalyst or hardener to add, from the rounded resin, to its own scale (kg)
 * @param catalystVolume the same by volume, from the agent's density (m³)
 * @param strokes strokes of the dispenser in place of weighing the agent, empty where the workshop has none
 * @param gelTime time until this pot gels, with the heat that a pot keeps (s); empty where it is not known
 * @param usableTime the usable share of it, from which the time of mixing is taken off (s); empty where it is not known
 * @param workTime time that the crew takes to use it up (s)
 */
public record Mix(
        int number,
        String material,
        String agent,
        double needed,
        double resin,
        double resinVolume,
        double catalyst,
        double catalystVolume,
        OptionalInt strokes,
        OptionalDouble gelTime,
        OptionalDouble usableTime,
        double workTime) {

    /**
     * Checks the masses.
     *
     * @throws IllegalArgumentException if the resin is less than is needed, or a mass is not above zero and finite
     */
    public Mix {
        if (!(needed > 0 && catalyst > 0) || !Double.isFinite(resin) || !Double.isFinite(catalyst)) {
            throw new IllegalArgumentException(
                    "the masses of a mix must be above zero, not " + needed + " kg and " + catalyst + " kg");
        }
        if (resin < needed * (1 - 1e-12)) {
            throw new IllegalArgumentException("a mix of " + resin + " kg does not cover " + needed + " kg");
        }
    }

    Mix numbered(int place, double time) {
        return new Mix(
                place,
                material,
                agent,
                needed,
                resin,
                resinVolume,
                catalyst,
                catalystVolume,
                strokes,
                gelTime,
                usableTime,
                time);
    }

    /**
     * The dose as it comes out of rounded masses.
     *
     * @return agent by resin (kg/kg)
     */
    public double dose() {
        return catalyst / resin;
    }

    /**
     * What rounding and the least pot leave over.
     *
     * @return resin (kg)
     */
    public double surplus() {
        return resin - needed;
    }
}
