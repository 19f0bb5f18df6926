package laminate.print;

import laminate.theory.LaminateLoad.Term;

/** The words of loads and deformations, as a part file writes them. */
public final class TermWords {
    private TermWords() {}

    /**
     * The word of a term.
     *
     * @param term the term
     * @return its key in a load case, for example Nxy or curvature-x
     */
    public static String word(Term term) {
        return switch (term) {
            case NX -> "Nx";
            case NY -> "Ny";
            case NXY -> "Nxy";
            case MX -> "Mx";
            case MY -> "My";
            case MXY -> "Mxy";
            case EPS_X -> "strain-x";
            case EPS_Y -> "strain-y";
            case GAMMA_XY -> "strain-xy";
            case KAPPA_X -> "curvature-x";
            case KAPPA_Y -> "curvature-y";
            case KAPPA_XY -> "curvature-xy";
        };
    }

    /** The word and the SI unit as a key of JSON: Nx_N_m. */
    static String key(Term term) {
        String unit = switch (term) {
            case NX, NY, NXY -> "_N_m";
            case MX, MY, MXY -> "_Nm_m";
            case EPS_X, EPS_Y, GAMMA_XY -> "";
            case KAPPA_X, KAPPA_Y, KAPPA_XY -> "_1_m";
        };
        return word(term).replace('-', '_') + unit;
    }
}
