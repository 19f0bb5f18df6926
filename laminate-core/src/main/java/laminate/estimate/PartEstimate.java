package laminate.estimate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
        double sum = 0;
        for (ZoneEstimate zone : zones) {
            sum += zone.zone().totalArea();
        }
        return sum;
    }

    /**
     * Mean thickness of layers and cores over the area.
     *
     * @return thickness with its scatter (m)
     */
    public Range meanThickness() {
        Range sum = Range.ZERO;
        for (ZoneEstimate zone : zones) {
            sum = sum.plus(zone.thickness().times(zone.zone().totalArea()));
        }
        return sum.times(1 / area());
    }

    /**
     * Mean thickness with coatings over the area, as callipers read it.
     *
     * @return thickness with its scatter (m)
     */
    public Range meanThicknessWithCoatings() {
        Range sum = Range.ZERO;
        for (ZoneEstimate zone : zones) {
            sum = sum.plus(zone.thicknessWithCoatings().times(zone.zone().totalArea()));
        }
        return sum.times(1 / area());
    }

    /**
     * Fibre mass fraction of the reinforced layers of the part, laps left out.
     *
     * @return ψ, 0 where nothing is reinforced
     */
    public double fibreMassFraction() {
        double fibre = 0;
        double resin = 0;
        for (ZoneEstimate zone : zones) {
            fibre += zone.fibrePerArea() * zone.zone().totalArea();
            resin += zone.resinOfReinforcedLayers().planned() * zone.zone().totalArea();
        }
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
        double fibre = 0;
        for (ZoneEstimate zone : zones) {
            fibre += zone.fibreVolumeFraction() * reinforcedVolume(zone);
        }
        double volume = reinforcedVolume();
        return volume == 0 ? 0 : fibre / volume;
    }

    /**
     * Void volume fraction of the reinforced layers of the part.
     *
     * @return V<sub>v</sub>, 0 where nothing is reinforced
     */
    public double voidFraction() {
        double voids = 0;
        for (ZoneEstimate zone : zones) {
            voids += zone.voidFraction() * reinforcedVolume(zone);
        }
        double volume = reinforcedVolume();
        return volume == 0 ? 0 : voids / volume;
    }

    /**
     * Working time of one person on all mouldings.
     *
     * @return time (s)
     */
    public double time() {
        return OperationTime.sum(operations);
    }

    private double reinforcedVolume() {
        double sum = 0;
        for (ZoneEstimate zone : zones) {
            sum += reinforcedVolume(zone);
        }
        return sum;
    }

    private static double reinforcedVolume(ZoneEstimate zone) {
        return zone.reinforcedThickness() * zone.zone().totalArea();
    }
}
