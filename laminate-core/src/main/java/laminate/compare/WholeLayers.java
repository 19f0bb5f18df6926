package laminate.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;

/**
 * Lays the reinforcement of a schedule more or fewer times, in whole layers.
 *
 * <p>Of each material in each direction, the whole numbers next below and next above the exact one are tried, in every
 * combination. They are spread evenly over the places where it lies, and a run of one stage is laid in rounds: mat and
 * roving by turns, not each by itself. What was balanced stays so, for two directions of one material laid as often are laid
 * as often again; what was a mirror image stays one, solid or sandwich. No run is left out altogether.
 */
final class WholeLayers {
    /** So many choices make 256 combinations; more go from below to above one by one. */
    private static final int MOST_CHOICES = 8;

    /** A laying: how often each layer of the schedule is laid, 1 for what is not reinforcement, and what that makes. */
    record Laying(List<Integer> counts, List<Layer> layers) {}

    private final List<Layer> layers;
    private final List<FaceRun> runs;
    /** All layers that are laid equally often, by what they share. */
    private final Map<LayerGroup.Choice, List<LayerGroup>> groups = new LinkedHashMap<>();

    WholeLayers(List<Layer> layers) {
        this.layers = layers;
        this.runs = FaceRun.of(layers);
        for (FaceRun run : runs) {
            for (LayerGroup group : LayerGroup.of(run, layers)) {
                groups.computeIfAbsent(group.choice(), none -> new ArrayList<>())
                        .add(group);
            }
        }
    }

    static Laying asGiven(List<Layer> layers) {
        return new Laying(Collections.nCopies(layers.size(), 1), layers);
    }

    static boolean isCore(Layer layer) {
        return layer instanceof CoreLayer
                || layer instanceof BulkerLayer
                || layer instanceof LaminaLayer sheet && sheet.lamina().isCore();
    }

    /** The different layings about a factor; at least one. */
    Collection<Laying> about(double factor) {
        Map<List<Integer>, Laying> layings = new LinkedHashMap<>();
        for (Map<LayerGroup.Choice, Integer> chosen : combinations(factor)) {
            List<Integer> counts = counts(chosen);
            if (leavesNoRunOut(counts)) {
                layings.computeIfAbsent(counts, none -> new Laying(counts, laid(counts)));
            }
        }
        return layings.values();
    }

    private Set<Map<LayerGroup.Choice, Integer>> combinations(double factor) {
        Map<LayerGroup.Choice, Integer> below = new HashMap<>();
        groups.keySet().forEach(choice -> below.put(choice, choice.below(factor)));
        Set<Map<LayerGroup.Choice, Integer>> all = new LinkedHashSet<>(Set.of(below));
        if (groups.size() > MOST_CHOICES) {
            addLargestRemainderFirst(below, factor, all);
            return all;
        }
        for (LayerGroup.Choice choice : groups.keySet()) {
            for (Map<LayerGroup.Choice, Integer> known : List.copyOf(all)) {
                all.add(with(known, choice, choice.above(factor)));
            }
        }
        return all;
    }

    /** From all below to all above, one at a time. */
    private void addLargestRemainderFirst(
            Map<LayerGroup.Choice, Integer> below, double factor, Set<Map<LayerGroup.Choice, Integer>> all) {
        Map<LayerGroup.Choice, Integer> known = below;
        for (LayerGroup.Choice choice : groups.keySet().stream()
                .sorted(Comparator.comparingDouble(one -> below.get(one) - one.exact(factor)))
                .toList()) {
            known = with(known, choice, choice.above(factor));
            all.add(known);
        }
    }

    private static Map<LayerGroup.Choice, Integer> with(
            Map<LayerGroup.Choice, Integer> known, LayerGroup.Choice choice, int times) {
        Map<LayerGroup.Choice, Integer> changed = new HashMap<>(known);
        changed.put(choice, times);
        return changed;
    }

    private List<Integer> counts(Map<LayerGroup.Choice, Integer> chosen) {
        int[] counts = new int[layers.size()];
        Arrays.fill(counts, 1);
        groups.forEach((choice, alike) -> alike.forEach(group -> group.spread(chosen.get(choice), counts)));
        return IntStream.of(counts).boxed().toList();
    }

    private boolean leavesNoRunOut(List<Integer> counts) {
        return runs.stream().allMatch(run -> run.all().stream().anyMatch(layer -> counts.get(layer) > 0));
    }

    private List<Layer> laid(List<Integer> counts) {
        List<Layer> all = new ArrayList<>();
        int next = 0;
        for (FaceRun run : runs) {
            all.addAll(layers.subList(next, run.first()));
            run.laid(counts).forEach(i -> all.add(layers.get(i)));
            next = run.end();
        }
        all.addAll(layers.subList(next, layers.size()));
        return all;
    }
}
