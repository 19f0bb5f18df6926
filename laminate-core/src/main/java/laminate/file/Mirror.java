package laminate.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.part.CoreLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;

/**
 * Lays a list of layers again in reverse, so that the laminate is symmetric.
 *
 * <p>A reinforcement of several plies is laid other face down. Turning reverses its plies and negates their angles a, and
 * the mirror image wants them reversed at the same angles: the roll is swung by δ so that δ − a = a for every ply, which
 * is 0° for 0/90 and 90° for ±45. A triaxial or quadriaxial has no such δ: its ±45 plies stay exchanged, as they do in the
 * workshop, and a little of B16 and B26 remains.
 */
final class Mirror {

    private static final double HALF_TURN = 180;

    private Mirror() {}

    /** The layers and their mirror image; a core that comes last stands once. */
    static List<Layer> of(List<Layer> layers) {
        List<Layer> all = new ArrayList<>(layers);
        int last = layers.size() - 1;
        int from = layers.get(last) instanceof CoreLayer ? last - 1 : last;
        for (int i = from; i >= 0; i--) {
            all.add(image(layers.get(i)));
        }
        return all;
    }

    private static Layer image(Layer layer) {
        if (!(layer instanceof ReinforcementLayer laid)
                || laid.reinforcement().plies().size() == 1) {
            return layer;
        }
        double swing = swing(laid.reinforcement().plies()).orElse(0);
        return new ReinforcementLayer(
                laid.reinforcement(),
                laid.angle() + (laid.turned() ? -swing : swing),
                !laid.turned(),
                laid.layUp(),
                laid.content(),
                laid.stage());
    }

    /** δ = 2a, if that of the first ply with a direction holds for all. */
    private static OptionalDouble swing(List<FibrePly> plies) {
        List<FibrePly> directed = plies.stream()
                .filter(ply -> ply.form().architecture() != Form.Architecture.RANDOM)
                .sorted(Comparator.comparing(Mirror::isSquare))
                .toList();
        if (directed.isEmpty()) {
            return OptionalDouble.empty();
        }
        double swing = remainder(2 * directed.get(0).angle(), HALF_TURN);
        return directed.stream().allMatch(ply -> isImage(ply, swing))
                ? OptionalDouble.of(swing)
                : OptionalDouble.empty();
    }

    private static boolean isImage(FibrePly ply, double swing) {
        return remainder(2 * ply.angle() - swing, isSquare(ply) ? HALF_TURN / 2 : HALF_TURN) == 0;
    }

    /** A woven ply with as much warp as weft is its own image after a quarter turn. */
    private static boolean isSquare(FibrePly ply) {
        return ply.form().architecture() == Form.Architecture.WOVEN && ply.warpShare() == 0.5;
    }

    private static double remainder(double angle, double of) {
        return (angle % of + of) % of;
    }
}
