package laminate.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.process.Dose;
import laminate.process.cure.GelTime;
import laminate.process.cure.GelTimes;
import laminate.process.cure.MassEffect;

/**
 * How soon a resin gels at a dose and temperature, in a film and in a pot; or why that is not known. A resin without any
 * gel time may still be mixed, in pots no larger than the usual; one whose gel times do not reach the dose or temperature
 * is refused there, for it may not cure at all.
 */
final class PotLife {
    /** The largest mix where the effect of mass is not known (kg): the least of those known. */
    private static final double LEAST_KNOWN = MassEffect.EPOXY.largestMass();

    private final Optional<GelTime> film;
    private final Optional<String> refusal;
    private final Resin.Family family;
    private final String unknown;

    private PotLife(Resin resin, Optional<GelTime> film, Optional<String> refusal, String unknown) {
        this.film = film;
        this.refusal = refusal;
        this.unknown = unknown;
        this.family = resin.family();
    }

    static PotLife of(Resin resin, Dose dose, double temperature) {
        GelTimes times = GelTimes.of(resin, dose.agent().id());
        if (!times.isKnown()) {
            String why = "no gel time of " + resin.id() + " with "
                    + dose.agent().id() + " is known: time a cup before you mix a pot";
            return new PotLife(resin, Optional.empty(), Optional.empty(), why);
        }
        try {
            return new PotLife(resin, Optional.of(times.at(temperature, dose.ratio())), Optional.empty(), "");
        } catch (IllegalArgumentException e) {
            return new PotLife(resin, Optional.empty(), Optional.of(e.getMessage()), e.getMessage());
        }
    }

    boolean isKnown() {
        return film.isPresent();
    }

    Optional<String> refusal() {
        return refusal;
    }

    /** In a thin film or a small cup (s). */
    OptionalDouble film() {
        return film.isPresent() ? OptionalDouble.of(film.get().seconds()) : OptionalDouble.empty();
    }

    Optional<Status> status() {
        return film.map(GelTime::status);
    }

    /** The source of the gel time, or why it is not known. */
    String source() {
        return film.map(GelTime::source).orElse(unknown);
    }

    /** In a pot of resin and agent (kg), at most the largest (s). */
    double inPot(double pot) {
        double factor = MassEffect.of(family)
                .map(mass -> mass.factor(Math.min(pot, largestPot())).planned())
                .orElse(1.0);
        return factor * film.orElseThrow().seconds();
    }

    /** The most that is mixed at once, resin and agent (kg). */
    double largestPot() {
        return largestPot(family);
    }

    static double largestPot(Resin.Family family) {
        return MassEffect.of(family).map(MassEffect::largestMass).orElse(LEAST_KNOWN);
    }
}
