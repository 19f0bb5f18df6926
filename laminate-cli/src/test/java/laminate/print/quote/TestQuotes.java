package laminate.print.quote;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import laminate.estimate.Estimator;
import laminate.part.Item;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.part.Zone;
import laminate.print.TestParts;
import laminate.quote.LearningCurve;
import laminate.quote.QuotationText;
import laminate.quote.Quote;
import laminate.quote.Quoting;
import laminate.quote.SetQuote;
import laminate.quote.Terms;
import laminate.quote.price.Overhead;
import laminate.quote.price.Pricing;
import laminate.quote.price.Profit;
import laminate.quote.price.Tax;
import laminate.unit.Money;

/** Quotes of a boat club's parts, made through the library alone. */
final class TestQuotes {
    static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    static final Letter LETTER = new Letter(Optional.of("Reed Bay School"), DAY, Optional.empty());

    private static final Pricing PRICING = new Pricing(
            0.05,
            new Overhead(1, Overhead.Base.LABOUR),
            0.05,
            new Profit.Margin(0.25),
            0.02,
            Optional.of(new Tax("VAT", 0.2)));
    private static final Terms TERMS = new Terms(PRICING, new LearningCurve(0.9, 5), 1.2, 16 * 3600);
    private static final QuotationText TEXT = new QuotationText(
            List.of("Workshop of the lake club", "The Boathouse"),
            List.of("trimmed and drilled"),
            List.of("carriage"),
            List.of("half with the order"),
            OptionalDouble.of(30 * 86_400));

    private TestQuotes() {}

    /** Every line other than zero, a mould that is made on a plug, four numbers. */
    static QuotedPart lid() {
        Part lid = TestParts.lockerLid().part().withTooling(List.of(mould()));
        return quoted(lid, TERMS, TEXT, List.of(1, 5, 10, 25));
    }

    /** No mould, no discount and no tax, profit as a mark-up. */
    static QuotedPart untaxed() {
        Terms terms = new Terms(
                new Pricing(0, Overhead.NONE, 0, new Profit.MarkUp(0.5), 0, Optional.empty()),
                LearningCurve.NONE,
                1,
                0);
        return quoted(TestParts.lockerLid().part(), terms, QuotationText.NONE, List.of(1));
    }

    /** Names that a table, a spreadsheet or a browser could take for something else. */
    static QuotedPart hostile() {
        String script = "<script>alert(1)</script>";
        Part named = TestParts.hostileNames().part();
        Part part = new Part(
                "=HYPERLINK(\"x\") " + script + " & 'lid'\u0007",
                1,
                List.of(Zone.of("top", 1, named.zones().get(0).layers())),
                List.of(new Item("@item <b>\"", 1, 0.1, Optional.of(Money.parse("1.00 GBP")))),
                named.measured());
        QuotationText text = new QuotationText(
                List.of(script),
                List.of(script),
                List.of("</ul><img src=x>"),
                List.of("&amp;"),
                OptionalDouble.empty());
        Pricing pricing = PRICING.withProfit(new Profit.MarkUp(0.1));
        Terms terms = new Terms(
                new Pricing(
                        pricing.rejects(),
                        pricing.overhead(),
                        pricing.contingency(),
                        pricing.profit(),
                        0,
                        Optional.of(new Tax("+<i>VAT</i>", 0.2))),
                LearningCurve.NONE,
                1,
                0);
        return quoted(part, terms, text, List.of(1, 5, 10, 25));
    }

    /** A part by itself. */
    static QuotedSet alone(QuotedPart part) {
        return QuotedSet.of(List.of(part));
    }

    /** Two parts, each by itself, in the same numbers. */
    static QuotedSet several() {
        return QuotedSet.of(List.of(lid(), hostile()));
    }

    /** A lid and two hatches off one mould; for fifty sets it takes two moulds, off one plug. */
    static QuotedSet lockers() {
        return set(
                "Lockers",
                lockerLid("Bow locker lid"),
                lockerLid("Locker hatch").withCount(2));
    }

    /** A set whose name a spreadsheet could take for a formula. */
    static QuotedSet hostileSet() {
        return set(
                "=HYPERLINK(\"x\") <b>",
                lockerLid("-1+2 <i>"),
                lockerLid("Locker hatch").withCount(2));
    }

    private static Part lockerLid(String name) {
        Part lid = TestParts.lockerLid().part();
        return new Part(name, 1, lid.zones(), lid.items(), lid.measured()).withTooling(List.of(setUp(mould())));
    }

    private static Tooling setUp(Tooling mould) {
        return new Tooling(
                mould.process(),
                mould.price(),
                mould.life(),
                1800,
                Optional.of(Money.parse("12.00 GBP")),
                mould.plannedPulls(),
                mould.mould());
    }

    private static QuotedSet set(String name, Part... parts) {
        Estimator estimator = new Estimator(TestParts.CLUB, Optional.of(TestParts.prices(true)));
        SetQuote quote = new Quoting(estimator, TestParts.CLUB, TERMS).quoteSet(List.of(parts), List.of(1, 10, 50));
        List<QuotedPart> quoted = new ArrayList<>();
        for (Quote part : quote.quotes()) {
            double mass = estimator.estimate(part.part()).massEach().planned();
            quoted.add(new QuotedPart(part, mass, false, TEXT));
        }
        return new QuotedSet(Optional.of(name), quoted, quote.batches());
    }

    private static QuotedPart quoted(Part part, Terms terms, QuotationText text, List<Integer> counts) {
        Estimator estimator = new Estimator(TestParts.CLUB, Optional.of(TestParts.prices(true)));
        Quoting quoting = new Quoting(estimator, TestParts.CLUB, terms);
        double mass = estimator.estimate(part).massEach().planned();
        return new QuotedPart(quoting.quote(part, counts), mass, false, text);
    }

    private static Tooling mould() {
        return on(made("Mould", List.of(on(made("Plug", List.of()), 3))), 120);
    }

    private static Tooling on(Part mould, int life) {
        return new Tooling(
                Optional.empty(),
                Optional.empty(),
                OptionalInt.of(life),
                0,
                Optional.empty(),
                OptionalInt.empty(),
                Optional.of(mould));
    }

    private static Part made(String name, List<Tooling> tooling) {
        Zone zone = Zone.of(
                "face", 1, TestParts.hostileNames().part().zones().get(0).layers());
        return Part.of(name, List.of(zone)).withTooling(tooling);
    }
}
