package laminate.print.check;

import laminate.theory.LaminateLoad.Term;

/** The keys of loads and deformations in JSON. */
final class TermKeys {
    private TermKeys() {}

    /** The word and the SI unit as a key of JSON: Nx_N_m. */
    static String of(Term term) {
        String unit = switch (term) {
            case NX, NY, NXY -> "_N_m";
            case MX, MY, MXY -> "_Nm_m";
            case EPS_X, EPS_Y, GAMMA_XY -> "";
            case KAPPA_X, KAPPA_Y, KAPPA_XY -> "_1_m";
        };
        return term.word().replace('-', '_') + unit;
    }
}
