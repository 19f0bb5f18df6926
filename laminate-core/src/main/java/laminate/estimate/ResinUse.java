package laminate.estimate;

import laminate.material.Resin;
import laminate.process.Dose;
import laminate.process.Process;

/**
 * What a resin is mixed for: one pot.
 *
 * @param resin the resin
 * @param dose its agent and ratio
 * @param use the name of the use: a stage's, {@code laminate}, {@code bonding}, or what the coating is
 * @param process the process that uses it
 */
public record ResinUse(Resin resin, Dose dose, String use, Process process) {
    /** The use of a laminating resin in no named stage. */
    public static final String LAMINATE = "laminate";
    /** The use of a paste that a core is bedded in. */
    public static final String BONDING = "bonding";

    /**
     * Whether this is a coating, which does not count as laminating resin.
     *
     * @return true for gelcoat, barrier, flowcoat and paint
     */
    public boolean isCoating() {
        return resin.use().isCoating();
    }
}
