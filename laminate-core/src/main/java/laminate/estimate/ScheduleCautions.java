package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.material.Core;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Film;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.LayUp;
import laminate.process.Process;

/** Cautions about the schedule of one zone: materials and layers that do not go together. */
final class ScheduleCautions {
    private static final String PRACTICE = "common practice, no source";
    private static final double HEAVIEST_FIRST_MAT = 0.450;
    private static final double LEAST_GELCOAT = 0.4e-3;
    private static final double MOST_GELCOAT = 0.6e-3;
    private static final double MEASURED_CONTENT_SLACK = 0.05;

    private final ZoneEstimate zone;
    private final List<Caution> found = new ArrayList<>();

    ScheduleCautions(ZoneEstimate zone) {
        this.zone = zone;
    }

    List<Caution> list() {
        List<Layer> layers = zone.zone().layers();
        zone.coatings().forEach(this::checkFilm);
        checkFirstMat(layers);
        for (int i = 0; i < layers.size(); i++) {
            Optional<Layer> under = i == 0 ? Optional.empty() : Optional.of(layers.get(i - 1));
            Layer layer = layers.get(i);
            checkBinder(layer);
            checkRovings(under, layer);
            if (layer instanceof CoreLayer core) {
                checkCoreFace(under, core);
                checkFoam(core, under, i + 1 < layers.size() ? Optional.of(layers.get(i + 1)) : Optional.empty());
            }
        }
        checkOrderOfResins(layers);
        checkWax(layers);
        checkStages();
        checkMeasuredPlies();
        return found;
    }

    private void checkFilm(LaidCoating laid) {
        Coating coating = laid.coating();
        if (coating.material().use() != Resin.Use.GELCOAT) {
            return;
        }
        double film = coating.film().basis() == Film.Basis.WET
                ? coating.film().value() * coating.coats()
                : laid.thickness().planned();
        double most = coating.material().stageThickness().orElse(MOST_GELCOAT);
        // A film of exactly 0.4 mm must not be out by its last digit.
        if (film < LEAST_GELCOAT * (1 - 1e-9) || film > most * (1 + 1e-9)) {
            add(
                    String.format(
                            Locale.ROOT,
                            "%s: %s film of %.2f mm is outside %.1f to %.1f mm: thinner undercures and shows the weave, "
                                    + "thicker crazes.",
                            name(),
                            coating.material().id(),
                            film * 1000,
                            LEAST_GELCOAT * 1000,
                            most * 1000),
                    "trade technical pages, 0.4 to 0.6 mm",
                    Status.PRINTED);
        }
    }

    private void checkFirstMat(List<Layer> layers) {
        boolean gelcoated = zone.zone().coatings().stream().anyMatch(Coating::atMouldFace);
        if (gelcoated
                && layers.get(0) instanceof ReinforcementLayer first
                && first.reinforcement().form() == Form.MAT
                && first.reinforcement().arealMass() > HEAVIEST_FIRST_MAT * (1 + 1e-9)) {
            add(
                    name() + ": the first mat behind gelcoat, " + first.material()
                            + ", is heavier than 450 g/m²: air stays behind the gelcoat, and its exotherm marks it.",
                    "Indian Register of Shipping, high speed craft rules: mat of at most 450 g/m² against the gelcoat",
                    Status.PRINTED);
        }
    }

    private void checkBinder(Layer layer) {
        if (layer instanceof ReinforcementLayer laid
                && laid.layUp().resin().family() == Resin.Family.EPOXY
                && laid.reinforcement().binder().filter(Reinforcement.Binder.EMULSION::equals).isPresent()) {
            add(
                    name() + ": " + laid.material() + " is bound by emulsion, which needs styrene to dissolve; with "
                            + laid.layUp().resin().id() + " it stays stiff and dry. Take a powder-bound or stitched one.",
                    "trade technical page, supplier not named",
                    Status.PRINTED);
        }
    }

