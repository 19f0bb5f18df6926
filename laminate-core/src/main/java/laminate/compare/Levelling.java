package laminate.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import laminate.compare.Adjustment.ChangedLayer;
import laminate.estimate.Estimator;
import laminate.estimate.LaidLayer;
import laminate.estimate.ZoneEstimate;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.theory.Equivalence;
import laminate.unit.Significant;

/**
 * Changes the lay-up of a zone until it is as stiff or as heavy as another.
 *
 * <p>Thickness, mass and resin of a layer follow its areal weight, so a factor on all reinforcement is one on the thickness
 * of its plies: bending stiffness is made equal by that of the laminate, mass by m + (f − 1) s, with s the mass of what is
 * changed. Sheets and cores take any thickness; of layers the nearest whole number is found by laying them.
 */
final class Levelling {
    /** A changed zone, and how it was changed. */
    record Levelled(Zone zone, Adjustment adjustment) {}

    private final CompareOptions options;
    private final Estimator estimator;

    Levelling(CompareOptions options, Estimator estimator) {
        this.options = options;
        this.estimator = estimator;
    }

    /** Whether a zone has anything of what is changed. */
    boolean canChange(ZoneEstimate given) {
        return given.layers().stream().anyMatch(laid -> isChanged(laid.layer()));
    }

    /**
     * Changes a zone.
     *
     * @param given the zone as given
     * @param reference what it is to be equal to
     * @throws IllegalArgumentException if no change makes it equal
     */
    Levelled level(ZoneEstimate given, ZoneEstimate reference) {
        double factor = options.basis() == Basis.SAME_WEIGHT ? ofMass(given, reference) : ofStiffness(given, reference);
        Zone sheets = withSheets(given.zone(), factor);
        WholeLayers.Laying laying = options.means() == Means.CORE
                ? WholeLayers.asGiven(sheets.layers())
                : nearest(sheets, reference, factor);
        Zone levelled = sheets.withLayers(laying.layers());
        return new Levelled(
                levelled,
                new Adjustment(
                        given.zone().name(),
                        options.basis(),
                        options.means(),
                        factor,
                        value(given) / value(reference),
                        value(estimator.lay(levelled)) / value(reference),
                        given.laminate().thickness() + (factor - 1) * changedThickness(given),
                        mass(given) + (factor - 1) * changedMass(given),
                        changed(sheets.layers(), laying.counts(), factor)));
    }

    private IllegalArgumentException none(ZoneEstimate zone, String why) {
        return new IllegalArgumentException("zone " + zone.zone().name() + " cannot be made "
                + (options.basis() == Basis.SAME_WEIGHT ? "to weigh the same" : "as stiff in bending")
                + " as the first: " + why);
    }

    private double ofStiffness(ZoneEstimate given, ZoneEstimate reference) {
        Set<Integer> plies = changedPlies(given);
        OptionalDouble factor = new Equivalence(reference.laminate(), given.laminate())
                .thicknessFactor(options.along(), plies::contains);
        return factor.orElseThrow(() -> none(
                given,
                "the rest is as stiff already, or no change of its "
                        + options.means().words() + " is enough"));
    }

    private double ofMass(ZoneEstimate given, ZoneEstimate reference) {
        double factor = 1 + (mass(reference) - mass(given)) / changedMass(given);
        if (!(factor > 0)) {
            throw none(
                    given,
                    "all but its " + options.means().words() + " weighs "
                            + Significant.format(mass(given) - changedMass(given), 3) + " kg/m² already, the other "
                            + Significant.format(mass(reference), 3) + " kg/m²");
        }
        return factor;
    }

    /** What is made equal: bending stiffness per width (N·m) or mass per area (kg/m²). */
    private double value(ZoneEstimate laid) {
        return options.basis() == Basis.SAME_WEIGHT
                ? mass(laid)
                : options.along().of(laid.laminate());
    }

    private static double mass(ZoneEstimate laid) {
        return laid.massPerArea().planned();
    }

    private boolean isChanged(Layer layer) {
        boolean core = layer instanceof CoreLayer
                || layer instanceof LaminaLayer sheet && sheet.lamina().isCore();
        return options.means() == Means.CORE
                ? core
                : layer instanceof ReinforcementLayer || layer instanceof LaminaLayer && !core;
    }

    /** Numbers of the plies that are changed; of a bedded core the core, which is its last. */
    private Set<Integer> changedPlies(ZoneEstimate given) {
        Set<Integer> changed = new TreeSet<>();
        int first = 0;
        for (LaidLayer laid : given.layers()) {
            int end = first + laid.plies().size();
            if (isChanged(laid.layer())) {
                IntStream.range(laid.layer() instanceof CoreLayer ? end - 1 : first, end)
                        .forEach(changed::add);
            }
            first = end;
        }
        return changed;
    }

    private double changedThickness(ZoneEstimate given) {
        return changedPlies(given).stream()
                .mapToDouble(ply -> given.laminate().plies().get(ply).thickness())
                .sum();
    }

    /** Mass per area that grows with the factor (kg/m²): of cores what they gain when twice as thick. */
    private double changedMass(ZoneEstimate given) {
        return options.means() == Means.CORE
                ? mass(estimator.lay(withSheets(given.zone(), 2))) - mass(given)
                : given.layers().stream()
                        .filter(laid -> isChanged(laid.layer()))
                        .mapToDouble(laid -> laid.massPerArea().planned())
                        .sum();
    }

    private Zone withSheets(Zone zone, double factor) {
        return zone.withLayers(zone.layers().stream()
                .map(layer -> isChanged(layer) ? thickened(layer, factor) : layer)
                .toList());
    }

    private static Layer thickened(Layer layer, double factor) {
        if (layer instanceof LaminaLayer sheet) {
            return new LaminaLayer(
                    sheet.lamina(), sheet.density(), factor * sheet.thickness(), sheet.angle(), sheet.stage());
        }
        return layer instanceof CoreLayer core
                ? new CoreLayer(
                        core.core(),
                        factor * core.thickness(),
                        core.angle(),
                        core.finish(),
                        core.layUp(),
                        core.bed(),
                        core.stage())
                : layer;
    }

    /** Of the layings about the exact factor that which comes nearest, by what is made equal. */
    private WholeLayers.Laying nearest(Zone sheets, ZoneEstimate reference, double factor) {
        return new WholeLayers(sheets.layers())
                .about(factor).stream()
                        .min(Comparator.comparingDouble(laying -> Math.abs(
                                Math.log(value(estimator.lay(sheets.withLayers(laying.layers()))) / value(reference)))))
                        .orElseThrow();
    }

    private List<ChangedLayer> changed(List<Layer> layers, List<Integer> counts, double factor) {
        List<ChangedLayer> changed = new ArrayList<>();
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            if (isChanged(layer)) {
                OptionalDouble thickness = thickness(layer);
                double times = thickness.isPresent() ? factor : counts.get(i);
                changed.add(new ChangedLayer(layer.material(), i + 1, factor, times, thickness));
            }
        }
        return changed;
    }

    private static OptionalDouble thickness(Layer layer) {
        return layer instanceof LaminaLayer sheet
                ? OptionalDouble.of(sheet.thickness())
                : layer instanceof CoreLayer core ? OptionalDouble.of(core.thickness()) : OptionalDouble.empty();
    }
}
