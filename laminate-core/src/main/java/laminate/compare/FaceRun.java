package laminate.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;

/**
 * Layers of reinforcement that lie on each other in one stage, laid alike.
 *
 * @param first number of its first layer in the schedule, counted from 0
 * @param end number of the layer after its last
 * @param depth number of its face, counted from the nearer side by the cores between
 * @param order which end is its outside
 */
record FaceRun(int first, int end, int depth, Order order) {
    /** Which end of a run lies outside. */
    enum Order {
        /** The first layer: a face at the mould, or a solid lay-up. */
        FORWARD,
        /** The last layer: a face inside. */
        BACKWARD,
        /** Both: a solid lay-up that is its own mirror image. */
        MIRRORED
    }

    /** The runs of a schedule, in the order laid. */
    static List<FaceRun> of(List<Layer> layers) {
        List<Integer> faces = faceNumbers(layers);
        int last = Collections.max(faces);
        List<FaceRun> runs = new ArrayList<>();
        int first = 0;
        while (first < layers.size()) {
            int end = first + 1;
            if (layers.get(first) instanceof ReinforcementLayer) {
                while (end < layers.size() && isOfOneRun(layers.get(first), layers.get(end))) {
                    end++;
                }
                int face = faces.get(first);
                boolean whole = end - first == Collections.frequency(faces, face);
                runs.add(new FaceRun(
                        first, end, Math.min(face, last - face), order(layers.subList(first, end), whole, face, last)));
            }
            first = end;
        }
        return runs;
    }

    /** For each layer how many cores, one on the other counted as one, lie between it and the mould; −1 for a core. */
    private static List<Integer> faceNumbers(List<Layer> layers) {
        List<Integer> faces = new ArrayList<>();
        int face = 0;
        for (int i = 0; i < layers.size(); i++) {
            boolean core = WholeLayers.isCore(layers.get(i));
            face += core && !(i > 0 && WholeLayers.isCore(layers.get(i - 1))) ? 1 : 0;
            faces.add(core ? -1 : face);
        }
        return faces;
    }

    private static boolean isOfOneRun(Layer one, Layer other) {
        return other instanceof ReinforcementLayer
                && one.stage().equals(other.stage())
                && one.laying().equals(other.laying());
    }

    private static Order order(List<Layer> run, boolean wholeFace, int face, int lastFace) {
        if (2 * face == lastFace) {
            return wholeFace && isMirrored(run) ? Order.MIRRORED : Order.FORWARD;
        }
        return 2 * face < lastFace ? Order.FORWARD : Order.BACKWARD;
    }

    private static boolean isMirrored(List<Layer> run) {
        return IntStream.range(0, run.size() / 2).allMatch(i -> isAlike(run.get(i), run.get(run.size() - 1 - i)));
    }

    /** A mirror image is laid other face down, so its angle may differ. */
    private static boolean isAlike(Layer one, Layer other) {
        return one instanceof ReinforcementLayer laid
                && other instanceof ReinforcementLayer image
                && laid.material().equals(image.material())
                && laid.content().equals(image.content());
    }

    /** Numbers of all its layers. */
    List<Integer> all() {
        return IntStream.range(first, end).boxed().toList();
    }

    /** Numbers of its layers from the outside, of a mirrored run to its middle. */
    List<Integer> outsideIn() {
        return switch (order) {
            case FORWARD -> all();
            case BACKWARD -> reversed(all());
            case MIRRORED -> all().subList(0, (end - first + 1) / 2);
        };
    }

    /** Whether a layer is the middle of a mirrored run. */
    boolean isMiddle(int layer) {
        return order == Order.MIRRORED && layer == image(layer);
    }

    private int image(int layer) {
        return first + end - 1 - layer;
    }

    /** Lays the image of a layer in a mirrored run as often. */
    void mirror(int layer, int[] counts) {
        if (order == Order.MIRRORED) {
            counts[image(layer)] = counts[layer];
        }
    }

    /** Numbers of its layers as they are laid now, in rounds. */
    List<Integer> laid(List<Integer> counts) {
        List<Integer> rounds =
                rounds(outsideIn().stream().filter(layer -> !isMiddle(layer)).toList(), counts);
        return switch (order) {
            case FORWARD -> rounds;
            case BACKWARD -> reversed(rounds);
            case MIRRORED -> mirrored(rounds, counts);
        };
    }

    private List<Integer> mirrored(List<Integer> half, List<Integer> counts) {
        List<Integer> all = new ArrayList<>(half);
        int middle = first + (end - first) / 2;
        all.addAll(isMiddle(middle) ? Collections.nCopies(counts.get(middle), middle) : List.of());
        reversed(half).forEach(layer -> all.add(image(layer)));
        return all;
    }

    private static List<Integer> rounds(List<Integer> layers, List<Integer> counts) {
        List<Integer> laid = new ArrayList<>();
        int most = layers.stream().mapToInt(counts::get).max().orElse(0);
        for (int i = 0; i < most; i++) {
            int round = i;
            layers.stream().filter(layer -> counts.get(layer) > round).forEach(laid::add);
        }
        return laid;
    }

    private static List<Integer> reversed(List<Integer> list) {
        List<Integer> reversed = new ArrayList<>(list);
        Collections.reverse(reversed);
        return reversed;
    }
}
