package laminate.material;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A dry reinforcement off the roll.
 *
 * <p>Stitching and binder are part of the areal weight, so the plies' masses are brought to sum to it.
 *
 * @param id the name in files
 * @param name what it is, in words
 * @param form the form
 * @param plies the make-up as it lies, first ply towards the mould
 * @param binder what holds a mat together, empty for other forms
 * @param figures areal weight, roll, dry thickness
 * @param measured ply properties measured on a laminate of this reinforcement, in place of micromechanics; strengths
 *     stand all together or not at all, and so do the strains at failure
 */
public record Reinforcement(
        String id,
        String name,
        Form form,
        List<FibrePly> plies,
        Optional<Binder> binder,
        Figures figures,
        Optional<Figures> measured)
        implements Material {

    /** Properties that every reinforcement has. */
    public static final Set<Property> REQUIRED = Set.of(Property.AREAL_WEIGHT);

    /** Properties that a reinforcement may have. */
    public static final Set<Property> OPTIONAL =
            Property.setOf(Property.ROLL_WIDTH, Property.ROLL_LENGTH, Property.DRY_THICKNESS, Property.WARP_SHARE);

    /** Properties that measured ply properties must have. */
    public static final Set<Property> MEASURED_REQUIRED =
            Property.setOf(Property.FIBRE_VOLUME_FRACTION, Property.E1, Property.E2, Property.G12, Property.NU12);

    /** Properties that measured ply properties may have. */
    public static final Set<Property> MEASURED_OPTIONAL = Property.setOf(
            Property.ALPHA1,
            Property.ALPHA2,
            Property.G13,
            Property.G23,
            Property.XT,
            Property.XC,
            Property.YT,
            Property.YC,
            Property.S,
            Property.S23,
            Property.STRAIN_1T,
            Property.STRAIN_1C,
            Property.STRAIN_2T,
            Property.STRAIN_2C,
            Property.STRAIN_12);

    /** Properties that stand together or not at all: the strains at which a measured ply broke. */
    public static final Set<Property> MEASURED_STRAINS = Property.setOf(
            Property.STRAIN_1T, Property.STRAIN_1C, Property.STRAIN_2T, Property.STRAIN_2C, Property.STRAIN_12);

    private static final Set<Property> STRENGTHS =
            Property.setOf(Property.XT, Property.XC, Property.YT, Property.YC, Property.S);

    /** The share by which the listed plies may miss the areal weight: stitching, binder and rounding. */
    private static final double MAKE_UP_TOLERANCE = 0.1;

    /** What holds a mat together. */
    public enum Binder {
        /** Powder: drapes and wets out fast; epoxy needs a mat that its maker says it wets. */
        POWDER,
        /** Emulsion: needs styrene to dissolve, so it stays stiff and dry in epoxy. */
        EMULSION;

        /**
         * The word in files.
         *
         * @return the word
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Checks the reinforcement and brings the plies' masses to the areal weight.
     *
     * @throws IllegalArgumentException if there is no ply, if the plies miss the areal weight by more than a tenth, or if
     *     a figure is missing, out of place or not above zero
     */
    public Reinforcement {
        figures.check(id, REQUIRED, OPTIONAL);
        figures.checkPositive(
                id, Property.AREAL_WEIGHT, Property.ROLL_WIDTH, Property.ROLL_LENGTH, Property.DRY_THICKNESS);
        figures.checkRange(id, 0, 1, Property.WARP_SHARE);
        if (measured.isPresent()) {
            checkMeasured(id + " (measured)", measured.get());
        }
        if (plies.isEmpty()) {
            throw new IllegalArgumentException(id + " has no plies");
        }
        double total = figures.value(Property.AREAL_WEIGHT);
        double sum = arealMass(plies);
        if (Math.abs(sum - total) > MAKE_UP_TOLERANCE * total) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s: its plies weigh %.0f g/m² together, its areal weight is %.0f g/m²",
                    id,
                    sum * 1000,
                    total * 1000));
        }
        plies = scaled(plies, total / sum);
    }

    private static double arealMass(List<FibrePly> plies) {
        double sum = 0;
        for (FibrePly ply : plies) {
            sum += ply.arealMass();
        }
        return sum;
    }

    private static List<FibrePly> scaled(List<FibrePly> plies, double factor) {
        List<FibrePly> scaled = new ArrayList<>();
        for (FibrePly ply : plies) {
            scaled.add(ply.scaledBy(factor));
        }
        return List.copyOf(scaled);
    }

    private static void checkMeasured(String id, Figures ply) {
        ply.check(id, MEASURED_REQUIRED, MEASURED_OPTIONAL);
        ply.checkPositive(id, Property.FIBRE_VOLUME_FRACTION, Property.E1, Property.E2, Property.G12);
        ply.checkPositive(id, Property.G13, Property.G23);
        ply.checkRange(id, 0, 1, Property.FIBRE_VOLUME_FRACTION);
        ply.checkPositive(id, Property.S23);
        ply.checkPositive(id, STRENGTHS.toArray(Property[]::new));
        ply.checkPositive(id, MEASURED_STRAINS.toArray(Property[]::new));
        boolean more = checkAllOrNone(id, ply, MEASURED_STRAINS)
                || ply.find(Property.S23).isPresent();
        if (!checkAllOrNone(id, ply, STRENGTHS) && more) {
            throw new IllegalArgumentException(id + " has no Xt, Xc, Yt, Yc, S to go with its S23 or strain limits");
        }
    }

    private static boolean checkAllOrNone(String id, Figures ply, Set<Property> together) {
        List<Property> missing = together.stream()
                .filter(property -> ply.find(property).isEmpty())
                .toList();
        if (!missing.isEmpty() && missing.size() < together.size()) {
            throw new IllegalArgumentException(id + " has no " + missing.get(0).key() + "; "
                    + together.stream().map(Property::key).collect(Collectors.joining(", ")) + " stand together");
        }
        return missing.isEmpty();
    }

    /**
     * Mass of dry reinforcement per area.
     *
     * @return w (kg/m²)
     */
    public double arealMass() {
        return figures.value(Property.AREAL_WEIGHT);
    }

    /**
     * Width of the roll.
     *
     * @return the width (m), empty if not stated
     */
    public OptionalDouble rollWidth() {
        return figures.valueOf(Property.ROLL_WIDTH);
    }

    /**
     * The make-up laid other face down: order reversed, angles negated.
     *
     * @return the plies, first towards the mould
     */
    public List<FibrePly> turnedPlies() {
        List<FibrePly> turned = new ArrayList<>(plies);
        Collections.reverse(turned);
        turned.replaceAll(ply -> ply.withAngle(ply.angle() == 0 ? 0 : -ply.angle()));
        return List.copyOf(turned);
    }

    @Override
    public MaterialKind kind() {
        return MaterialKind.REINFORCEMENT;
    }
}
