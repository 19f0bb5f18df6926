package laminate.estimate;

import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.theory.GlassContentStrengths;
import laminate.theory.Lamina;
import laminate.theory.Mixture;
import laminate.theory.Strength;

/** The strength of one laid ply by the formulas in its glass content, {@link GlassContentStrengths}. */
final class GlassContentRule {
    private static final String SOURCE =
            "formulas in the glass content in the manner of ISO 12215-5:2008, Annex C, with"
                    + " class-rule coefficients, from memory, for E-glass and polyester";

    private GlassContentRule() {}

    /** Voids do not enter a standard's formulas, nor the content that they are functions of. */
    static Strengthened strengthen(Lamina lamina, FibrePly ply, Resin resin, double vf, double voids) {
        if (ply.fibre().type() != Fibre.Type.GLASS) {
            return Strengthened.without(
                    lamina,
                    "iso-12215-5 has formulas for glass only, not for "
                            + ply.fibre().id());
        }
        if (ply.form().architecture() == Form.Architecture.WOVEN && ply.warpShare() != 0.5) {
            return Strengthened.without(lamina, "iso-12215-5 has formulas for balanced weaves only");
        }
        double psi = Mixture.fibreMassFraction(vf, ply.fibre().density(), resin.densityCured(), voids);
        try {
            return Strengthened.by(lamina, strength(lamina, ply.form(), psi), origin(ply.fibre(), resin));
        } catch (IllegalArgumentException outOfRange) {
            return Strengthened.without(lamina, outOfRange.getMessage());
        }
    }

    private static Strength strength(Lamina lamina, Form form, double psi) {
        return switch (form.architecture()) {
            case RANDOM -> GlassContentStrengths.mat(psi);
            case WOVEN -> GlassContentStrengths.wovenRoving(psi);
            case STRAIGHT -> GlassContentStrengths.straight(psi, lamina);
        };
    }

    private static StrengthOrigin origin(Fibre fibre, Resin resin) {
        boolean polyester = resin.family() == Resin.Family.POLYESTER;
        return StrengthOrigin.known(
                polyester ? SOURCE : SOURCE + ", taken for " + resin.id() + " as well",
                polyester ? Status.MEMORY : Status.COMMON_PRACTICE);
    }
}
