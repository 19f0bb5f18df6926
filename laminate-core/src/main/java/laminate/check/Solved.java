package laminate.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.ReserveKind;

/** A load case, panel or beam reckoned in one make-up, as far as limits look at it. */
interface Solved {
    /** The least reserve factor of a kind; empty if nothing fails that way. */
    Optional<Reserve> reserve(ReserveKind kind);

    /** The deflection that counts, by magnitude (m); empty for a load case. */
    OptionalDouble deflection();

    /** What a share of span is of (m); 0 for a load case. */
    double span();

    /** The share by which the deflection may still be off where the solution has not settled, otherwise 0. */
    default double doubtOfDeflection() {
        return 0;
    }

    /** The same of stress and reserve factors. */
    default double doubtOfStress() {
        return 0;
    }

    /** The same with another make-up, if need be less exactly but more quickly, for a search. */
    Solved near(MakeUp changed);

    /** The kinds that can be reckoned. */
    List<ReserveKind> kinds();
}
