package laminate.process;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Core;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Status;

/**
 * How the faces of a core are finished, which decides the resin it takes up beyond its plain faces.
 *
 * @param kind the finish
 * @param grooves the grooves, present for a grooved finish only
 */
public record CoreFinish(Kind kind, Optional<Grooves> grooves) {

    /** The finishes sold. */
    public enum Kind {
        /** Whole sheet. */
        PLAIN,
        /** Cut through to a scrim, to take a curve. */
        SCORED,
        /** Grooved, for the resin to run in. */
        GROOVED,
        /** Drilled on a grid, for air or resin to pass. */
        PERFORATED;

        /**
         * The word in files.
         *
         * @return the word
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A plain sheet. */
    public static final CoreFinish PLAIN = new CoreFinish(Kind.PLAIN, Optional.empty());

    /** Resin in the kerfs of a scored core laid flat; 0.5 to 1.5 kg/m² by curvature. */
    public static final Figure SCORED_UPTAKE =
            new Figure(0.5, "contour-scored cores, 0.5 to 1.5 kg/m² by curvature", Status.MEMORY);

    /** Holes of a perforated core: 2 mm on a square grid of 50 mm; common practice, no source. */
    private static final double HOLE = 0.002;

    private static final double HOLE_PITCH = 0.050;

    /**
     * Checks that grooves go with a grooved finish.
     *
     * @throws IllegalArgumentException if they do not
     */
    public CoreFinish {
        if (grooves.isPresent() != (kind == Kind.GROOVED)) {
            throw new IllegalArgumentException("grooves go with a grooved finish, not with " + kind.word());
        }
    }

    /**
     * A finish of a kind, with usual grooves for a grooved one.
     *
     * @param kind the finish
     * @return the finish
     */
    public static CoreFinish of(Kind kind) {
        return new CoreFinish(kind, kind == Kind.GROOVED ? Optional.of(Grooves.USUAL) : Optional.empty());
    }

    /**
     * A grooved finish.
     *
     * @param grooves the grooves
     * @return the finish
     */
    public static CoreFinish grooved(Grooves grooves) {
        return new CoreFinish(Kind.GROOVED, Optional.of(grooves));
    }

    /**
     * Resin that a core takes up at its plain faces, whatever its finish.
     *
     * @param core the core
     * @param process the process
     * @return resin per area of one face (kg/m²)
     * @throws IllegalArgumentException if the core cannot be infused and the process is infusion
     */
    public static double faceUptake(Core core, Process process) {
        if (process != Process.INFUSION) {
            return core.figures().value(Property.UPTAKE_HAND);
        }
        if (core.openCell()) {
            throw new IllegalArgumentException(
                    core.id() + " has open cells, which resin would fill under vacuum; it cannot be infused;"
                            + " lay it by hand or under a vacuum bag");
        }
        OptionalDouble uptake = core.figures().valueOf(Property.UPTAKE_INFUSION);
        if (uptake.isEmpty()) {
            throw new IllegalArgumentException(
                    core.id() + " states no uptake-infusion, what a face takes up under vacuum; add it to the core");
        }
        return uptake.getAsDouble();
    }

    /**
     * Resin in the openings of the finish.
     *
     * @param thickness thickness of the core (m)
     * @param resinDensity cured density of the resin (kg/m³)
     * @return resin per area of core (kg/m²)
     */
    public double openingUptake(double thickness, double resinDensity) {
        return switch (kind) {
            case PLAIN -> 0;
            case SCORED -> SCORED_UPTAKE.value();
            case GROOVED ->
                grooves.map(cut -> cut.faces() * ResinUptake.grooves(resinDensity, cut))
                        .orElseThrow();
            case PERFORATED -> ResinUptake.perforations(resinDensity, HOLE, HOLE_PITCH, thickness);
        };
    }
}
