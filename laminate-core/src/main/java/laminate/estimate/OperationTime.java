package laminate.estimate;

import java.util.List;
import laminate.process.Operation;

/**
 * The time that an operation takes for all mouldings.
 *
 * @param operation the operation
 * @param amount how many m², metres, stages, items or mouldings it is done on
 * @param time the time of one person (s)
 */
public record OperationTime(Operation operation, double amount, double time) {

    /** The time of several operations (s). */
    static double sum(List<OperationTime> operations) {
        double sum = 0;
        for (OperationTime operation : operations) {
            sum += operation.time();
        }
        return sum;
    }
}
