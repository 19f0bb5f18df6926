package laminate.order.pieces;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.LaidLayer;
import laminate.estimate.LayerCut;
import laminate.estimate.PartEstimate;
import laminate.estimate.Price;
import laminate.estimate.PriceList;
import laminate.estimate.ZoneEstimate;
import laminate.order.cut.Piece;
import laminate.order.cut.RollPlanner;
import laminate.order.cut.SheetPlanner;
import laminate.part.Outline;
import laminate.part.Trim;
import laminate.part.Zone;

/**
 * Plans the cutting for one or more parts: parts the layers of every zone that states its outline into pieces, and lays the
 * pieces of each material on its roll or sheets.
 *
 * <pre>{@code
 * Cutting cutting = new CuttingPlanner(prices, CuttingRules.USUAL).plan(List.of(lid));
 * }</pre>
 */
public final class CuttingPlanner {
    /** A bound on time and memory, far above what a cutting table takes in a day. */
    private static final int MOST_PIECES = 5000;

    private final Map<String, Price> prices = new HashMap<>();
    private final CuttingRules rules;
    private final PieceMaker maker;

    /**
     * Makes a planner.
     *
     * @param prices how materials are sold: sizes of rolls and sheets are taken from there first; may be empty
     * @param rules how layers are parted and pieces cut
     */
    public CuttingPlanner(Optional<PriceList> prices, CuttingRules rules) {
        prices.ifPresent(list -> list.prices().forEach(price -> this.prices.put(price.material(), price)));
        this.rules = Objects.requireNonNull(rules, "rules");
        this.maker = new PieceMaker(rules);
    }

    /**
     * Plans the cutting.
     *
     * @param parts the estimates, each for all mouldings of the part
     * @return the pieces and how they are cut; what cannot be planned is remarked
     */
    public Cutting plan(List<PartEstimate> parts) {
        Run run = new Run(parts.size() > 1);
        for (PartEstimate part : parts) {
            run.add(part);
        }
        List<MaterialCut> cuts = new ArrayList<>();
        for (Pile pile : run.piles.values()) {
            if (!pile.pieces.isEmpty()) {
                cuts.add(cut(pile));
            }
        }
        return new Cutting(run.pieces, cuts, run.remarks);
    }

    /** What is cut from the same stock. */
    private record Key(String material, OptionalDouble thickness) {}

    /** The pieces of a material so far. */
    private static final class Pile {
        private final Key key;
        private final StockSize size;
        private final List<Piece> pieces = new ArrayList<>();
        private double covered;

        Pile(Key key, StockSize size) {
            this.key = key;
            this.size = size;
        }

        void add(CutPiece piece) {
            for (int i = 0; i < piece.count(); i++) {
                pieces.add(piece.one());
            }
        }
    }

    private MaterialCut cut(Pile pile) {
        boolean isOfRolls = pile.key.thickness().isEmpty();
        return new MaterialCut(
                pile.key.material(),
                pile.key.thickness(),
                pile.covered,
                isOfRolls ? Optional.of(roller(pile.size).plan(pile.pieces)) : Optional.empty(),
                isOfRolls ? Optional.empty() : Optional.of(sheeter(pile.size).plan(pile.pieces)));
    }

    private RollPlanner roller(StockSize size) {
        RollPlanner roller = RollPlanner.of(size.width()).withCuts(rules.cuts());
        return size.length().isPresent() ? roller.withRollLength(size.length().getAsDouble()) : roller;
    }

    private static SheetPlanner sheeter(StockSize size) {
        return SheetPlanner.of(size.width(), size.length().orElseThrow());
    }

    /** One planning: numbers the pieces as they are laid. */
    private final class Run {
        private final Map<Key, Pile> piles = new LinkedHashMap<>();
        private final List<CutPiece> pieces = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();
        private final boolean isOfSeveral;
        private int parts;
        private int numbers;

        Run(boolean isOfSeveral) {
            this.isOfSeveral = isOfSeveral;
        }

        void add(PartEstimate part) {
            parts++;
            numbers = 0;
            int cut = 0;
            for (ZoneEstimate zone : part.zones()) {
                int layers = zone.layers().size();
                List<LayerCut> cuts = part.quantities().cuts().subList(cut, cut + layers);
                cut += layers;
                if (zone.zone().outline().isPresent()) {
                    add(part, zone, cuts);
                } else {
                    remark(part.part().name() + ", zone " + zone.zone().name()
                            + ": no outline is stated; its pieces are not planned");
                }
            }
        }

        private void add(PartEstimate part, ZoneEstimate estimate, List<LayerCut> cuts) {
            Zone zone = estimate.zone();
            Outline outline = zone.outline()
                    .orElseThrow()
                    .grownBy(zone.trim().map(Trim::width).orElse(0.0));
            int seamed = 0;
            for (int i = 0; i < cuts.size(); i++) {
                LaidLayer laid = estimate.layers().get(i);
                if (laid.layer().laying().isPresent()) {
                    seamed += add(part, zone, outline, Fabric.of(laid), cuts.get(i), seamed) ? 1 : 0;
                }
            }
        }

        private boolean add(PartEstimate part, Zone zone, Outline outline, Fabric fabric, LayerCut cut, int before) {
            Key key = new Key(fabric.material().id(), fabric.thickness());
            Optional<StockSize> size = StockSize.of(
                    fabric.material(),
                    fabric.thickness(),
                    fabric.massPerArea(),
                    Optional.ofNullable(prices.get(key.material())));
            boolean isSheet = fabric.thickness().isPresent();
            if (size.isEmpty() || isSheet && size.get().length().isEmpty()) {
                remark(key.material() + ": no size of its " + (isSheet ? "sheets" : "roll")
                        + " is known; give a pack with width and length in the price list");
                return false;
            }
            try {
                return add(part, zone, cut, fabric, maker.lay(outline, fabric, size.get(), before), size.get());
            } catch (IllegalArgumentException e) {
                remark(part.part().name() + ", zone " + zone.name() + ", " + key.material() + ": " + e.getMessage());
                return false;
            }
        }

        private boolean add(
                PartEstimate part, Zone zone, LayerCut cut, Fabric fabric, PieceMaker.Laid laid, StockSize size) {
            Key key = new Key(fabric.material().id(), fabric.thickness());
            Pile pile = piles.computeIfAbsent(key, first -> new Pile(first, size));
            long count = (long) zone.count() * part.part().count();
            if (pile.pieces.size() + count * laid.strips().size() > MOST_PIECES) {
                throw new IllegalArgumentException("more than " + MOST_PIECES
                        + " pieces of a material are not planned at once; plan for fewer mouldings");
            }
            pile.covered += cut.area();
            for (Strip strip : laid.strips()) {
                CutPiece piece = piece(part, zone, cut, fabric, laid.angle(), strip);
                pieces.add(piece);
                pile.add(piece);
            }
            return laid.isSeamed();
        }

        private CutPiece piece(PartEstimate part, Zone zone, LayerCut cut, Fabric fabric, double angle, Strip strip) {
            numbers++;
            return new CutPiece(
                    isOfSeveral ? parts + "." + numbers : Integer.toString(numbers),
                    part.part().name(),
                    zone.name(),
                    cut.number(),
                    fabric.material().id(),
                    fabric.thickness(),
                    angle,
                    strip.width(),
                    strip.length(),
                    fabric.turn(),
                    zone.count() * part.part().count());
        }

        private void remark(String text) {
            if (!remarks.contains(text)) {
                remarks.add(text);
            }
        }
    }
}
