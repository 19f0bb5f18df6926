package laminate.theory;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a laminate carries: any six of its twelve resultants and deformations, one of each conjugate pair, with shear
 * force across the thickness and the change of temperature and moisture since it was free of stress.
 *
 * <p>Where neither of a pair is given, the resultant is zero: the laminate is free in that respect. A given strain or
 * curvature is the total one, free expansion included; given as 0 it holds the laminate.
 *
 * @param given the given resultants (N/m, N·m/m) and deformations (pure numbers, 1/m)
 * @param Qx shear force on the section x = const, ∫ τxz dz (N/m)
 * @param Qy shear force on the section y = const, ∫ τyz dz (N/m)
 * @param temperatureChange from the stress-free temperature (K), negative for cooling down from cure
 * @param moisture moisture content taken up since, kg water per kg, the same in all plies
 */
public record LaminateLoad(Map<Term, Double> given, double Qx, double Qy, double temperatureChange, double moisture) {

    /** No load at all, every resultant free to be zero. */
    public static final LaminateLoad NONE = new LaminateLoad(Map.of(), 0, 0, 0, 0);

    /** The twelve terms: six resultants, then the deformations they work on, in the same order. */
    public enum Term {
        /** Force along x per width (N/m). */
        NX("Nx"),
        /** Force along y per width (N/m). */
        NY("Ny"),
        /** In-plane shear force per width (N/m). */
        NXY("Nxy"),
        /** Moment of σx per width (N·m/m). */
        MX("Mx"),
        /** Moment of σy per width (N·m/m). */
        MY("My"),
        /** Twisting moment per width (N·m/m). */
        MXY("Mxy"),
        /** Mid-plane strain along x. */
        EPS_X("strain-x"),
        /** Mid-plane strain along y. */
        EPS_Y("strain-y"),
        /** Mid-plane shear strain, engineering. */
        GAMMA_XY("strain-xy"),
        /** Curvature −w,xx (1/m). */
        KAPPA_X("curvature-x"),
        /** Curvature −w,yy (1/m). */
        KAPPA_Y("curvature-y"),
        /** Twist −2 w,xy (1/m). */
        KAPPA_XY("curvature-xy");

        private static final int PAIRS = 6;

        private final String word;

        Term(String word) {
            this.word = word;
        }

        /**
         * What it is called in files and in print.
         *
         * @return the symbol of a force or moment, as Nxy, or the word for a deformation, as curvature-x
         */
        public String word() {
            return word;
        }

        /**
         * The other term of the pair: the strain of a force, the moment of a curvature.
         *
         * @return the conjugate term
         */
        public Term conjugate() {
            return values()[(ordinal() + PAIRS) % values().length];
        }

        /**
         * Whether the term is a force or moment.
         *
         * @return false for a strain or curvature
         */
        public boolean isResultant() {
            return ordinal() < PAIRS;
        }
    }

    /**
     * Checks the load and keeps a copy in the order of the terms.
     *
     * @param given the given resultants (N/m, N·m/m) and deformations (pure numbers, 1/m)
     * @param Qx shear force on the section x = const (N/m)
     * @param Qy shear force on the section y = const (N/m)
     * @param temperatureChange from the stress-free temperature (K)
     * @param moisture moisture content taken up since, kg water per kg
     * @throws IllegalArgumentException if a number is not finite or both of a pair are given
     */
    public LaminateLoad {
        EnumMap<Term, Double> ordered = new EnumMap<>(Term.class);
        ordered.putAll(given);
        for (Term term : ordered.keySet()) {
            Require.finite(term.name(), ordered.get(term));
            if (ordered.containsKey(term.conjugate())) {
                throw new IllegalArgumentException("one of each pair can be given, were " + term + " = "
                        + ordered.get(term) + " and " + term.conjugate() + " = " + ordered.get(term.conjugate()));
            }
        }
        given = Collections.unmodifiableMap(ordered);
        Require.finite("Qx", Qx);
        Require.finite("Qy", Qy);
        Require.finite("temperature change", temperatureChange);
        Require.finite("moisture", moisture);
    }

    /**
     * A load of forces and moments.
     *
     * @param load N and M
     * @return the load with all six given
     */
    public static LaminateLoad of(Resultants load) {
        Vector3 n = load.force();
        Vector3 m = load.moment();
        return NONE.with(Term.NX, n.x())
                .with(Term.NY, n.y())
                .with(Term.NXY, n.xy())
                .with(Term.MX, m.x())
                .with(Term.MY, m.y())
                .with(Term.MXY, m.xy());
    }

    /**
     * Whether nothing is given and nothing changes.
     *
     * @return false where a term is given, be it as zero
     */
    public boolean isNone() {
        return given.isEmpty() && Qx == 0 && Qy == 0 && temperatureChange == 0 && moisture == 0;
    }

    /**
     * This load with one term given.
     *
     * @param term which
     * @param value its value (N/m, N·m/m, pure number or 1/m)
     * @return the copy
     * @throws IllegalArgumentException if the value is not finite or the other of the pair is given
     */
    public LaminateLoad with(Term term, double value) {
        EnumMap<Term, Double> more = new EnumMap<>(Term.class);
        more.putAll(given);
        more.put(term, value);
        return new LaminateLoad(more, Qx, Qy, temperatureChange, moisture);
    }

    /**
     * This load with shear forces across the thickness.
     *
     * @param alongX Qx (N/m)
     * @param alongY Qy (N/m)
     * @return the copy
     * @throws IllegalArgumentException if one is not finite
     */
    public LaminateLoad withShear(double alongX, double alongY) {
        return new LaminateLoad(given, alongX, alongY, temperatureChange, moisture);
    }

    /**
     * This load with a change of temperature.
     *
     * @param change from the stress-free temperature (K)
     * @return the copy
     * @throws IllegalArgumentException if it is not finite
     */
    public LaminateLoad withTemperatureChange(double change) {
        return new LaminateLoad(given, Qx, Qy, change, moisture);
    }

    /**
     * This load with moisture.
     *
     * @param content moisture content, kg water per kg
     * @return the copy
     * @throws IllegalArgumentException if it is not finite
     */
    public LaminateLoad withMoisture(double content) {
        return new LaminateLoad(given, Qx, Qy, temperatureChange, content);
    }

    /**
     * The mechanical part: without temperature and moisture. The part that a reserve factor multiplies.
     *
     * @return the copy
     */
    public LaminateLoad mechanical() {
        return new LaminateLoad(given, Qx, Qy, 0, 0);
    }

    /**
     * The part that is there without any mechanical load: temperature and moisture, every given term zero. What held
     * a strain before holds it at zero.
     *
     * @return the copy
     */
    public LaminateLoad residual() {
        return new LaminateLoad(scaled(0), 0, 0, temperatureChange, moisture);
    }

    /**
     * This load with its mechanical part multiplied; temperature and moisture stay.
     *
     * @param factor the factor
     * @return the copy
     * @throws IllegalArgumentException if a value is no longer finite
     */
    public LaminateLoad times(double factor) {
        return new LaminateLoad(scaled(factor), factor * Qx, factor * Qy, temperatureChange, moisture);
    }

    private Map<Term, Double> scaled(double factor) {
        EnumMap<Term, Double> scaled = new EnumMap<>(Term.class);
        given.forEach((term, value) -> scaled.put(term, factor * value));
        return scaled;
    }
}
