package laminate.process.cure;

import java.util.Objects;
import java.util.Optional;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.Range;
import laminate.theory.Require;

/**
 * How much sooner a pot gels than a thin film or a cup of 100 g, because its own heat warms it.
 *
 * <pre>  t(m) = t₀ (m/m₀)^b,  m₀ = 0.1 kg,  b = ln f / ln(m₁/m₀)  </pre>
 *
 * <p>with f the share of the gel time t₀ that is left at a mass m₁. The shares are from memory; the straight line in ln t
 * and ln m between cup and m₁, and on to the largest mix, is our own reading. A mix of less than 100 g is not reckoned to
 * last longer than a cup. A mass above {@link #largestMass} is refused: no figure holds there, and a pot of that size can
 * run away.
 *
 * @param knownMass the mass m₁ (kg), above 100 g
 * @param share the share f left there, planned, least and most, above 0 and at most 1
 * @param largestMass the largest mix (kg), not below m₁
 * @param source where these figures come from
 * @param status their standing
 */
public record MassEffect(double knownMass, Range share, double largestMass, String source, Status status) {
    /** Mass of the cup in which gel times are told, m₀ (kg). */
    public static final double CUP = 0.1;

    /** Polyester and vinylester: 60 to 80 % at 1 kg, mixes of up to 2 kg. */
    public static final MassEffect STYRENIC = new MassEffect(
            1.0,
            new Range(0.7, 0.6, 0.8),
            2.0,
            "workshop rule, from memory: 1 kg gels in 60 to 80 % of the time of a thin film; mixes of 1 to 2 kg at most",
            Status.MEMORY);

    /** Epoxy: 50 to 70 % at 500 g, mixes of up to 1 kg. */
    public static final MassEffect EPOXY = new MassEffect(
            0.5,
            new Range(0.6, 0.5, 0.7),
            1.0,
            "workshop rule, from memory: 500 g has 0.5 to 0.7 of the pot life of 100 g; mixes of up to 1 kg are common "
                    + "practice without a source",
            Status.COMMON_PRACTICE);

    /** The edge of the range must be reached by a sum of rounded parts. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if a mass or share is out of its range, or the source is blank
     */
    public MassEffect {
        Objects.requireNonNull(status, "status");
        if (!(knownMass > CUP && largestMass >= knownMass) || Double.isInfinite(largestMass)) {
            throw new IllegalArgumentException(
                    "masses must rise from above " + CUP + " kg, not " + knownMass + ", " + largestMass);
        }
        if (!(share.least() > 0 && share.most() <= 1)) {
            throw new IllegalArgumentException("the share of a gel time must be above 0 and at most 1, not "
                    + share.least() + " to " + share.most());
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("the effect of mass needs a source");
        }
    }

    /**
     * The effect for a family of resins.
     *
     * @param family the family
     * @return its effect, empty for polyurethane, of which nothing is known
     */
    public static Optional<MassEffect> of(Resin.Family family) {
        return switch (family) {
            case POLYESTER, VINYLESTER -> Optional.of(STYRENIC);
            case EPOXY -> Optional.of(EPOXY);
            case POLYURETHANE -> Optional.empty();
        };
    }

    /**
     * The share of the gel time that is left in a pot.
     *
     * @param mass mass of the mix, resin and agent (kg)
     * @return the share t/t₀, planned, least and most; 1 for 100 g and less
     * @throws IllegalArgumentException if the mass is not above zero, or above {@link #largestMass}
     */
    public Range factor(double mass) {
        double relative = relative(mass);
        return new Range(
                Math.pow(relative, exponent(share.planned())),
                Math.pow(relative, exponent(share.least())),
                Math.pow(relative, exponent(share.most())));
    }

    private double exponent(double shareLeft) {
        return Math.log(shareLeft) / Math.log(knownMass / CUP);
    }

    private double relative(double mass) {
        if (Require.positive("mass", mass) > largestMass * (1 + ROUNDING)) {
            throw new IllegalArgumentException(
                    "the gel time of a mix is known up to " + largestMass + " kg, not of " + mass + " kg");
        }
        return Math.max(1, mass / CUP);
    }
}
