package laminate.estimate;

import java.util.OptionalDouble;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Figures;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.process.StiffnessBasis;
import laminate.theory.FibreProperties;
import laminate.theory.Lamina;
import laminate.theory.MatrixProperties;
import laminate.theory.RandomMat;
import laminate.theory.Woven;

/** The elastic constants of one laid ply, from its fibre and resin or as measured. */
final class PlyStiffness {

    private PlyStiffness() {}

    /**
     * Constants by micromechanics: straight plies as such, woven ones as crossed straight plies, mats as the in-plane
     * average; each with its knock-down.
     */
    static Lamina byMicromechanics(FibrePly ply, Resin resin, double vf, double voids, StiffnessBasis basis) {
        Lamina straight = basis.model().lamina(fibre(ply.fibre()), matrix(resin), vf, voids);
        double knockDown = basis.knockDown(ply.form());
        return switch (ply.form().architecture()) {
            case RANDOM -> RandomMat.average(straight).scaledBy(knockDown);
            case WOVEN -> Woven.crossed(straight, ply.warpShare(), knockDown);
            case STRAIGHT -> straight;
        };
    }

    /** Constants as measured; they hold the voids and the crimp of the plate they were measured on. */
    static Lamina asMeasured(Figures ply) {
        double g12 = ply.value(Property.G12);
        Lamina lamina = Lamina.of(ply.value(Property.E1), ply.value(Property.E2), g12, ply.value(Property.NU12));
        OptionalDouble g13 = ply.valueOf(Property.G13);
        OptionalDouble g23 = ply.valueOf(Property.G23);
        if (g13.isPresent() || g23.isPresent()) {
            lamina = lamina.withTransverseShear(g13.orElse(g12), g23.orElse(g12));
        }
        OptionalDouble along = ply.valueOf(Property.ALPHA1);
        OptionalDouble across = ply.valueOf(Property.ALPHA2);
        return along.isPresent() && across.isPresent()
                ? lamina.withExpansion(along.getAsDouble(), across.getAsDouble())
                : lamina;
    }

    static FibreProperties fibre(Fibre fibre) {
        Figures figures = fibre.figures();
        return FibreProperties.of(
                        figures.value(Property.E1),
                        figures.value(Property.E2),
                        figures.value(Property.G12),
                        figures.value(Property.NU12))
                .withExpansion(figures.value(Property.ALPHA1), figures.value(Property.ALPHA2));
    }

    static MatrixProperties matrix(Resin resin) {
        Figures figures = resin.figures();
        return MatrixProperties.of(figures.value(Property.E), figures.value(Property.NU))
                .withExpansion(figures.value(Property.ALPHA));
    }
}
