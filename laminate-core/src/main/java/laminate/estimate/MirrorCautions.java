package laminate.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Status;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;
import laminate.theory.Matrix3;

/**
 * The caution about a mirrored zone that is not symmetric after all: a roll of three or four directions, laid other face
 * down, has its ±45 plies exchanged, and no turning brings them back.
 */
final class MirrorCautions {

    /** Shares of A h below which B16 and B26 are the last digits of a sum. */
    private static final double NOTHING = 1e-9;

    private static final double HALF_TURN = 180;

    private static final double SAME_ANGLE = 1e-9;

    private MirrorCautions() {}

    static List<Caution> of(ZoneEstimate zone) {
        List<String> rolls = exchangedRolls(zone.zone().layers());
        Matrix3 coupling = zone.laminate().coupling();
        double twist = Math.max(Math.abs(coupling.get(0, 2)), Math.abs(coupling.get(1, 2)));
        double scale = zone.laminate().membrane().get(0, 0) * zone.laminate().thickness();
        if (rolls.isEmpty() || twist <= NOTHING * scale) {
            return List.of();
        }
        String text = String.format(
                Locale.ROOT,
                "%s: mirrored, %s lies other face down with its slanted plies exchanged; B16 = %.0f N and"
                        + " B26 = %.0f N remain, and the laminate twists as it is stretched. Separate 0/90 and ±45 rolls"
                        + " leave none.",
                zone.zone().name(),
                String.join(", ", rolls),
                coupling.get(0, 2),
                coupling.get(1, 2));
        return List.of(new Caution(
                Caution.Kind.SCHEDULE, text, "coupling of an unsymmetric laminate, Jones 1999, ch. 4", Status.MEMORY));
    }

    /** Rolls that are their own counterpart in a mirrored list, turned, and yet not their mirror image. */
    private static List<String> exchangedRolls(List<Layer> layers) {
        List<String> rolls = new ArrayList<>();
        for (int i = 0; i < layers.size() / 2; i++) {
            Layer lower = layers.get(i);
            Layer upper = layers.get(layers.size() - 1 - i);
            if (!lower.material().equals(upper.material())) {
                return List.of();
            }
            if (lower instanceof ReinforcementLayer one
                    && upper instanceof ReinforcementLayer other
                    && one.turned() != other.turned()
                    && !isImage(one.plies(), other.plies())
                    && !rolls.contains(one.material())) {
                rolls.add(one.material());
            }
        }
        return rolls;
    }

    private static boolean isImage(List<FibrePly> one, List<FibrePly> other) {
        int last = one.size() - 1;
        return IntStream.rangeClosed(0, last).allMatch(i -> isImage(one.get(i), other.get(last - i)));
    }

    private static boolean isImage(FibrePly one, FibrePly other) {
        Form.Architecture lying = one.form().architecture();
        boolean square = lying == Form.Architecture.WOVEN && one.warpShare() == 0.5;
        double sameAfter = square ? HALF_TURN / 2 : HALF_TURN;
        return lying == Form.Architecture.RANDOM
                || Math.abs(Math.IEEEremainder(one.angle() - other.angle(), sameAfter)) < SAME_ANGLE;
    }
}
