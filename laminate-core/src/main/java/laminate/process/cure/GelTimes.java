package laminate.process.cure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Resin;

/** Skeleton: the gel times of a resin with one agent. */
public final class GelTimes {

    private GelTimes() {}

    /**
     * The gel times of a resin with an agent.
     *
     * @param resin the resin
     * @param agent the id of the catalyst or hardener
     * @return its gel times; without points where the resin states none for the agent
     */
    public static GelTimes of(Resin resin, String agent) {
        throw new UnsupportedOperationException(resin.id() + agent);
    }

    /**
     * Whether there is any point at all.
     *
     * @return true if some gel time can be told
     */
    public boolean isKnown() {
        throw new UnsupportedOperationException();
    }

    /**
     * The gel time.
     *
     * @param temperature temperature (K)
     * @param dose agent (kg per kg of liquid resin)
     * @return the gel time of a thin film or 100 g
     * @throws IllegalArgumentException if the points do not reach there; the message tells how far they reach
     */
    public GelTime at(double temperature, double dose) {
        throw new UnsupportedOperationException();
    }

    /**
     * The gel time where the points reach.
     *
     * @param temperature temperature (K)
     * @param dose agent (kg per kg of liquid resin)
     * @return the gel time, empty outside the points
     */
    public Optional<GelTime> find(double temperature, double dose) {
        throw new UnsupportedOperationException();
    }

    /**
     * The dose that gives a wanted gel time.
     *
     * @param seconds the wanted gel time (s)
     * @param temperature temperature (K)
     * @return the least such dose (kg/kg), empty if no dose within the points gives it
     */
    public OptionalDouble doseFor(double seconds, double temperature) {
        throw new UnsupportedOperationException();
    }

    /**
     * The doses whose gel time is known at a temperature.
     *
     * @param temperature temperature (K)
     * @return least and greatest dose (kg/kg), empty if no dose is known there
     */
    public Optional<Span> doses(double temperature) {
        throw new UnsupportedOperationException();
    }

    /**
     * The temperatures at which the gel time of a dose is known.
     *
     * @param dose agent (kg per kg of liquid resin)
     * @return the spans of temperature (K) in rising order, usually one, none if the dose is outside the points
     */
    public List<Span> temperatures(double dose) {
        throw new UnsupportedOperationException();
    }

    /**
     * How far the points reach, in words for a message.
     *
     * @return such as "1 % to 2 % from 15 °C to 30 °C, 3 % from 15 °C to 25 °C"
     */
    public String reach() {
        throw new UnsupportedOperationException();
    }
}
