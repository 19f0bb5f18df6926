package laminate.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.part.ReserveKind;

/** Keeps the least reserve factor of each kind. */
final class LeastReserves {
    /** A factor this many times the least is one of rounding: nothing is loaded that way. */
    private static final double UNLOADED = 1e10;

    /** Factors this near are the same, as of mirrored places of a panel; the first found then stands. */
    private static final double ROUNDING = 1e-9;

    private final Map<ReserveKind, Reserve> least = new EnumMap<>(ReserveKind.class);

    void add(Reserve reserve) {
        least.merge(reserve.kind(), reserve, LeastReserves::lesser);
    }

    /** The first of the least in a list. */
    static Optional<Reserve> least(List<Reserve> reserves) {
        return reserves.stream().reduce(LeastReserves::lesser);
    }

    private static Reserve lesser(Reserve first, Reserve next) {
        return isLess(next.factor(), first.factor()) ? next : first;
    }

    /** Whether a factor is less than another by more than rounding, which differs from machine to machine. */
    static boolean isLess(double one, double other) {
        return one < other * (1 - ROUNDING);
    }

    void addAll(Collection<Reserve> reserves) {
        reserves.forEach(this::add);
    }

    Optional<Reserve> of(ReserveKind kind) {
        return Optional.ofNullable(least.get(kind)).filter(this::isLoaded);
    }

    List<Reserve> sorted() {
        return least.values().stream()
                .filter(this::isLoaded)
                .sorted(Comparator.comparingDouble(Reserve::factor))
                .toList();
    }

    /** The least factor against failure of the first ply; infinite if none can fail. */
    static double ofPlies(List<Reserve> reserves) {
        return reserves.stream()
                .filter(reserve -> reserve.kind() == ReserveKind.FIRST_PLY)
                .mapToDouble(Reserve::factor)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private boolean isLoaded(Reserve reserve) {
        return isLoaded(
                reserve.factor(),
                least.values().stream().mapToDouble(Reserve::factor).min().orElse(0));
    }

    /** Whether a factor is more than what rounding leaves of no load, beside the lowest there is. */
    static boolean isLoaded(double factor, double lowest) {
        return factor <= UNLOADED * lowest || lowest == 0;
    }
}
