package laminate.estimate;

import laminate.theory.Lamina;
import laminate.theory.Strength;

/** A lamina, with a strength if one is known, and the origin of that. */
record Strengthened(Lamina lamina, StrengthOrigin origin) {

    static Strengthened by(Lamina lamina, Strength strength, StrengthOrigin origin) {
        return new Strengthened(lamina.withStrength(strength), origin);
    }

    static Strengthened without(Lamina lamina, String missing) {
        return new Strengthened(lamina, StrengthOrigin.missing(missing));
    }
}
