package laminate.print.infuse;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.part.infusion.InfusionPath;
import laminate.plan.infusion.Fill;
import laminate.plan.infusion.FlowFigures;
import laminate.plan.infusion.GelMargin;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.LeakLimit;
import laminate.print.Measures;
import laminate.process.flow.FrontPoint;
import laminate.unit.Unit;

/** Words that the plan of an infusion and the sheet for the crew share. */
public final class InfusionWords {
    private final Measures measures;

    /**
     * Words.
     *
     * @param measures the reader's units
     */
    public InfusionWords(Measures measures) {
        this.measures = measures;
    }

    /**
     * What an infusion fills.
     *
     * @param infusion the infusion
     * @return its zones, how many are alike, and which is full last
     */
    public static String fills(Infusion infusion) {
        String zones = String.join(", ", infusion.zones());
        String last = infusion.zones().size() > 1 ? "; " + infusion.figures().laminate() + " is full last" : "";
        return infusion.count() == 1 ? zones + last : zones + ", " + infusion.count() + " alike, each by itself" + last;
    }

    /**
     * How the resin runs.
     *
     * @param path feed to vent
     * @return the feed, how far it is to the vent and how much higher
     */
    public String way(InfusionPath path) {
        String way = path.feed().word() + " feed, " + measures.size(path.flowLength()) + " from feed to vent";
        if (path.feedRadius().isPresent()) {
            way += ", feed at a radius of " + measures.size(path.feedRadius().getAsDouble());
        }
        return path.rise() == 0
                ? way
                : way + ", " + measures.size(Math.abs(path.rise())) + (path.rise() > 0 ? " uphill" : " downhill");
    }

    /**
     * When it is full.
     *
     * @param fill the fill
     * @return as planned, and between which times by the scatter of the permeability
     */
    public static String fillTime(Fill fill) {
        if (fill.time().isEmpty()) {
            return "never";
        }
        String slowest = fill.slowest().isPresent() ? minutes(fill.slowest()) + " min" : "never";
        return minutes(fill.time()) + " min; " + minutes(fill.quickest()) + " min to " + slowest
                + " as permeability scatters by 40 % at best";
    }

    /**
     * When it gels.
     *
     * @param gel the fill time against the gel time
     * @return the gel time and what of it may be used, or that it is not known
     */
    public static String gelTime(GelMargin gel) {
        if (gel.gelTime().isEmpty()) {
            return "not known";
        }
        Figure time = gel.gelTime().get();
        return Measures.text(time.value(), Unit.MINUTE) + ", " + time.status().word() + "; "
                + Measures.percent(gel.usableShare().value()) + " % of it may be used, " + minutes(gel.usableTime())
                + " min";
    }

    /**
     * How far the laminate is behind the mesh.
     *
     * @param fill the fill
     * @return the lag, empty without a mesh or where it is not known
     */
    public Optional<String> lag(Fill fill) {
        return fill.lag().isEmpty()
                ? Optional.empty()
                : Optional.of(Measures.text(fill.lag().getAsDouble(), measures.length()) + " behind the flow mesh"
                        + (fill.meshTime().isPresent()
                                ? ", which is full after " + minutes(fill.meshTime()) + " min"
                                : ""));
    }

    /**
     * The drop test.
     *
     * @param leak how much the vacuum may fall
     * @return the test with its source
     */
    public static String leak(LeakLimit leak) {
        return "pump shut off, the vacuum may fall by " + Measures.text(leak.drop(), Unit.MILLIBAR) + " in "
                + Measures.text(leak.time(), Unit.MINUTE) + " (" + leak.source() + ", "
                + leak.status().word() + ")";
    }

    /**
     * The time of the last point of a front.
     *
     * @param front the points
     * @return time (s), 0 without points
     */
    public static double last(List<FrontPoint> front) {
        return front.isEmpty() ? 0 : front.get(front.size() - 1).time();
    }

    /**
     * What to tell where nobody measured the permeability.
     *
     * @param figures those of the infusion, its permeability from memory
     * @return how far off the fill time may be
     */
    public static String fromMemory(FlowFigures figures) {
        return "The permeability is an order of magnitude from memory: the fill time may be "
                + Measures.count(figures.permeabilityFactor().getAsDouble())
                + " times as long, or as short. Time a strip of your own layers before you trust it.";
    }

    private static String minutes(OptionalDouble seconds) {
        return Measures.number(seconds, Unit.MINUTE);
    }
}
