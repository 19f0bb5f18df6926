package laminate.estimate;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.theory.FibreStrength;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.MatrixStrength;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import laminate.theory.Strength;
import laminate.theory.StrengthMicromechanics;
import laminate.unit.Significant;

/** The strength of one laid ply, from the figures of its fibre and resin or as measured. */
final class PlyStrengths {

    /** What crimp leaves of the strength of straight yarns. */
    static final Figure WOVEN = new Figure(
            1.8 / 2.7, "class-rule breaking strains, 1.8 % woven over 2.7 % straight, E-glass", Status.MEMORY);

    private PlyStrengths() {}

    /** Strength by micromechanics; none where fibre or resin lack a figure. */
    static Strengthened byMicromechanics(Lamina lamina, FibrePly ply, Resin resin, double vf, double voids) {
        WantedFigures wanted = wanted(ply.fibre(), resin);
        if (!wanted.isComplete()) {
            return Strengthened.without(lamina, wanted.missing());
        }
        PlyStrength straight = StrengthMicromechanics.straight(
                PlyStiffness.fibre(ply.fibre()),
                fibre(ply.fibre()),
                PlyStiffness.matrix(resin),
                matrix(resin),
                vf,
                voids);
        return Strengthened.by(lamina, ofForm(straight, ply), origin(ply, resin, wanted));
    }

    private static Strength ofForm(PlyStrength straight, FibrePly ply) {
        return switch (ply.form().architecture()) {
            case RANDOM -> StrengthMicromechanics.mat(straight);
            case WOVEN -> StrengthMicromechanics.woven(straight, ply.warpShare(), WOVEN.value());
            case STRAIGHT -> straight;
        };
    }

    private static WantedFigures wanted(Fibre fibre, Resin resin) {
        WantedFigures wanted = new WantedFigures().want(fibre, Property.TENSILE_STRENGTH);
        if (fibre.type().isWeakInCompression()) {
            wanted.want(fibre, Property.COMPRESSIVE_STRENGTH);
        }
        return wanted.want(resin, Property.TENSILE_STRENGTH, Property.COMPRESSIVE_STRENGTH, Property.ELONGATION);
    }

    private static StrengthOrigin origin(FibrePly ply, Resin resin, WantedFigures wanted) {
        String form = switch (ply.form().architecture()) {
            case RANDOM -> ", averaged over all directions (Chen 1971)";
            case WOVEN ->
                ", crossed plies, " + Significant.format(WOVEN.value() * 100, 2) + " % left by crimp (" + WOVEN.source()
                        + ")";
            case STRAIGHT -> "";
        };
        return StrengthOrigin.known(
                "micromechanics of " + ply.fibre().id() + " and " + resin.id()
                        + ": rule of mixtures, kinking at 4° askew (Budiansky and Fleck 1993), across and in shear by the"
                        + " matrix with its voids (Chamis 1983), all from memory" + form,
                wanted.weakest(Status.MEMORY));
    }

    private static FibreStrength fibre(Fibre fibre) {
        return new FibreStrength(
                fibre.figures().value(Property.TENSILE_STRENGTH),
                fibre.figures().valueOf(Property.COMPRESSIVE_STRENGTH));
    }

    private static MatrixStrength matrix(Resin resin) {
        Figures figures = resin.figures();
        return new MatrixStrength(
                figures.value(Property.TENSILE_STRENGTH),
                figures.value(Property.COMPRESSIVE_STRENGTH),
                figures.value(Property.ELONGATION));
    }

    /** Strength as measured; a mat's is the lesser of its two directions. */
    static Optional<Strengthened> asMeasured(Lamina lamina, Reinforcement reinforcement) {
        Optional<Figures> ply = reinforcement.measured();
        if (ply.isEmpty() || ply.get().find(Property.XT).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                Strengthened.by(lamina, measured(reinforcement, ply.get()), measuredOrigin(reinforcement, ply.get())));
    }

    private static Strength measured(Reinforcement reinforcement, Figures ply) {
        PlyStrength strength = PlyStrength.of(
                ply.value(Property.XT),
                ply.value(Property.XC),
                ply.value(Property.YT),
                ply.value(Property.YC),
                ply.value(Property.S));
        return isRandom(reinforcement)
                ? new MatStrength(
                        Math.min(strength.Xt(), strength.Yt()), Math.min(strength.Xc(), strength.Yc()), strength.S())
                : withMore(strength, ply);
    }

    private static boolean isRandom(Reinforcement reinforcement) {
        return reinforcement.plies().stream().allMatch(ply -> ply.form().architecture() == Form.Architecture.RANDOM);
    }

    private static PlyStrength withMore(PlyStrength five, Figures ply) {
        OptionalDouble across = ply.valueOf(Property.S23);
        PlyStrength strength = across.isPresent() ? five.withS23(across.getAsDouble()) : five;
        return strains(ply).map(strength::withStrainLimits).orElse(strength);
    }

    private static Optional<StrainLimits> strains(Figures ply) {
        OptionalDouble along = ply.valueOf(Property.STRAIN_1T);
        return along.isEmpty()
                ? Optional.empty()
                : Optional.of(new StrainLimits(
                        along.getAsDouble(),
                        ply.value(Property.STRAIN_1C),
                        ply.value(Property.STRAIN_2T),
                        ply.value(Property.STRAIN_2C),
                        ply.value(Property.STRAIN_12)));
    }

    private static StrengthOrigin measuredOrigin(Reinforcement reinforcement, Figures ply) {
        WantedFigures used = new WantedFigures();
        for (Property property : new Property[] {Property.XT, Property.XC, Property.YT, Property.YC, Property.S}) {
            used.use(ply.find(property).orElseThrow());
        }
        return StrengthOrigin.known(
                "measured on " + reinforcement.id() + ": " + used.sources(), used.weakest(Status.PRINTED));
    }
}
