package laminate.theory;

import java.util.Optional;

/**
 * Models by which fibre, matrix, fibre and void content make a unidirectional lamina.
 *
 * <p>Common to all: ν12 by the rule of mixtures, voids as porosity of the matrix ({@link MatrixProperties#withVoids}),
 * expansion by Schapery where fibre and matrix have it. Moisture expansion and G13, G23 are left unknown.
 */
public enum Micromechanics {
    /** The default: E1 rule of mixtures, E2 Halpin–Tsai with ξ = 2, G12 with ξ = 1 (Halpin and Kardos 1976). */
    HALPIN_TSAI {
        @Override
        Lamina elastic(FibreProperties f, MatrixProperties m, double Vf, double nu12) {
            return Lamina.of(
                    UnidirectionalFormulas.ruleOfMixtures(f.E1(), m.E(), Vf),
                    UnidirectionalFormulas.halpinTsai(f.E2(), m.E(), Vf, 2),
                    UnidirectionalFormulas.halpinTsai(f.G12(), m.G(), Vf, 1),
                    nu12);
        }
    },

    /** E1 rule of mixtures, E2 and G12 inverse rule: the board's first lesson, a lower bound across the fibres. */
    RULE_OF_MIXTURES {
        @Override
        Lamina elastic(FibreProperties f, MatrixProperties m, double Vf, double nu12) {
            return Lamina.of(
                    UnidirectionalFormulas.ruleOfMixtures(f.E1(), m.E(), Vf),
                    UnidirectionalFormulas.inverseRuleOfMixtures(f.E2(), m.E(), Vf),
                    UnidirectionalFormulas.inverseRuleOfMixtures(f.G12(), m.G(), Vf),
                    nu12);
        }
    },

    /**
     * The form of the classification rules for marine laminates with their coefficients for E-glass, from memory: E1 by
     * the rule of mixtures times C1 = 1, E2 by {@link UnidirectionalFormulas#marineRuleAcross} times C2 = 0.8, G12 by
     * Halpin–Tsai with ξ = 1 times C3 = 0.9. For Vf 0.2 to 0.7.
     *
     * <p>The coefficients of other fibres are not known with certainty, so a fibre that is not E-glass by its modulus
     * (isotropic, 68 to 77 GPa) is refused.
     */
    MARINE_RULE {
        @Override
        Lamina elastic(FibreProperties f, MatrixProperties m, double Vf, double nu12) {
            if (f.E1() != f.E2() || f.E1() < 68e9 || f.E1() > 77e9) {
                throw new IllegalArgumentException(
                        "the marine rule has coefficients for E-glass only (isotropic, E 68 to 77 GPa), fibre was "
                                + f);
            }
            return Lamina.of(
                    1.0 * UnidirectionalFormulas.ruleOfMixtures(f.E1(), m.E(), Vf),
                    0.8 * UnidirectionalFormulas.marineRuleAcross(f.E2(), m.E(), m.nu(), Vf),
                    0.9 * UnidirectionalFormulas.halpinTsai(f.G12(), m.G(), Vf, 1),
                    nu12);
        }
    };

    /** Fibre volume fraction of round fibres in the closest (hexagonal) packing, π/(2√3) = 0.9069. */
    public static final double CLOSEST_PACKING = Math.PI / (2 * Math.sqrt(3));

    abstract Lamina elastic(FibreProperties f, MatrixProperties m, double Vf, double nu12);

    /**
     * The unidirectional lamina of fibre and matrix.
     *
     * @param fibre the fibre
     * @param matrix the matrix, without voids
     * @param Vf fibre volume fraction of the whole, from 0 to {@link #CLOSEST_PACKING}
     * @param Vv void fraction of the whole, from 0
     * @return the lamina, with thermal expansion where fibre and matrix have it
     * @throws IllegalArgumentException if the fractions cannot be, or the model does not hold for the fibre
     */
    public Lamina lamina(FibreProperties fibre, MatrixProperties matrix, double Vf, double Vv) {
        if (!(Vf >= 0 && Vf <= CLOSEST_PACKING)) {
            throw new IllegalArgumentException("fibre volume fraction must lie from 0 to the closest packing of round"
                    + " fibres, " + CLOSEST_PACKING + ", was " + Vf);
        }
        MatrixProperties porous = matrix.withVoids(Vf, Vv);
        double nu12 = UnidirectionalFormulas.ruleOfMixtures(fibre.nu12(), matrix.nu(), Vf);
        return elastic(fibre, porous, Vf, nu12).with(Optional.empty(), expansion(fibre, porous, Vf), Optional.empty());
    }

    private static Optional<Expansion> expansion(FibreProperties fibre, MatrixProperties matrix, double Vf) {
        if (fibre.expansion().isEmpty() || matrix.alpha().isEmpty()) {
            return Optional.empty();
        }
        Expansion free = fibre.expansion().get();
        double alphaM = matrix.alpha().getAsDouble();
        double alpha1 = UnidirectionalFormulas.schaperyAlong(free.along(), alphaM, fibre.E1(), matrix.E(), Vf);
        double alpha2 = UnidirectionalFormulas.schaperyAcross(free, fibre.nu12(), alphaM, matrix.nu(), Vf, alpha1);
        return Optional.of(new Expansion(alpha1, alpha2));
    }
}
