package laminate.plan;

import laminate.material.Resin;
import laminate.process.Dose;

/**
 * What a stage takes of one pot.
 *
 * @param resin the resin
 * @param dose its agent and the planned dose
 * @param use what it is mixed for
 * @param need resin to mix for one moulding, without agent (kg)
 * @param styrene styrene that it gives off (kg)
 * @param handTime time of one person to use it up, which more hands shorten (s)
 * @param draw how it is drawn in, which no hands shorten
 */
record PotNeed(Resin resin, Dose dose, String use, double need, double styrene, double handTime, Draw draw) {

    double workTime(int crew) {
        return handTime / crew + draw.time();
    }

    /** Time that the crew takes for one of so many equal mixes (s). */
    double workTime(int crew, int mix, int mixes) {
        return handTime / crew / mixes + draw.between((double) mix / mixes, (mix + 1.0) / mixes);
    }

    /** Whether it is drawn in, not spread. */
    boolean isDrawn() {
        return draw != Draw.NONE;
    }

    PotNeed with(Dose other) {
        return new PotNeed(resin, other, use, need, styrene, handTime, draw);
    }
}
