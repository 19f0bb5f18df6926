package laminate.theory;

import java.util.Optional;

/**
 * Rules by which fibres lying in all directions of the plane, as in chopped strand mat, make a lamina.
 *
 * <p>The rules differ by up to 10 %; never take E from one and ν from another. Thermal and moisture expansion are those
 * of the exact average under every rule.
 */
public enum RandomMat {
    /**
     * The default: average of the rotated stiffness of the unidirectional ply of the same fibre content over all
     * angles.
     *
     * <p>With the invariants U1, U4 of {@link Invariants}: E = (U1² − U4²)/U1, ν = U4/U1, G = (U1 − U4)/2. Jones 1999,
     * ch. 2; the limit of many thin plies at all angles.
     */
    EXACT_AVERAGE {
        @Override
        Lamina elastic(Micromechanics model, FibreProperties f, MatrixProperties m, double Vf, double Vv) {
            return average(model.lamina(f, m, Vf, Vv));
        }
    },

    /** {@link #tsaiPagano}: 8 to 10 % stiffer than the exact average at the fibre contents of hand lay-up. */
    TSAI_PAGANO {
        @Override
        Lamina elastic(Micromechanics model, FibreProperties f, MatrixProperties m, double Vf, double Vv) {
            return tsaiPagano(model.lamina(f, m, Vf, Vv));
        }
    },

    /** {@link #manera}, which knows no model of the unidirectional ply; voids make the matrix porous. */
    MANERA {
        @Override
        Lamina elastic(Micromechanics model, FibreProperties f, MatrixProperties m, double Vf, double Vv) {
            return manera(f.E1(), m.withVoids(Vf, Vv).E(), Vf);
        }
    };

    abstract Lamina elastic(Micromechanics model, FibreProperties f, MatrixProperties m, double Vf, double Vv);

    /**
     * The lamina of a random mat.
     *
     * @param model how fibre and matrix make a unidirectional ply
     * @param fibre the fibre
     * @param matrix the matrix, without voids
     * @param Vf fibre volume fraction of the whole
     * @param Vv void fraction of the whole
     * @return the lamina, isotropic in its plane; transverse shear unknown
     * @throws IllegalArgumentException if the fractions cannot be, or a rule does not hold
     */
    public Lamina lamina(Micromechanics model, FibreProperties fibre, MatrixProperties matrix, double Vf, double Vv) {
        Lamina averaged = average(model.lamina(fibre, matrix, Vf, Vv));
        return elastic(model, fibre, matrix, Vf, Vv)
                .with(Optional.empty(), averaged.thermalExpansion(), Optional.empty());
    }

    /**
     * The average of a lamina over all angles of its plane, with α = (q1 + q2)/(Q11 + Q22 + 2 Q12) from
     * q1 = Q11 α1 + Q12 α2, q2 = Q12 α1 + Q22 α2 (stress per kelvin averaged, divided by U1 + U4), β alike, and
     * G13 = G23 = their mean.
     *
     * @param lamina the unidirectional lamina, of any kind
     * @return the average, isotropic in its plane
     */
    public static Lamina average(Lamina lamina) {
        ReducedStiffness q = lamina.reducedStiffness();
        Invariants u = q.invariants();
        double E = (u.U1() - u.U4()) * (u.U1() + u.U4()) / u.U1();
        return Lamina.of(E, E, (u.U1() - u.U4()) / 2, u.U4() / u.U1())
                .with(
                        average(lamina.transverseShear()),
                        average(q, lamina.thermalExpansion()),
                        average(q, lamina.moistureExpansion()));
    }

    private static Optional<TransverseShear> average(Optional<TransverseShear> shear) {
        return shear.isPresent() ? Optional.of(average(shear.get())) : Optional.empty();
    }

    private static Optional<Expansion> average(ReducedStiffness q, Optional<Expansion> expansion) {
        return expansion.isPresent() ? Optional.of(average(q, expansion.get())) : Optional.empty();
    }

    private static TransverseShear average(TransverseShear shear) {
        double mean = (shear.G13() + shear.G23()) / 2;
        return new TransverseShear(mean, mean);
    }

    private static Expansion average(ReducedStiffness q, Expansion expansion) {
        Vector3 held = q.times(expansion.asStrain());
        double alpha = (held.x() + held.y()) / (q.Q11() + q.Q22() + 2 * q.Q12());
        return new Expansion(alpha, alpha);
    }

    /**
     * E = 3/8 E1 + 5/8 E2, G = 1/8 E1 + 1/4 E2, ν = E/(2G) − 1. Tsai and Pagano 1968; an approximation of the average
     * with round fractions, whose ν comes out near 0.39.
     *
     * @param lamina the unidirectional lamina
     * @return the mat, isotropic in its plane; expansion and transverse shear unknown
     */
    public static Lamina tsaiPagano(Lamina lamina) {
        double E = 3.0 / 8 * lamina.E1() + 5.0 / 8 * lamina.E2();
        double G = lamina.E1() / 8 + lamina.E2() / 4;
        return Lamina.of(E, E, G, E / (2 * G) - 1);
    }

    /**
     * E = Vf (16/45 Ef + 2 Em) + 8/9 Em, G = Vf (2/15 Ef + 3/4 Em) + 1/3 Em, ν = 1/3. Manera 1977, for glass with
     * Vf 0.1 to 0.4 and Em 2 to 4 GPa; it does not end at Em for Vf = 0.
     *
     * @param Ef modulus of the fibre (Pa)
     * @param Em modulus of the matrix (Pa)
     * @param Vf fibre volume fraction, from 0.1 to 0.4
     * @return the mat, isotropic in its plane; expansion and transverse shear unknown
     * @throws IllegalArgumentException if Vf or Em lies outside the range of the formula
     */
    public static Lamina manera(double Ef, double Em, double Vf) {
        if (!(Vf >= 0.1 && Vf <= 0.4 && Em >= 2e9 && Em <= 4e9)) {
            throw new IllegalArgumentException(
                    "Manera's rule holds for Vf 0.1 to 0.4 and Em 2e9 to 4e9 Pa, were Vf = " + Vf + ", Em = " + Em);
        }
        double E = Vf * (16.0 / 45 * Ef + 2 * Em) + 8.0 / 9 * Em;
        double G = Vf * (2.0 / 15 * Ef + 3.0 / 4 * Em) + Em / 3;
        return Lamina.of(E, E, G, 1.0 / 3);
    }
}
