package laminate.quote;

import static laminate.testing.TestMaterials.mat;
import static laminate.testing.TestParts.hand;
import static laminate.testing.TestParts.withoutLosses;
import static laminate.testing.TestParts.zone;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import laminate.estimate.Estimator;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.material.Figure;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.process.Consumables;
import laminate.process.Labour;
import laminate.process.Operation;
import laminate.process.Workshop;
import laminate.quote.price.Overhead;
import laminate.quote.price.Pricing;
import laminate.unit.Money;
import laminate.unit.UnitPrice;

/**
 * A yard whose parts are easily reckoned by hand: a moulding takes two hours at 25 GBP, and half a kilogram of mat for a square
 * metre at 10 GBP; resin is free.
 */
final class TestYard {
    static final double HOUR = 3600;
    static final OptionalInt ANY = OptionalInt.empty();

    static final Workshop WORKSHOP = withoutLosses()
            .withConsumables(Consumables.listed(List.of()))
            .withLabour(new Labour(
                    Optional.of(UnitPrice.parse("25 GBP/h")),
                    List.of(new Operation("making", Operation.Basis.MOULDING, Figure.stated(2 * HOUR)))));

    /** Materials 50, labour 50. */
    static final Part LID = sheet("lid", 10);
    /** Materials 10, labour 50. */
    static final Part HATCH = sheet("hatch", 2);
    /** Materials 100, labour 50, overhead 50. */
    static final Part MOULD = sheet("lid mould", 20);
    /** Materials 20, labour 50, overhead 50. */
    static final Part PLUG = sheet("lid plug", 4);

    static final Pricing PRICING =
            Pricing.AT_COST.withRejects(0.05).withOverhead(new Overhead(1, Overhead.Base.LABOUR));

    private TestYard() {}

    static Part sheet(String name, double area) {
        return Part.of(name, List.of(zone(area, hand(mat(0.5)))));
    }

    static Money gbp(String amount) {
        return Money.parse(amount + " GBP");
    }

    static Estimator estimator(Workshop workshop, String mat) {
        return new Estimator(
                workshop,
                Optional.of(new PriceList(
                        "GBP",
                        Optional.empty(),
                        List.of(
                                price(mat, "10 GBP/kg"),
                                price("polyester-ortho", "0 GBP/kg"),
                                price("mekp", "0 GBP/kg")))));
    }

    static Quoting quoting(Terms terms) {
        return new Quoting(estimator(WORKSHOP, "mat-500"), WORKSHOP, terms);
    }

    static Quoting quoting(Pricing pricing) {
        return quoting(new Terms(pricing, LearningCurve.NONE, 1, 0));
    }

    static Tooling made(Part mould, OptionalInt life, OptionalInt planned) {
        return new Tooling(Optional.empty(), Optional.empty(), life, 0, Optional.empty(), planned, Optional.of(mould));
    }

    static Tooling bought(String price, OptionalInt life) {
        return new Tooling(Optional.empty(), Optional.of(gbp(price)), life, 0, Optional.empty());
    }

    static Part on(Part part, Part mould, OptionalInt life, OptionalInt planned) {
        return on(part, made(mould, life, planned));
    }

    static Part on(Part part, Tooling tooling) {
        return part.withTooling(List.of(tooling));
    }

    private static Price price(String id, String price) {
        return new Price(id, UnitPrice.parse(price), Optional.empty());
    }
}
