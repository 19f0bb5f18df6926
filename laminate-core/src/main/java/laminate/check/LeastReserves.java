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

    private final Map<ReserveKind, Reserve> least = new EnumMap<>(ReserveKind.class);

    void add(Reserve reserve) {
        least.merge(reserve.kind(), reserve, (one, other) -> other.factor() < one.factor() ? other : one);
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
