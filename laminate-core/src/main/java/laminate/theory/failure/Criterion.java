package laminate.theory.failure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.PlyStrength;
import laminate.theory.Strength;
import laminate.theory.Vector3;

/** The failure criteria: five for a ply with directions, of which two also for a mat; one for a mat; two for a core. */
public enum Criterion {
    /** Maximum stress; for a mat in principal axes. */
    MAX_STRESS("max_stress", "R. M. Jones, Mechanics of Composite Materials, 2nd ed. 1999, ch. 2, from memory"),
    /** Maximum mechanical strain, limits of strength over modulus unless given; for a mat in principal axes. */
    MAX_STRAIN("max_strain", "R. M. Jones, Mechanics of Composite Materials, 2nd ed. 1999, ch. 2, from memory"),
    /** Tsai–Hill, X by the sign of σ1 also in the cross term. */
    TSAI_HILL("tsai_hill", "V. D. Azzi and S. W. Tsai, Exp. Mech. 5 (1965) 283, from memory"),
    /** Tsai–Wu with F12 = −½ √(F11 F22). */
    TSAI_WU(
            "tsai_wu",
            "S. W. Tsai and E. M. Wu, J. Compos. Mater. 5 (1971) 58, F12 of Tsai and Hahn 1980, from memory"),
    /** Hashin 1980 in plane stress, shear kept in fibre tension, S23 = Yc/2 unless given. */
    HASHIN("hashin", "Z. Hashin, J. Appl. Mech. 47 (1980) 329, from memory"),
    /** Isotropic plane stress of a mat. */
    ISOTROPIC(
            "isotropic",
            "S. W. Tsai and E. M. Wu, J. Compos. Mater. 5 (1971) 58, from memory, for a material without directions"),
    /** Shear of a core across the thickness. */
    CORE_SHEAR("core_shear", "common practice, no source"),
    /** Compression of a core through the thickness. */
    CRUSHING("crushing", "common practice, no source");

    private final String jsonName;
    private final String source;

    Criterion(String jsonName, String source) {
        this.jsonName = jsonName;
        this.source = source;
    }

    /**
     * The name in part files and in results as JSON.
     *
     * @return lower case with underscores
     */
    public String jsonName() {
        return jsonName;
    }

    /**
     * Where the formula is published.
     *
     * @return author, journal or book, and that it is cited from memory
     */
    public String source() {
        return source;
    }

    /**
     * The criterion of a name.
     *
     * @param jsonName such as {@code tsai_wu}
     * @return the criterion; empty if there is none
     */
    public static Optional<Criterion> find(String jsonName) {
        return Arrays.stream(values()).filter(c -> c.jsonName.equals(jsonName)).findFirst();
    }

    /**
     * The criteria that can judge a lamina of a strength.
     *
     * @param strength its strength
     * @return in the order of this enum
     */
    public static List<Criterion> of(Strength strength) {
        return Arrays.stream(values()).filter(c -> c.appliesTo(strength)).toList();
    }

    /**
     * Whether this criterion can judge a lamina of a strength.
     *
     * @param strength its strength
     * @return true if it can
     */
    public boolean appliesTo(Strength strength) {
        if (strength instanceof PlyStrength) {
            return isForPlies();
        }
        if (strength instanceof MatStrength) {
            return this == MAX_STRESS || this == MAX_STRAIN || this == ISOTROPIC;
        }
        return this == CORE_SHEAR || this == CRUSHING;
    }

    private boolean isForPlies() {
        return ordinal() <= HASHIN.ordinal();
    }

    /**
     * What judges a lamina when this criterion is chosen for a whole laminate: itself where it applies; otherwise, if
     * it is one for plies, the own criteria of a mat (isotropic) or a core (shear and crushing).
     *
     * @param strength strength of the lamina
     * @return the criteria, maybe none
     */
    public List<Criterion> inFor(Strength strength) {
        if (appliesTo(strength)) {
            return List.of(this);
        }
        if (!isForPlies()) {
            return List.of();
        }
        return strength instanceof MatStrength ? List.of(ISOTROPIC) : List.of(CORE_SHEAR, CRUSHING);
    }

    /**
     * The failure index of a stress: failure at 1.
     *
     * @param lamina what is stressed
     * @param stress the stress in its axes
     * @return the index; empty if the strength is unknown or this criterion does not apply
     */
    public OptionalDouble index(Lamina lamina, StressState stress) {
        Optional<Strength> strength = lamina.strength().filter(this::appliesTo);
        if (strength.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (strength.get() instanceof MatStrength mat) {
            return OptionalDouble.of(MatFailure.index(this, lamina, mat, stress.inPlane()));
        }
        if (strength.get() instanceof CoreStrength core) {
            return OptionalDouble.of(CoreFailure.index(this, core, stress));
        }
        return OptionalDouble.of(PlyCriterion.index(forms(lamina, (PlyStrength) strength.get()), stress.inPlane()));
    }

    /**
     * The reserve factor of a stress that grows.
     *
     * @param lamina what is stressed
     * @param path the stress in its axes
     * @return the factor, 0 if the constant part fails alone; empty if the criterion is never reached (no load), the
     *     strength is unknown or this criterion does not apply
     */
    public Optional<ReserveFactor> reserve(Lamina lamina, StressPath path) {
        double size = path.size();
        double unit = size > 0 ? size : 1;
        return lamina.strength()
                .filter(this::appliesTo)
                .flatMap(strength -> firstReached(lamina, strength, path.dividedBy(unit)))
                .filter(first -> Double.isFinite(first.factor() / unit))
                .map(first -> new ReserveFactor(first.factor() / unit, this, first.mode()));
    }

    private Optional<Crossing> firstReached(Lamina lamina, Strength strength, StressPath path) {
        if (strength instanceof MatStrength mat) {
            return MatFailure.firstReached(this, lamina, mat, path);
        }
        if (strength instanceof CoreStrength core) {
            return CoreFailure.firstReached(this, core, path);
        }
        PlyStrength ply = (PlyStrength) strength;
        Vector3 constant = path.constant().inPlane();
        Optional<Crossing> first = PlyCriterion.firstReached(
                forms(lamina, ply), constant, path.growing().inPlane());
        boolean mixed = this == TSAI_HILL || this == TSAI_WU;
        return mixed
                ? first.map(c -> new Crossing(c.factor(), PlyCriterion.nearest(path.inPlane(c.factor()), ply)))
                : first;
    }

    private List<IndexForm> forms(Lamina lamina, PlyStrength s) {
        return switch (this) {
            case MAX_STRESS -> MaximumStress.forms(s);
            case MAX_STRAIN -> MaximumStrain.forms(lamina, MaximumStrain.limits(s, lamina));
            case TSAI_HILL -> TsaiHill.forms(s);
            case TSAI_WU -> TsaiWu.forms(s);
            default -> Hashin.forms(s);
        };
    }
}
