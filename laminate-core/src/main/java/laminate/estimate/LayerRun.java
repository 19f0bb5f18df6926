package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.material.Resin;
import laminate.part.BulkerLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;

/**
 * Layers of a zone that are laid wet in wet: a run of reinforcement and bulker of one stage name. A core parts two runs,
 * for it keeps the heat of each apart.
 *
 * @param first the place of its first layer in the zone, from 0
 * @param layers the layers, mould face first
 */
public record LayerRun(int first, List<LaidLayer> layers) {
    /** A sum of thicknesses that is the limit but for rounding does not exceed it. */
    private static final double SLACK = 1e-9;

    /**
     * Checks that there are layers.
     *
     * @throws IllegalArgumentException if there are none
     */
    public LayerRun {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a run of layers needs a layer");
        }
    }

    /**
     * The runs of a zone.
     *
     * @param laid all layers of the zone, mould face first
     * @return the runs, in order; cores and plies given directly are in none
     */
    public static List<LayerRun> of(List<LaidLayer> laid) {
        List<LayerRun> runs = new ArrayList<>();
        int i = 0;
        while (i < laid.size()) {
            int end = i;
            while (end < laid.size()
                    && continues(laid.get(i).layer(), laid.get(end).layer())) {
                end++;
            }
            if (end > i) {
                runs.add(new LayerRun(i, laid.subList(i, end)));
            }
            i = Math.max(end, i + 1);
        }
        return runs;
    }

    private static boolean continues(Layer first, Layer next) {
        return heats(next) && first.stage().equals(next.stage());
    }

    private static boolean heats(Layer layer) {
        return layer instanceof ReinforcementLayer || layer instanceof BulkerLayer;
    }

    /**
     * The name of its stage.
     *
     * @return the name, empty text where it belongs to no named stage
     */
    public String stage() {
        return layers.get(0).layer().stage();
    }

    /**
     * Planned thickness.
     *
     * @return thickness (m)
     */
    public double thickness() {
        double sum = 0;
        for (LaidLayer layer : layers) {
            sum += layer.thickness().planned();
        }
        return sum;
    }

    /**
     * Of several resins the one that bears the least thickness in one wet stage.
     *
     * @return the resin, empty where none states a limit
     */
    public Optional<Resin> weakest() {
        Optional<Resin> weakest = Optional.empty();
        for (LaidLayer layer : layers) {
            Resin resin = layer.layer().laying().orElseThrow().resin();
            if (resin.stageThickness().isPresent()
                    && (weakest.isEmpty() || bearable(resin) < bearable(weakest.get()))) {
                weakest = Optional.of(resin);
            }
        }
        return weakest;
    }

    /**
     * Whether it is thicker than its weakest resin bears in one stage.
     *
     * @return true if it can overheat
     */
    public boolean isTooThick() {
        Optional<Resin> weakest = weakest();
        return weakest.isPresent() && thickness() > bearable(weakest.get()) * (1 + SLACK);
    }

    /**
     * The run in as few parts, each of one resin and process, as keep within the resin's limit of thickness. A layer that
     * exceeds it by itself stands alone.
     *
     * @return the parts, in order
     */
    public List<LayerRun> stages() {
        List<LayerRun> stages = new ArrayList<>();
        LayerRun open = new LayerRun(first, layers.subList(0, 1));
        for (LaidLayer layer : layers.subList(1, layers.size())) {
            LayerRun longer = open.plus(layer);
            if (longer.isTooThick() || !open.takes(layer)) {
                stages.add(open);
                longer = new LayerRun(open.first + open.layers.size(), List.of(layer));
            }
            open = longer;
        }
        stages.add(open);
        return stages;
    }

    private LayerRun plus(LaidLayer layer) {
        List<LaidLayer> longer = new ArrayList<>(layers);
        longer.add(layer);
        return new LayerRun(first, longer);
    }

    private boolean takes(LaidLayer layer) {
        return ResinUse.of(layers.get(0).layer()).equals(ResinUse.of(layer.layer()));
    }

    private static double bearable(Resin resin) {
        return resin.stageThickness().orElse(Double.MAX_VALUE);
    }
}
