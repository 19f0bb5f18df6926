package laminate.theory.failure;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.theory.CoreStrength;
import laminate.theory.Require;
import laminate.theory.ShearStress;

/** Failure of a sandwich core by shear across the thickness and by compression through it. */
public final class CoreFailure {
    private CoreFailure() {}

    /**
     * Core shear: (τ13/S13)² + (τ23/S23)². Failure at 1; an ellipse between the two directions, exact for one alone
     * and, with S13 = S23, for a foam in any direction. Common practice, no source.
     *
     * @param shear τ13, τ23 (Pa)
     * @param strength strength of the core (Pa)
     * @return the index
     */
    public static double shear(ShearStress shear, CoreStrength strength) {
        double along = shear.xz() / strength.shear13();
        double across = shear.yz() / strength.shear23();
        return Require.finite("failure index", along * along + across * across);
    }

    /**
     * Core crushing: −σ3 over the compressive strength. Failure at 1.
     *
     * <p>σ3 is a pressure on a face, or what the faces of a bent sandwich press on the core between them: with F the
     * force per width carried below a height and N the whole, σ3 = κ · (F − N/2), second order in the load. From
     * equilibrium of a curved layer, σ3 = κ F; what holds a curved laminate under N is shared by both faces.
     *
     * @param normal σ3, tension positive (Pa)
     * @param strength strength of the core (Pa)
     * @return the index; negative in tension
     */
    public static double crushing(double normal, CoreStrength strength) {
        return Require.finite("failure index", -normal / strength.compression());
    }

    static double index(Criterion criterion, CoreStrength strength, StressState stress) {
        return criterion == Criterion.CORE_SHEAR
                ? shear(stress.across(), strength)
                : crushing(stress.normal(), strength);
    }

    static Optional<Crossing> firstReached(Criterion criterion, CoreStrength strength, StressPath path) {
        Mode mode = criterion == Criterion.CORE_SHEAR ? Mode.CORE_SHEAR : Mode.CRUSHING;
        Quadratic index = criterion == Criterion.CORE_SHEAR ? shear(path, strength) : crushing(path, strength);
        OptionalDouble factor = index.firstReached(0, Double.POSITIVE_INFINITY);
        return factor.stream().mapToObj(R -> new Crossing(R, mode)).findFirst();
    }

    private static Quadratic shear(StressPath path, CoreStrength strength) {
        ShearStress constant = path.constant().across();
        ShearStress growing = path.growing().across();
        double mixed = constant.xz() / strength.shear13() * (growing.xz() / strength.shear13())
                + constant.yz() / strength.shear23() * (growing.yz() / strength.shear23());
        return new Quadratic(shear(growing, strength), 2 * mixed, shear(constant, strength));
    }

    private static Quadratic crushing(StressPath path, CoreStrength strength) {
        return new Quadratic(
                crushing(path.secondOrder(), strength),
                crushing(path.growing().normal(), strength),
                crushing(path.constant().normal(), strength));
    }
}
