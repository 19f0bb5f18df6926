package laminate.print.quote;

import java.io.IOException;
import java.util.List;
import java.util.OptionalInt;
import laminate.print.JsonWriter;
import laminate.quote.Quote;
import laminate.quote.SetQuote;
import laminate.quote.price.BatchPrice;
import laminate.quote.price.Mould;
import laminate.quote.price.Pricing;
import laminate.quote.price.Sensitivity.Swing;

/**
 * Prints quotes as one JSON object: {@code prices[]} of each part, and {@code prices[]} of so many sets of a project, with the
 * moulds and plugs they take in {@code tooling[]}; of parts by themselves so many of each, where all are priced in one currency
 * and offered in the same numbers. Money is text in the currency's digits; every line is the total
 * for the batch of {@code count} good parts but {@code unit_net}; net is the sum of the lines above it, less discount.
 */
public final class QuoteJson {

    /** A printer. */
    public QuoteJson() {}

    /**
     * Prints a quote.
     *
     * @param quoted a set, or parts by themselves
     * @param out takes the text
     * @throws IOException if that fails
     */
    public void print(QuotedSet quoted, Appendable out) throws IOException {
        boolean ofProject = quoted.project().isPresent();
        JsonWriter.write(out, json -> {
            json.object();
            quoted.project().ifPresent(project -> json.field("project", project));
            json.key("parts").array();
            quoted.parts().forEach(part -> print(part, ofProject, json));
            json.end();
            if (ofProject) {
                json.key("tooling").array();
                quoted.batches().forEach(batch -> print(batch, json));
                json.end();
            }
            printTotals(BatchTotal.of(quoted), json);
            json.end();
        });
    }

    private static void print(QuotedPart part, boolean inSet, JsonWriter json) {
        json.object().field("part", part.name());
        if (inSet) {
            json.field("in_a_set", part.quote().part().count());
        }
        json.field("currency", part.currency()).field("materials_as", part.asBought() ? "bought" : "consumed");
        printRates(part.quote().terms().pricing(), json);
        json.key("prices").array();
        part.quote().offers().forEach(offer -> print(offer, part.quote().terms().pricing(), json));
        json.end().end();
    }

    private static void printRates(Pricing pricing, JsonWriter json) {
        json.key("rates")
                .object()
                .field("rejects", pricing.rejects())
                .field("overhead", pricing.overhead().rate())
                .field("overhead_on", pricing.overhead().base().word())
                .field("contingency", pricing.contingency())
                .field("margin", pricing.profit().margin())
                .field("mark_up", pricing.profit().markUp())
                .field("discount", pricing.discount());
        pricing.tax().ifPresent(tax -> json.field("tax_name", tax.name()).field("tax", tax.rate()));
        json.end();
    }

    private static void print(Quote.Offer offer, Pricing pricing, JsonWriter json) {
        BatchPrice price = offer.price();
        json.object().field("count", price.direct().count());
        for (PriceLine line : PriceLine.values()) {
            json.field(line.key(), Rates.amount(line.of(price)));
        }
        json.field("hours", price.direct().hours())
                .field("labour_rate", price.direct().rate().toString())
                .field("pulls", pricing.pulls(price.direct().count()))
                .field("cost", Rates.amount(price.cost()))
                .field("margin_after_discount", price.marginAfterDiscount());
        if (price.direct().time() > 0) {
            json.field("hourly_return", Rates.amount(offer.hourly()));
        }
        if (offer.breakEven().isPresent()) {
            json.field("break_even", offer.breakEven().getAsInt());
        }
        json.field("mould_days", offer.mouldTime().days());
        json.key("moulds").array();
        offer.build()
                .moulds()
                .forEach(mould -> print(mould, pricing.pulls(price.direct().count()), json));
        json.end().key("sensitivity").array();
        offer.swings().forEach(swing -> print(swing, json));
        json.end().key("bounds").array();
        print(offer.materials(), json);
        print(offer.hours(), json);
        json.end().end();
    }

    private static void print(Mould mould, double pulls, JsonWriter json) {
        json.object();
        printMould(mould, json);
        json.field("share", Rates.amount(mould.share(pulls)));
        json.key("made_on").array();
        for (Mould plug : mould.madeOn()) {
            json.object();
            printMould(plug, json);
            json.end();
        }
        json.end().end();
    }

    private static void printMould(Mould mould, JsonWriter json) {
        json.field("name", mould.name()).field("works_cost", Rates.amount(mould.worksCost()));
        printPulls(mould.life(), mould.plannedPulls(), json);
    }

    private static void printPulls(OptionalInt life, OptionalInt planned, JsonWriter json) {
        if (life.isPresent()) {
            json.field("life", life.getAsInt());
        }
        if (planned.isPresent()) {
            json.field("planned_pulls", planned.getAsInt());
        }
    }

    private static void print(SetQuote.Batch batch, JsonWriter json) {
        json.object().field("count", batch.sets()).key("tools").array();
        for (SetQuote.ToolCost tool : batch.tools()) {
            json.object().field("name", tool.use().name()).field("works_cost", Rates.amount(tool.each()));
            printPulls(tool.use().tooling().life(), tool.use().tooling().plannedPulls(), json);
            json.field("pulls", tool.use().pulls())
                    .field("made", tool.use().made())
                    .field("to_make", tool.use().toMake())
                    .field("cost", Rates.amount(tool.all()))
                    .field("paid", Rates.amount(tool.borne()));
            json.key("shares").array();
            tool.shares().forEach(share -> print(share, json));
            json.end().end();
        }
        json.end().end();
    }

    private static void print(SetQuote.Share share, JsonWriter json) {
        json.object()
                .field("by", share.by())
                .field("pulls", share.pulls())
                .field("share", Rates.amount(share.bears()))
                .end();
    }

    private static void print(Swing swing, JsonWriter json) {
        json.object()
                .field("input", swing.input().word())
                .field("change", swing.change())
                .field("unit_net_lower", Rates.amount(swing.lower()))
                .field("unit_net_higher", Rates.amount(swing.higher()))
                .end();
    }

    private static void printTotals(List<BatchTotal> totals, JsonWriter json) {
        if (totals.isEmpty()) {
            return;
        }
        json.key("prices").array();
        for (BatchTotal total : totals) {
            json.object().field("count", total.count());
            for (PriceLine line : PriceLine.values()) {
                json.field(line.key(), Rates.amount(total.of(line)));
            }
            json.field("hours", total.hours()).end();
        }
        json.end();
    }
}
