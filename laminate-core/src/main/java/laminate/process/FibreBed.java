package laminate.process;

import laminate.material.Form;

/**
 * What a bed of fibres can hold.
 *
 * <p>Limits are the fibre volume fractions that no workshop process exceeds, from memory: equal round fibres in a hexagonal
 * pack reach π/(2√3) = 0.907, straight plies under a press about 0.75, crossed and random ones less the more they cross.
 */
public final class FibreBed {

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
}
