package laminate.print.order;

import java.util.List;
import laminate.order.Order;
import laminate.order.OrderLine;
import laminate.order.TakenRoll;
import laminate.order.cut.Pull;
import laminate.order.pieces.MaterialCut;

/** Which of the rolls or sheets of an order each pull of a plan comes off, and where it begins on it. */
final class RollPlaces {
    private final List<TakenRoll> rolls;

    private RollPlaces(List<TakenRoll> rolls) {
        this.rolls = rolls;
    }

    static RollPlaces of(Order order, MaterialCut cut) {
        return new RollPlaces(order.lines().stream()
                .filter(line -> line.material().equals(cut.material())
                        && line.need().quantity().thickness().equals(cut.thickness()))
                .map(OrderLine::rolls)
                .findFirst()
                .orElse(List.of()));
    }

    List<TakenRoll> rolls() {
        return rolls;
    }

    /** The number of the roll or sheet, from 1. */
    int number(int pull) {
        for (int i = 0; i < rolls.size(); i++) {
            if (rolls.get(i).pulls().contains(pull)) {
                return i + 1;
            }
        }
        return 1;
    }

    /** The name of the roll or sheet, counted among those of that name; empty if nothing is known of rolls. */
    String name(int pull) {
        if (rolls.isEmpty()) {
            return "";
        }
        int number = number(pull);
        String name = rolls.get(number - 1).name();
        long among = rolls.subList(0, number).stream()
                .filter(roll -> roll.name().equals(name))
                .count();
        return name + " " + among;
    }

    /** Where a pull begins on its roll (m), if pulls are taken in their order. */
    double from(int pull, List<Pull> pulls) {
        return rolls.isEmpty()
                ? pulls.get(pull - 1).from()
                : rolls.get(number(pull) - 1).pulls().stream()
                        .filter(other -> other < pull)
                        .mapToDouble(other -> pulls.get(other - 1).length())
                        .sum();
    }
}
