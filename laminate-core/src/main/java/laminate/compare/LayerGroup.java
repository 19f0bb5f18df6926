package laminate.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.process.FibreContent;

/**
 * The places of one material in one direction within a run, which are laid more or less often together.
 *
 * @param choice what it shares with those that must be laid as often
 * @param run the run
 * @param places numbers of its layers from the outside, the middle of a mirrored run left out
 * @param middle the middle of a mirrored run, if it is of this material
 */
record LayerGroup(Choice choice, FaceRun run, List<Integer> places, OptionalInt middle) {
    private static final double ROUNDING = 1e-9;

    /**
     * What decides how often layers are laid: equal choices are made alike.
     *
     * @param depth number of the face from the nearer side, so that faces that mirror each other share it
     * @param run the materials of the run from its outside
     * @param material the material
     * @param content its own fibre content
     * @param layers how many layers of the run the choice is about, of a mirrored run those of one half, or all that go
     *     with its middle
     */
    record Choice(int depth, List<String> run, String material, Optional<FibreContent> content, int layers) {
        double exact(double factor) {
            return factor * layers;
        }

        /** The whole number next below; the exact one if it is whole but for rounding. */
        int below(double factor) {
            return (int) Math.floor(exact(factor) + ROUNDING);
        }

        int above(double factor) {
            return (int) Math.ceil(exact(factor) - ROUNDING);
        }
    }

    private record Direction(String material, Optional<FibreContent> content, double angle) {
        static Direction of(Layer layer) {
            ReinforcementLayer laid = (ReinforcementLayer) layer;
            return new Direction(laid.material(), laid.content(), laid.angle());
        }
    }

    static List<LayerGroup> of(FaceRun run, List<Layer> layers) {
        Map<Direction, List<Integer>> places = new LinkedHashMap<>();
        for (int layer : run.outsideIn()) {
            places.computeIfAbsent(Direction.of(layers.get(layer)), none -> new ArrayList<>())
                    .add(layer);
        }
        List<String> materials =
                run.outsideIn().stream().map(i -> layers.get(i).material()).toList();
        List<LayerGroup> groups = new ArrayList<>();
        places.forEach((direction, numbers) -> groups.add(of(run, materials, direction, numbers)));
        return groups;
    }

    private static LayerGroup of(FaceRun run, List<String> materials, Direction direction, List<Integer> numbers) {
        OptionalInt middle = numbers.stream()
                .filter(run::isMiddle)
                .mapToInt(Integer::intValue)
                .findFirst();
        List<Integer> places =
                numbers.stream().filter(layer -> !run.isMiddle(layer)).toList();
        int layers = middle.isPresent() ? 2 * places.size() + 1 : places.size();
        return new LayerGroup(
                new Choice(run.depth(), materials, direction.material(), direction.content(), layers),
                run,
                places,
                middle);
    }

    /** Spreads a number of layers evenly over the places, those of the far half of a mirrored run too. */
    void spread(int times, int[] counts) {
        int outside = middle.isPresent() ? (int) Math.round((double) times * places.size() / choice.layers()) : times;
        for (int i = 0; i < places.size(); i++) {
            counts[places.get(i)] = upTo(i + 1, outside) - upTo(i, outside);
            run.mirror(places.get(i), counts);
        }
        middle.ifPresent(layer -> counts[layer] = times - 2 * outside);
    }

    /** How many of so many lie in the first places, to the nearest whole. */
    private int upTo(int place, int times) {
        return (int) Math.round((double) place * times / places.size());
    }
}
