package laminate.process;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.unit.Dimension;

/** What is bought or mixed and does not end in the part, by cause; with what each comes to for a process. */
public enum Loss {
    /** Resin left in pots, brushes, rollers and drips: share of the resin in the part. */
    RESIN("resin", Dimension.FRACTION),
    /** Resin in peel ply, release film and breather: mass per bagged area (kg/m²). */
    BAG("bag", Dimension.AREAL_MASS),
    /** Resin in the flow mesh: mass per infused area (kg/m²). */
    MESH("mesh", Dimension.AREAL_MASS),
    /** Resin in hoses and spiral tubes: mass per moulding and resin (kg). */
    LINES("lines", Dimension.MASS),
    /** Resin that must be left in the feed bucket: mass per moulding and resin (kg). */
    BUCKET("bucket", Dimension.MASS),
    /** Gelcoat, flowcoat, paint and paste left in pots and brushes: share of what is in the part. */
    COATING("coating", Dimension.FRACTION),
    /** Reinforcement cut away: share of what is laid. */
    REINFORCEMENT("reinforcement", Dimension.FRACTION),
    /** Core cut away: share of what is laid. */
    CORE("core", Dimension.FRACTION),
    /** Reinforcement laid twice at seams, with its resin: share of the area; this stays in the part. */
    LAPS("laps", Dimension.FRACTION);

    /** Density at which lines and mesh are filled, whatever the resin (kg/m³). */
    private static final double LIQUID_RESIN = 1100;

    private final String key;
    private final Dimension dimension;

    Loss(String key, Dimension dimension) {
        this.key = key;
        this.dimension = dimension;
    }

    /**
     * The key in workshop files.
     *
     * @return the key
     */
    public String key() {
        return key;
    }

    /**
     * The dimension of the figure.
     *
     * @return a fraction, a mass per area or a mass
     */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * What a process loses where the workshop states nothing.
     *
     * <p>Laps depend on the shape and on the width of the roll, so none are reckoned unless stated: a 50 mm lap at
     * every edge of a 1.27 m roll is 4 %.
     *
     * @param process the process
     * @return a figure for every loss
     */
    public static Map<Loss, Figure> usual(Process process) {
        boolean infused = process == Process.INFUSION;
        boolean bagged = process != Process.HAND_LAY_UP;
        Map<Loss, Figure> figures = new EnumMap<>(Loss.class);
        figures.put(RESIN, infused ? memory(0.05, "catch pot") : memory(0.08, "pot, roller and drips, 5 to 10 %"));
        figures.put(BAG, bagged ? memory(0.15, "peel ply holds 100 to 200 g/m²") : none("no bag"));
        double mesh = ResinUptake.mesh(LIQUID_RESIN, 0.001, 0.80);
        figures.put(MESH, infused ? memory(mesh, "mesh 1 mm thick, 80 % open, full of resin") : none("no mesh"));
        double lines = ResinUptake.tube(LIQUID_RESIN, 0.010, 3);
        figures.put(LINES, infused ? memory(lines, "3 m of 10 mm tube, full of resin") : none("no lines"));
        figures.put(BUCKET, infused ? memory(0.4, "heel of the feed bucket, 0.3 to 0.5 kg") : none("no feed bucket"));
        figures.put(COATING, memory(0.10, "pot and brush"));
        figures.put(REINFORCEMENT, memory(0.10, "cutting waste of simple shapes; curved ones 15 to 25 %"));
        figures.put(CORE, memory(0.10, "cutting waste of simple shapes"));
        figures.put(LAPS, none("laps depend on the shape; none reckoned unless stated"));
        return Collections.unmodifiableMap(figures);
    }

    private static Figure memory(double value, String source) {
        return new Figure(value, source, Status.MEMORY);
    }

    private static Figure none(String why) {
        return new Figure(0, why, Status.COMMON_PRACTICE);
    }
}
