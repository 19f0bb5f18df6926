package laminate.plan.infusion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.part.ReinforcementLayer;
import laminate.process.LayUp;
import laminate.process.Process;
import laminate.process.flow.Permeability;

/**
 * The layers of a zone that an infusion fills.
 *
 * @param zone the zone as it lies
 * @param layers its infused reinforcement; where every layer is a ply given directly, all of them
 * @param layUp resin and dose of the first infused layer, empty for plies given directly
 * @param thickness of these layers, without cores (m)
 * @param porosity what fibre leaves of their volume (1)
 */
record InfusedLaminate(
        ZoneEstimate zone, List<LaidLayer> layers, Optional<LayUp> layUp, Figure thickness, Figure porosity) {

    /** Half a point of a per cent: porosity is written in whole per cent. */
    private static final double SAME_POROSITY = 0.005;

    static boolean isIn(ZoneEstimate zone) {
        return !filled(zone).isEmpty();
    }

    static InfusedLaminate of(ZoneEstimate zone, OptionalDouble stated) {
        List<LaidLayer> layers = filled(zone);
        OptionalDouble fibre = zone.fibreVolumeFraction(Process.INFUSION);
        if (fibre.isEmpty()) {
            double porosity = stated.orElseThrow(
                    () -> new IllegalArgumentException(
                            name(zone)
                                    + "its plies are given directly, so that nothing tells the porosity; add porosity: to its infusion"));
            return new InfusedLaminate(
                    zone, layers, Optional.empty(), thickness(layers, Status.USER), Figure.stated(porosity));
        }
        double porosity = 1 - fibre.getAsDouble();
        Status status = status(layers);
        Figure pores = new Figure(porosity, "1 less the fibre volume fraction of the infused layers", status);
        return new InfusedLaminate(zone, layers, layers.get(0).layer().laying(), thickness(layers, status), pores);
    }

    /** Whether a porosity is stated that the layers contradict; theirs counts. */
    static boolean contradicts(ZoneEstimate zone, OptionalDouble stated) {
        OptionalDouble fibre = zone.fibreVolumeFraction(Process.INFUSION);
        return stated.isPresent()
                && fibre.isPresent()
                && Math.abs(stated.getAsDouble() + fibre.getAsDouble() - 1) > SAME_POROSITY;
    }

    private static Figure thickness(List<LaidLayer> layers, Status status) {
        double sum = 0;
        for (LaidLayer layer : layers) {
            sum += layer.thickness().planned();
        }
        return new Figure(sum, "the infused layers as they lie, without cores", status);
    }

    private static Status status(List<LaidLayer> layers) {
        boolean stated = layers.stream()
                .allMatch(laid -> laid.layer() instanceof ReinforcementLayer layer
                        && layer.content().isPresent());
        return stated ? Status.USER : Status.MEMORY;
    }

    private static List<LaidLayer> filled(ZoneEstimate zone) {
        boolean given =
                zone.layers().stream().allMatch(laid -> laid.layer().laying().isEmpty());
        return zone.layers().stream()
                .filter(laid -> given || laid.isReinforced() && laid.isLaidBy(Process.INFUSION))
                .toList();
    }

    private static String name(ZoneEstimate zone) {
        return "zone " + zone.zone().name() + ": ";
    }

    double fibreVolumeFraction() {
        return 1 - porosity.value();
    }

    /** A permeability at the fibre content of these layers, from one at another (m²). */
    double permeability(double measured, double at) {
        return Permeability.scaled(measured, at, fibreVolumeFraction());
    }

    String name() {
        return zone.zone().name();
    }
}
