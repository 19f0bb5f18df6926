package laminate.process;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How consumables are reckoned: what the process usually uses up, a list of the workshop's own, or a share of the cost
 * of materials.
 *
 * @param own the workshop's own list, empty for the usual one
 * @param share the share of the cost of materials, empty where they are listed
 */
public record Consumables(Optional<List<ConsumableUse>> own, OptionalDouble share) {

    /** What each process usually uses up. */
    public static final Consumables USUAL = new Consumables(Optional.empty(), OptionalDouble.empty());

    /**
     * Checks the share.
     *
     * @throws IllegalArgumentException if it is below zero or not finite
     */
    public Consumables {
        own = own.map(List::copyOf);
        if (share.isPresent() && !(share.getAsDouble() >= 0 && Double.isFinite(share.getAsDouble()))) {
            throw new IllegalArgumentException("a share must not be below zero, not " + share.getAsDouble());
        }
    }

    /**
     * A list of the workshop's own, in place of the usual one for every process.
     *
     * @param uses what is used up
     * @return the consumables
     */
    public static Consumables listed(List<ConsumableUse> uses) {
        return new Consumables(Optional.of(uses), OptionalDouble.empty());
    }

    /**
     * A share of the cost of materials, nothing listed.
     *
     * @param share the share, 0.07 for 7 %
     * @return the consumables
     */
    public static Consumables shareOfMaterials(double share) {
        return new Consumables(Optional.of(List.of()), OptionalDouble.of(share));
    }

    /**
     * What a process uses up.
     *
     * @param process the process
     * @return the uses
     */
    public List<ConsumableUse> uses(Process process) {
        return own.isPresent() ? own.get() : ConsumableUse.usual(process);
    }
}
