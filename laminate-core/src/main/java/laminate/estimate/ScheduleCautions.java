package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import laminate.process.CoreFinish;
import laminate.process.LayUp;
import laminate.process.Process;

/** Cautions about the schedule of one zone: coatings, and layers that do not go with their resin or their neighbours. */
final class ScheduleCautions {
    private static final String PRACTICE = "common practice, no source";
    private static final double HEAVIEST_FIRST_MAT = 0.450;
    private static final double LEAST_GELCOAT = 0.4e-3;
    private static final double MOST_GELCOAT = 0.6e-3;
    private static final double MEASURED_CONTENT_SLACK = 0.05;

    /** A film of exactly 0.4 mm, or a mat of exactly 450 g/m², must not be out by its last digit. */
    private static final double SLACK = 1e-9;

    private final ZoneEstimate zone;
    private final List<Layer> layers;
    private final List<Caution> found = new ArrayList<>();

    private ScheduleCautions(ZoneEstimate zone) {
        this.zone = zone;
        this.layers = zone.zone().layers();
    }

    static List<Caution> of(ZoneEstimate zone) {
        ScheduleCautions cautions = new ScheduleCautions(zone);
        for (LaidCoating coating : zone.coatings()) {
            cautions.checkFilm(coating);
        }
        cautions.checkFirstMat();
        for (int i = 0; i < cautions.layers.size(); i++) {
            cautions.checkLayer(i);
        }
        for (LaidLayer layer : zone.layers()) {
            cautions.checkMeasuredPly(layer);
        }
        return cautions.found;
    }

    private void checkLayer(int index) {
        Layer layer = layers.get(index);
        Optional<Layer> under = at(index - 1);
        checkBinder(layer);
        checkRovings(under, layer);
        if (layer instanceof CoreLayer core) {
            checkCoreFace(under, core);
            checkFoam(core, under, at(index + 1));
            checkPassage(core, under, at(index + 1));
        }
    }

    private Optional<Layer> at(int index) {
        return index >= 0 && index < layers.size() ? Optional.of(layers.get(index)) : Optional.empty();
    }

    private void checkFilm(LaidCoating laid) {
        Resin gelcoat = laid.coating().material();
        if (gelcoat.use() != Resin.Use.GELCOAT) {
            return;
        }
        double film = film(laid);
        double most = gelcoat.stageThickness().orElse(MOST_GELCOAT);
        if (film < LEAST_GELCOAT * (1 - SLACK) || film > most * (1 + SLACK)) {
            String text = String.format(
                    Locale.ROOT,
                    "%s film of %.2f mm is outside %.1f to %.1f mm: thinner undercures and shows the weave, thicker crazes.",
                    gelcoat.id(),
                    film * 1000,
                    LEAST_GELCOAT * 1000,
                    most * 1000);
            add(text, "trade technical pages, 0.4 to 0.6 mm", Status.PRINTED);
        }
    }

    /** The film of all coats as it was stated: cured, or else as a wet-film gauge reads it. */
    private static double film(LaidCoating laid) {
        return laid.coating().film().basis() == Film.Basis.CURED
                ? laid.thickness().planned()
                : laid.applied() / laid.coating().material().densityLiquid();
    }

    private void checkFirstMat() {
        if (isGelcoated()
                && layers.get(0) instanceof ReinforcementLayer first
                && first.reinforcement().form() == Form.MAT
                && first.reinforcement().arealMass() > HEAVIEST_FIRST_MAT * (1 + SLACK)) {
            add(
                    "the first mat behind gelcoat, " + first.material()
                            + ", is heavier than 450 g/m²: air stays behind the gelcoat, and its exotherm marks it.",
                    "Indian Register of Shipping, high speed craft rules: mat of at most 450 g/m² against the gelcoat",
                    Status.PRINTED);
        }
    }

    private boolean isGelcoated() {
        for (Coating coating : zone.zone().coatings()) {
            if (coating.atMouldFace()) {
                return true;
            }
        }
        return false;
    }

