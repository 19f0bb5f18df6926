package laminate.theory.failure;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.theory.Lamina;
import laminate.theory.MatStrength;
import laminate.theory.Require;
import laminate.theory.Vector3;

/**
 * Failure of a random mat, the same in every direction of its plane.
 *
 * <p>Everything is in the invariants p = σ1 + σ2 and q = √(((σ1 − σ2)/2)² + τ12²), the greatest shear stress; the
 * principal stresses are p/2 ± q. T, C and S are the strengths in tension, compression and shear.
 */
public final class MatFailure {
    private MatFailure() {}

    /**
     * Isotropic plane stress, f = (1/T − 1/C) p + [1/(TC) − 1/(4 S²)] p² + q²/S². Failure at 1.
     *
     * <p>It is the tensor polynomial of Tsai and Wu (1971) for a material without directions, F66 = 2 (F11 − F12), so
     * that the interaction follows from the shear strength and nothing is assumed: the surface passes through all three
     * strengths. With T = C = √3 S it is von Mises. Valid for short-term stress in the plane of a mat.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the mat (Pa)
     * @return the index; may be negative
     */
    public static double isotropic(Vector3 stress, MatStrength strength) {
        return form(strength).at(stress);
    }

    private static IndexForm form(MatStrength s) {
        double linear = 1 / s.tension() - 1 / s.compression();
        double shear = 1 / (s.shear() * s.shear());
        double sum = 1 / (s.tension() * s.compression()) - shear / 4;
        return IndexForm.quadratic(
                Mode.MAT_SHEAR, linear, linear, sum + shear / 4, 2 * sum - shear / 2, sum + shear / 4, shear);
    }

    /**
     * Maximum stress in principal axes: the largest of (p/2 + q)/T, (q − p/2)/C and q/S. Failure at 1; without
     * interaction, and on the unsafe side of {@link #isotropic} under stress of both signs.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param strength strength of the mat (Pa)
     * @return the index, at least 0
     */
    public static double maximumStress(Vector3 stress, MatStrength strength) {
        double q = greatestShear(stress);
        double half = (stress.x() + stress.y()) / 2;
        return largest((half + q) / strength.tension(), (q - half) / strength.compression(), q / strength.shear());
    }

    /**
     * Maximum strain in principal axes, ε = (σ − ν σ′)/E against T/E and C/E and the greatest shear against S/G, which
     * leaves the largest of [(1 − ν) p/2 + (1 + ν) q]/T, [(1 + ν) q − (1 − ν) p/2]/C and q/S. Failure at 1.
     *
     * @param stress σ1, σ2, τ12 (Pa)
     * @param nu Poisson ratio of the mat
     * @param strength strength of the mat (Pa)
     * @return the index, at least 0
     */
    public static double maximumStrain(Vector3 stress, double nu, MatStrength strength) {
        double q = (1 + nu) * greatestShear(stress);
        double half = (1 - nu) * (stress.x() + stress.y()) / 2;
        double shear = greatestShear(stress) / strength.shear();
        return largest((half + q) / strength.tension(), (q - half) / strength.compression(), shear);
    }

    private static double largest(double tension, double compression, double shear) {
        return Require.finite("failure index", Math.max(Math.max(tension, compression), shear));
    }

    private static double greatestShear(Vector3 stress) {
        return Math.hypot((stress.x() - stress.y()) / 2, stress.xy());
    }

    static double index(Criterion criterion, Lamina lamina, MatStrength strength, Vector3 stress) {
        return switch (criterion) {
            case MAX_STRESS -> maximumStress(stress, strength);
            case MAX_STRAIN -> maximumStrain(stress, lamina.nu12(), strength);
            default -> isotropic(stress, strength);
        };
    }

    static Optional<Crossing> firstReached(Criterion criterion, Lamina lamina, MatStrength strength, StressPath path) {
        Vector3 constant = path.constant().inPlane();
        Vector3 growing = path.growing().inPlane();
        OptionalDouble factor = criterion == Criterion.ISOTROPIC
                ? form(strength).firstReached(constant, growing)
                : BracketedRoot.firstReached(R -> index(criterion, lamina, strength, path.inPlane(R)));
        return factor.stream()
                .mapToObj(R -> new Crossing(R, nearest(path.inPlane(R), strength)))
                .findFirst();
    }

    private static Mode nearest(Vector3 stress, MatStrength s) {
        double index = maximumStress(stress, s);
        double q = greatestShear(stress);
        if (index == q / s.shear()) {
            return Mode.MAT_SHEAR;
        }
        double half = (stress.x() + stress.y()) / 2;
        return index == (half + q) / s.tension() ? Mode.MAT_TENSION : Mode.MAT_COMPRESSION;
    }
}
