package laminate.theory;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Strength of a ply in its own axes, unidirectional or woven; every figure is positive, also of compression.
 *
 * @param Xt tension along direction 1 (Pa)
 * @param Xc compression along direction 1 (Pa)
 * @param Yt tension along direction 2 (Pa)
 * @param Yc compression along direction 2 (Pa)
 * @param S in-plane shear (Pa)
 * @param S23 shear across the fibres, if known (Pa); Hashin's criterion takes Yc/2 otherwise
 * @param strainLimits strains at failure, if known; strength over modulus otherwise
 */
public record PlyStrength(
        double Xt, double Xc, double Yt, double Yc, double S, OptionalDouble S23, Optional<StrainLimits> strainLimits)
        implements Strength {

    /**
     * Checks the strengths.
     *
     * @param Xt tension along direction 1 (Pa)
     * @param Xc compression along direction 1 (Pa)
     * @param Yt tension along direction 2 (Pa)
     * @param Yc compression along direction 2 (Pa)
     * @param S in-plane shear (Pa)
     * @param S23 shear across the fibres, if known (Pa); Hashin's criterion takes Yc/2 otherwise
     * @param strainLimits strains at failure, if known; strength over modulus otherwise
     * @throws IllegalArgumentException if a strength is not positive and finite
     */
    public PlyStrength {
        Require.positive("Xt", Xt);
        Require.positive("Xc", Xc);
        Require.positive("Yt", Yt);
        Require.positive("Yc", Yc);
        Require.positive("S", S);
        if (S23.isPresent()) {
            Require.positive("S23", S23.getAsDouble());
        }
        Objects.requireNonNull(strainLimits, "strainLimits");
    }

    /**
     * A strength by its five figures.
     *
     * @param Xt tension along direction 1 (Pa)
     * @param Xc compression along direction 1 (Pa)
     * @param Yt tension along direction 2 (Pa)
     * @param Yc compression along direction 2 (Pa)
     * @param S in-plane shear (Pa)
     * @return the strength; S23 and the strain limits are not known
     * @throws IllegalArgumentException if one is not positive and finite
     */
    public static PlyStrength of(double Xt, double Xc, double Yt, double Yc, double S) {
        return new PlyStrength(Xt, Xc, Yt, Yc, S, OptionalDouble.empty(), Optional.empty());
    }

    /**
     * This strength with the shear strength across the fibres.
     *
     * @param known S23 (Pa)
     * @return the copy
     * @throws IllegalArgumentException if it is not positive and finite
     */
    public PlyStrength withS23(double known) {
        return new PlyStrength(Xt, Xc, Yt, Yc, S, OptionalDouble.of(known), strainLimits);
    }

    /**
     * This strength with strains at failure of their own.
     *
     * @param limits the strains
     * @return the copy
     */
    public PlyStrength withStrainLimits(StrainLimits limits) {
        return new PlyStrength(Xt, Xc, Yt, Yc, S, S23, Optional.of(limits));
    }
}
