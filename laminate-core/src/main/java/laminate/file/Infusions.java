package laminate.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Estimator;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.part.infusion.InfusionPlan;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.unit.Significant;

/**
 * The plans of infusion held against the layers. Some of these have to be infused; and porosity is what their fibres leave,
 * so that where it is stated the two must not differ. It is compared once all layers can be laid.
 */
final class Infusions {

    /** Half a percentage point: a porosity is seldom stated closer than to a whole one. */
    private static final double TOLERANCE = 0.005;

    /**
     * A porosity as it is stated.
     *
     * @param zone the place of its zone in the part, or none for the part as a whole
     */
    private record Claim(int zone, Located<Double> porosity) {}

    private static final int WHOLE_PART = -1;

    private final boolean layersAreOthers;
    private final List<Claim> claims = new ArrayList<>();
    private int zones;

    /**
     * Begins with a part.
     *
     * @param layersAreOthers whether other layers than the file states were asked for: its plans are not to be blamed then
     */
    Infusions(boolean layersAreOthers) {
        this.layersAreOthers = layersAreOthers;
    }

    /** The plan of the next zone, if it has one. */
    Optional<InfusionPlan> ofZone(Fields in, Optional<InfusionReader.Stated> stated, List<Layer> layers) {
        return placed(in, stated, layers, zones++);
    }

    /** The plan of the part as a whole, if it has one. */
    Optional<InfusionPlan> ofPart(Fields in, Optional<InfusionReader.Stated> stated, List<Zone> of) {
        List<Layer> layers = new ArrayList<>();
        for (Zone zone : of) {
            layers.addAll(zone.infusion().isEmpty() ? zone.layers() : List.of());
        }
        if (stated.isPresent() && layers.isEmpty()) {
            throw in.refusal("infusion", "every zone has a plan of its own; take this one out");
        }
        return placed(in, stated, layers, WHOLE_PART);
    }

    private Optional<InfusionPlan> placed(
            Fields in, Optional<InfusionReader.Stated> stated, List<Layer> layers, int place) {
        if (stated.isEmpty()) {
            return Optional.empty();
        }
        if (!layersAreOthers) {
            checkLayers(in, stated.get().porosity().isPresent(), layers);
            stated.get().porosity().ifPresent(porosity -> claims.add(new Claim(place, porosity)));
        }
        return Optional.of(stated.get().plan());
    }

    private static void checkLayers(Fields in, boolean porosityIsStated, List<Layer> layers) {
        boolean infused = false;
        boolean given = true;
        boolean told = false;
        for (Layer layer : layers) {
            infused |= layer.isLaidBy(Process.INFUSION);
            given &= layer instanceof LaminaLayer;
            told |= layer instanceof ReinforcementLayer && layer.isLaidBy(Process.INFUSION);
        }
        if (!infused && !given) {
            throw in.refusal(
                    "infusion", "none of the layers here is infused; take it out, or process: infusion is wanted");
        }
        if (!told && !porosityIsStated) {
            throw in.refusal("infusion", "none of the layers here tells its fibre content; add porosity:");
        }
    }

    /** Complains of every porosity that is not that of the layers as this workshop lays them. */
    void checkPorosities(Part part, Workshop workshop, Complaints complaints) {
        Estimator estimator = new Estimator(workshop);
        for (Claim claim : claims) {
            List<Double> laid = laidPorosities(estimator, zones(part, claim.zone()));
            double stated = claim.porosity().value();
            if (!laid.isEmpty() && !matches(stated, laid)) {
                complaints.at(claim.porosity().node(), message(stated, laid));
            }
        }
    }

    /** A plan of the whole part holds for the zones that have none of their own. */
    private static List<Zone> zones(Part part, int place) {
        return place == WHOLE_PART
                ? part.zones().stream()
                        .filter(zone -> zone.infusion().isEmpty())
                        .toList()
                : List.of(part.zones().get(place));
    }

    private static List<Double> laidPorosities(Estimator estimator, List<Zone> zones) {
        List<Double> laid = new ArrayList<>();
        for (Zone zone : zones) {
            OptionalDouble content = fibreContent(estimator, zone);
            if (content.isPresent()) {
                laid.add(1 - content.getAsDouble());
            }
        }
        return laid;
    }

    /** A zone that cannot be laid as stated says why when it is estimated. */
    private static OptionalDouble fibreContent(Estimator estimator, Zone zone) {
        try {
            return estimator.lay(zone).fibreVolumeFraction(Process.INFUSION);
        } catch (IllegalArgumentException e) {
            return OptionalDouble.empty();
        }
    }

    private static boolean matches(double stated, List<Double> laid) {
        return stated >= Collections.min(laid) - TOLERANCE && stated <= Collections.max(laid) + TOLERANCE;
    }

    private static String message(double stated, List<Double> laid) {
        String least = percent(Collections.min(laid));
        String most = percent(Collections.max(laid));
        return percent(stated) + " is stated, but the layers leave "
                + (least.equals(most) ? least : least + " to " + most)
                + " between their fibres; take porosity: out, or state the fibre-volume-fraction of the layers";
    }

    private static String percent(double share) {
        return Significant.format(100 * share, 3) + " %";
    }
}
