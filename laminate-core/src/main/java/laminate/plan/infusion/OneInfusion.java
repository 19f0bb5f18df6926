package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import laminate.estimate.ResinUse;
import laminate.estimate.ZoneEstimate;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Status;
import laminate.part.infusion.InfusionPlan;
import laminate.plan.Inflow;
import laminate.process.LayUp;
import laminate.process.Workshop;
import laminate.process.flow.Filling;

/** Reckons one infusion. */
final class OneInfusion {
    private static final Figure USUAL_DENSITY =
            new Figure(1100, "liquid laminating resin, 1050 to 1120, from memory", Status.MEMORY);

    private final InfusionPlan plan;
    private final List<ZoneEstimate> zones;
    private final boolean ofPart;
    private final Workshop workshop;
    private final Optional<LayUp> layUp;
    private final GelReading gel;
    private final ViscosityReading viscosity;

    private OneInfusion(InfusionPlan plan, List<ZoneEstimate> zones, boolean ofPart, Workshop workshop) {
        this.plan = plan;
        this.zones = zones;
        this.ofPart = ofPart;
        this.workshop = workshop;
        this.layUp = layUp(zones, plan);
        this.gel = GelReading.of(layUp, workshop);
        this.viscosity = ViscosityReading.of(plan.viscosity(), layUp, gel);
    }

    /** The infusion that fills all zones given. */
    static Infusion ofPart(InfusionPlan plan, List<ZoneEstimate> zones, Workshop workshop) {
        return new OneInfusion(plan, zones, true, workshop).infusion();
    }

    /** The infusion of one zone, as often as there are such zones. */
    static Infusion ofZone(InfusionPlan plan, ZoneEstimate zone, Workshop workshop) {
        return new OneInfusion(plan, List.of(zone), false, workshop).infusion();
    }

    private static Optional<LayUp> layUp(List<ZoneEstimate> zones, InfusionPlan plan) {
        List<LayUp> all = zones.stream()
                .flatMap(zone -> laminate(zone, plan).layUp().stream())
                .toList();
        Set<String> resins = all.stream().map(each -> each.resin().id()).collect(Collectors.toSet());
        if (resins.size() > 1) {
            throw new IllegalArgumentException("one infusion takes one resin, not "
                    + resins.stream().sorted().collect(Collectors.joining(" and ")) + "; plan it by zone");
        }
        return all.stream().findFirst();
    }

    private static InfusedLaminate laminate(ZoneEstimate zone, InfusionPlan plan) {
        return InfusedLaminate.of(zone, plan.preform().porosity());
    }

    private Infusion infusion() {
        InfusedLaminate last = null;
        FlowModel model = null;
        Filling filling = null;
        for (ZoneEstimate zone : zones) {
            InfusedLaminate laminate = laminate(zone, plan);
            FlowModel candidate = model(laminate);
            Filling its = candidate.filling(1);
            if (filling == null || isLater(its.fillTime(), filling.fillTime())) {
                last = laminate;
                model = candidate;
                filling = its;
            }
        }
        return infusion(last, model, filling);
    }

    private static boolean isLater(OptionalDouble one, OptionalDouble other) {
        return one.orElse(Double.POSITIVE_INFINITY) > other.orElse(Double.POSITIVE_INFINITY);
    }

    private FlowModel model(InfusedLaminate laminate) {
        FlowBed bed = FlowBed.of(plan, laminate, viscosity.atStart().value());
        return new FlowModel(plan, bed, viscosity.law(), density().value(), area());
    }

    private Infusion infusion(InfusedLaminate laminate, FlowModel model, Filling filling) {
        FlowFigures figures = figures(laminate, model.bed());
        Fills fills = new Fills(model, Scatter.of(plan));
        Fill fill = fills.fill();
        GelMargin margin = GelVerdict.of(fill, gel, GelVerdict.share(plan.margin()));
        List<InfusedZone> infused = infused();
        HeldResin held = HeldReading.of(plan, density().value(), area(), infused, workshop);
        Optional<Drawn> drawn = drawn(model, filling, held, infused);
        List<String> names = zones.stream().map(zone -> zone.zone().name()).toList();
        int count = ofPart ? 1 : zones.get(0).zone().count();
        return new Infusion(
                ofPart ? Optional.empty() : Optional.of(laminate.name()),
                names,
                count,
                plan,
                figures,
                fill,
                new Inflow(names, count, drawn.map(Drawn::times).orElse(List.of())),
                margin,
                reach(fills, margin),
                fills.hose(),
                leak(),
                held,
                drawn.flatMap(this::buckets),
                InfusionCautions.of(model, figures, fill, zones, workshop, viscosity.isRiseUnknown()));
    }

    private FlowFigures figures(InfusedLaminate laminate, FlowBed bed) {
        return new FlowFigures(
                laminate.name(),
                Figure.stated(plan.drivingPressure()),
                viscosity.atStart(),
                viscosity.time(),
                density(),
                laminate.thickness(),
                bed.porosity(),
                bed.permeability(),
                FlowBed.isFromMemory(plan) ? OptionalDouble.of(TypicalPermeability.FACTOR) : OptionalDouble.empty(),
                bed.effectivePermeability(),
                bed.effectivePorosity());
    }

    private Figure density() {
        return layUp.flatMap(each -> each.resin().figures().find(Property.DENSITY_LIQUID))
                .orElse(USUAL_DENSITY);
    }

    /** Of all that one infusion fills, with the margin that is trimmed off (m²). */
    private double area() {
        double sum = 0;
        for (ZoneEstimate zone : zones) {
            double one = zone.zone().area() + zone.zone().marginArea();
            sum += ofPart ? one * zone.zone().count() : one;
        }
        return sum;
    }

    /** Each zone as often as this infusion fills one like it; a zone of several infused stages by its first. */
    private List<InfusedZone> infused() {
        List<InfusedZone> infused = new ArrayList<>();
        for (ZoneEstimate zone : zones) {
            Optional<ResinUse> use = InfusedZone.uses(zone).stream().findFirst();
            for (int i = 0; use.isPresent() && i < (ofPart ? zone.zone().count() : 1); i++) {
                infused.add(InfusedZone.of(zone, use.get(), workshop));
            }
        }
        return infused;
    }

    private static Optional<Reach> reach(Fills fills, GelMargin margin) {
        return margin.usableTime().isPresent()
                ? Optional.of(fills.reach(margin.usableTime().getAsDouble()))
                : Optional.empty();
    }

    private LeakLimit leak() {
        return plan.leak()
                .map(test -> new LeakLimit(test.drop(), test.time(), "stated by the user", Status.USER))
                .orElse(LeakLimit.USUAL);
    }

    /** Empty where it never fills. */
    private static Optional<Drawn> drawn(FlowModel model, Filling filling, HeldResin held, List<InfusedZone> infused) {
        if (filling.fillTime().isEmpty()) {
            return Optional.empty();
        }
        double bed = held.mesh().value();
        for (InfusedZone zone : infused) {
            bed += zone.inPart() + zone.trimmed() + zone.bag() + zone.evaporated();
        }
        double left = held.catchPot().value() + held.bucket().value();
        return Optional.of(new Drawn(model, filling, held.lines(), bed, left));
    }

    private Optional<Buckets> buckets(Drawn drawn) {
        if (gel.time().isEmpty()) {
            return Optional.empty();
        }
        BucketPlan mixes = new BucketPlan(
                layUp.orElseThrow(),
                gel.time().get().value(),
                workshop.shopFloor().mixing());
        return mixes.of(drawn, drawn.end());
    }
}
