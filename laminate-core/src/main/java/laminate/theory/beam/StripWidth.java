package laminate.theory.beam;

import laminate.theory.Deformation;
import laminate.theory.Laminate;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.Matrix3;
import laminate.theory.Resultants;
import laminate.theory.Vector3;

/**
 * What a strip's width does to its bending stiffness.
 *
 * <p>What decides is b²/(R h) with R the radius it is bent to and h its thickness: well below 1 a strip is free to curl
 * across its width, above about 100 it is held flat (Searle's parameter, from memory). The isotropic difference is
 * 1/(1 − ν²), about 10 %.
 */
public enum StripWidth {
    /** Narrow: My = Mxy = 0 and no membrane force, free to curl, twist and couple. EI/b = 1/d11. */
    NARROW {
        @Override
        Deformation perCurvature(Laminate laminate) {
            Deformation perMoment = laminate.deformationUnder(new Resultants(Vector3.ZERO, new Vector3(1, 0, 0)));
            return perMoment.times(1 / perMoment.curvature().x());
        }

        @Override
        LaminateLoad load(double moment) {
            return LaminateLoad.NONE.with(Term.MX, moment);
        }
    },

    /**
     * Wide: cylindrical bending, κy = κxy = 0 and εy = 0, with Nx = Nxy = 0 (Whitney 1987, from memory):
     *
     * <pre>
     *   D* = D11 − [B11 (A66 B11 − A16 B16) + B16 (A11 B16 − A16 B11)] / (A11 A66 − A16²)
     * </pre>
     */
    CYLINDRICAL {
        @Override
        Deformation perCurvature(Laminate laminate) {
            Matrix3 A = laminate.membrane();
            Matrix3 B = laminate.coupling();
            double determinant = A.m11() * A.m66() - A.m16() * A.m16();
            double strain = -(A.m66() * B.m11() - A.m16() * B.m16()) / determinant;
            double shear = -(A.m11() * B.m16() - A.m16() * B.m11()) / determinant;
            return new Deformation(new Vector3(strain, 0, shear), new Vector3(1, 0, 0));
        }

        @Override
        LaminateLoad load(double moment) {
            return LaminateLoad.NONE
                    .with(Term.MX, moment)
                    .with(Term.EPS_Y, 0)
                    .with(Term.KAPPA_Y, 0)
                    .with(Term.KAPPA_XY, 0);
        }
    };

    /** Strain and curvature for κx = 1/m. */
    abstract Deformation perCurvature(Laminate laminate);

    /** Mx per width with what the form holds. */
    abstract LaminateLoad load(double moment);

    /**
     * Bending stiffness per width, Mx/κx.
     *
     * @param laminate the laminate
     * @return 1/d11 or D* (N·m)
     * @throws IllegalArgumentException if the stiffness is singular to working precision
     */
    public double bendingStiffness(Laminate laminate) {
        Deformation unit = perCurvature(laminate);
        return laminate.bending().times(unit.curvature()).x()
                + laminate.coupling().transposed().times(unit.strain()).x();
    }
}
