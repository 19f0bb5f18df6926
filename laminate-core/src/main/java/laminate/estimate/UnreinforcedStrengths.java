package laminate.estimate;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Bulker;
import laminate.material.Core;
import laminate.material.Figure;
import laminate.material.Figures;
import laminate.material.Material;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.StrengthFormulas;

/** The strengths of layers without fibres: cores, bulking mats, beds of paste, and plies given directly. */
final class UnreinforcedStrengths {

    private UnreinforcedStrengths() {}

    /** One figure of shear stands for both directions: the library gives that of the weaker one. */
    static Strengthened core(Lamina lamina, Core core) {
        return throughThickness(lamina, core, core.figures());
    }

    static Strengthened bulker(Lamina lamina, Bulker bulker) {
        return throughThickness(lamina, bulker, bulker.figures());
    }

    private static Strengthened throughThickness(Lamina lamina, Material material, Figures figures) {
        WantedFigures wanted =
                new WantedFigures().want(material, Property.SHEAR_STRENGTH, Property.COMPRESSIVE_STRENGTH);
        if (!wanted.isComplete()) {
            return Strengthened.without(lamina, wanted.missing());
        }
        Optional<Figure> stated = figures.find(Property.TENSILE_STRENGTH);
        if (stated.isPresent()) {
            wanted.use(stated.get());
        }
        double shear = figures.value(Property.SHEAR_STRENGTH);
        OptionalDouble tension = figures.valueOf(Property.TENSILE_STRENGTH);
        return Strengthened.by(
                lamina,
                new CoreStrength(shear, shear, figures.value(Property.COMPRESSIVE_STRENGTH), tension),
                StrengthOrigin.known(
                        "figures of " + material.id() + ", shear alike in both directions: " + wanted.sources(),
                        wanted.weakest(Status.PRINTED)));
    }

    /** Paste is isotropic, as a mat is in its plane. */
    static Strengthened paste(Lamina lamina, Resin paste) {
        WantedFigures wanted =
                new WantedFigures().want(paste, Property.TENSILE_STRENGTH, Property.COMPRESSIVE_STRENGTH);
        if (!wanted.isComplete()) {
            return Strengthened.without(lamina, wanted.missing());
        }
        double tension = paste.figures().value(Property.TENSILE_STRENGTH);
        double compression = paste.figures().value(Property.COMPRESSIVE_STRENGTH);
        return Strengthened.by(
                lamina,
                new MatStrength(tension, compression, StrengthFormulas.paraboloidShear(tension, compression)),
                StrengthOrigin.known(
                        "figures of " + paste.id() + ", shear by the paraboloid of Stassi 1967, from memory: "
                                + wanted.sources(),
                        wanted.weakest(Status.MEMORY)));
    }

    static StrengthOrigin given(Lamina lamina) {
        Figure stated = Figure.stated(0);
        return lamina.strength().isPresent()
                ? StrengthOrigin.known(stated.source(), stated.status())
                : StrengthOrigin.missing("the lamina states no strengths");
    }
}
