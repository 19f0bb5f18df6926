package laminate.process.cure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Resin;
import laminate.theory.Require;

/**
 * The gel times of a resin with one agent, read between the points that the resin states.
 *
 * <p>Along a dose ln t is linear in 1/T between neighbouring points (Arrhenius' law with the activation energy that the
 * two points give); between doses ln t is linear in the logarithm of the dose (a power law with the exponent that the two
 * doses give). Each point is met exactly.
 *
 * <p>Only doses that reach a temperature are read there, and nothing is read outside the points: cold cure is held back
 * by the inhibitor and a high dose gains less and less, so that a line drawn on would promise a cure that may not come. A
 * resin with a single dose or a single point is known there only.
 *
 * <p>Times are those of a thin film or a cup of 100 g; for a pot see {@link MassEffect}.
 */
public final class GelTimes {
    private final String resin;
    private final String agent;
    /** By rising dose. */
    private final List<GelRow> rows;

    private GelTimes(String resin, String agent, List<GelRow> rows) {
        this.resin = resin;
        this.agent = agent;
        this.rows = rows;
    }

    /**
     * The gel times of a resin with an agent.
     *
     * @param resin the resin
     * @param agent the id of the catalyst or hardener
     * @return its gel times; without points where the resin states none for the agent
     */
    public static GelTimes of(Resin resin, String agent) {
        List<Resin.GelPoint> points = resin.gelPoints().stream()
                .filter(point -> point.agent().equals(agent))
                .sorted(Comparator.comparingDouble(Resin.GelPoint::amount))
                .toList();
        return new GelTimes(resin.id(), agent, GelRow.byDose(points));
    }

    /**
     * Whether there is any point at all.
     *
     * @return true if some gel time can be told
     */
    public boolean isKnown() {
        return !rows.isEmpty();
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
        return find(temperature, dose)
                .orElseThrow(() -> new IllegalArgumentException(GelReach.refusal(this, temperature, dose)));
    }

    /**
     * The gel time where the points reach.
     *
     * @param temperature temperature (K)
     * @param dose agent (kg per kg of liquid resin)
     * @return the gel time, empty outside the points
     * @throws IllegalArgumentException if a value is not above zero
     */
    public Optional<GelTime> find(double temperature, double dose) {
        Require.positive("dose", dose);
        Optional<GelRow> under = Optional.empty();
        for (GelRow row : reaching(temperature)) {
            if (row.isAt(dose)) {
                return Optional.of(row.at(temperature).gelTime());
            }
            if (row.dose() > dose) {
                return under.map(lower -> between(lower, row, dose, temperature));
            }
            under = Optional.of(row);
        }
        return Optional.empty();
    }

    /**
     * The dose that gives a wanted gel time.
     *
     * @param seconds the wanted gel time (s)
     * @param temperature temperature (K)
     * @return the least such dose (kg/kg), empty if no dose within the points gives it
     * @throws IllegalArgumentException if a value is not above zero
     */
    public OptionalDouble doseFor(double seconds, double temperature) {
        Require.positive("gel time", seconds);
        List<GelRow> reaching = reaching(temperature);
        for (int i = 0; i < reaching.size(); i++) {
            GelRow row = reaching.get(i);
            double time = row.at(temperature).seconds();
            if (Math.abs(time - seconds) <= Span.ROUNDING * seconds) {
                return OptionalDouble.of(row.dose());
            }
            if (i + 1 < reaching.size()) {
                GelRow next = reaching.get(i + 1);
                double nextTime = next.at(temperature).seconds();
                if ((time - seconds) * (nextTime - seconds) < 0) {
                    return OptionalDouble.of(
                            Knot.power(row.dose(), next.dose(), Math.log(seconds / time) / Math.log(nextTime / time)));
                }
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * The doses whose gel time is known at a temperature.
     *
     * @param temperature temperature (K)
     * @return least and greatest dose (kg/kg), empty if no dose is known there
     * @throws IllegalArgumentException if the temperature is not above zero
     */
    public Optional<Span> doses(double temperature) {
        List<GelRow> reaching = reaching(temperature);
        return reaching.isEmpty()
                ? Optional.empty()
                : Optional.of(new Span(
                        reaching.get(0).dose(),
                        reaching.get(reaching.size() - 1).dose()));
    }

    /**
     * The temperatures at which the gel time of a dose is known: those that some dose of the points not above it and
     * some dose not below it both reach.
     *
     * @param dose agent (kg per kg of liquid resin)
     * @return the spans of temperature (K) in rising order, usually one, none if the dose is outside the points
     * @throws IllegalArgumentException if the dose is not above zero
     */
    public List<Span> temperatures(double dose) {
        Require.positive("dose", dose);
        List<Span> notAbove = spans(
                rows.stream().filter(row -> row.dose() < dose || row.isAt(dose)).toList());
        List<Span> notBelow = spans(
                rows.stream().filter(row -> row.dose() > dose || row.isAt(dose)).toList());
        List<Span> both = new ArrayList<>();
        for (Span lower : notAbove) {
            for (Span upper : notBelow) {
                lower.overlap(upper).ifPresent(both::add);
            }
        }
        return List.copyOf(both);
    }

    /**
     * The exponent n with which the gel time answers to the dose, t ~ dose<sup>n</sup>: the slope of the straight line
     * through ln t over ln dose by least squares. For teaching; no answer of this class is read from it.
     *
     * @param temperature temperature (K)
     * @return n, below zero where more agent gels sooner; empty if fewer than two doses are known there
     * @throws IllegalArgumentException if the temperature is not above zero
     */
    public OptionalDouble doseExponent(double temperature) {
        List<GelRow> reaching = reaching(temperature);
        if (reaching.size() < 2) {
            return OptionalDouble.empty();
        }
        double middle = reaching.stream()
                .mapToDouble(row -> Math.log(row.dose()))
                .average()
                .orElseThrow();
        double products = 0;
        double squares = 0;
        for (GelRow row : reaching) {
            double x = Math.log(row.dose()) - middle;
            products += x * Math.log(row.at(temperature).seconds());
            squares += x * x;
        }
        return OptionalDouble.of(products / squares);
    }

    /**
     * How far the points reach, in words for a message.
     *
     * @return such as "1 % to 2 % from 15 °C to 30 °C, 2 % to 3 % from 15 °C to 25 °C"; empty without points
     */
    public String reach() {
        return GelReach.words(this);
    }

    String resin() {
        return resin;
    }

    String agent() {
        return agent;
    }

    /** The doses of the points, rising (kg/kg). */
    List<Double> statedDoses() {
        return rows.stream().map(GelRow::dose).toList();
    }

    private List<GelRow> reaching(double temperature) {
        Require.positive("temperature", temperature);
        return rows.stream().filter(row -> row.span().contains(temperature)).toList();
    }

    private static GelTime between(GelRow lower, GelRow upper, double dose, double temperature) {
        double weight = Math.log(dose / lower.dose()) / Math.log(upper.dose() / lower.dose());
        return lower.at(temperature).towards(upper.at(temperature), weight).gelTime();
    }

    private static List<Span> spans(List<GelRow> rows) {
        return Span.joined(rows.stream().map(GelRow::span).toList());
    }
}