    private void checkBinder(Layer layer) {
        if (layer instanceof ReinforcementLayer laid
                && laid.layUp().resin().family() == Resin.Family.EPOXY
                && laid.reinforcement().binder().equals(Optional.of(Reinforcement.Binder.EMULSION))) {
            add(
                    laid.material() + " is bound by emulsion, which needs styrene to dissolve; with "
                            + laid.layUp().resin().id()
                            + " it stays stiff and dry. Take a powder-bound or stitched one.",
                    "trade technical page, supplier not named",
                    Status.PRINTED);
        }
    }

    private void checkRovings(Optional<Layer> under, Layer layer) {
        if (isWet(layer) && under.isPresent() && endsInRoving(under.get()) && beginsWithRoving(layer)) {
            add(
                    under.get().material() + " and " + layer.material()
                            + " lie roving on roving; a mat between them bonds better and fills the weave.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private void checkCoreFace(Optional<Layer> under, CoreLayer core) {
        if (isWet(core) && core.bed().isEmpty() && under.isPresent() && endsInRoving(under.get())) {
            add(
                    core.material() + " lies on " + under.get().material()
                            + " without mat or bed; bed it in paste or wet mat, or voids stay under it.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private void checkFoam(CoreLayer core, Optional<Layer> under, Optional<Layer> over) {
        boolean pasted =
                core.bed().isPresent() && core.bed().get().paste().family().isStyrenic();
        boolean styrenic = pasted || isStyrenic(Optional.of(core)) || isStyrenic(under) || isStyrenic(over);
        if (core.core().type() == Core.Type.PS && styrenic) {
            add(
                    "styrene dissolves polystyrene foam; " + core.material()
                            + " wants epoxy, or a full epoxy barrier first.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private static boolean isStyrenic(Optional<? extends Layer> layer) {
        Optional<LayUp> laying = laying(layer);
        return laying.isPresent() && laying.get().resin().family().isStyrenic();
    }

    private static Optional<LayUp> laying(Optional<? extends Layer> layer) {
        return layer.isPresent() ? layer.get().laying() : Optional.empty();
    }

    /** Mesh and lines lie on one face, so the resin for the other must pass through the core, or along it. */
    private void checkPassage(CoreLayer core, Optional<Layer> under, Optional<Layer> over) {
        boolean skinned = isInfused(under) && isInfused(over);
        if (core.layUp().process() == Process.INFUSION && core.finish().kind() == CoreFinish.Kind.PLAIN && skinned) {
            add(
                    core.material()
                            + " is plain: no resin passes it to the skin beyond. Take it perforated or grooved, or feed"
                            + " both faces.",
                    PRACTICE,
                    Status.COMMON_PRACTICE);
        }
    }

    private static boolean isInfused(Optional<Layer> layer) {
        Optional<LayUp> laying = laying(layer);
        return laying.isPresent() && laying.get().process() == Process.INFUSION;
    }

    private void checkMeasuredPly(LaidLayer layer) {
        if (!(layer.layer() instanceof ReinforcementLayer laid)
                || laid.reinforcement().measured().isEmpty()) {
            return;
        }
        double measured = laid.reinforcement().measured().get().value(Property.FIBRE_VOLUME_FRACTION);
        if (Math.abs(measured - layer.fibreVolumeFraction()) > MEASURED_CONTENT_SLACK) {
            String text = String.format(
                    Locale.ROOT,
                    "the ply properties of %s were measured at %.0f %% fibre by volume; it is laid at %.0f %%.",
                    laid.material(),
                    measured * 100,
                    layer.fibreVolumeFraction() * 100);
            add(text, PRACTICE, Status.COMMON_PRACTICE);
        }
    }

    private static boolean isWet(Layer layer) {
        return layer.laying().isPresent() && layer.laying().get().process() != Process.INFUSION;
    }

    private static boolean beginsWithRoving(Layer layer) {
        return layer instanceof ReinforcementLayer laid && isRoving(laid.plies().get(0));
    }

    private static boolean endsInRoving(Layer layer) {
        return layer instanceof ReinforcementLayer laid
                && isRoving(laid.plies().get(laid.plies().size() - 1));
    }

    private static boolean isRoving(FibrePly ply) {
        return ply.form() == Form.WOVEN_ROVING;
    }

    private void add(String text, String source, Status status) {
        found.add(new Caution(Caution.Kind.SCHEDULE, zone.zone().name() + ": " + text, source, status));
    }
}
