package laminate.plan.infusion;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import laminate.material.Figure;
import laminate.process.Dose;
import laminate.process.LayUp;
import laminate.process.Workshop;
import laminate.process.cure.GelTime;
import laminate.process.cure.GelTimes;
import laminate.process.cure.Span;
import laminate.unit.Significant;

/**
 * The gel time of an infusion's resin, at the temperature of the workshop and its dose.
 *
 * @param time of a thin film, as the laminate is (s), empty if not known
 * @param why it is not known, empty text where it is
 */
record GelReading(Optional<Figure> time, String why) {

    static GelReading of(Optional<LayUp> layUp, Workshop workshop) {
        if (layUp.isEmpty()) {
            return unknown("plies given directly name no resin, so its gel time is not known");
        }
        Dose dose = layUp.get().dose();
        GelTimes times = GelTimes.of(layUp.get().resin(), dose.agent().id());
        String pair = layUp.get().resin().id() + " with " + dose.agent().id();
        if (!times.isKnown()) {
            return unknown("no gel time of " + pair + " is known; time a cup of 100 g and add it to the resin");
        }
        double temperature = workshop.plannedTemperature();
        Optional<GelTime> found = times.find(temperature, dose.ratio());
        if (found.isEmpty()) {
            return unknown(outside(times, dose.ratio(), temperature, pair));
        }
        String conditions = percent(dose.ratio()) + " at " + celsius(temperature);
        String assumed =
                workshop.temperature().isPresent() ? "" : ", a temperature assumed as the workshop states none";
        return new GelReading(
                Optional.of(new Figure(
                        found.get().seconds(),
                        pair + ", " + conditions + assumed + ": " + found.get().source(),
                        found.get().status())),
                "");
    }

    /** Nothing is read beyond the points: a resin may not cure there at all. */
    private static String outside(GelTimes times, double dose, double temperature, String pair) {
        List<Span> known = times.temperatures(dose);
        String asked = "; here are " + percent(dose) + " at " + celsius(temperature);
        if (known.isEmpty()) {
            return "the gel time of " + pair + " is not known outside " + times.reach() + asked;
        }
        String spans = known.stream()
                .map(span -> span.least() == span.most()
                        ? celsius(span.least())
                        : celsius(span.least()) + " to " + celsius(span.most()))
                .collect(Collectors.joining(" and "));
        return "the gel time of " + pair + " is not known outside " + spans + asked;
    }

    private static String percent(double dose) {
        return Significant.format(dose * 100, 3) + " %";
    }

    private static String celsius(double kelvin) {
        return Significant.format(kelvin - 273.15, 3) + " °C";
    }

    private static GelReading unknown(String why) {
        return new GelReading(Optional.empty(), why);
    }
}
