package laminate.part;

import java.util.Objects;
import java.util.OptionalDouble;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.PointLoad;
import laminate.theory.beam.Supports;

/**
 * A beam or strip of a zone's laminate, with what it has to carry.
 *
 * @param name the name
 * @param zone the name of the zone whose laminate it is made of
 * @param along the direction of the laminate that its span runs along
 * @param span distance between its supports, or from the clamp to the free end (m)
 * @param width width (m)
 * @param supports how it is held
 * @param load what acts on it
 * @param bearingLength length along the span over which a force is brought in and borne, for the indentation of a
 *     sandwich (m), empty where not stated
 * @param limits what is asked of it
 */
public record BeamPlan(
        String name,
        String zone,
        Along along,
        double span,
        double width,
        Supports supports,
        BeamLoad load,
        OptionalDouble bearingLength,
        Limits limits) {

    /** The directions of the laminate that a span may run along. */
    public enum Along {
        /** Along x. */
        X("x"),
        /** Along y. */
        Y("y");

        private final String word;

        Along(String word) {
            this.word = word;
        }

        /**
         * The word in files.
         *
         * @return x or y
         */
        public String word() {
            return word;
        }
    }

    /**
     * Checks the beam.
     *
     * @throws IllegalArgumentException if a name is blank, a length not above zero, or a force beyond the span
     */
    public BeamPlan {
        Objects.requireNonNull(along, "along");
        Objects.requireNonNull(supports, "supports");
        Objects.requireNonNull(limits, "limits");
        if (name.isBlank() || zone.isBlank()) {
            throw new IllegalArgumentException("a beam needs a name and a zone");
        }
        Lengths.check(name, "span", span);
        Lengths.check(name, "width", width);
        Lengths.check(name, "bearing length", bearingLength.orElse(span));
        for (PointLoad point : load.points()) {
            if (point.position() > span) {
                throw new IllegalArgumentException(
                        name + ": a force at " + point.position() + " m is beyond the span, " + span + " m");
            }
        }
    }

    /**
     * A beam along x with no limits of its own.
     *
     * @param name the name
     * @param zone the name of the zone whose laminate it is made of
     * @param span distance between its supports, or from the clamp to the free end (m)
     * @param width width (m)
     * @param supports how it is held
     * @param load what acts on it
     * @return the beam
     * @throws IllegalArgumentException if it cannot be
     */
    public static BeamPlan of(String name, String zone, double span, double width, Supports supports, BeamLoad load) {
        return new BeamPlan(name, zone, Along.X, span, width, supports, load, OptionalDouble.empty(), Limits.NONE);
    }
}
