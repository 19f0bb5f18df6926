package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.money;
import static laminate.file.Scalars.pieces;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import laminate.estimate.PriceList;
import laminate.material.Materials;
import laminate.part.BeamPlan;
import laminate.part.Item;
import laminate.part.Limits;
import laminate.part.Measured;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.unit.Dimension;

/**
 * Reads a part file and the files that it names. Materials come first, then prices and workshop, then the part itself, so
 * that all that is wrong in any of them is told at once.
 */
final class PartReader {

    private final Path file;
    private final Materials library;
    private final Overrides overrides;

    PartReader(Path file, Materials library, Overrides overrides) {
        this.file = file;
        this.library = library;
        this.overrides = overrides;
    }

    Reading<Job> job() {
        return mapping(Keys.PART, this::job);
    }

    private Supplier<Job> job(Fields in) {
        Complaints complaints = in.complaints();
        Stock stock = stock(in);
        Term<PriceList> prices = prices(in, stock);
        Optional<String> currency = prices.value().map(PriceList::currency);
        Term<WorkshopFile> workshop = workshop(in, new WorkshopReader(stock, currency));
        ContentSet contents = Contents.set(in)
                .or(() -> workshop.value().map(WorkshopFile::contents))
                .orElse(ContentSet.TRADE);
        Term<Schedules> stated = in.stated("schedules", Schedules.reading());
        Schedules schedules = stated.value().orElseGet(Schedules::new);
        ZoneNames names = new ZoneNames();
        Supplier<List<Zone>> zones = zones(in, new ZoneReader(stock, schedules, names), stock, contents);
        Supplier<Part> part = part(in, currency, zones, names);
        return () -> {
            if (complaints.isEmpty()) {
                schedules.complainOfUnused(complaints);
            }
            return new Job(
                    part.get(),
                    workshop.value().orElse(WorkshopFile.USUAL).workshop(),
                    prices.value(),
                    stock.materials());
        };
    }

    private static Supplier<Part> part(
            Fields in, Optional<String> currency, Supplier<List<Zone>> zones, ZoneNames names) {
        var name = in.required("part", text());
        var count = in.orElse("count", pieces(), 1);
        var items = in.orElse("items", listOf(mapping(Keys.ITEM, item -> item(item, currency))), List.<Item>of());
        var measured = in.orElse("measured", ZoneReader.MEASURED, Measured.NOTHING);
        var panels = in.orElse("panels", later(() -> new PanelReader(names).panels()), List.<PanelPlan>of());
        var beams = in.orElse("beams", later(() -> new BeamReader(names).beams()), List.<BeamPlan>of());
        var limits = in.orElse("limits", later(() -> LimitsReader.limits()), Limits.NONE);
        return () -> new Part(
                name.get(),
                count.get(),
                zones.get(),
                items.get(),
                measured.get(),
                panels.get(),
                beams.get(),
                limits.get());
    }

    private Supplier<List<Zone>> zones(Fields in, ZoneReader reader, Stock stock, ContentSet contents) {
        Terms outside = overrides
                .process()
                .map(asked -> Terms.NONE.asking(asked, in.node()))
                .orElse(Terms.NONE);
        Terms terms = outside.within(in, stock);
        return in.required("zones", listOf(reader.zone(terms, contents)));
    }

    private static Supplier<Item> item(Fields in, Optional<String> currency) {
        var name = in.required("name", text());
        var count = in.orElse("count", pieces(), 1);
        var mass = in.required("mass", quantity(Dimension.MASS, Bounds.NOT_NEGATIVE));
        var price = in.optional("price", money(currency));
        return () -> new Item(name.get(), count.get(), mass.get(), price.get());
    }

    private Stock stock(Fields in) {
        OwnMaterials own = new OwnMaterials(library, in.complaints());
        Reading<Path> added = (node, complaints) -> {
            Optional<Path> path = beside().read(node, complaints);
            path.ifPresentOrElse(own::add, own::miss);
            return path;
        };
        in.stated("materials", Reading.oneOrList(added));
        overrides.materials().forEach(own::add);
        return own.stock();
    }

    private Term<PriceList> prices(Fields in, Stock stock) {
        return fileOr(in, "prices", overrides.prices(), Keys.PRICES, new PriceReader(stock).prices());
    }

    private Term<WorkshopFile> workshop(Fields in, WorkshopReader reader) {
        return fileOr(in, "workshop", overrides.workshop(), Keys.WORKSHOP, reader.workshop());
    }

    /** What stands in the file that was asked for, else in the one that the part names, else in the part itself. */
    private <T> Term<T> fileOr(Fields in, String key, Optional<Path> asked, Keys root, Reading<T> reading) {
        if (asked.isPresent()) {
            in.known(key);
            Optional<T> value = read(asked.get(), root, reading, in.complaints());
            in.given(value);
            return new Term<>(value.map(found -> new Located<>(found, in.node())), value.isEmpty());
        }
        Reading<T> named = (node, complaints) ->
                beside().read(node, complaints).flatMap(path -> read(path, root, reading, complaints));
        return in.stated(key, Reading.shortOrFull(named, reading));
    }

    private static <T> Optional<T> read(Path path, Keys root, Reading<T> reading, Complaints complaints) {
        return YamlTree.read(path, root, complaints).flatMap(node -> reading.read(node, complaints));
    }

    /** The path of a file, taken from where the part file lies. */
    private Reading<Path> beside() {
        return text().map(name -> {
            Path path = file.resolveSibling(name);
            if (!Files.exists(path)) {
                throw new IllegalArgumentException(
                        "there is no file " + path + "; a path is wanted that begins where the part file lies");
            }
            return path;
        });
    }
}
