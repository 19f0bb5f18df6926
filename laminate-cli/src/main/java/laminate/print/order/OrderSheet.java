package laminate.print.order;

import java.util.List;
import java.util.Objects;
import laminate.estimate.PartEstimate;
import laminate.order.Order;
import laminate.order.pieces.Cutting;

/**
 * An order with what it is for.
 *
 * @param parts the parts, each for all its mouldings
 * @param order what to buy for them
 * @param cutting how their layers are cut, {@link Cutting#NONE} if that was not asked
 */
public record OrderSheet(List<PartEstimate> parts, Order order, Cutting cutting) {
    /** Copies the list. */
    public OrderSheet {
        Objects.requireNonNull(cutting, "cutting");
        Objects.requireNonNull(order, "order");
        parts = List.copyOf(parts);
    }
}
