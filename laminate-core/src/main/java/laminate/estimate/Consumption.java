package laminate.estimate;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.Trim;
import laminate.part.Zone;
import laminate.process.ConsumableUse;
import laminate.process.LayUp;
import laminate.process.Operation;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.unit.PriceBasis;

/** The time and the consumables that a part takes, counted off its zones; for all mouldings, trimmed margins included. */
final class Work {
    private final Part part;
    private double partArea;
    private double edge;
    private double coatArea;
    private double wetLayerArea;
    private double dryLayerArea;
    private double coreArea;
    private double baggedArea;
    private final Map<Process, Double> areaByProcess = new LinkedHashMap<>();

    Work(Part part) {
        this.part = part;
        part.zones().forEach(this::count);
    }

    private void count(Zone zone) {
        double times = (double) zone.count() * part.count();
        double area = (zone.area() + zone.trim().map(Trim::area).orElse(0.0)) * times;
        partArea += area;
        edge += zone.trim().map(Trim::edge).orElse(0.0) * times;
        coatArea += area * zone.coatings().stream().mapToInt(Coating::coats).sum();
        Set<Process> processes = EnumSet.noneOf(Process.class);
        for (Layer layer : zone.layers()) {
            countLayer(layer, area);
            layer.laying().map(LayUp::process).ifPresent(processes::add);
        }
        processes.forEach(process -> areaByProcess.merge(process, area, Double::sum));
        baggedArea += area * baggings(zone);
    }

    private void countLayer(Layer layer, double area) {
        if (layer instanceof LaminaLayer) {
            return;
        }
        boolean dry = layer.laying().orElseThrow().process() == Process.INFUSION;
        if (layer instanceof CoreLayer) {
            coreArea += area;
        } else if (dry) {
            dryLayerArea += area;
        } else {
            wetLayerArea += area;
        }
    }

    /** A zone is bagged once for each stage that goes under a bag. */
    private static long baggings(Zone zone) {
        return zone.layers().stream()
                .filter(layer -> layer.laying()
                        .map(layUp -> layUp.process() != Process.HAND_LAY_UP)
                        .orElse(false))
                .map(Layer::stage)
                .distinct()
                .count();
    }

    List<OperationTime> times(List<Operation> operations) {
        List<OperationTime> times = new ArrayList<>();
        for (Operation operation : operations) {
            double amount = amount(operation);
            if (amount > 0 && operation.time().value() > 0) {
                times.add(new OperationTime(
                        operation, amount, amount * operation.time().value()));
            }
        }
        return times;
    }

    private double amount(Operation operation) {
        double area = areaOf(operation.name());
        return switch (operation.basis()) {
            case AREA, LAYER_AREA -> area;
            case EDGE -> edge;
            case MOULDING -> area > 0 ? part.count() : 0;
        };
    }

    private double areaOf(String operation) {
        return switch (operation) {
            case Operation.GELCOAT -> coatArea;
            case Operation.LAY_UP -> wetLayerArea;
            case Operation.DRY_LAY_UP -> dryLayerArea;
            case Operation.CORE -> coreArea;
            case Operation.BAGGING -> baggedArea;
            case Operation.INFUSION -> areaByProcess.getOrDefault(Process.INFUSION, 0.0);
            case Operation.TRIMMING -> edge > 0 ? partArea : 0;
            default -> partArea;
        };
    }

    /** Consumables by id; a list of the workshop's own is counted once, the usual lists once for each process. */
    List<MaterialQuantity> consumables(Workshop workshop, List<ResinQuantity> resins) {
        Map<String, MaterialQuantity> byId = new LinkedHashMap<>();
        if (workshop.consumables().own().isPresent()) {
            double mixed = resins.stream().mapToDouble(ResinQuantity::mixed).sum();
            addUses(byId, workshop.consumables().own().get(), partArea, mixed);
            return List.copyOf(byId.values());
        }
        areaByProcess.forEach((process, area) -> {
            double mixed = resins.stream()
                    .filter(resin -> resin.use().process() == process)
                    .mapToDouble(ResinQuantity::mixed)
                    .sum();
            addUses(byId, workshop.consumables().uses(process), area, mixed);
        });
        return List.copyOf(byId.values());
    }

    private void addUses(Map<String, MaterialQuantity> byId, List<ConsumableUse> uses, double area, double mixed) {
        for (ConsumableUse use : uses) {
            double amount = use.amount().value()
                    * switch (use.basis()) {
                        case AREA -> area;
                        case RESIN -> mixed;
                        case EDGE -> edge;
                        case MOULDING -> part.count();
                    };
            if (amount > 0) {
                byId.merge(use.material(), quantity(use, amount), Work::sum);
            }
        }
    }

    private static MaterialQuantity quantity(ConsumableUse use, double amount) {
        return new MaterialQuantity(
                use.material(),
                "consumable",
                0,
                only(use, PriceBasis.KG, amount),
                only(use, PriceBasis.M2, amount),
                only(use, PriceBasis.M, amount),
                OptionalDouble.empty(),
                only(use, PriceBasis.LITRE, amount / 1000),
                only(use, PriceBasis.PIECE, amount));
    }

    private static OptionalDouble only(ConsumableUse use, PriceBasis measure, double amount) {
        return use.measure() == measure ? OptionalDouble.of(amount) : OptionalDouble.empty();
    }

    private static MaterialQuantity sum(MaterialQuantity one, MaterialQuantity other) {
        return new MaterialQuantity(
                one.material(),
                one.kind(),
                0,
                sum(one.mass(), other.mass()),
                sum(one.area(), other.area()),
                sum(one.length(), other.length()),
                one.rollWidth(),
                sum(one.volume(), other.volume()),
                sum(one.pieces(), other.pieces()));
    }

    private static OptionalDouble sum(OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() ? one : other;
        }
        return OptionalDouble.of(one.getAsDouble() + other.getAsDouble());
    }
}
