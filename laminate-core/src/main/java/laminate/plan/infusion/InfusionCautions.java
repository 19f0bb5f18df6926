package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import laminate.estimate.Caution;
import laminate.estimate.PartEstimate;
import laminate.estimate.WorkCautions;
import laminate.estimate.ZoneEstimate;
import laminate.material.Status;
import laminate.part.CoreLayer;
import laminate.part.infusion.FeedKind;
import laminate.process.Process;
import laminate.process.Workshop;
import laminate.unit.Significant;

/** What to mind of one infusion. */
final class InfusionCautions {
    private static final String COMMON = "common practice, no source";

    private static final Caution AFTER = common(
            "Shut the feed when it is full and keep the vacuum until the resin has gelled. Resin left in bucket and"
                    + " catch pot gets hot: stand both where that does no harm.");

    /** Temperatures at which the viscosity of a list holds (K). */
    private static final double COOL = 293.15;

    private static final double WARM = 298.15;

    private final List<Caution> cautions = new ArrayList<>();
    private final FlowModel model;
    private final FlowFigures figures;

    private InfusionCautions(FlowModel model, FlowFigures figures) {
        this.model = model;
        this.figures = figures;
    }

    static List<Caution> of(
            FlowModel model,
            FlowFigures figures,
            Fill fill,
            List<ZoneEstimate> zones,
            Workshop workshop,
            boolean riseUnknown) {
        InfusionCautions found = new InfusionCautions(model, figures);
        found.porosity(zones);
        found.permeability();
        found.mesh(fill);
        found.compaction();
        found.viscosity(workshop);
        found.rise(riseUnknown);
        found.cores(zones);
        found.stages(zones);
        found.fronts();
        return List.copyOf(found.cautions);
    }

    /** What to mind of all infusions of a part. */
    static List<Caution> ofAll(PartEstimate estimate, List<Infusion> infusions) {
        List<Caution> cautions = new ArrayList<>();
        for (ZoneEstimate zone : estimate.zones()) {
            String name = zone.zone().name();
            boolean filled = infusions.stream().anyMatch(each -> each.zones().contains(name));
            if (!filled && !infusions.isEmpty() && !InfusedZone.uses(zone).isEmpty()) {
                cautions.add(
                        common("zone " + name + " is laid by infusion, but nothing says how; add infusion: to it."));
            }
        }
        if (!infusions.isEmpty()) {
            cautions.add(AFTER);
        }
        return List.copyOf(cautions);
    }

    /** A file that contradicts itself is refused; here another process or schedule may have been asked for. */
    private void porosity(List<ZoneEstimate> zones) {
        OptionalDouble stated = model.plan().preform().porosity();
        for (ZoneEstimate zone : zones) {
            if (InfusedLaminate.contradicts(zone, stated)) {
                double fibre = zone.fibreVolumeFraction(Process.INFUSION).orElseThrow();
                cautions.add(common("zone " + zone.zone().name() + ": a porosity of " + percent(stated.orElseThrow())
                        + " is stated, but its infused layers have " + percent(fibre) + " fibre by volume and so "
                        + percent(1 - fibre)
                        + ", which is reckoned with. Permeability changes with it: state what it was"
                        + " measured at, as permeability-at:."));
            }
        }
    }

    private static String percent(double share) {
        return Significant.format(share * 100, 3) + " %";
    }

    private void permeability() {
        if (figures.isPermeabilityFromMemory()) {
            add(
                    "Permeability is an order of magnitude from memory, so that the fill time may be a third or three times"
                            + " as long. Do not infuse by it: " + PermeabilityReading.ASK + ".",
                    COMMON,
                    Status.MEMORY);
        } else {
            add(
                    "Permeability scatters by about 40 % between laboratories; the fill time does so too.",
                    "May et al., third in-plane permeability benchmark, Composites Part A 121 (2019), abstract",
                    Status.PRINTED);
        }
    }

