package laminate.print.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import laminate.print.Golden;
import laminate.print.MarkdownPrinter;
import laminate.print.Printer;
import laminate.print.StrictJson;
import laminate.print.Style;
import laminate.print.TextPrinter;
import laminate.unit.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every format of orders against its accepted print. */
class OrderPrintTest {
    private static final OrderReport SI = new OrderReport(UnitSystem.SI);

    static Stream<Arguments> prints() {
        TextPrinter<OrderSheet> text = new TextPrinter<>(SI::of, 80, Style.PLAIN);
        return Stream.of(
                Arguments.of("order-lid.txt", text, TestOrders.lidAndDeck()),
                Arguments.of("order-hostile-names.txt", text, TestOrders.hostileNames()),
                Arguments.of(
                        "order-lid-us-120.txt",
                        new TextPrinter<>(new OrderReport(UnitSystem.US)::of, 120, Style.PLAIN),
                        TestOrders.lidAndDeck()),
                Arguments.of("order-lid.md", new MarkdownPrinter<>(SI::of), TestOrders.lidAndDeck()),
                Arguments.of("order-lid.json", new OrderJson(), TestOrders.lidAndDeck()),
                csv(OrderCsv.Which.LINES),
                csv(OrderCsv.Which.PACKS),
                Arguments.of("order-cut.txt", text, TestOrders.cut()),
                Arguments.of("order-cut.md", new MarkdownPrinter<>(SI::of), TestOrders.cut()),
                Arguments.of("order-cut.json", new OrderJson(), TestOrders.cut()),
                cut(OrderCsv.Which.PIECES),
                cut(OrderCsv.Which.PLACES));
    }

    private static Arguments cut(OrderCsv.Which which) {
        return Arguments.of("order-cut-" + which.word() + ".csv", new OrderCsv(which, UnitSystem.SI), TestOrders.cut());
    }

    private static Arguments csv(OrderCsv.Which which) {
        return Arguments.of(
                "order-lid-" + which.word() + ".csv", new OrderCsv(which, UnitSystem.SI), TestOrders.lidAndDeck());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prints")
    void printsWhatWasAccepted(String name, Printer<OrderSheet> printer, OrderSheet sheet) throws IOException {
        Golden.check(name, print(printer, sheet));
    }

    private static String print(Printer<OrderSheet> printer, OrderSheet sheet) throws IOException {
        StringBuilder printed = new StringBuilder();
        printer.print(List.of(sheet), printed);
        return printed.toString();
    }

    /** The lines as printed come to the total as printed, and what is bought with the stock covers the need. */
    @Test
    @SuppressWarnings("unchecked")
    void linesOfTheJsonAddUp() throws IOException {
        Map<String, Object> root = StrictJson.object(print(new OrderJson(), TestOrders.lidAndDeck()));
        BigDecimal sum = BigDecimal.ZERO;
        for (Map<String, Object> line : (List<Map<String, Object>>) root.get("lines")) {
            sum = sum.add(new BigDecimal((String) line.getOrDefault("cost", "0")));
            String measure = Stream.of("kg", "m2", "m", "l", "pieces")
                    .filter(unit -> line.containsKey("buy_" + unit))
                    .findFirst()
                    .orElseThrow();
            double covered = number(line, "in_stock") + number(line, "buy_" + measure);
            assertThat(covered).isGreaterThanOrEqualTo(number(line, "need_" + measure) * (1 - 1e-12));
        }
        assertThat(sum).isEqualByComparingTo((String) root.get("known_total"));
    }

    private static double number(Map<String, Object> line, String key) {
        return ((Number) line.get(key)).doubleValue();
    }
}
