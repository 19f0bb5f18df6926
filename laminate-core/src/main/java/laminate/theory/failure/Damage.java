package laminate.theory.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import laminate.theory.Laminate;
import laminate.theory.Ply;

/** Which plies of a laminate have failed so far, and which of these have broken; the others have cracked. */
final class Damage {
    private final Laminate sound;
    private final PlyDiscount discount;
    private final Set<Integer> failed = new TreeSet<>();
    private final Set<Integer> broken = new TreeSet<>();

    Damage(Laminate sound, PlyDiscount discount) {
        this.sound = sound;
        this.discount = discount;
    }

    /** A ply that fails once more after it has cracked, breaks. */
    void add(PlyReserve failure) {
        boolean first = failed.add(failure.ply());
        if (!first || discount.breaks(failure.reserve().mode())) {
            broken.add(failure.ply());
        }
    }

    /** The laminate with what its plies still carry. */
    Laminate laminate() {
        List<Ply> plies = new ArrayList<>();
        for (int i = 0; i < sound.plies().size(); i++) {
            Ply ply = sound.plies().get(i);
            plies.add(failed.contains(i) ? discounted(ply, broken.contains(i)) : ply);
        }
        return Laminate.of(plies);
    }

    private Ply discounted(Ply ply, boolean isBroken) {
        return new Ply(
                isBroken ? discount.broken(ply.lamina()) : discount.cracked(ply.lamina()),
                ply.thickness(),
                ply.angleDegrees());
    }

    /** What fails next at a point: by the chosen criterion; by maximum stress once cracked; nothing once broken. */
    Optional<ReserveFactor> next(LoadedPoint point, Criterion chosen) {
        if (broken.contains(point.ply())) {
            return Optional.empty();
        }
        return point.least(failed.contains(point.ply()) ? Criterion.MAX_STRESS : chosen);
    }

    List<Integer> survivors() {
        return IntStream.range(0, sound.plies().size())
                .filter(i -> !broken.contains(i))
                .boxed()
                .toList();
    }
}
