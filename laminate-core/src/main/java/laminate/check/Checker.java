package laminate.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.part.BeamPlan;
import laminate.part.LoadCase;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.theory.LaminateLoad;
import laminate.theory.failure.FailureSurface;
import laminate.theory.panel.Edge;
import laminate.theory.panel.Edges;
import laminate.theory.panel.PanelBending;
import laminate.theory.panel.PanelPoint;
import laminate.theory.panel.PanelResponse;

/** Checks one part. */
final class Checker {
    /** Below this share of shear in the deflection soft edges make no difference worth printing. */
    private static final double SHEAR_MATTERS = 0.02;

    private final PartEstimate estimate;
    private final Part part;
    private final CheckOptions options;

    Checker(PartEstimate estimate, CheckOptions options) {
        this.estimate = estimate;
        this.part = estimate.part();
        this.options = options;
    }

    PartCheck check() {
        List<ZoneCheck> zones = estimate.zones().stream().map(this::zone).toList();
        List<PanelCheck> panels = part.panels().stream()
                .map(plan -> at("panel " + plan.name(), () -> panel(plan)))
                .toList();
        List<BeamCheck> beams = part.beams().stream()
                .map(plan -> at("beam " + plan.name(), () -> beam(plan)))
                .toList();
        return new PartCheck(estimate, options, zones, panels, beams, ofPart(), CheckCautions.of(zones, panels));
    }

    private static <T> T at(String place, Supplier<T> work) {
        try {
            return work.get();
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(place + ": " + e.getMessage(), e);
        }
    }

    private List<LimitCheck> ofPart() {
        Subject subject = new Subject(Subject.Kind.PART, part.name(), part.name());
        return new LimitChecks(subject, part.limits(), part.limits())
                .mass(estimate.massEach().planned()).stream().toList();
    }

    private ZoneCheck zone(ZoneEstimate laid) {
        Zone zone = laid.zone();
        MakeUp makeUp = MakeUp.of(laid);
        OpenQuestions open = new OpenQuestions(laid, makeUp);
        List<LoadCaseCheck> cases = zone.loadCases().stream()
                .map(loadCase -> at(
                        "zone " + zone.name() + ", load case " + loadCase.name(),
                        () -> loadCase(zone, loadCase, makeUp, open)))
                .toList();
        Subject subject = new Subject(Subject.Kind.ZONE, zone.name(), zone.name());
        LimitChecks limits = new LimitChecks(subject, part.limitsOf(zone), zone.limits());
        return new ZoneCheck(
                laid,
                cases,
                open.notJudged(),
                open.assumedShear(),
                ofSection(limits, laid, zone.area(), true, List.of()));
    }

    /** Thickness and mass besides other limits, worst first. */
    private static List<LimitCheck> ofSection(
            LimitChecks limits, ZoneEstimate laid, double area, boolean handedDown, List<LimitCheck> others) {
        List<LimitCheck> found = new ArrayList<>(others);
        limits.thickness(laid.laminate().thickness(), handedDown).ifPresent(found::add);
        limits.mass(laid.massPerArea().planned() * area).ifPresent(found::add);
        found.sort(LimitCheck.WORST_FIRST);
        return found;
    }

    private LoadCaseCheck loadCase(Zone zone, LoadCase loadCase, MakeUp makeUp, OpenQuestions open) {
        Function<MakeUp, Solved> solver = changed -> new SolvedLoadCase(loadCase, changed, options);
        SolvedLoadCase solved = new SolvedLoadCase(loadCase, makeUp, options);
        Subject subject = new Subject(Subject.Kind.LOAD_CASE, loadCase.name(), zone.name());
        List<LimitCheck> limits =
                new LimitChecks(subject, part.limitsOf(zone), zone.limits()).ofSolved(makeUp, open, solver, solved);
        return new LoadCaseCheck(
                loadCase,
                solved.laminate().check(),
                solved.reserves(),
                solved.laminate().progressive(),
                options.surface().map(terms -> surface(makeUp, loadCase.load(), terms)),
                limits.stream().sorted(LimitCheck.WORST_FIRST).toList());
    }

