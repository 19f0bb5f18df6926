package laminate.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.material.Status;
import laminate.theory.sandwich.Face;
import laminate.theory.sandwich.LocalChecks;
import laminate.theory.sandwich.Sandwich;

/** What to mind about the results of a check, those of the part itself first. */
final class CheckCautions {
    private static final String COMMON = "common practice, no source";
    private static final Caution NO_APPROVAL = caution(
            "Linear elastic theory of thin laminates and flat panels with ideal edges; not a class approval. Where a part"
                    + " carries people or keeps water out, the code that applies and licensed practice decide.",
            COMMON);
    private static final Caution STRENGTHS = caution(
            "Strengths are those of sound, dry, new laminate as the library or the file states them; wet, fatigued or"
                    + " hot laminate has less. Test pieces of your own laminate come before any figure of a list.",
            COMMON);
    private static final Caution PANELS = caution(
            "Panels are reckoned as flat rectangles without curvature, holes, or stiffness of what they are joined to;"
                    + " their corners, bonds and fastenings are not judged.",
            COMMON);
    private static final Caution WRINKLING = caution(
            "Faces on a core are judged with half of the ideal wrinkling stress, as waviness from making takes the rest.",
            "ISO 12215-5:2008, coefficient from memory");

    private CheckCautions() {}

    static List<Caution> of(List<ZoneCheck> zones, List<PanelCheck> panels) {
        List<Caution> found = new ArrayList<>();
        panels.forEach(panel -> ofPanel(found, panel));
        zones.forEach(zone -> ofZone(found, zone));
        weakest(zones)
                .ifPresent(status -> found.add(new Caution(
                        Caution.Kind.SAFETY,
                        "The least certain figure behind the strengths is " + standing(status) + ".",
                        COMMON,
                        Status.COMMON_PRACTICE)));
        found.add(STRENGTHS);
        if (!panels.isEmpty()) {
            found.add(PANELS);
        }
        found.add(NO_APPROVAL);
        return List.copyOf(found);
    }

    private static void ofPanel(List<Caution> found, PanelCheck panel) {
        String name = "panel " + panel.plan().name() + ": ";
        if (panel.isBeyondSmallDeflection()) {
            found.add(caution(
                    name + "small-deflection theory gives more than half the thickness, which is beyond its range;"
                            + (panel.large().isPresent()
                                    ? " the large deflection counts, and moments, stresses and reserve factors are its"
                                            + " own. A reserve factor is one on the stress at this load, not on the load,"
                                            + " which stress does not follow in proportion."
                                    : " and no large deflection was found, the panel may have buckled. Moments, stresses"
                                            + " and reserve factors are those of small deflection."),
                    COMMON));
        }
        if (panel.large().filter(large -> !large.isStable()).isPresent()) {
            found.add(caution(name + "the state found does not stay when nudged: the panel has buckled.", COMMON));
        }
        if (!panel.governingResponse().convergence().reached()) {
            found.add(caution(name + "the solution has not settled within its tolerance.", COMMON));
        }
    }

    private static void ofZone(List<Caution> found, ZoneCheck zone) {
        String name = "zone " + zone.zone().zone().name() + ": ";
        ofCores(found, name, MakeUp.of(zone.zone()), MakeUp.bareCores(zone.zone()));
        if (!zone.notJudged().isEmpty()) {
            found.add(
                    caution(name + "plies without strength are not judged: " + names(zone.notJudged()) + ".", COMMON));
        }
        if (!zone.assumedShear().isEmpty()) {
            found.add(caution(
                    name + "shear moduli across the thickness were not given and are taken as G12 in "
                            + zone.assumedShear().size() + " of "
                            + zone.zone().laminate().plies().size() + " plies.",
                    COMMON));
        }
    }

    private static void ofCores(List<Caution> found, String name, MakeUp makeUp, int bareCores) {
        if (bareCores > 0) {
            found.add(caution(
                    name + "a core given by the figures of a lamina has no modulus through the thickness; E2 is taken"
                            + " for it, on which wrinkling and the depth of indentation hang.",
                    COMMON));
        }
        if (makeUp.sandwiches().stream().anyMatch(sandwich -> isThinForWrinkling(makeUp, sandwich))) {
            found.add(caution(
                    name + "the core is thinner than twice the depth to which a wrinkling face works it, so that the"
                            + " faces may wrinkle together, at another stress than the one found.",
                    "Hoff and Mautner 1945, from memory"));
        }
    }

    private static boolean isThinForWrinkling(MakeUp makeUp, Sandwich sandwich) {
        LocalChecks checks = makeUp.localChecks(sandwich);
        double deepest = 0;
        for (Face face : Face.values()) {
            for (double degrees : new double[] {0, 45, 90, 135}) {
                deepest = Math.max(deepest, checks.wrinklingDepth(face, degrees));
            }
        }
        return sandwich.core().thickness() < 2 * deepest;
    }

    /** The weakest standing of the strengths, if it is weaker than printed. */
    private static Optional<Status> weakest(List<ZoneCheck> zones) {
        return zones.stream()
                .flatMap(zone -> zone.zone().layers().stream())
                .flatMap(layer -> layer.strengths().stream())
                .flatMap(strength -> strength.status().stream())
                .filter(status -> status == Status.MEMORY || status == Status.COMMON_PRACTICE)
                .max(Comparator.naturalOrder());
    }

    private static String standing(Status status) {
        return status == Status.MEMORY ? "cited from memory" : "common practice without a source";
    }

    private static String names(List<NotJudged> plies) {
        return String.join(
                ", ",
                plies.stream()
                        .map(ply -> ply.ply() + 1 + " " + ply.material() + " (" + ply.reason() + ")")
                        .toList());
    }

    private static Caution caution(String text, String source) {
        Status status = source.equals(COMMON) ? Status.COMMON_PRACTICE : Status.MEMORY;
        return new Caution(Caution.Kind.SAFETY, text, source, status);
    }
}
