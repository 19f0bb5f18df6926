package laminate.plan.infusion;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import laminate.estimate.LaidLayer;
import laminate.material.FibrePly;
import laminate.material.Figure;
import laminate.material.Form;
import laminate.material.Status;
import laminate.part.ReinforcementLayer;
import laminate.process.flow.Permeability;

/**
 * Orders of magnitude of permeability along the laminate, from memory: the true value may be a third or three times as
 * much. No printed value was found that holds for more than the one fabric it was measured on.
 */
final class TypicalPermeability {

    /** By what factor the true value may differ either way. */
    static final double FACTOR = 3;

    private static final Map<Form, Typical> BY_FORM = new EnumMap<>(Map.of(
            Form.MAT, new Typical(1e-9, 0.28),
            Form.WOVEN_ROVING, new Typical(1.7e-10, 0.475),
            Form.STITCHED, new Typical(5.5e-11, 0.525)));

    /** K at the fibre volume fraction V; the geometric mean where memory gives a range. */
    private record Typical(double permeability, double fibreVolumeFraction) {}

    private TypicalPermeability() {}

    static Figure of(InfusedLaminate laminate) {
        double conducted = 0;
        for (LaidLayer layer : laminate.layers()) {
            conducted += of(layer) * layer.thickness().planned();
        }
        return new Figure(
                conducted / laminate.thickness().value(),
                "order of magnitude for reinforcements of the kind, from memory: may be a third or three times as much",
                Status.MEMORY);
    }

    /** Plies side by side share the pressure, so that they conduct by their thickness. */
    private static double of(LaidLayer laid) {
        if (!(laid.layer() instanceof ReinforcementLayer layer)) {
            throw unknown(laid.layer().material());
        }
        List<FibrePly> plies = layer.plies();
        double conducted = 0;
        double thickness = 0;
        for (FibrePly ply : plies) {
            Typical typical = BY_FORM.get(ply.form());
            if (typical == null) {
                throw unknown(ply.form().word());
            }
            double share = ply.arealMass() / ply.fibre().density() / typical.fibreVolumeFraction();
            conducted += share * typical.permeability();
            thickness += share;
        }
        return at(conducted / thickness, meanContent(plies), laid.fibreVolumeFraction());
    }

    private static double at(double permeability, double measuredAt, double fibreVolumeFraction) {
        return Permeability.scaled(permeability, measuredAt, fibreVolumeFraction);
    }

    /** The fibre volume fraction of the plies at which the typical values hold. */
    private static double meanContent(List<FibrePly> plies) {
        double fibre = 0;
        double thickness = 0;
        for (FibrePly ply : plies) {
            double volume = ply.arealMass() / ply.fibre().density();
            fibre += volume;
            thickness += volume / BY_FORM.get(ply.form()).fibreVolumeFraction();
        }
        return fibre / thickness;
    }

    private static IllegalArgumentException unknown(String what) {
        return new IllegalArgumentException(
                "no typical permeability of " + what + " is known; " + PermeabilityReading.ASK);
    }
}
