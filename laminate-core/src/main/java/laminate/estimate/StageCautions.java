package laminate.estimate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Layer;

/** Cautions about the resins of one zone in the order they are applied: what goes over what, and how thick at once. */
final class StageCautions {
    private final ZoneEstimate zone;
    private final List<Layer> layers;
    private final List<Caution> found = new ArrayList<>();

    private StageCautions(ZoneEstimate zone) {
        this.zone = zone;
        this.layers = zone.zone().layers();
    }

    static List<Caution> of(ZoneEstimate zone) {
        StageCautions cautions = new StageCautions(zone);
        cautions.checkOrder();
        cautions.checkWax();
        cautions.checkStages();
        return cautions.found;
    }

    private void checkOrder() {
        List<Resin> order = resinsInOrder();
        for (int i = 1; i < order.size(); i++) {
            checkOnEpoxy(order.get(i - 1), order.get(i));
            checkOnGelcoat(order.get(i - 1), order.get(i));
        }
    }

    private void checkOnEpoxy(Resin under, Resin over) {
        if (under.family() == Resin.Family.EPOXY && over.family().isStyrenic()) {
            add(
                    over.id() + " goes over " + under.id()
                            + ": polyester and vinylester bond badly to epoxy, and its amine hinders their cure. Test a"
                            + " patch, or stay with epoxy.",
                    "common practice, no source",
                    Status.COMMON_PRACTICE);
        }
    }

    private void checkOnGelcoat(Resin under, Resin over) {
        boolean styrenicGelcoat =
                under.use() == Resin.Use.GELCOAT && under.family().isStyrenic();
        if (styrenicGelcoat && over.family() == Resin.Family.EPOXY) {
            add(
                    over.id() + " goes over " + under.id()
                            + ": epoxy does not hold reliably on polyester or vinylester gelcoat. Test a patch, lay a tie"
                            + " coat between, or leave the gelcoat out and paint.",
                    "common practice, no source",
                    Status.COMMON_PRACTICE);
        }
    }

    private List<Resin> resinsInOrder() {
        List<Resin> order = new ArrayList<>();
        order.addAll(coatings(true));
        for (Layer layer : layers) {
            if (layer instanceof CoreLayer core && core.bed().isPresent()) {
                order.add(core.bed().get().paste());
            }
            addResin(layer, order);
        }
        order.addAll(coatings(false));
        return order;
    }

    private static void addResin(Layer layer, List<Resin> resins) {
        if (layer.laying().isPresent()) {
            resins.add(layer.laying().get().resin());
        }
    }

    /** Wax rises as the resin cures, so what is laid wet in wet, within a stage, is not parted by it. */
    private void checkWax() {
        List<Resin> covered = new ArrayList<>();
        covered.addAll(coatings(true));
        for (int i = 1; i < layers.size(); i++) {
            if (!layers.get(i - 1).stage().equals(layers.get(i).stage())) {
                addResin(layers.get(i - 1), covered);
            }
        }
        List<Resin> inside = coatings(false);
        if (!inside.isEmpty()) {
            addResin(layers.get(layers.size() - 1), covered);
            covered.addAll(inside.subList(0, inside.size() - 1));
        }
        Set<String> told = new HashSet<>();
        for (Resin resin : covered) {
            if (resin.waxed() && told.add(resin.id())) {
                addWax(resin.id());
            }
        }
    }

    private void addWax(String id) {
        add(
                id + " holds wax, and something goes over it: grind the surface before it does.",
                "Rules for Classification of FRP Ships 2014: waxed resin is ground after 24 h",
                Status.PRINTED);
    }

    private void checkStages() {
        for (LayerRun run : LayerRun.of(zone.layers())) {
            if (run.isTooThick()) {
                addTooThick(run.weakest().orElseThrow(), run.stage(), run.thickness());
            }
        }
    }

    private void addTooThick(Resin resin, String stage, double thickness) {
        Figure most = resin.figures().find(Property.STAGE_THICKNESS).orElseThrow();
        String text = String.format(
                Locale.ROOT,
                "%.1f mm of %s %s; beyond %.1f mm it can overheat, shrink and crack. Lay it in stages.",
                thickness * 1000,
                resin.id(),
                stage.isEmpty() ? "laid in one stage" : "in stage " + stage,
                most.value() * 1000);
        add(text, most.source(), most.status());
    }

    private List<Resin> coatings(boolean atMouldFace) {
        List<Resin> materials = new ArrayList<>();
        for (Coating coating : zone.zone().coatings()) {
            if (coating.atMouldFace() == atMouldFace) {
                materials.add(coating.material());
            }
        }
        return materials;
    }

    private void add(String text, String source, Status status) {
        found.add(new Caution(Caution.Kind.SCHEDULE, zone.zone().name() + ": " + text, source, status));
    }
}
