package laminate.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.LaidCoating;
import laminate.estimate.LaidLayer;
import laminate.estimate.LayerCut;
import laminate.estimate.LayerRun;
import laminate.estimate.ResinUse;
import laminate.estimate.ZoneEstimate;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.part.Zone;
import laminate.process.Loss;
import laminate.process.Operation;
import laminate.process.Process;
import laminate.process.Workshop;

/**
 * The stages of one zone by itself: coats at the mould face one by one, wet runs of layers no thicker than their resin
 * bears, cores, what is infused in one, and coats on the inner face.
 */
final class ZoneStages {
    private final int index;
    private final ZoneEstimate estimate;
    private final List<LayerCut> cuts;
    private final int mouldings;
    private final Workshop workshop;
    private final List<StageGroup> stages = new ArrayList<>();

    private ZoneStages(int index, ZoneEstimate estimate, List<LayerCut> cuts, int mouldings, Workshop workshop) {
        this.index = index;
        this.estimate = estimate;
        this.cuts = cuts;
        this.mouldings = mouldings;
        this.workshop = workshop;
    }

    /**
     * The stages of a zone.
     *
     * @param index the place of the zone in the part, from 0
     * @param zone the zone
     * @param cuts the lines of the cutting list that are this zone's, one for each layer
     * @param mouldings how many mouldings the cutting list is for
     * @param workshop the workshop
     */
    static List<StageGroup> of(int index, ZoneEstimate zone, List<LayerCut> cuts, int mouldings, Workshop workshop) {
        ZoneStages found = new ZoneStages(index, zone, cuts, mouldings, workshop);
        found.addCoats(true);
        found.addLayers();
        found.addCoats(false);
        return found.stages;
    }

    private void addCoats(boolean atMouldFace) {
        for (LaidCoating laid : estimate.coatings()) {
            for (int coat = 1; coat <= laid.coating().coats(); coat++) {
                if (laid.coating().atMouldFace() == atMouldFace) {
                    stages.add(coat(laid, coat));
                }
            }
        }
    }

    private StageGroup coat(LaidCoating laid, int number) {
        Coating coating = laid.coating();
        WorkItem item = new WorkItem(
                index,
                ResinUse.of(coating, estimate.zone()),
                Optional.empty(),
                Operation.GELCOAT,
                workArea(),
                laid.massPerArea().planned() / coating.coats() * workArea(),
                0,
                Optional.empty(),
                shown(laid, number));
        String word = coating.material().use().word();
        String name = number == 1 ? word : word + ", coat " + number;
        return new StageGroup(
                coating.atMouldFace() ? Stage.Kind.MOULD_COAT : Stage.Kind.INNER_COAT, name, List.of(item));
    }

    private StageLayer shown(LaidCoating laid, int coat) {
        return new StageLayer(
                estimate.zone().name(),
                coat,
                laid.coating().material().id(),
                estimate.zone().count(),
                OptionalDouble.empty(),
                false,
                workArea(),
                0,
                laid.thickness().planned() / laid.coating().coats(),
                0);
    }

    private void addLayers() {
        List<LayerRun> runs = LayerRun.of(estimate.layers());
        int run = 0;
        int place = 0;
        while (place < estimate.layers().size()) {
            if (run < runs.size() && runs.get(run).first() == place) {
                addRun(runs.get(run));
                place += runs.get(run++).layers().size();
            } else {
                addSingle(place++);
            }
        }
    }

    /** What is infused is laid dry, so that its thickness does not part it. */
    private void addRun(LayerRun run) {
        for (LayerRun part : run.stages()) {
            Layer first = part.layers().get(0).layer();
            List<WorkItem> items = new ArrayList<>();
            for (int i = 0; i < part.layers().size(); i++) {
                items.add(item(part.first() + i));
            }
            add(isInfused(first) ? Stage.Kind.INFUSION : Stage.Kind.LAMINATE, first, items);
        }
    }

    private void addSingle(int place) {
        Layer layer = estimate.layers().get(place).layer();
        if (!(layer instanceof LaminaLayer)) {
            add(isInfused(layer) ? Stage.Kind.INFUSION : Stage.Kind.CORE, layer, List.of(item(place)));
        }
    }

    private void add(Stage.Kind kind, Layer first, List<WorkItem> items) {
        StageGroup group = new StageGroup(kind, name(kind, first), items);
        StageGroup last = stages.isEmpty() ? group : stages.get(stages.size() - 1);
        if (last != group && kind == Stage.Kind.INFUSION && sharesBag(last, group)) {
            List<WorkItem> joint = new ArrayList<>(last.items());
            joint.addAll(items);
            stages.set(stages.size() - 1, new StageGroup(kind, group.name(), joint));
        } else {
            stages.add(group);
        }
    }

    private static boolean sharesBag(StageGroup last, StageGroup next) {
        return last.kind() == Stage.Kind.INFUSION
                && last.name().equals(next.name())
                && last.first().use().equals(next.first().use());
    }

    private static String name(Stage.Kind kind, Layer layer) {
        String name = ResinUse.of(layer).use();
        boolean unnamed = layer.stage().isEmpty();
        return switch (kind) {
            case CORE -> unnamed ? "core" : name + ", core";
            case INFUSION -> unnamed ? "infusion" : name;
            default -> name;
        };
    }

    private static boolean isInfused(Layer layer) {
        return layer.laying().orElseThrow().process() == Process.INFUSION;
    }

    private WorkItem item(int place) {
        LaidLayer laid = estimate.layers().get(place);
        Layer layer = laid.layer();
        double area = cuts.get(place).area() / mouldings;
        Optional<ResinUse> bed =
                layer instanceof CoreLayer core ? core.bed().map(paste -> ResinUse.of(paste, core)) : Optional.empty();
        return new WorkItem(
                index,
                ResinUse.of(layer),
                bed,
                operation(layer),
                workArea(),
                laid.resinMass().planned() * area,
                laid.bedMass() * area,
                Optional.of(laid),
                shown(place + 1, laid, area));
    }

    private static String operation(Layer layer) {
        if (layer instanceof CoreLayer) {
            return Operation.CORE;
        }
        return isInfused(layer) ? Operation.DRY_LAY_UP : Operation.LAY_UP;
    }

    private StageLayer shown(int number, LaidLayer laid, double area) {
        Layer layer = laid.layer();
        return new StageLayer(
                estimate.zone().name(),
                number,
                layer.material(),
                estimate.zone().count(),
                angle(layer),
                layer instanceof ReinforcementLayer reinforcement && reinforcement.turned(),
                area,
                layer instanceof ReinforcementLayer reinforcement
                        ? workshop.loss(reinforcement.layUp().process(), Loss.LAPS)
                                .value()
                        : 0,
                laid.thickness().planned(),
                0);
    }

    private static OptionalDouble angle(Layer layer) {
        if (layer instanceof ReinforcementLayer reinforcement) {
            return OptionalDouble.of(reinforcement.angle());
        }
        return layer instanceof CoreLayer core ? OptionalDouble.of(core.angle()) : OptionalDouble.empty();
    }

    private double workArea() {
        Zone zone = estimate.zone();
        return (zone.area() + zone.marginArea()) * zone.count();
    }
}
