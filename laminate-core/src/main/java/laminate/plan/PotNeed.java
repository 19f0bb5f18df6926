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
 * @param flowTime time in which it is drawn in, which no hands shorten (s)
 */
record PotNeed(Resin resin, Dose dose, String use, double need, double styrene, double handTime, double flowTime) {

    double workTime(int crew) {
        return handTime / crew + flowTime;
    }

    PotNeed with(Dose other) {
        return new PotNeed(resin, other, use, need, styrene, handTime, flowTime);
    }
}
