package laminate.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import laminate.part.Tooling;
import laminate.quote.Tools.Made;
import laminate.quote.Tools.Tool;
import laminate.quote.price.Mould;
import laminate.quote.price.OtherPulls;
import laminate.unit.Money;

/**
 * What moulds and plugs cost, and what each thing that is made on them bears.
 *
 * @param tools the tools of a batch
 * @param each what one costs, without its share of what it is made on
 */
record ToolCosts(Tools tools, Function<Tooling, Money> each) {

    /** What a part of the batch, or a tool, bears a share of: its mould, and what is bought to set it up. */
    List<Mould> moulds(Made made) {
        List<Mould> moulds = new ArrayList<>();
        mould(made).ifPresent(moulds::add);
        made.on()
                .setUpPrice()
                .ifPresent(price -> moulds.add(new Mould("set-up", price, OptionalInt.empty(), OptionalInt.empty())));
        return moulds;
    }

    /** What something is made on, shared with all else that is. */
    Optional<Mould> mould(Made made) {
        return tools.under(made).map(tool -> mould(tool, tool.others(made)));
    }

    SetQuote.Batch batch() {
        return new SetQuote.Batch(
                tools.sets(), tools.all().stream().map(this::cost).toList());
    }

    private SetQuote.ToolCost cost(Tool tool) {
        Mould mould = mould(tool, OtherPulls.NONE);
        List<SetQuote.Share> shares = new ArrayList<>();
        for (Made taker : tool.takers()) {
            Money bears = mould.among(tool.others(taker)).share(taker.pulls());
            shares.add(new SetQuote.Share(taker.name(), taker.pulls(), bears));
        }
        return new SetQuote.ToolCost(
                tool.use(), mould.worksCost(), mould.cost(tool.use().made()), shares);
    }

    private Mould mould(Tool tool, OtherPulls others) {
        Tooling stated = tool.tooling();
        return new Mould(
                stated.mouldName(),
                each.apply(stated),
                stated.life(),
                stated.plannedPulls(),
                moulds(tool.made()),
                others);
    }
}
