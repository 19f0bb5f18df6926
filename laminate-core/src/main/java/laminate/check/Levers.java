package laminate.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.check.Remedy.Lever;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.Laminate;
import laminate.theory.MatStrength;
import laminate.theory.Ply;
import laminate.theory.PlyStrength;
import laminate.theory.StrainLimits;
import laminate.theory.Strength;

/** Makes the one change to a make-up that a remedy names. */
final class Levers {
    private Levers() {}

    /** The make-up with a lever pulled; unchanged for mass, which no make-up shows. */
    static MakeUp pull(MakeUp makeUp, Lever lever, double factor) {
        List<Ply> plies = new ArrayList<>();
        Map<Integer, CoreSupport> cores = new LinkedHashMap<>(makeUp.cores());
        for (int i = 0; i < makeUp.laminate().plies().size(); i++) {
            Ply ply = makeUp.laminate().plies().get(i);
            plies.add(makeUp.isCore(i) ? core(ply, lever, factor) : layer(ply, lever, factor));
        }
        if (lever == Lever.CORE_STIFFNESS) {
            cores.replaceAll((ply, support) -> support.stiffer(factor));
        }
        return new MakeUp(Laminate.of(plies), cores);
    }

    private static Ply layer(Ply ply, Lever lever, double factor) {
        Lamina lamina = ply.lamina();
        return switch (lever) {
            case LAMINATE_THICKNESS, FACE_THICKNESS -> ply.thickerBy(factor);
            case LAYER_STIFFNESS -> with(ply, lamina.scaledBy(factor));
            case PLY_STRENGTH ->
                with(ply, stronger(lamina, lamina.strength().map(strength -> stronger(strength, factor))));
            default -> ply;
        };
    }

    private static Ply core(Ply ply, Lever lever, double factor) {
        Lamina lamina = ply.lamina();
        return switch (lever) {
            case LAMINATE_THICKNESS, CORE_THICKNESS -> ply.thickerBy(factor);
            case CORE_STIFFNESS, CORE_SHEAR_STIFFNESS ->
                with(ply, lamina.withTransverseShear(factor * lamina.G13(), factor * lamina.G23()));
            case CORE_SHEAR_STRENGTH -> with(ply, stronger(lamina, core(lamina, factor, 1)));
            case CORE_COMPRESSIVE_STRENGTH -> with(ply, stronger(lamina, core(lamina, 1, factor)));
            default -> ply;
        };
    }

    private static Ply with(Ply ply, Lamina lamina) {
        return new Ply(lamina, ply.thickness(), ply.angleDegrees());
    }

    private static Lamina stronger(Lamina lamina, Optional<Strength> strength) {
        return strength.map(lamina::withStrength).orElse(lamina);
    }

    private static Optional<Strength> core(Lamina lamina, double shear, double compression) {
        return lamina.strength()
                .map(strength -> strength instanceof CoreStrength core
                        ? new CoreStrength(
                                shear * core.shear13(),
                                shear * core.shear23(),
                                compression * core.compression(),
                                core.tension())
                        : strength);
    }

    private static Strength stronger(Strength strength, double factor) {
        if (strength instanceof MatStrength mat) {
            return new MatStrength(factor * mat.tension(), factor * mat.compression(), factor * mat.shear());
        }
        if (strength instanceof PlyStrength ply) {
            return new PlyStrength(
                    factor * ply.Xt(),
                    factor * ply.Xc(),
                    factor * ply.Yt(),
                    factor * ply.Yc(),
                    factor * ply.S(),
                    ply.S23().stream()
                            .map(s -> factor * s)
                            .mapToObj(OptionalDouble::of)
                            .findFirst()
                            .orElse(ply.S23()),
                    ply.strainLimits().map(limits -> stronger(limits, factor)));
        }
        return strength;
    }

    private static StrainLimits stronger(StrainLimits limits, double factor) {
        return new StrainLimits(
                factor * limits.e1t(),
                factor * limits.e1c(),
                factor * limits.e2t(),
                factor * limits.e2c(),
                factor * limits.g12());
    }
}
