package laminate.print.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.check.CheckOptions;
import laminate.check.PartCheck;
import laminate.check.SurfaceTerms;
import laminate.estimate.Estimator;
import laminate.part.BeamPlan;
import laminate.part.DeflectionLimit;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.Limits;
import laminate.part.LoadCase;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.ReserveKind;
import laminate.part.Zone;
import laminate.process.Workshop;
import laminate.theory.CoreStrength;
import laminate.theory.Lamina;
import laminate.theory.LaminateLoad;
import laminate.theory.LaminateLoad.Term;
import laminate.theory.PlyStrength;
import laminate.theory.beam.BeamLoad;
import laminate.theory.beam.Supports;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.PanelLoad;

/** Checks of a boat club's parts, made through the library alone. */
final class TestChecks {
    private static final Lamina CARBON = Lamina.of(181e9, 10.3e9, 7.17e9, 0.28)
            .withExpansion(0.02e-6, 22.5e-6)
            .withStrength(PlyStrength.of(1500e6, 1500e6, 40e6, 246e6, 68e6));
    private static final Lamina FOAM = Lamina.isotropic(75e6, 0.34)
            .withTransverseShear(28e6, 28e6)
            .withExpansion(40e-6, 40e-6)
            .withStrength(new CoreStrength(0.8e6, 0.8e6, 1.1e6, OptionalDouble.empty()));
    private static final Lamina UNKNOWN = Lamina.of(40e9, 10e9, 4e9, 0.3).withExpansion(6e-6, 25e-6);
    private static final SurfaceTerms SURFACE = new SurfaceTerms(Term.NX, Term.NY, 8);

    private TestChecks() {}

    /** Two load cases, panels and a beam with limits that are missed, and zones compared. */
    static CheckedPart sideTank() {
        Zone strip = Zone.of("strip", 0.4, List.of(ply(CARBON, 0.5e-3, 0), ply(CARBON, 0.5e-3, 90)))
                .withLoadCases(List.of(
                        new LoadCase(
                                "pull", LaminateLoad.NONE.with(Term.NX, 20e3).withTemperatureChange(-75)),
                        new LoadCase(
                                "bent as held",
                                LaminateLoad.NONE.with(Term.KAPPA_X, 0.4).with(Term.EPS_Y, 0))));
        Zone lid = Zone.of("lid", 0.3, sandwich())
                .withLimits(new Limits(Optional.empty(), Map.of(), OptionalDouble.of(0.02), OptionalDouble.empty()));
        Part part = Part.of("Side tank", List.of(strip, lid))
                .withPanels(List.of(
                        PanelPlan.of("lid", "lid", 0.6, 0.4, Edges.all(Edge.SIMPLY_SUPPORTED), pressure(20e3)),
                        PanelPlan.of(
                                "tank side",
                                "strip",
                                0.3,
                                0.2,
                                new Edges(Edge.CLAMPED, Edge.CLAMPED, Edge.CLAMPED, Edge.SIMPLY_SUPPORTED),
                                new PanelLoad.Head(0.6, 1000, PanelLoad.Upright.WIDTH)),
                        PanelPlan.of(
                                "lid, pushed",
                                "lid",
                                0.6,
                                0.4,
                                Edges.all(Edge.SIMPLY_SUPPORTED),
                                new PanelLoad.EdgeForces(-20e3, 0, 0))))
                .withBeams(List.of(BeamPlan.of(
                        "test piece", "lid", 0.3, 0.05, Supports.SIMPLY_SUPPORTED, BeamLoad.threePoint(300, 0.3))))
                .withLimits(new Limits(
                        Optional.of(DeflectionLimit.ofSpan(100)),
                        Map.of(ReserveKind.FIRST_PLY, 2.0, ReserveKind.CORE_SHEAR, 2.0),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0.7)));
        return compared(part, "strip", CheckOptions.USUAL.with(SURFACE));
    }

    /** A ply whose strength is not known, and no limit. */
    static CheckedPart unknownStrength() {
        Zone zone = Zone.of("patch", 1, List.of(ply(UNKNOWN, 1e-3, 30), ply(CARBON, 1e-3, 30)))
                .withLoadCases(List.of(new LoadCase("twist", LaminateLoad.NONE.with(Term.MXY, 5))));
        return checked(Part.of("Patch", List.of(zone)), CheckOptions.USUAL.withoutResidualStress());
    }

    /** A limit that nobody can judge. */
    static CheckedPart notJudged() {
        Zone zone = Zone.of("patch", 1, List.of(ply(UNKNOWN, 1e-3, 0), ply(UNKNOWN, 1e-3, 90)))
                .withLoadCases(List.of(new LoadCase("pull", LaminateLoad.NONE.with(Term.NX, 5e3))));
        Limits limits = new Limits(
                Optional.empty(), Map.of(ReserveKind.FIRST_PLY, 2.0), OptionalDouble.empty(), OptionalDouble.empty());
        return checked(Part.of("Patch", List.of(zone)).withLimits(limits), CheckOptions.USUAL);
    }

    /** A thickness that is short by less than is printed as a rule. */
    static CheckedPart justMissed() {
        Zone zone = Zone.of("patch", 1, List.of(ply(CARBON, 4e-3, 0)))
                .withLimits(
                        new Limits(Optional.empty(), Map.of(), OptionalDouble.of(4.001e-3), OptionalDouble.empty()));
        return checked(Part.of("Patch", List.of(zone)), CheckOptions.USUAL);
    }

    /** Names that a terminal, a table, a spreadsheet or a program could take for something else. */
    static CheckedPart hostileNames() {
        String name = "=cmd|' /C calc'!A0, \"of\" 艇庫の蓋 " + "very-long-name-".repeat(9);
        Zone zone = Zone.of(name, 1, sandwich())
                .withLoadCases(List.of(new LoadCase("@pull\u001B[31m\nnow", LaminateLoad.NONE.with(Term.NX, 5e3))));
        Part part = Part.of("@lid \u001B[31m | *bold* <b>\nline two\u2028\u202Eend", List.of(zone, strip()))
                .withPanels(List.of(PanelPlan.of("-1+1|2", name, 0.6, 0.4, Edges.all(Edge.CLAMPED), pressure(2e3))));
        return compared(part, name, CheckOptions.USUAL);
    }

    static List<CheckedPart> all() {
        return List.of(sideTank(), unknownStrength(), notJudged(), hostileNames());
    }

    private static Zone strip() {
        return Zone.of("strip", 0.4, List.of(ply(CARBON, 0.5e-3, 0), ply(CARBON, 0.5e-3, 90)));
    }

    private static List<Layer> sandwich() {
        return List.of(
                ply(CARBON, 0.25e-3, 0),
                ply(CARBON, 0.25e-3, 90),
                ply(FOAM, 0.01, 0),
                ply(CARBON, 0.25e-3, 90),
                ply(CARBON, 0.25e-3, 0));
    }

    private static Layer ply(Lamina lamina, double thickness, double angle) {
        return new LaminaLayer(lamina, 1600, thickness, angle, "");
    }

    private static PanelLoad pressure(double pascals) {
        return new PanelLoad.Uniform(pascals);
    }

    private static CheckedPart checked(Part part, CheckOptions options) {
        return CheckedPart.of(PartCheck.of(new Estimator(Workshop.USUAL).estimate(part), options));
    }

    private static CheckedPart compared(Part part, String reference, CheckOptions options) {
        Estimator estimator = new Estimator(Workshop.USUAL);
        return CheckedPart.comparedWith(reference, PartCheck.of(estimator.estimate(part), options), estimator);
    }
}
