package laminate.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Item;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.Operation;
import laminate.process.Process;

/**
 * The areas and lengths that work is counted by, and the time it takes; for all mouldings, trimmed margins included.
 *
 * <p>Areas are in m², the edge in m.
 */
final class WorkCount {
    private final int mouldings;
    private final double items;
    private final double stages;
    private double partArea;
    private double edge;
    private double coatArea;
    private double wetLayerArea;
    private double dryLayerArea;
    private double coreArea;
    private double baggedArea;
    private final Map<Process, Double> areaByProcess = new EnumMap<>(Process.class);

    WorkCount(Part part) {
        this.mouldings = part.count();
        this.items = (double) mouldings * items(part);
        this.stages = (double) mouldings * stages(part);
        for (Zone zone : part.zones()) {
            count(zone);
        }
    }

    int mouldings() {
        return mouldings;
    }

    double partArea() {
        return partArea;
    }

    double edge() {
        return edge;
    }

    /** The area that each process covers, whatever the number of its layers. */
    Map<Process, Double> areaByProcess() {
        return areaByProcess;
    }

    private static long items(Part part) {
        long items = 0;
        for (Item item : part.items()) {
            items += item.count();
        }
        return items;
    }

    /** Stages of one moulding: those of one name in several zones are laid together. */
    private static int stages(Part part) {
        Set<String> stages = new HashSet<>();
        for (Zone zone : part.zones()) {
            for (Layer layer : zone.layers()) {
                if (layer.laying().isPresent()) {
                    stages.add(layer.stage());
                }
            }
        }
        return stages.size();
    }

    private void count(Zone zone) {
        double times = (double) zone.count() * mouldings;
        double area = (zone.area() + zone.marginArea()) * times;
        partArea += area;
        edge += zone.trim().isPresent() ? zone.trim().get().edge() * times : 0;
        coatArea += area * coats(zone);
        baggedArea += area * baggings(zone);
        Set<Process> processes = EnumSet.noneOf(Process.class);
        for (Layer layer : zone.layers()) {
            countLayer(layer, area);
            if (layer.laying().isPresent()) {
                processes.add(layer.laying().get().process());
            }
        }
        for (Process process : processes) {
            areaByProcess.put(process, areaByProcess.getOrDefault(process, 0.0) + area);
        }
    }

    private static int coats(Zone zone) {
        int coats = 0;
        for (Coating coating : zone.coatings()) {
            coats += coating.coats();
        }
        return coats;
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
    private static int baggings(Zone zone) {
        Set<String> stages = new HashSet<>();
        for (Layer layer : zone.layers()) {
            if (layer.laying().isPresent() && layer.laying().get().process() != Process.HAND_LAY_UP) {
                stages.add(layer.stage());
            }
        }
        return stages.size();
    }

    /** The time of every operation that the part calls for, in the order of the list. */
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
        double area = area(operation);
        return switch (operation.basis()) {
            case AREA, LAYER_AREA -> area;
            case EDGE -> edge;
            case STAGE -> area > 0 ? stages : 0;
            case ITEM -> area > 0 ? items : 0;
            case MOULDING -> area > 0 ? mouldings : 0;
        };
    }

    private double area(Operation operation) {
        return switch (operation.name()) {
            case Operation.GELCOAT -> coatArea;
            case Operation.LAY_UP -> wetLayerArea;
            case Operation.DRY_LAY_UP -> dryLayerArea;
            case Operation.CORE -> coreArea;
            case Operation.BAGGING -> baggedArea;
            case Operation.INFUSION -> areaByProcess.getOrDefault(Process.INFUSION, 0.0);
            case Operation.TRIMMING -> edge > 0 ? partArea : 0;
            default -> operation.basis() == Operation.Basis.LAYER_AREA ? wetLayerArea + dryLayerArea : partArea;
        };
    }
}
