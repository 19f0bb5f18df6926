package laminate.part.infusion;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.process.flow.FlowMesh;

/**
 * How a part or a zone is to be infused.
 *
 * @param path the way of the resin
 * @param drivingPressure Δp, the atmosphere on the resin in the bucket less the pressure at the vent (Pa)
 * @param viscosity how thick the resin is
 * @param preform the dry layers
 * @param mesh the flow mesh over them, empty for none
 * @param lines hoses, spiral tube and catch pot
 * @param margin the share of the gel time within which it has to be full (1), empty for the usual
 * @param leak the drop test that the bag has to pass, empty for the usual
 */
public record InfusionPlan(
        InfusionPath path,
        double drivingPressure,
        ResinViscosity viscosity,
        Preform preform,
        Optional<FlowMesh> mesh,
        FeedLines lines,
        OptionalDouble margin,
        Optional<LeakTest> leak) {

    /** Room for rounding where lengths have to add up, of their sum (1). */
    private static final double ROUNDING = 1e-6;

    /**
     * Checks that the parts of the plan go together.
     *
     * @throws IllegalArgumentException if the driving pressure is not above zero, the margin not above 0 and at most 1,
     *     the segments do not add up to the flow length, or a permeability across is stated for another than a centre feed
     */
    public InfusionPlan {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(viscosity, "viscosity");
        Objects.requireNonNull(preform, "preform");
        Objects.requireNonNull(mesh, "mesh");
        Objects.requireNonNull(lines, "lines");
        Objects.requireNonNull(leak, "leak");
        Checks.positive("driving pressure", drivingPressure, "Pa");
        if (margin.isPresent() && !(margin.getAsDouble() > 0 && margin.getAsDouble() <= 1)) {
            throw new IllegalArgumentException("margin must be above 0 and at most 1, not " + margin.getAsDouble());
        }
        if (preform.crossPermeability().isPresent() && path.feed() != FeedKind.CENTRE) {
            throw new IllegalArgumentException("a permeability across belongs to a centre feed, not to a "
                    + path.feed().word() + " feed");
        }
        checkSegments(preform, path.flowLength());
    }

    private static void checkSegments(Preform preform, double flowLength) {
        double sum = 0;
        for (Segment segment : preform.segments()) {
            sum += segment.length();
        }
        if (!preform.segments().isEmpty() && Math.abs(sum - flowLength) > ROUNDING * flowLength) {
            throw new IllegalArgumentException(
                    "the segments are " + sum + " m long together, the flow length is " + flowLength + " m");
        }
    }

    /**
     * A plan of path, pressure and layers, with the resin's own viscosity, without mesh, with nothing said of the lines.
     *
     * @param path the way of the resin
     * @param drivingPressure Δp (Pa)
     * @param preform the dry layers
     * @return the plan
     * @throws IllegalArgumentException as the constructor
     */
    public static InfusionPlan of(InfusionPath path, double drivingPressure, Preform preform) {
        return new InfusionPlan(
                path,
                drivingPressure,
                ResinViscosity.OF_THE_RESIN,
                preform,
                Optional.empty(),
                FeedLines.NOT_STATED,
                OptionalDouble.empty(),
                Optional.empty());
    }

    /**
     * This plan with another viscosity.
     *
     * @param stated how thick the resin is
     * @return the plan
     */
    public InfusionPlan withViscosity(ResinViscosity stated) {
        return new InfusionPlan(path, drivingPressure, stated, preform, mesh, lines, margin, leak);
    }

    /**
     * This plan with a flow mesh.
     *
     * @param laid the mesh
     * @return the plan
     */
    public InfusionPlan withMesh(FlowMesh laid) {
        return new InfusionPlan(path, drivingPressure, viscosity, preform, Optional.of(laid), lines, margin, leak);
    }

    /**
     * This plan with its lines.
     *
     * @param stated hoses, spiral tube and catch pot
     * @return the plan
     */
    public InfusionPlan withLines(FeedLines stated) {
        return new InfusionPlan(path, drivingPressure, viscosity, preform, mesh, stated, margin, leak);
    }
}
