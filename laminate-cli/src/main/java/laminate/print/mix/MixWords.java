package laminate.print.mix;

import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import laminate.plan.ClockTime;
import laminate.plan.InfusingTime;
import laminate.plan.MixPlan;
import laminate.plan.Stage;
import laminate.plan.StageLayer;
import laminate.plan.StageResin;
import laminate.print.Measures;
import laminate.unit.Unit;

/** Words that plans of mixes and sheets of stages share. */
final class MixWords {
    private static final int MINUTES_OF_DAY = 24 * 60;
    static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private MixWords() {}

    /** Whether all of a plan is done on one day, so that no day needs to be told. */
    static boolean isOneDay(MixPlan plan) {
        int last = 1;
        for (Stage stage : plan.stages()) {
            last = Math.max(last, stage.gelled().orElse(stage.end()).day());
        }
        return last == 1;
    }

    /** A time to the nearest minute; the day only where there are several. */
    static String clock(ClockTime time, boolean oneDay) {
        long minutes = Math.round(time.seconds() / 60);
        LocalTime hour = LocalTime.ofSecondOfDay(minutes % MINUTES_OF_DAY * 60);
        return oneDay ? hour.toString() : "day " + (minutes / MINUTES_OF_DAY + 1) + " " + hour;
    }

    static String minutes(double seconds) {
        return Measures.number(seconds, Unit.MINUTE);
    }

    static String resins(Stage stage) {
        Set<String> ids = new LinkedHashSet<>();
        for (StageResin resin : stage.resins()) {
            ids.add(resin.resin().id());
        }
        return String.join(", ", ids);
    }

    static String agent(StageResin resin) {
        return resin.dose().agent().id() + ", " + Measures.plain(resin.dose().ratio() * 100) + " %";
    }

    /** How long a stage is infused, and what tells so. */
    static String infusing(InfusingTime infusing) {
        List<String> texts = new ArrayList<>();
        if (!infusing.plannedZones().isEmpty()) {
            String zones = infusing.byLabour() > 0 ? " (" + String.join(", ", infusing.plannedZones()) + ")" : "";
            texts.add(minutes(infusing.planned()) + " min by the flow of the planned infusion" + zones);
        }
        if (infusing.plannedZones().isEmpty() || infusing.byLabour() > 0) {
            texts.add(minutes(infusing.byLabour()) + " min by the labour of the workshop, where "
                    + (infusing.neverFull().isEmpty()
                            ? "no infusion is planned"
                            : "none is planned or it never fills"));
        }
        return String.join("; ", texts);
    }

    /** What is laid, zone by zone: "lid 1 mat-300, 2 to 4 mat-450; rim 1 mat-450". */
    static String layers(List<StageLayer> layers) {
        StringBuilder text = new StringBuilder();
        String zone = "";
        for (int first = 0; first < layers.size(); ) {
            StageLayer layer = layers.get(first);
            int last = lastAlike(layers, first);
            boolean isNew = !layer.zone().equals(zone);
            text.append(text.length() == 0 ? "" : isNew ? "; " : ", ");
            text.append(isNew ? layer.zone() + " " : "").append(layer.number());
            text.append(last > first ? " to " + layers.get(last).number() : "").append(' ');
            text.append(layer.material());
            zone = layer.zone();
            first = last + 1;
        }
        return text.toString();
    }

    private static int lastAlike(List<StageLayer> layers, int first) {
        int last = first;
        while (last + 1 < layers.size() && follows(layers.get(last), layers.get(last + 1))) {
            last++;
        }
        return last;
    }

    private static boolean follows(StageLayer layer, StageLayer next) {
        return next.zone().equals(layer.zone())
                && next.material().equals(layer.material())
                && next.number() == layer.number() + 1;
    }

    /** The word of a constant: MOULD_COAT gives "mould coat". */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
