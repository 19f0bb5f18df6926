package laminate.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import laminate.estimate.LaidLayer;
import laminate.estimate.LayerCut;
import laminate.estimate.MaterialQuantity;
import laminate.estimate.PartEstimate;
import laminate.estimate.ZoneEstimate;
import laminate.part.CoreLayer;
import laminate.part.Item;
import laminate.part.Layer;
import laminate.part.Zone;
import laminate.unit.Money;

/** Sums what several parts need, material by material. */
final class NeedLedger {

    /** What is bought as one: sheets of a core by thickness, items by price. */
    private record Key(Group group, String material, OptionalDouble thickness, Optional<Money> each) {}

    /** What is needed so far; the masses tell where it goes (kg). */
    private static final class Entry {
        private Optional<MaterialQuantity> quantity = Optional.empty();
        private double finished;
        private double lapped;
        private double trimmed;

        void add(MaterialQuantity more) {
            quantity = Optional.of(quantity.map(known -> known.plus(more)).orElse(more));
        }
    }

    private final Map<Key, Entry> entries = new LinkedHashMap<>();

    /** What the parts need, and tools bought for them, group by group, in the order in which it is first needed. */
    static List<Need> of(List<PartEstimate> parts, List<Item> tools) {
        NeedLedger ledger = new NeedLedger();
        parts.forEach(ledger::add);
        tools.forEach(tool -> ledger.add(tool, 1));
        return ledger.needs();
    }

    private void add(PartEstimate part) {
        for (MaterialQuantity material : part.quantities().materials()) {
            Entry entry = entry(Group.of(material.kind()), material.material(), material.thickness());
            entry.add(material);
            entry.finished += isSheet(material) ? 0 : material.inPart();
        }
        addLayers(part);
        for (MaterialQuantity material : part.consumables()) {
            entry(Group.CONSUMABLE, material.material(), OptionalDouble.empty()).add(material);
        }
        for (Item item : part.part().items()) {
            add(item, part.part().count());
        }
        part.part()
                .toolingInUse()
                .setUpPrice()
                .ifPresent(price -> add(new Item("set-up of " + part.part().name(), 1, 0, Optional.of(price)), 1));
    }

    private void add(Item item, int times) {
        Key key = new Key(Group.ITEM, item.name(), OptionalDouble.empty(), item.price());
        entries.computeIfAbsent(key, first -> new Entry()).add(pieces(item, (double) item.count() * times));
    }

    private static boolean isSheet(MaterialQuantity material) {
        return material.area().isPresent();
    }

    private static MaterialQuantity pieces(Item item, double count) {
        OptionalDouble unknown = OptionalDouble.empty();
        OptionalDouble mass = item.mass() > 0 ? OptionalDouble.of(item.mass() * count) : unknown;
        return new MaterialQuantity(
                item.name(),
                "item",
                unknown,
                item.mass() * count,
                mass,
                unknown,
                unknown,
                unknown,
                unknown,
                OptionalDouble.of(count));
    }

    private Entry entry(Group group, String material, OptionalDouble thickness) {
        return entries.computeIfAbsent(new Key(group, material, thickness, Optional.empty()), key -> new Entry());
    }

    /** Cuts are listed as the layers are, zone by zone: their area is that of the parts, the laps and the margin. */
    private void addLayers(PartEstimate part) {
        int number = 0;
        for (ZoneEstimate zone : part.zones()) {
            Zone planned = zone.zone();
            double area = planned.totalArea() * part.part().count();
            double margin = planned.marginArea() * planned.count() * part.part().count();
            for (LaidLayer laid : zone.layers()) {
                LayerCut cut = part.quantities().cuts().get(number++);
                if (laid.layer().laying().isPresent()) {
                    addLayer(laid, area, Math.max(0, cut.area() - area - margin), margin);
                }
            }
        }
    }

    private void addLayer(LaidLayer laid, double area, double lap, double margin) {
        Layer layer = laid.layer();
        OptionalDouble thickness =
                layer instanceof CoreLayer core ? OptionalDouble.of(core.thickness()) : OptionalDouble.empty();
        Group group = laid.isReinforced() ? Group.REINFORCEMENT : Group.CORE;
        double perArea = laid.fibreMass() + laid.coreMass();
        Entry entry = entry(group, layer.material(), thickness);
        entry.finished += perArea * area;
        entry.lapped += perArea * lap;
        entry.trimmed += perArea * margin;
    }

    private List<Need> needs() {
        List<Need> needs = new ArrayList<>();
        entries.forEach((key, entry) -> entry.quantity.ifPresent(quantity -> needs.add(need(key, entry, quantity))));
        needs.sort(Comparator.comparing(Need::group));
        return needs;
    }

    private static Need need(Key key, Entry entry, MaterialQuantity quantity) {
        double mass = quantity.mass().orElse(0);
        if (key.group() == Group.ITEM || mass == 0) {
            return new Need(key.group(), quantity, key.group() == Group.ITEM ? 1 : 0, 0, 0, key.each());
        }
        return new Need(
                key.group(),
                quantity,
                Math.min(1, entry.finished / mass),
                entry.lapped / mass,
                entry.trimmed / mass,
                Optional.empty());
    }
}
