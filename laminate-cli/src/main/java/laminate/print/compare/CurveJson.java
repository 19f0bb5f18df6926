package laminate.print.compare;

import java.util.Optional;
import laminate.compare.Alternative;
import laminate.compare.BreakEven;
import laminate.compare.CostCurve;
import laminate.compare.CostRow;
import laminate.compare.SideBySide;
import laminate.print.JsonWriter;
import laminate.print.estimate.CostWords;
import laminate.unit.Money;

/** Costs line by line, break-even numbers and cost curves in JSON; money is text, so that no reader rounds it. */
final class CurveJson {
    private CurveJson() {}

    /** What the curve of one alternative is made of. */
    static void print(CostCurve curve, JsonWriter json) {
        json.key("cost_curve")
                .object()
                .field("currency", curve.running().currency())
                .field("set_up", amount(curve.setUp()));
        curve.mould().ifPresent(mould -> json.field("mould", amount(mould.cost(1))));
        curve.life().ifPresent(life -> json.field("mould_life", life));
        json.field("running", amount(curve.running()))
                .field("running_of", curve.mouldings())
                .end();
    }

    /** Costs, break-even numbers and curves of all alternatives. */
    static void print(SideBySide ways, JsonWriter json) {
        json.key("costs").array();
        ways.costs().forEach(row -> print(row, json));
        json.end().key("break_evens").array();
        ways.breakEvens().forEach(point -> print(point, json));
        json.end().key("curve").array();
        ways.counts().forEach(count -> print(count, ways, json));
        json.end();
    }

    private static void print(CostRow row, JsonWriter json) {
        json.object().field("head", row.head().map(CostWords::word).orElse("total"));
        if (!row.name().isEmpty()) {
            json.field("name", row.name());
        }
        json.key("each").array();
        for (int i = 0; i < row.each().size(); i++) {
            Optional<Money> extra = row.extra(i);
            json.object();
            row.each().get(i).ifPresent(money -> json.field("cost", amount(money)));
            extra.ifPresent(money -> json.field("extra", amount(money)));
            json.field("difference", row.difference(i)).end();
        }
        json.end().end();
    }

    private static void print(BreakEven point, JsonWriter json) {
        json.object()
                .field("overtaking", point.overtaking())
                .field("overtaken", point.overtaken())
                .field("parts", point.parts());
        point.forGood().ifPresent(parts -> json.field("for_good_from_parts", parts));
        json.end();
    }

    private static void print(int parts, SideBySide ways, JsonWriter json) {
        json.object().field("parts", parts).key("costs").array();
        for (Alternative way : ways.alternatives()) {
            json.object().field("alternative", way.name());
            way.curve()
                    .map(curve -> curve.at(parts))
                    .ifPresent(
                            point -> json.field("total", amount(point.total())).field("each", amount(point.each())));
            json.end();
        }
        json.end().end();
    }

    private static String amount(Money money) {
        return money.amount().toPlainString();
    }
}
