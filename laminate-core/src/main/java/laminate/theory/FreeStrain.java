package laminate.theory;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The strain that each ply would take if it were alone, α ΔT + β c, in laminate axes. */
final class FreeStrain {
    private FreeStrain() {}

    static List<Vector3> of(Laminate laminate, LaminateLoad load) {
        List<Vector3> free = new ArrayList<>();
        for (int i = 0; i < laminate.plies().size(); i++) {
            Ply ply = laminate.plies().get(i);
            Vector3 warm = part("thermal expansion", i, ply.thermalExpansion(), load.temperatureChange());
            Vector3 wet = part("moisture expansion", i, ply.moistureExpansion(), load.moisture());
            free.add(warm.plus(wet));
        }
        return free;
    }

    private static Vector3 part(String name, int ply, Optional<Vector3> expansion, double change) {
        if (change == 0) {
            return Vector3.ZERO;
        }
        return expansion
                .map(perUnit -> perUnit.times(change))
                .orElseThrow(() -> new IllegalArgumentException(
                        name + " of ply " + (ply + 1) + " is not known; a change of " + change + " needs it"));
    }
}
