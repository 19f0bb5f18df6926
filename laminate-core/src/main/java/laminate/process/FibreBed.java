package laminate.process;

import java.util.Locale;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Reinforcement;
import laminate.material.Resin;

/**
 * What a bed of fibres can hold.
 *
 * <p>Limits are the fibre volume fractions that no workshop process exceeds, from memory: equal round fibres in a
 * hexagonal pack reach π/(2√3) = 0.907, straight plies under a press about 0.75, crossed and random ones less the more
 * they cross.
 */
public final class FibreBed {

    /** The limit itself is accepted, in whichever way it is stated. */
    private static final double ROUNDING = 1e-9;

    private FibreBed() {}

    /**
     * The greatest fibre volume fraction that a form packs to.
     *
     * @param form the form
     * @return V<sub>f</sub>
     */
    public static double greatestVolumeFraction(Form form) {
        return switch (form) {
            case TISSUE -> 0.30;
            case MAT -> 0.45;
            case WOVEN_ROVING -> 0.65;
            case WOVEN_CLOTH -> 0.68;
            case STITCHED -> 0.70;
            case UNIDIRECTIONAL -> 0.75;
        };
    }

    /**
     * Checks that a reinforcement can be pressed to a fibre content. Voids are left out: they would only make a bed
     * that is too full look less so.
     *
     * @param reinforcement what is laid
     * @param resin the resin that fills it
     * @param content the content stated for it
     * @throws IllegalArgumentException if its plies together would be packed closer than they can be, or leave no resin
     */
    public static void check(Reinforcement reinforcement, Resin resin, FibreContent content) {
        double fibreVolume = 0;
        double room = 0;
        for (FibrePly ply : reinforcement.plies()) {
            double volume = ply.arealMass() / ply.fibre().density();
            fibreVolume += volume;
            room += volume / greatestVolumeFraction(ply.form());
        }
        double resinVolume = content.resinVolume(reinforcement.arealMass(), fibreVolume, resin.densityCured(), 0);
        if (fibreVolume + resinVolume < room * (1 - ROUNDING)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s would be %.0f %% fibre by volume at that %s; a %s bed holds at most %.0f %%",
                    reinforcement.id(),
                    fibreVolume / (fibreVolume + resinVolume) * 100,
                    content.basis().key(),
                    reinforcement.form().word(),
                    fibreVolume / room * 100));
        }
    }
}
