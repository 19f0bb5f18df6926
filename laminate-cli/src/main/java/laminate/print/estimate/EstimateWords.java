package laminate.print.estimate;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import laminate.estimate.LaidLayer;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinQuantity;
import laminate.estimate.ZoneEstimate;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.print.Measures;

/** Words that several printers share. */
final class EstimateWords {
    private EstimateWords() {}

    /** The processes of a part in the order they are first used; empty text if every ply is given directly. */
    static String processes(PartEstimate estimate) {
        Set<String> words = new LinkedHashSet<>();
        for (ZoneEstimate zone : estimate.zones()) {
            for (LaidLayer layer : zone.layers()) {
                layer.layer()
                        .laying()
                        .ifPresent(layUp -> words.add(layUp.process().word()));
            }
        }
        return String.join(", ", words);
    }

    static String content(double byMass, double byVolume) {
        return Measures.percent(byMass) + " % by mass, " + Measures.percent(byVolume) + " % by volume";
    }

    static String hours(double seconds) {
        return Measures.number(seconds / 3600);
    }

    /** What the agents of resins are called together. */
    static String agents(List<ResinQuantity> resins) {
        boolean hardener = false;
        boolean catalyst = false;
        for (ResinQuantity resin : resins) {
            hardener |= resin.dose().agent().isHardener();
            catalyst |= !resin.dose().agent().isHardener();
        }
        return hardener && catalyst ? "catalyst, hardener" : hardener ? "hardener" : "catalyst";
    }

    /** How far a layer is turned (degrees); empty for a layer that has no direction. */
    static OptionalDouble angle(Layer layer) {
        if (layer instanceof ReinforcementLayer reinforcement) {
            return OptionalDouble.of(reinforcement.angle());
        } else if (layer instanceof CoreLayer core) {
            return OptionalDouble.of(core.angle());
        } else if (layer instanceof LaminaLayer lamina) {
            return OptionalDouble.of(lamina.angle());
        }
        return OptionalDouble.empty();
    }

    static String kind(Layer layer) {
        if (layer instanceof ReinforcementLayer) {
            return "reinforcement";
        } else if (layer instanceof CoreLayer) {
            return "core";
        }
        return layer instanceof BulkerLayer ? "bulking mat" : "lamina";
    }

    static boolean isTurned(Layer layer) {
        return layer instanceof ReinforcementLayer reinforcement && reinforcement.turned();
    }
}
