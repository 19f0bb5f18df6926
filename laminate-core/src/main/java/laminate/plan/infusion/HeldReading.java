package laminate.plan.infusion;

import java.util.List;
import java.util.Optional;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.part.infusion.FeedLines;
import laminate.part.infusion.InfusionPlan;
import laminate.process.Loss;
import laminate.process.Process;
import laminate.process.ResinUptake;
import laminate.process.Workshop;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.Hose;

/** What one infusion leaves in lines, mesh, pot and grooves: by its plan, and by the workshop's losses where it is silent. */
final class HeldReading {
    private static final Figure NO_HOSE = none("the plan names none");
    private static final Figure NO_MESH = none("the plan has no flow mesh");

    private HeldReading() {}

    /** The zones are those of the infusion, each once for every time that it is filled. */
    static HeldResin of(InfusionPlan plan, double density, double area, List<InfusedZone> zones, Workshop workshop) {
        FeedLines lines = plan.lines();
        boolean silent = lines.hose().isEmpty() && lines.spiral().isEmpty();
        double openings = zones.stream().mapToDouble(InfusedZone::openings).sum();
        double catchPot = zones.stream().mapToDouble(InfusedZone::catchPot).sum();
        return new HeldResin(
                silent ? usual(workshop, Loss.LINES) : full(lines.hose(), density),
                full(lines.spiral(), density),
                plan.mesh().map(mesh -> full(mesh, density, area)).orElse(NO_MESH),
                lines.catchPot().isPresent()
                        ? Figure.stated(lines.catchPot().getAsDouble())
                        : share(workshop.loss(Process.INFUSION, Loss.RESIN), catchPot),
                usual(workshop, Loss.BUCKET),
                openings);
    }

    private static Figure usual(Workshop workshop, Loss loss) {
        Figure figure = workshop.loss(Process.INFUSION, loss);
        return new Figure(figure.value(), "losses of the workshop: " + figure.source(), figure.status());
    }

    private static Figure share(Figure share, double mass) {
        return new Figure(mass, "losses of the workshop: " + share.source(), share.status());
    }

    private static Figure full(Optional<Hose> hose, double density) {
        return hose.map(stated -> new Figure(
                        ResinUptake.tube(density, stated.bore(), stated.length()),
                        "bore and length of the plan, full of resin",
                        Status.USER))
                .orElse(NO_HOSE);
    }

    private static Figure full(FlowMesh mesh, double density, double area) {
        return new Figure(
                ResinUptake.mesh(density, mesh.thickness(), mesh.porosity()) * area,
                "mesh of the plan over the whole area, full of resin",
                Status.USER);
    }

    private static Figure none(String why) {
        return new Figure(0, why, Status.USER);
    }
}
