package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.Coating;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.Range;
import laminate.process.Workshop;
import laminate.theory.Laminate;
import laminate.theory.Ply;

/**
 * Estimates parts in a workshop at a price list.
 *
 * <pre>{@code
 * PartEstimate estimate = new Estimator(Workshop.USUAL).estimate(part);
 * double kilograms = estimate.mass().planned();
 * }</pre>
 */
public final class Estimator {
    private final Workshop workshop;
    private final Optional<PriceList> prices;

    /**
     * An estimator without prices.
     *
     * @param workshop the workshop's figures
     */
    public Estimator(Workshop workshop) {
        this(workshop, Optional.empty());
    }

    /**
     * An estimator with prices.
     *
     * @param workshop the workshop's figures
     * @param prices the price list, empty for none
     */
    public Estimator(Workshop workshop, Optional<PriceList> prices) {
        this.workshop = workshop;
        this.prices = prices;
    }

    /**
     * Estimates a part.
     *
     * @param part the part
     * @return thickness, mass, fibre content, stiffness, quantities, hours and cost
     * @throws IllegalArgumentException if a layer cannot be laid as stated, saying which and why
     */
    public PartEstimate estimate(Part part) {
        List<ZoneEstimate> zones = new ArrayList<>();
        for (Zone zone : part.zones()) {
            zones.add(lay(zone));
        }
        Quantities quantities = new Quantifier(part, workshop).quantify(zones);
        WorkCount work = new WorkCount(part);
        List<MaterialQuantity> consumables = Consumption.of(workshop.consumables(), work, quantities.resins());
        List<OperationTime> operations = work.times(workshop.labour().operations());
        double seconds = OperationTime.sum(operations);
        Optional<Cost> cost = prices.isEmpty()
                ? Optional.empty()
                : Optional.of(Costing.of(part, workshop, prices.get(), quantities.materials(), consumables, seconds));
        PartEstimate estimate = new PartEstimate(
                part,
                zones,
                mass(part, zones, quantities),
                quantities,
                consumables,
                operations,
                cost,
                List.of(),
                List.of());
        return withRemarks(estimate);
    }

    /**
     * What the materials of a zone cost by its finished area: reinforcement, core, resin and coatings with what is lost and
     * trimmed of them, without consumables and labour.
     *
     * @param zone the zone
     * @return cost (money per m²), empty where there is no price list or it lacks one of them
     * @throws IllegalArgumentException if a layer cannot be laid as stated, saying which and why
     */
    public OptionalDouble materialCostPerArea(Zone zone) {
        PartEstimate alone = estimate(Part.of(zone.name(), List.of(zone)));
        return new CostHead(alone, Cost.Category.MATERIALS)
                .sum().stream()
                        .mapToDouble(sum -> sum.amount().doubleValue() / zone.totalArea())
                        .findFirst();
    }

    /**
     * Lays the layers of one zone.
     *
     * @param zone the zone
     * @return the zone as it lies
     * @throws IllegalArgumentException if a layer cannot be laid as stated, saying which and why
     */
    public ZoneEstimate lay(Zone zone) {
        LayerLaying laying = new LayerLaying(zone.contents(), workshop);
        List<LaidLayer> layers = new ArrayList<>();
        List<Ply> plies = new ArrayList<>();
        for (Layer layer : zone.layers()) {
            LaidLayer laid = lay(laying, zone, layer, layers.size() + 1);
            layers.add(laid);
            plies.addAll(laid.plies());
        }
        List<LaidCoating> coatings = new ArrayList<>();
        for (Coating coating : zone.coatings()) {
            coatings.add(LaidCoating.of(coating, workshop));
        }
        return new ZoneEstimate(zone, coatings, layers, Laminate.of(plies), workshop.stiffness());
    }

    private static LaidLayer lay(LayerLaying laying, Zone zone, Layer layer, int number) {
        try {
            return laying.lay(layer);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("zone " + zone.name() + ", layer " + number + ": " + e.getMessage(), e);
        }
    }

    private PartEstimate withRemarks(PartEstimate bare) {
        return new PartEstimate(
                bare.part(),
                bare.zones(),
                bare.mass(),
                bare.quantities(),
                bare.consumables(),
                bare.operations(),
                bare.cost(),
                Cautions.of(bare, workshop),
                Comparisons.of(bare));
    }

    /** The scatter of zones adds up: one hand lays them all. */
    private Range mass(Part part, List<ZoneEstimate> zones, Quantities quantities) {
        Range mass = Range.exactly(quantities.items());
        for (ZoneEstimate zone : zones) {
            Range perArea = zone.massPerArea();
            for (LaidLayer layer : zone.layers()) {
                perArea = perArea.plus(layer.massPerArea().times(Quantifier.lapShare(workshop, layer.layer())));
            }
            mass = mass.plus(perArea.times(zone.zone().totalArea() * part.count()));
        }
        return mass;
    }
}