    private void mesh(Fill fill) {
        if (model.bed().mesh().isEmpty()) {
            return;
        }
        if (fill.lag().isEmpty()) {
            add(
                    "How far the laminate lags behind the mesh is not known; add through-permeability: to the infusion.",
                    COMMON,
                    Status.COMMON_PRACTICE);
            return;
        }
        double lag = fill.lag().getAsDouble();
        add(
                "The laminate is " + Significant.format(lag * 1000, 3)
                        + " mm behind the mesh: end the mesh at least so far"
                        + " short of the vent, or resin reaches the vent above dry layers.",
                "lead-lag formula, derived; 2 to 23 % long against a two-dimensional solution",
                Status.COMMON_PRACTICE);
        if (lag >= model.plan().path().flowLength()) {
            cautions.add(common(
                    "The lag is longer than the flow length: the laminate fills from the mesh alone, and the time of an even"
                            + " bed does not hold."));
        }
    }

    private void compaction() {
        if (model.plan().preform().compaction().isPresent() && !model.isSoft()) {
            cautions.add(common(
                    "The bed is taken as rigid although its compaction is stated: the giving way of the bag is reckoned for a"
                            + " line feed through one bed on the level without a hose. A bed that"
                            + " gives way fills sooner, save under a mesh that carries nearly all of the flow."));
        }
    }

    private void viscosity(Workshop workshop) {
        if (figures.viscosity().value() > WorkCautions.THICKEST_TO_INFUSE) {
            add(
                    "At " + Significant.format(figures.viscosity().value() * 1000, 3)
                            + " mPa·s the resin is thicker than the 100 to 400 mPa·s that fills a bag.",
                    "Plymouth University, MATS347, resin viscosities for vacuum infusion",
                    Status.PRINTED);
        }
        double temperature = workshop.plannedTemperature();
        boolean listed = figures.viscosity().status() != Status.USER;
        if (listed && (temperature < COOL - 1e-9 || temperature > WARM + 1e-9)) {
            add(
                    "The viscosity is one of 20 to 25 °C, the workshop is at "
                            + Significant.format(temperature - 273.15, 3)
                            + " °C: by each K colder polyester and vinylester are 4 to 7 % thicker, epoxy 7 to 10 %.",
                    "activation energies of flow, from memory",
                    Status.MEMORY);
        }
    }

    private void rise(boolean unknown) {
        if (unknown) {
            cautions.add(common(
                    "How soon the resin thickens is not known, as its gel time is not: the fill time is that of fresh resin, and"
                            + " it may set on the way."));
        }
    }

    private void cores(List<ZoneEstimate> zones) {
        boolean cored = zones.stream()
                .flatMap(zone -> zone.zone().layers().stream())
                .anyMatch(layer -> layer instanceof CoreLayer && layer.isLaidBy(Process.INFUSION));
        if (cored) {
            add(
                    "The skins on both sides of a core are reckoned as one bed; that the resin finds its way through holes or"
                            + " round the edges, and runs ahead in grooves, is not reckoned.",
                    COMMON,
                    Status.COMMON_PRACTICE);
        }
    }

    private void stages(List<ZoneEstimate> zones) {
        if (zones.stream().anyMatch(zone -> InfusedZone.uses(zone).size() > 1)) {
            cautions.add(
                    common("Infused layers of several stages or resins are reckoned as if they were filled together."));
        }
    }

    private void fronts() {
        if (model.plan().path().feed() == FeedKind.LINE) {
            cautions.add(common("Two fronts that meet shut in air: between two feed lines lies a vent."));
        }
    }

    private static Caution common(String text) {
        return new Caution(Caution.Kind.SCHEDULE, text, COMMON, Status.COMMON_PRACTICE);
    }

    private void add(String text, String source, Status status) {
        cautions.add(new Caution(Caution.Kind.SCHEDULE, text, source, status));
    }
}
