package laminate.print.infuse;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.Caution;
import laminate.estimate.PartEstimate;
import laminate.estimate.ResinUse;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.part.infusion.FeedKind;
import laminate.part.infusion.InfusionPath;
import laminate.part.infusion.InfusionPlan;
import laminate.part.infusion.PermeabilitySource;
import laminate.part.infusion.Preform;
import laminate.plan.Inflow;
import laminate.plan.infusion.Buckets;
import laminate.plan.infusion.Fill;
import laminate.plan.infusion.FlowFigures;
import laminate.plan.infusion.GelMargin;
import laminate.plan.infusion.HeldResin;
import laminate.plan.infusion.HoseLoss;
import laminate.plan.infusion.Infusion;
import laminate.plan.infusion.LeakLimit;
import laminate.plan.infusion.PartInfusion;
import laminate.plan.infusion.Reach;
import laminate.plan.infusion.ResinBalance;
import laminate.plan.infusion.ResinBalance.Place;
import laminate.plan.infusion.ResinBalance.Share;
import laminate.print.TestMaterials;
import laminate.print.TestParts;
import laminate.process.Process;
import laminate.process.flow.FlowMesh;
import laminate.process.flow.FrontPoint;

/** Infusions whose every number is set here, so that a print can be held against what was put in. */
final class TestInfusions {
    private TestInfusions() {}

    /** In time, with mesh, hose and buckets. */
    static PartInfusion deck() {
        PartEstimate estimate = TestParts.kayakDeck();
        String zone = estimate.zones().get(0).zone().name();
        return part(estimate, List.of(inTime(Optional.of(zone), zone)));
    }

    /** Never full, nothing of the rest known, permeability from memory. */
    static PartInfusion never() {
        PartEstimate estimate = TestParts.kayakDeck();
        String zone = estimate.zones().get(0).zone().name();
        return new PartInfusion(estimate, List.of(neverFull(zone)), List.of(), List.of());
    }

    /** Names that a terminal, a table, a spreadsheet or a program could take for something else. */
    static PartInfusion hostileNames() {
        PartEstimate estimate = TestParts.hostileNames();
        String zone = estimate.zones().get(0).zone().name();
        return part(estimate, List.of(inTime(Optional.of(zone), zone)));
    }

    static List<PartInfusion> all() {
        return List.of(deck(), never(), hostileNames());
    }

    private static PartInfusion part(PartEstimate estimate, List<Infusion> infusions) {
        return new PartInfusion(
                estimate, infusions, List.of(balance()), List.of(caution(Caution.Kind.SAFETY, "Goggles on.")));
    }

    private static Infusion inTime(Optional<String> zone, String name) {
        InfusionPlan plan = InfusionPlan.of(
                        new InfusionPath(FeedKind.LINE, 0.42, OptionalDouble.empty(), 0.28),
                        90e3,
                        Preform.of(PermeabilitySource.Given.of(1.02e-10)))
                .withMesh(new FlowMesh(0.001, 3e-9, 0.8));
        Fill fill = new Fill(
                OptionalDouble.of(1320),
                OptionalDouble.of(942),
                OptionalDouble.of(2200),
                OptionalDouble.of(0.0325),
                OptionalDouble.of(1200),
                OptionalDouble.of(90),
                List.of(new FrontPoint(0, 0), new FrontPoint(330, 0.21), new FrontPoint(1320, 0.42)));
        GelMargin gel = new GelMargin(
                GelMargin.Verdict.IN_TIME,
                Optional.of(new Figure(4206, "a table of gel times", Status.MEMORY)),
                Figure.stated(0.5),
                OptionalDouble.of(2103),
                "full after 22 min, within 35 min");
        return new Infusion(
                zone,
                List.of(name),
                2,
                plan,
                figures(name, OptionalDouble.empty()),
                fill,
                new Inflow(List.of(name), 2, List.of(200.0, 600.0, 1320.0)),
                gel,
                Optional.of(new Reach(2103, 1.98, 3.96, 3.15)),
                Optional.of(new HoseLoss(2.6e-5, 31.7e3, 43)),
                leak(),
                held(),
                Optional.of(
                        new Buckets(1.5, List.of(new Buckets.Bucket(0, 600, 1.5), new Buckets.Bucket(600, 1320, 0.7)))),
                List.of(
                        caution(Caution.Kind.SCHEDULE, "Permeability scatters."),
                        caution(Caution.Kind.SAFETY, "Goggles on.")));
    }

    private static Infusion neverFull(String name) {
        InfusionPlan plan = InfusionPlan.of(
                new InfusionPath(FeedKind.RIM, 0.5, OptionalDouble.of(0.5), 0),
                90e3,
                Preform.of(new PermeabilitySource.Typical()));
        GelMargin gel = new GelMargin(
                GelMargin.Verdict.NEVER_FULL,
                Optional.empty(),
                Figure.stated(0.5),
                OptionalDouble.empty(),
                "it gets too thick on the way");
        Fill fill = new Fill(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(new FrontPoint(0, 0), new FrontPoint(3600, 0.3)));
        return new Infusion(
                Optional.empty(),
                List.of(name),
                1,
                plan,
                figures(name, OptionalDouble.of(3)),
                fill,
                new Inflow(List.of(name), 1, List.of()),
                gel,
                Optional.empty(),
                Optional.empty(),
                leak(),
                held(),
                Optional.empty(),
                List.of());
    }

    private static FlowFigures figures(String laminate, OptionalDouble factor) {
        return new FlowFigures(
                laminate,
                Figure.stated(90e3),
                new Figure(0.2, "handbook typical", Status.MEMORY),
                factor.isPresent()
                        ? Optional.of(new Figure(1500, "common practice", Status.COMMON_PRACTICE))
                        : Optional.empty(),
                new Figure(1100, "handbook typical", Status.MEMORY),
                new Figure(0.00082, "the layers", Status.MEMORY),
                new Figure(0.485, "the layers", Status.MEMORY),
                Figure.stated(1.02e-10),
                factor,
                1.69e-9,
                0.6);
    }

    private static HeldResin held() {
        return new HeldResin(
                Figure.stated(0.123),
                Figure.stated(0.496),
                Figure.stated(2.18),
                Figure.stated(0.15),
                Figure.stated(0.4),
                0.05);
    }

    private static LeakLimit leak() {
        return new LeakLimit(1000, 600, "habit of many workshops", Status.MEMORY);
    }

    private static ResinBalance balance() {
        List<Share> shares = List.of(
                new Share(Place.LAMINATE, 2.01, 2.01),
                new Share(Place.CORE_OPENINGS, 0, 0),
                new Share(Place.TRIMMED, 0.33, 0.33),
                new Share(Place.BAG, 0.79, 0.79),
                new Share(Place.MESH, 4.64, 4.52),
                new Share(Place.LINES, 0.35, 0.619),
                new Share(Place.BUCKET, 0.4, 0.4),
                new Share(Place.CATCH_POT, 0.117, 0.209),
                new Share(Place.EVAPORATED, 0, 0));
        return new ResinBalance(
                new ResinUse(
                        TestMaterials.INFUSED.resin(), TestMaterials.INFUSED.dose(), "structure", Process.INFUSION),
                shares,
                List.of("hoses and spiral tube: the plan leaves 0.619 kg"));
    }

    private static Caution caution(Caution.Kind kind, String text) {
        return new Caution(kind, text, "common practice", Status.COMMON_PRACTICE);
    }
}
