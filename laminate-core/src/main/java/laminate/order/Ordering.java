package laminate.order;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import laminate.estimate.Cost;
import laminate.estimate.PartEstimate;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.order.pieces.Cutting;
import laminate.order.pieces.MaterialCut;
import laminate.part.Item;
import laminate.part.Tooling;

/**
 * Makes the order for one or more parts: sums what they need, takes off what lies in stock, and buys the rest in the packs
 * that cost least, never less than is needed.
 *
 * <pre>{@code
 * Order order = new Ordering(prices, stock, Optional.of(LocalDate.of(2026, 3, 2))).order(List.of(lid, tank));
 * Optional<Money> total = order.total();
 * }</pre>
 */
public final class Ordering {
    private final Map<String, Price> prices = new HashMap<>();
    private final List<StockItem> stock;
    private final Optional<LocalDate> wanted;

    /**
     * Makes an ordering.
     *
     * @param prices what materials cost and how they are sold; empty if nothing has a price
     * @param stock what lies in the store
     * @param wanted the day of use, against which shelf lives and lead times are held; empty if it is not known
     */
    public Ordering(Optional<PriceList> prices, List<StockItem> stock, Optional<LocalDate> wanted) {
        prices.ifPresent(list -> list.prices().forEach(price -> this.prices.put(price.material(), price)));
        this.stock = List.copyOf(stock);
        this.wanted = Objects.requireNonNull(wanted, "wanted");
    }

    /**
     * Orders what parts need.
     *
     * @param parts their estimates, each for all mouldings of the part
     * @return the order
     * @throws IllegalArgumentException if items are priced in another currency than materials, or all packs of a material
     *     hold less than is needed
     */
    public Order order(List<PartEstimate> parts) {
        return order(parts, Cutting.NONE);
    }

    /**
     * Orders what parts need, and of what is planned to be cut no less than the plan takes.
     *
     * @param parts their estimates, each for all mouldings of the part
     * @param cutting how their layers are cut
     * @return the order
     * @throws IllegalArgumentException if items are priced in another currency than materials, or all packs of a material
     *     hold less than is needed
     */
    public Order order(List<PartEstimate> parts, Cutting cutting) {
        return order(parts, cutting, List.of());
    }

    /**
     * Orders what parts need, and moulds that are bought for them. What sets up a part is bought once for its batch. A mould
     * that only the part states is taken to be there, whatever its price, for nobody says how many there are.
     *
     * @param parts their estimates, each for all mouldings of the part
     * @param cutting how their layers are cut
     * @param tools moulds and plugs to buy, as a project tells them
     * @return the order
     * @throws IllegalArgumentException if items are priced in another currency than materials, or all packs of a material
     *     hold less than is needed
     */
    public Order order(List<PartEstimate> parts, Cutting cutting, List<Item> tools) {
        Store store = new Store(stock, wanted);
        List<OrderLine> lines = new ArrayList<>();
        Set<String> missing = new LinkedHashSet<>();
        List<String> remarks = new ArrayList<>();
        for (Need need : NeedLedger.of(parts, tools)) {
            Optional<MaterialCut> cut =
                    cutting.find(need.material(), need.quantity().thickness());
            OrderLine line = cut.isPresent() ? line(need, cut.get(), store, remarks) : line(need, store);
            lines.add(line);
            if (line.cost().isEmpty()) {
                missing.add(need.material());
            }
        }
        remarks.addAll(store.remarks());
        parts.stream()
                .filter(Ordering::hasConsumablesByShare)
                .map(part -> part.part().name()
                        + ": consumables are reckoned as a share of the materials, and are not ordered")
                .forEach(remarks::add);
        parts.stream()
                .filter(Ordering::hasMouldOfItsOwn)
                .map(
                        part -> part.part().name()
                                + ": its mould has a price, and is taken to be there; a project's tooling tells which are to buy")
                .forEach(remarks::add);
        return new Order(wanted, lines, List.copyOf(missing), remarks);
    }

    /** A mould that a project buys has a name. */
    private static boolean hasMouldOfItsOwn(PartEstimate part) {
        Tooling tooling = part.part().toolingInUse();
        return tooling.price().isPresent() && tooling.name().isEmpty();
    }

    private static boolean hasConsumablesByShare(PartEstimate part) {
        return part.cost().stream()
                .flatMap(cost -> cost.lines().stream())
                .anyMatch(line -> line.category() == Cost.Category.CONSUMABLES
                        && line.price().isEmpty());
    }

    private OrderLine line(Need need, Store store) {
        Offer offer = Offer.of(need, price(need), Optional.empty());
        double inStock = sum(store.amounts(need, offer.measure()));
        return line(need, offer, inStock, offer.buy(Math.max(0, offer.amount() - inStock)), List.of());
    }

    private OrderLine line(Need reckoned, MaterialCut cut, Store store, List<String> remarks) {
        Offer usual = Offer.of(reckoned, price(reckoned), Optional.of(cut));
        List<Double> stock = store.amounts(reckoned, usual.measure());
        CutPurchase.Bought bought = new CutPurchase(reckoned, cut, usual, stock).buy();
        Need need = bought.need();
        if (need != reckoned) {
            remarks.add(goesByThePlan(reckoned, need));
        }
        Offer offer = usual.times(need.factorOf(reckoned));
        double inStock = sum(stock);
        Offer.Purchase purchase = offer.buy(Math.max(0, offer.amount() - inStock), bought.packs());
        return line(need, offer, inStock, purchase, bought.rolls());
    }

    private static String goesByThePlan(Need reckoned, Need need) {
        return String.format(
                Locale.ROOT,
                "cutting %s takes %.3g m² and the usual waste allows for %.3g m²; the order goes by the plan",
                need.material(),
                need.quantity().area().orElseThrow(),
                reckoned.quantity().area().orElseThrow());
    }

    private Optional<Price> price(Need need) {
        return Optional.ofNullable(prices.get(need.material()));
    }

    private static double sum(List<Double> amounts) {
        return amounts.stream().mapToDouble(amount -> amount).sum();
    }

    private OrderLine line(Need need, Offer offer, double inStock, Offer.Purchase purchase, List<TakenRoll> rolls) {
        Delivery delivery =
                offer.supply().map(supply -> Delivery.of(supply, wanted)).orElse(Delivery.UNKNOWN);
        return new OrderLine(
                need,
                offer.measure(),
                offer.amount(),
                inStock,
                purchase.packs(),
                purchase.bought(),
                purchase.cost(),
                purchase.surplusValue(),
                rolls,
                delivery);
    }
}
