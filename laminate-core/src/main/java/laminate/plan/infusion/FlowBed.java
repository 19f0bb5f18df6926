package laminate.plan.infusion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Segment;
import laminate.process.flow.Anisotropy;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.FlowSegment;
import laminate.process.flow.MeshedLaminate;

/**
 * What the resin runs through from feed to vent.
 *
 * @param dry the stretches of the laminate, without mesh
 * @param across permeability of the laminate across the flow (m²), empty where it is the same
 * @param thickness of the laminate (m)
 * @param mesh on top of it
 * @param permeability of the laminate, over the whole way (m²)
 * @param porosity of the laminate, over the whole way (1)
 */
record FlowBed(
        List<FlowSegment> dry,
        OptionalDouble across,
        double thickness,
        Optional<FlowMesh> mesh,
        Figure permeability,
        Figure porosity) {

    FlowBed {
        dry = List.copyOf(dry);
    }

    static FlowBed of(InfusionPlan plan, InfusedLaminate laminate, double viscosity) {
        Optional<Figure> permeability =
                plan.preform().permeability().map(stated -> PermeabilityReading.of(stated, plan, laminate, viscosity));
        List<FlowSegment> dry = segments(plan, laminate, permeability);
        boolean even = plan.preform().segments().isEmpty();
        if (!even && plan.preform().crossPermeability().isPresent()) {
            throw new IllegalArgumentException("a permeability across goes with one bed, not with segments");
        }
        return new FlowBed(
                dry,
                plan.preform().crossPermeability(),
                laminate.thickness().value(),
                plan.mesh(),
                even ? permeability.orElseThrow() : ofSegments(permeability(dry), plan, permeability),
                even ? laminate.porosity() : ofSegments(porosity(dry), plan, permeability));
    }

    private static List<FlowSegment> segments(
            InfusionPlan plan, InfusedLaminate laminate, Optional<Figure> permeability) {
        double porosity = laminate.porosity().value();
        if (plan.preform().segments().isEmpty()) {
            double along = permeability.orElseThrow().value();
            return List.of(new FlowSegment(plan.path().flowLength(), along, porosity));
        }
        List<FlowSegment> dry = new ArrayList<>();
        for (Segment segment : plan.preform().segments()) {
            double along = segment.permeability()
                    .orElseGet(() -> permeability.orElseThrow().value());
            dry.add(new FlowSegment(segment.length(), along, segment.porosity().orElse(porosity)));
        }
        return dry;
    }

    /** As uncertain as the least certain permeability in it. */
    private static Figure ofSegments(double value, InfusionPlan plan, Optional<Figure> rest) {
        boolean needsRest = plan.preform().segments().stream()
                .anyMatch(segment -> segment.permeability().isEmpty());
        Status status = needsRest ? rest.orElseThrow().status() : Status.USER;
        return new Figure(value, "over the " + plan.preform().segments().size() + " segments of the plan", status);
    }

    /** Whether any stretch takes its permeability from memory. */
    static boolean isFromMemory(InfusionPlan plan) {
        boolean needed = plan.preform().segments().isEmpty()
                || plan.preform().segments().stream()
                        .anyMatch(segment -> segment.permeability().isEmpty());
        return needed && plan.preform().permeability().stream().anyMatch(PermeabilitySource.Typical.class::isInstance);
    }

    /** The stretches with their mesh, all permeabilities multiplied by a factor. */
    List<FlowSegment> segments(double factor) {
        return dry.stream().map(segment -> withMesh(segment, factor)).toList();
    }

    /** Laminate and mesh side by side: K = ΣKh/Σh, φ = Σφh/Σh. */
    private FlowSegment withMesh(FlowSegment segment, double factor) {
        double conducted = segment.permeability();
        double pores = segment.porosity();
        if (mesh.isPresent()) {
            FlowMesh net = mesh.get();
            conducted = MeshedLaminate.uniform(net.thickness(), net.permeability(), thickness, conducted);
            pores = MeshedLaminate.uniform(net.thickness(), net.porosity(), thickness, pores);
        }
        return new FlowSegment(segment.length(), conducted * factor, pores);
    }

    /** The mesh with its permeability multiplied by a factor. */
    Optional<FlowMesh> mesh(double factor) {
        return mesh.map(net -> new FlowMesh(net.thickness(), net.permeability() * factor, net.porosity()));
    }

    /** Laminate and mesh along the flow and across it, where they differ; a mesh is alike both ways. */
    Optional<Anisotropy> anisotropy(double factor) {
        if (across.isEmpty()) {
            return Optional.empty();
        }
        FlowSegment turned = new FlowSegment(1, across.getAsDouble(), porosity.value());
        return Optional.of(new Anisotropy(
                segments(factor).get(0).permeability(), withMesh(turned, factor).permeability()));
    }

    double effectivePermeability() {
        return permeability(segments(1));
    }

    double effectivePorosity() {
        return porosity(segments(1));
    }

    /** Thickness of laminate and mesh (m). */
    double totalThickness() {
        return thickness + mesh.map(FlowMesh::thickness).orElse(0.0);
    }

    /** Of stretches one after the other: L/Σ(Lj/Kj). */
    private static double permeability(List<FlowSegment> way) {
        if (way.size() == 1) {
            return way.get(0).permeability();
        }
        double length = 0;
        double resistance = 0;
        for (FlowSegment segment : way) {
            length += segment.length();
            resistance += segment.length() / segment.permeability();
        }
        return length / resistance;
    }

    private static double porosity(List<FlowSegment> way) {
        if (way.size() == 1) {
            return way.get(0).porosity();
        }
        double length = 0;
        double pores = 0;
        for (FlowSegment segment : way) {
            length += segment.length();
            pores += segment.length() * segment.porosity();
        }
        return pores / length;
    }
}
