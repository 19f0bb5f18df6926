package laminate.estimate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import laminate.part.Part;
import laminate.process.Range;

/**
 * All that an estimate says of a part.
 *
 * @param part the part as planned
 * @param zones its zones as they lie, for one of each
 * @param mass mass of all mouldings with their items, with its scatter (kg)
 * @param quantities what all mouldings hold, and what to mix and buy for them
 * @param consumables consumables for all mouldings
 * @param operations the work on all mouldings
 * @param cost what all mouldings cost, empty without prices
 * @param cautions what to mind
 * @param comparisons measured values against their plan
 */
public record PartEstimate(
        Part part,
        List<ZoneEstimate> zones,
        Range mass,
        Quantities quantities,
        List<MaterialQuantity> consumables,
        List<OperationTime> operations,
        Optional<Cost> cost,
        List<Caution> cautions,
        List<Comparison> comparisons) {

    /** Copies the lists. */
    public PartEstimate {
        zones = List.copyOf(zones);
        consumables = List.copyOf(consumables);
        operations = List.copyOf(operations);
        cautions = List.copyOf(cautions);
        comparisons = List.copyOf(comparisons);
    }

    /**
     * Mass of all mouldings as they come off the mould: with the margin that is trimmed off, without items.
     *
     * @return mass (kg)
     */
    public double massAsPulled() {
        return mass.planned() - quantities.items() + quantities.trimmed();
    }

    /**
     * Mass of one finished moulding with its items.
     *
     * @return mass with its scatter (kg)
     */
    public Range massEach() {
        return mass.times(1.0 / part.count());
    }

    /**
     * Area of one moulding.
     *
     * @return the finished area (m²)
     */
    public double area() {
        return sumOverArea(zone -> 1);
    }

    /**
     * Mean thickness of layers and cores over the area.
     *
     * @return thickness with its scatter (m)
     */
    public Range meanThickness() {
        return meanOf(ZoneEstimate::thickness);
    }

    /**
     * Mean thickness with coatings over the area, as callipers read it.
     *
     * @return thickness with its scatter (m)
     */
    public Range meanThicknessWithCoatings() {
        return meanOf(ZoneEstimate::thicknessWithCoatings);
    }

    /**
     * Fibre mass fraction of the reinforced layers of the part, laps left out.
     *
     * @return ψ, 0 where nothing is reinforced
     */
    public double fibreMassFraction() {
        double fibre = sumOverArea(ZoneEstimate::fibrePerArea);
        double resin = sumOverArea(zone -> zone.resinOfReinforcedLayers().planned());
        return fibre == 0 ? 0 : fibre / (fibre + resin);
    }

    /**
     * Fibre mass fraction of the reinforced layers, if resin in them is all that a weighed moulding differs by from the
     * plan: ψ' = F/(F/ψ + m − m₀), with the fibre F in one moulding, ψ and m₀ as planned. The rest of the difference may lie
     * in gelcoat, core or laps; a burn-off tells.
     *
     * @param massEach what one moulding weighs (kg)
     * @return the fraction; empty where nothing is reinforced, or the mass is not even that of the dry fibre
     */
    public OptionalDouble fibreMassFractionAt(double massEach) {
        double planned = fibreMassFraction();
        double fibre = quantities.fibre() / part.count();
        double laminate = fibre / planned + massEach - massEach().planned();
        return planned > 0 && laminate > fibre ? OptionalDouble.of(fibre / laminate) : OptionalDouble.empty();
    }

    /**
     * Fibre volume fraction of the reinforced layers of the part.
     *
     * @return V<sub>f</sub>, 0 where nothing is reinforced
     */
    public double fibreVolumeFraction() {
        return ofReinforcedVolume(ZoneEstimate::fibreVolumeFraction);
    }

    /**
     * Void volume fraction of the reinforced layers of the part.
     *
     * @return V<sub>v</sub>, 0 where nothing is reinforced
     */
    public double voidFraction() {
        return ofReinforcedVolume(ZoneEstimate::voidFraction);
    }

    /**
     * Working time of one person on all mouldings.
     *
     * @return time (s)
     */
    public double time() {
        return operations.stream().mapToDouble(OperationTime::time).sum();
    }

    private double ofReinforcedVolume(ToDoubleFunction<ZoneEstimate> fraction) {
        double volume = sumOverArea(ZoneEstimate::reinforcedThickness);
        return volume == 0
                ? 0
                : sumOverArea(zone -> fraction.applyAsDouble(zone) * zone.reinforcedThickness()) / volume;
    }

    private Range meanOf(Function<ZoneEstimate, Range> thickness) {
        return zones.stream()
                .map(zone -> thickness.apply(zone).times(zone.zone().totalArea()))
                .reduce(Range.ZERO, Range::plus)
                .times(1 / area());
    }

    private double sumOverArea(ToDoubleFunction<ZoneEstimate> perArea) {
        return zones.stream()
                .mapToDouble(zone -> perArea.applyAsDouble(zone) * zone.zone().totalArea())
                .sum();
    }
}
