package laminate.process.cure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Tells in words how far gel times are known. */
final class GelReach {
    private static final double ICE = 273.15;
    private static final int DOSE_DIGITS = 4;

    private GelReach() {}

    /** Why there is no gel time at a temperature (K) and dose (kg/kg). */
    static String refusal(GelTimes times, double temperature, double dose) {
        String asked = "the gel time of " + times.resin() + " with " + percent(dose) + " of " + times.agent() + " at "
                + celsius(temperature) + " is not known; ";
        return times.isKnown()
                ? asked + "known: " + words(times)
                : asked + "none is given for this agent: time a cup of 100 g and give it as gel-time of the resin";
    }

    /** Doses with the temperatures that they reach, doses that reach as far together. */
    static String words(GelTimes times) {
        List<Run> runs = new ArrayList<>();
        List<Double> doses = times.statedDoses();
        for (int i = 0; i < doses.size(); i++) {
            double dose = doses.get(i);
            if (i > 0) {
                double before = doses.get(i - 1);
                add(runs, new Run(before, dose, times.temperatures(Math.sqrt(before * dose))));
            }
            add(runs, new Run(dose, dose, times.temperatures(dose)));
        }
        return runs.stream().map(Run::words).collect(Collectors.joining(", "));
    }

    private static void add(List<Run> runs, Run next) {
        int last = runs.size() - 1;
        if (next.spans.isEmpty()) {
            return;
        }
        if (last >= 0 && runs.get(last).spans.equals(next.spans)) {
            runs.set(last, new Run(runs.get(last).from, next.to, next.spans));
        } else {
            runs.add(next);
        }
    }

    /** Doses (kg/kg) that reach the same temperatures (K). */
    private record Run(double from, double to, List<Span> spans) {
        String words() {
            String doses = from == to ? percent(from) : percent(from) + " to " + percent(to);
            return doses + " " + spans.stream().map(GelReach::temperatures).collect(Collectors.joining(" and "));
        }
    }

    private static String temperatures(Span span) {
        return span.least() == span.most()
                ? "at " + celsius(span.least())
                : "from " + celsius(span.least()) + " to " + celsius(span.most());
    }

    private static String celsius(double kelvin) {
        return plain(BigDecimal.valueOf(kelvin - ICE).setScale(2, RoundingMode.HALF_UP)) + " °C";
    }

    private static String percent(double dose) {
        return plain(BigDecimal.valueOf(dose * 100).round(new MathContext(DOSE_DIGITS))) + " %";
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }
}
