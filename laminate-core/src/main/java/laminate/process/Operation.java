package laminate.process;

import java.util.List;
import laminate.material.Figure;
import laminate.material.Status;

/**
 * A step of the work and the time that it takes one person.
 *
 * <p>The names that {@link #USUAL} uses count what they belong to: {@code gelcoat} the area of every coating coat,
 * {@code lay-up} and {@code dry lay-up} the area of every layer wetted by hand or laid dry, {@code core} the area of
 * every core, {@code bagging} the area under a bag. Any other name, be it one of {@link #FURTHER} or not, counts the area
 * of every layer of reinforcement and bulker if its time is by layer, else the area of the part. What is counted by stage,
 * item or moulding counts none where there is nothing of that name to do.
 *
 * @param name what is done
 * @param basis what the time is counted by
 * @param time seconds per m², metre, stage, item or moulding, with its source
 */
public record Operation(String name, Basis basis, Figure time) {

    /** What the time of an operation is counted by. */
    public enum Basis {
        /** By moulding (s). */
        MOULDING,
        /** By area (s/m²). */
        AREA,
        /** By area of every layer or coat (s/m²). */
        LAYER_AREA,
        /** By length of trimmed edge (s/m). */
        EDGE,
        /** By stage of every moulding: what stands between one stage and the next, as mixing and cleaning up (s). */
        STAGE,
        /** By bought-in item, as drilling and bonding it in (s). */
        ITEM
    }

    /** Cleaning and waxing the mould. */
    public static final String MOULD_PREPARATION = "mould preparation";
    /** Applying gelcoat, barrier coat, flowcoat or paint. */
    public static final String GELCOAT = "gelcoat";
    /** Wetting out a layer by hand. */
    public static final String LAY_UP = "lay-up";
    /** Laying a layer dry, for infusion. */
    public static final String DRY_LAY_UP = "dry lay-up";
    /** Fitting and bedding a core. */
    public static final String CORE = "core";
    /** Fitting peel ply, film, breather or mesh, lines and bag. */
    public static final String BAGGING = "bagging";
    /** Infusing a moulding. */
    public static final String INFUSION = "infusion";
    /** Trimming the edge. */
    public static final String TRIMMING = "trimming";

    /** Names of further steps that a workshop may state times for; none is counted where it states none. */
    public static final List<String> FURTHER =
            List.of("cure watch", "demoulding", "drilling", "bonding in", "finishing", "inspection");

    /** The operations of a workshop that states none; all from memory and weak, so calibrate them in the shop. */
    public static final List<Operation> USUAL = List.of(
            usual(MOULD_PREPARATION, Basis.AREA, 0.10, "mould clean and wax, 0.05 to 0.15 h/m² per coat"),
            usual(GELCOAT, Basis.LAYER_AREA, 0.10, "gelcoat by brush, 8 to 15 m²/h"),
            usual(LAY_UP, Basis.LAYER_AREA, 0.22, "mat 450 by hand, 3 to 6 m²/h per person and layer"),
            usual(DRY_LAY_UP, Basis.LAYER_AREA, 0.12, "dry fabric, 6 to 12 m²/h"),
            usual(CORE, Basis.LAYER_AREA, 0.30, "fitting a core"),
            usual(BAGGING, Basis.AREA, 0.75, "bag and lines set up, 0.5 to 1.0 h/m² on small parts"),
            usual(INFUSION, Basis.MOULDING, 1.0, "infusing, 0.2 to 1.5 h"),
            usual(TRIMMING, Basis.EDGE, 0.15, "trimming, 0.1 to 0.2 h per metre of edge"));

    /**
     * Checks the operation.
     *
     * @throws IllegalArgumentException if the name is blank or the time below zero
     */
    public Operation {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an operation needs a name");
        }
        if (time.value() < 0) {
            throw new IllegalArgumentException("the time of " + name + " must not be below zero, not " + time.value());
        }
    }

    private static Operation usual(String name, Basis basis, double hours, String source) {
        return new Operation(name, basis, new Figure(hours * 3600, source, Status.MEMORY));
    }
}
