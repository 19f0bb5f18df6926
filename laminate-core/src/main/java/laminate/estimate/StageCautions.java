package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import laminate.material.Figure;
import laminate.material.Property;
import laminate.material.Resin;
import laminate.material.Status;
import laminate.part.BulkerLayer;
import laminate.part.Coating;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.LayUp;

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
        coatings(true).forEach(coating -> order.add(coating.material()));
        for (Layer layer : layers) {
            if (layer instanceof CoreLayer core) {
                core.bed().ifPresent(bed -> order.add(bed.paste()));
            }
            layer.laying().map(LayUp::resin).ifPresent(order::add);
        }
        coatings(false).forEach(coating -> order.add(coating.material()));
        return order;
    }

    /** Wax rises as the resin cures, so what is laid wet in wet, within a stage, is not parted by it. */
    private void checkWax() {
        List<Resin> covered = new ArrayList<>();
        coatings(true).forEach(coating -> covered.add(coating.material()));
        for (int i = 1; i < layers.size(); i++) {
            if (!layers.get(i - 1).stage().equals(layers.get(i).stage())) {
                layers.get(i - 1).laying().map(LayUp::resin).ifPresent(covered::add);
            }
        }
        List<Coating> inside = coatings(false);
        if (!inside.isEmpty()) {
            layers.get(layers.size() - 1).laying().map(LayUp::resin).ifPresent(covered::add);
            inside.subList(0, inside.size() - 1).forEach(coating -> covered.add(coating.material()));
        }
        covered.stream().filter(Resin::waxed).map(Resin::id).distinct().forEach(this::addWax);
    }

    private void addWax(String id) {
        add(
                id + " holds wax, and something goes over it: grind the surface before it does.",
                "Rules for Classification of FRP Ships 2014: waxed resin is ground after 24 h",
                Status.PRINTED);
    }

    /** A stage is a run of layers of one stage name; a core parts two stages, for it keeps the heat of each apart. */
    private void checkStages() {
        List<LaidLayer> stage = new ArrayList<>();
        for (LaidLayer layer : zone.layers()) {
            if (!stage.isEmpty() && !continues(stage.get(0).layer(), layer.layer())) {
                checkStage(stage);
                stage.clear();
            }
            if (heats(layer.layer())) {
                stage.add(layer);
            }
        }
        checkStage(stage);
    }

    private static boolean continues(Layer first, Layer next) {
        return heats(next) && first.stage().equals(next.stage());
    }

    private static boolean heats(Layer layer) {
        return layer instanceof ReinforcementLayer || layer instanceof BulkerLayer;
    }

    /** Of several resins in one stage the one that bears the least decides. */
    private void checkStage(List<LaidLayer> stage) {
        double thickness =
                stage.stream().mapToDouble(layer -> layer.thickness().planned()).sum();
        stage.stream()
                .map(layer -> layer.layer().laying().orElseThrow().resin())
                .filter(resin -> thickness > resin.stageThickness().orElse(Double.MAX_VALUE) * (1 + 1e-9))
                .min((one, other) -> Double.compare(
                        one.stageThickness().orElseThrow(),
                        other.stageThickness().orElseThrow()))
                .ifPresent(resin -> addTooThick(resin, stage.get(0).layer().stage(), thickness));
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

    private List<Coating> coatings(boolean atMouldFace) {
        return zone.zone().coatings().stream()
                .filter(coating -> coating.atMouldFace() == atMouldFace)
                .toList();
    }

    private void add(String text, String source, Status status) {
        found.add(new Caution(Caution.Kind.SCHEDULE, zone.zone().name() + ": " + text, source, status));
    }
}
