package laminate.plan.infusion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.part.infusion.BedCompaction;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.process.flow.Anisotropy;
import laminate.process.flow.Drive;
import laminate.process.flow.Feed;
import laminate.process.flow.Filling;
import laminate.process.flow.FlowPath;
import laminate.process.flow.FlowSegment;
import laminate.process.flow.Hose;
import laminate.process.flow.MeshedLaminate;
import laminate.process.flow.RisingViscosity;
import laminate.process.flow.SoftBag;
import laminate.process.flow.Supply;

/**
 * The filling of one laminate by one plan, at its permeability or at another.
 *
 * @param plan the plan
 * @param bed what the resin runs through
 * @param viscosity of the resin
 * @param density ρ of the liquid resin (kg/m³)
 * @param area that one feed serves, with the margin that is trimmed off (m²)
 */
record FlowModel(InfusionPlan plan, FlowBed bed, RisingViscosity viscosity, double density, double area) {

    /** The filling with all permeabilities multiplied by a factor. */
    Filling filling(double factor) {
        return isSoft() ? softBag(factor) : Filling.of(path(factor, 1, supply()), drive(), viscosity);
    }

    Filling withoutHose() {
        return isSoft() ? softBag(1) : Filling.of(path(1, 1, Optional.empty()), drive(), viscosity);
    }

    /** The filling of a path of the same shape and another size. */
    Filling scaled(double factor, double scale) {
        return Filling.of(path(factor, scale, supply()), drive(), viscosity);
    }

    /**
     * Whether the giving way of the bed is reckoned: from a feed line through one bed on the level, hoses left out. Elsewhere
     * the bed is taken as rigid, which mostly fills later; see {@link SoftBag} for where it does not.
     */
    boolean isSoft() {
        return plan.preform().compaction().isPresent()
                && plan.path().feed() == FeedKind.LINE
                && plan.path().rise() == 0
                && bed.dry().size() == 1
                && plan.lines().hose().isEmpty();
    }

    private Filling softBag(double factor) {
        FlowSegment laminate = bed.dry().get(0);
        BedCompaction law = plan.preform().compaction().orElseThrow();
        SoftBag bag = new SoftBag(
                1 - laminate.porosity(),
                law.exponent(),
                law.leastPressure().orElse(SoftBag.USUAL_LEAST_PRESSURE),
                laminate.permeability() * factor,
                bed.thickness(),
                bed.mesh(factor));
        return Filling.softBag(bag, laminate.length(), plan.drivingPressure(), viscosity);
    }

    private Drive drive() {
        return new Drive(plan.drivingPressure(), density);
    }

    private FlowPath path(double factor, double scale, Optional<Supply> supply) {
        List<FlowSegment> way = bed.segments(factor).stream()
                .map(segment -> segment.withLength(segment.length() * scale))
                .toList();
        return new FlowPath(feed(scale), equivalent(way, factor), plan.path().rise() * scale, supply);
    }

    private Feed feed(double scale) {
        InfusionPath path = plan.path();
        return switch (path.feed()) {
            case LINE -> Feed.LINE;
            case CENTRE -> new Feed.Centre(path.feedRadius().orElseThrow() * scale);
            case RIM -> new Feed.Rim(path.feedRadius().orElseThrow() * scale);
        };
    }

    private Optional<Supply> supply() {
        return plan.lines().hose().map(stated -> {
            List<Hose> hoses = List.of(stated);
            return plan.path().feed() == FeedKind.LINE
                    ? Supply.toLine(hoses, area / plan.path().flowLength(), bed.totalThickness())
                    : Supply.toDisc(hoses, bed.totalThickness());
        });
    }

    /** The way through an even bed that takes as long as that along a bed which lets resin through less well across. */
    private List<FlowSegment> equivalent(List<FlowSegment> way, double factor) {
        Optional<Anisotropy> uneven = bed.anisotropy(factor);
        if (uneven.isEmpty()) {
            return way;
        }
        double radius = plan.path().feedRadius().orElseThrow();
        double length = uneven.get().equivalentRadius(radius + way.get(0).length()) - radius;
        if (!(length > 0)) {
            throw new IllegalArgumentException(
                    "a feed radius of " + radius + " m is too large for a permeability across of "
                            + bed.across().orElseThrow() + " m²");
        }
        return List.of(
                new FlowSegment(length, uneven.get().effective(), way.get(0).porosity()));
    }

    /** From a position in the even bed to one along the flow (m). */
    double position(double equivalent) {
        Optional<Anisotropy> uneven = bed.anisotropy(1);
        if (uneven.isEmpty()) {
            return equivalent;
        }
        double radius = plan.path().feedRadius().orElseThrow();
        return Math.max(0, uneven.get().axisAlong(radius + equivalent) - radius);
    }

    /** The laminate and its mesh, where both are one and the same all along and the thickness lets resin through as known. */
    Optional<MeshedLaminate> meshed() {
        OptionalDouble through = plan.preform().throughPermeability();
        if (bed.mesh().isEmpty() || through.isEmpty()) {
            return Optional.empty();
        }
        FlowSegment last = bed.dry().get(bed.dry().size() - 1);
        return Optional.of(new MeshedLaminate(
                bed.mesh().get(), bed.thickness(), last.permeability(), through.getAsDouble(), last.porosity()));
    }
}
