package laminate.estimate;

import laminate.material.Resin;
import laminate.part.Bed;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.Zone;
import laminate.process.Dose;
import laminate.process.LayUp;
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
     * What a layer is laid with.
     *
     * @param layer a layer that is laid with resin
     * @return its pot
     * @throws IllegalArgumentException if it is a ply given directly, which takes none
     */
    public static ResinUse of(Layer layer) {
        if (layer.laying().isEmpty()) {
            throw new IllegalArgumentException("a ply given directly is laid with no resin");
        }
        LayUp layUp = layer.laying().get();
        String use = layer.stage().isEmpty() ? LAMINATE : layer.stage();
        return new ResinUse(layUp.resin(), layUp.dose(), use, layUp.process());
    }

    /**
     * What the bed of a core is made of.
     *
     * @param bed the bed
     * @param core the core on it
     * @return its pot
     */
    public static ResinUse of(Bed bed, CoreLayer core) {
        return new ResinUse(bed.paste(), bed.dose(), BONDING, core.layUp().process());
    }

    /**
     * What a coating of a zone is made of. It counts to the process that the zone's first layer is laid by.
     *
     * @param coating the coating
     * @param zone the zone
     * @return its pot
     */
    public static ResinUse of(Coating coating, Zone zone) {
        return new ResinUse(
                coating.material(), coating.dose(), coating.material().use().word(), firstProcess(zone));
    }

    private static Process firstProcess(Zone zone) {
        for (Layer layer : zone.layers()) {
            if (layer.laying().isPresent()) {
                return layer.laying().get().process();
            }
        }
        return Process.HAND_LAY_UP;
    }

    /**
     * Whether this is a coating, which does not count as laminating resin.
     *
     * @return true for gelcoat, barrier, flowcoat and paint
     */
    public boolean isCoating() {
        return resin.use().isCoating();
    }

    /**
     * As of any record, but asks first whether the parts are one and the same, which they are within an estimate.
     *
     * @param other anything
     * @return true if all components are equal
     */
    @Override
    public boolean equals(Object other) {
        return other instanceof ResinUse that
                && use.equals(that.use)
                && process == that.process
                && dose.ratio() == that.dose.ratio()
                && isSame(dose.agent(), that.dose.agent())
                && isSame(resin, that.resin);
    }

    private static boolean isSame(Object one, Object other) {
        return one == other || one.equals(other);
    }

    /**
     * The ids are enough to tell pots apart; to take in every figure of the resin would take longer than the estimate.
     *
     * @return the hash code
     */
    @Override
    public int hashCode() {
        return 31 * (31 * use.hashCode() + resin.id().hashCode())
                + dose.agent().id().hashCode();
    }
}
