package laminate.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import laminate.unit.PriceBasis;
import laminate.unit.UnitPrice;

/**
 * What work takes and costs.
 *
 * @param rate the price of an hour, empty where none is stated
 * @param operations the steps and their times
 */
public record Labour(Optional<UnitPrice> rate, List<Operation> operations) {

    /** A workshop that states nothing: the usual times and no rate. */
    public static final Labour USUAL = new Labour(Optional.empty(), Operation.USUAL);

    /**
     * Checks the rate.
     *
     * @throws IllegalArgumentException if the rate is not by the hour
     */
    public Labour {
        operations = List.copyOf(operations);
        if (rate.isPresent() && rate.get().basis() != PriceBasis.HOUR) {
            throw new IllegalArgumentException("a labour rate is by the hour, not " + rate.get());
        }
    }

    /**
     * These operations with others laid over them: one of the same name is replaced, a new one is added.
     *
     * @param own the workshop's own operations
     * @return the joint list
     */
    public Labour with(List<Operation> own) {
        List<Operation> joint = new ArrayList<>(operations);
        for (Operation operation : own) {
            int index = indexOf(joint, operation.name());
            if (index < 0) {
                joint.add(operation);
            } else {
                joint.set(index, operation);
            }
        }
        return new Labour(rate, joint);
    }

    /**
     * This labour at another rate.
     *
     * @param newRate the price of an hour
     * @return the labour
     */
    public Labour at(UnitPrice newRate) {
        return new Labour(Optional.of(newRate), operations);
    }

    private static int indexOf(List<Operation> operations, String name) {
        for (int i = 0; i < operations.size(); i++) {
            if (operations.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