    private FailureSurface surface(MakeUp makeUp, LaminateLoad load, SurfaceTerms terms) {
        LaminateLoad constant = options.residualStress() ? load : load.mechanical();
        constant = new LaminateLoad(
                without(constant.given(), terms),
                constant.Qx(),
                constant.Qy(),
                constant.temperatureChange(),
                constant.moisture());
        return FailureSurface.trace(
                makeUp.laminate(), constant, terms.x(), terms.y(), options.criterion(), terms.rays());
    }

    private static Map<LaminateLoad.Term, Double> without(Map<LaminateLoad.Term, Double> given, SurfaceTerms terms) {
        Map<LaminateLoad.Term, Double> rest = new EnumMap<>(LaminateLoad.Term.class);
        rest.putAll(given);
        Stream.of(terms.x(), terms.y()).forEach(term -> {
            rest.remove(term);
            rest.remove(term.conjugate());
        });
        return rest;
    }

    private ZoneEstimate laid(String zone) {
        return estimate.zones().get(part.zones().indexOf(part.zone(zone)));
    }

    private PanelCheck panel(PanelPlan plan) {
        ZoneEstimate laid = laid(plan.zone());
        MakeUp makeUp = MakeUp.of(laid);
        SolvedPanel solved = new SolvedPanel(plan, makeUp, options);
        boolean large = solved.isBeyondSmallDeflection() || options.largeDeflection();
        LimitChecks limits = new LimitChecks(
                new Subject(Subject.Kind.PANEL, plan.name(), plan.zone()), part.limitsOf(plan), plan.limits());
        List<LimitCheck> ofSolved = limits.ofSolved(
                makeUp, new OpenQuestions(laid, makeUp), changed -> new SolvedPanel(plan, changed, options), solved);
        return new PanelCheck(
                plan,
                laid,
                solved.bending(),
                large ? solved.large() : Optional.empty(),
                softEdgeDeflection(plan, makeUp, solved.bending()),
                spots(plan, solved.response()),
                solved.reserves(),
                solved.at(solved.worst()).check(),
                solved.worst(),
                ofSection(limits, laid, plan.length() * plan.width(), false, ofSolved));
    }

    private static Map<PanelSpot, PanelPoint> spots(PanelPlan plan, PanelResponse response) {
        Map<PanelSpot, PanelPoint> spots = new EnumMap<>(PanelSpot.class);
        for (PanelSpot spot : PanelSpot.values()) {
            spots.put(spot, response.at(spot.x(plan), spot.y(plan)));
        }
        return spots;
    }

    private static OptionalDouble softEdgeDeflection(PanelPlan plan, MakeUp makeUp, PanelBending hard) {
        Edges edges = plan.edges();
        Edges soft = new Edges(soft(edges.xStart()), soft(edges.xEnd()), soft(edges.yStart()), soft(edges.yEnd()));
        boolean matters = Math.abs(hard.shearDeflection()) > SHEAR_MATTERS * Math.abs(hard.deflection());
        return soft.equals(edges) || !matters
                ? OptionalDouble.empty()
                : OptionalDouble.of(PanelBending.of(plan.in(makeUp.laminate()).with(soft), plan.loads())
                        .deflection());
    }

    private static Edge soft(Edge edge) {
        return edge == Edge.SIMPLY_SUPPORTED ? Edge.SOFT_SIMPLY_SUPPORTED : edge;
    }

    private BeamCheck beam(BeamPlan plan) {
        ZoneEstimate laid = laid(plan.zone());
        MakeUp makeUp = MakeUp.of(laid);
        SolvedBeam solved = new SolvedBeam(plan, makeUp, options);
        LimitChecks limits = new LimitChecks(
                new Subject(Subject.Kind.BEAM, plan.name(), plan.zone()), part.limitsOf(plan), plan.limits());
        List<LimitCheck> ofSolved = limits.ofSolved(
                makeUp, new OpenQuestions(laid, makeUp), changed -> new SolvedBeam(plan, changed, options), solved);
        return new BeamCheck(
                plan,
                laid,
                solved.response(),
                solved.reserves(),
                solved.at(solved.worst()).check(),
                solved.worst(),
                ofSection(limits, laid, plan.span() * plan.width(), false, ofSolved));
    }
}
