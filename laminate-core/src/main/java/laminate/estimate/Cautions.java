package laminate.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import laminate.material.Fibre;
import laminate.material.FibrePly;
import laminate.material.Reinforcement;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.Workshop;

/** All cautions that a part calls for: those of its schedule first, then those of health, fire and strength. */
final class Cautions {

    private Cautions() {}

    static List<Caution> of(PartEstimate estimate, Workshop workshop) {
        List<Caution> cautions = new ArrayList<>();
        for (ZoneEstimate zone : estimate.zones()) {
            cautions.addAll(ScheduleCautions.of(zone));
            cautions.addAll(StageCautions.of(zone));
            cautions.addAll(MirrorCautions.of(zone));
        }
        cautions.addAll(WorkCautions.of(estimate, workshop));
        cautions.addAll(SafetyCautions.of(estimate));
        return withoutRepeats(cautions);
    }

    private static List<Caution> withoutRepeats(List<Caution> cautions) {
        Map<String, Caution> byText = new LinkedHashMap<>();
        for (Caution caution : cautions) {
            byText.putIfAbsent(caution.text(), caution);
        }
        return List.copyOf(byText.values());
    }

    /** Whether any layer of a part holds a sort of fibre. */
    static boolean holds(PartEstimate estimate, Fibre.Type type) {
        for (ZoneEstimate zone : estimate.zones()) {
            for (Layer layer : zone.zone().layers()) {
                if (layer instanceof ReinforcementLayer laid && holds(laid.reinforcement(), type)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean holds(Reinforcement reinforcement, Fibre.Type type) {
        for (FibrePly ply : reinforcement.plies()) {
            if (ply.fibre().type() == type) {
                return true;
            }
        }
        return false;
    }
}