    private void checkRovings(Optional<Layer> under, Layer layer) {
        if (isWet(layer)
                && under.filter(below -> face(below, true) == Form.WOVEN_ROVING).isPresent()
                && face(layer, false) == Form.WOVEN_ROVING) {
            add(
                    name() + ": " + under.get().material() + " and " + layer.material()
                            + " lie roving on roving; a mat between them bonds better and fills the weave.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private void checkCoreFace(Optional<Layer> under, CoreLayer core) {
        if (isWet(core)
                && core.bed().isEmpty()
                && under.filter(below -> face(below, true) == Form.WOVEN_ROVING).isPresent()) {
            add(
                    name() + ": " + core.material() + " lies on " + under.get().material()
                            + " without mat or bed; bed it in paste or wet mat, or voids stay under it.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private void checkFoam(CoreLayer core, Optional<Layer> under, Optional<Layer> over) {
        boolean styrene = styrenic(Optional.of(core))
                || styrenic(under)
                || styrenic(over)
                || core.bed().map(bed -> bed.paste().family().isStyrenic()).orElse(false);
        if (core.core().type() == Core.Type.PS && styrene) {
            add(
                    name() + ": styrene dissolves polystyrene foam; " + core.material()
                            + " wants epoxy, or a full epoxy barrier first.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private void checkOrderOfResins(List<Layer> layers) {
        List<Resin> order = new ArrayList<>();
        coatings(true).forEach(coating -> order.add(coating.material()));
        for (Layer layer : layers) {
            if (layer instanceof CoreLayer core) {
                core.bed().ifPresent(bed -> order.add(bed.paste()));
            }
            layer.laying().map(LayUp::resin).ifPresent(order::add);
        }
        coatings(false).forEach(coating -> order.add(coating.material()));
        for (int i = 1; i < order.size(); i++) {
            if (order.get(i - 1).family() == Resin.Family.EPOXY && order.get(i).family().isStyrenic()) {
                add(
                        name() + ": " + order.get(i).id() + " goes over " + order.get(i - 1).id()
                                + ": polyester and vinylester bond badly to epoxy, and its amine hinders their cure. Test a"
                                + " patch, or stay with epoxy.",
                        PRACTICE,
                        Status.COMMON_PRACTICE);
            }
        }
    }

    private void checkWax(List<Layer> layers) {
        List<Resin> covered = new ArrayList<>();
        coatings(true).forEach(coating -> covered.add(coating.material()));
        layers.subList(0, layers.size() - 1).forEach(layer -> layer.laying().map(LayUp::resin).ifPresent(covered::add));
        List<Coating> inside = coatings(false);
        if (!inside.isEmpty()) {
            layers.get(layers.size() - 1).laying().map(LayUp::resin).ifPresent(covered::add);
            inside.subList(0, inside.size() - 1).forEach(coating -> covered.add(coating.material()));
        }
        covered.stream()
                .filter(Resin::waxed)
                .map(Resin::id)
                .distinct()
                .forEach(id -> add(
                        name() + ": " + id + " holds wax, and something goes over it: grind the surface before it does.",
                        "Rules for Classification of FRP Ships 2014: waxed resin is ground after 24 h",
                        Status.PRINTED));
    }

    /** A stage is a run of layers of one stage name; a core parts two stages, for it keeps the heat of each apart. */
    private void checkStages() {
        double thickness = 0;
        Optional<LaidLayer> last = Optional.empty();
        for (LaidLayer layer : zone.layers()) {
            boolean parts = layer.layer() instanceof CoreLayer
                    || last.map(before -> !before.layer().stage().equals(layer.layer().stage())).orElse(false);
            if (parts) {
                last.ifPresent(finish(thickness)::accept);
                thickness = 0;
            }
            boolean cures = !(layer.layer() instanceof CoreLayer) && layer.layer().laying().isPresent();
            thickness += cures ? layer.thickness().planned() : 0;
            last = cures ? Optional.of(layer) : Optional.empty();
        }
        last.ifPresent(finish(thickness)::accept);
    }

    private java.util.function.Consumer<LaidLayer> finish(double thickness) {
        return last -> checkStage(last.layer(), thickness);
    }

    private void checkStage(Layer last, double thickness) {
        Resin resin = last.laying().orElseThrow().resin();
        OptionalDouble most = resin.stageThickness();
        if (most.isPresent() && thickness > most.getAsDouble()) {
            String stage = last.stage().isEmpty() ? "laid in one stage" : "in stage " + last.stage();
            add(
                    String.format(
                            Locale.ROOT,
                            "%s: %.1f mm of %s %s; beyond %.1f mm it can overheat, shrink and crack. Lay it in stages.",
                            name(),
                            thickness * 1000,
                            resin.id(),
                            stage,
                            most.getAsDouble() * 1000),
                    resin.figures().find(Property.STAGE_THICKNESS).orElseThrow().source(),
                    resin.figures().find(Property.STAGE_THICKNESS).orElseThrow().status());
        }
    }

    private void checkMeasuredPlies() {
        for (LaidLayer layer : zone.layers()) {
            if (layer.layer() instanceof ReinforcementLayer laid
                    && laid.reinforcement().measured().isPresent()) {
                double measured =
                        laid.reinforcement().measured().get().value(Property.FIBRE_VOLUME_FRACTION);
                if (Math.abs(measured - layer.fibreVolumeFraction()) > MEASURED_CONTENT_SLACK) {
                    add(
                            String.format(
                                    Locale.ROOT,
                                    "%s: the ply properties of %s were measured at %.0f %% fibre by volume; it is laid at %.0f %%.",
                                    name(),
                                    laid.material(),
                                    measured * 100,
                                    layer.fibreVolumeFraction() * 100),
                            PRACTICE,
                            Status.COMMON_PRACTICE);
                }
            }
        }
    }

    private List<Coating> coatings(boolean atMouldFace) {
        return zone.zone().coatings().stream()
                .filter(coating -> coating.atMouldFace() == atMouldFace)
                .toList();
    }

    private static boolean isWet(Layer layer) {
        return layer.laying().map(layUp -> layUp.process() != Process.INFUSION).orElse(false);
    }

    private static boolean styrenic(Optional<Layer> layer) {
        return layer.flatMap(Layer::laying)
                .map(layUp -> layUp.resin().family().isStyrenic())
                .orElse(false);
    }

    /** The form of the ply at the inner face of a layer, or at its mould face; null for what has no fibre. */
    private static Form face(Layer layer, boolean inner) {
        if (!(layer instanceof ReinforcementLayer laid)) {
            return null;
        }
        List<FibrePly> plies = laid.plies();
        return plies.get(inner ? plies.size() - 1 : 0).form();
    }

    private String name() {
        return zone.zone().name();
    }

    private void add(String text, String source, Status status) {
        found.add(new Caution(Caution.Kind.SCHEDULE, text, source, status));
    }
}
