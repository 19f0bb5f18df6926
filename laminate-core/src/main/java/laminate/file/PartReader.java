package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.money;
import static laminate.file.Scalars.pieces;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.material.Materials;
import laminate.part.BeamPlan;
import laminate.part.Item;
import laminate.part.Limits;
import laminate.part.Measured;
import laminate.part.PanelPlan;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.part.Zone;
import laminate.process.ContentSet;
import laminate.process.Workshop;
import laminate.unit.Dimension;

/**
 * Reads a part file and the files that it names. Materials come first, then prices and workshop, then the part itself, so
 * that all that is wrong in any of them is told at once.
 */
final class PartReader {

    private final Path file;
    private final Materials library;
    private final Overrides overrides;
    private final MadeHere madeHere;
    private final Beside beside;
    /** The moulds read so far: one may serve several processes. */
    private final Map<Path, Part> moulds = new HashMap<>();

    PartReader(Path file, Materials library, Overrides overrides) {
        this(file, library, overrides, MadeHere.first(file));
    }

    private PartReader(Path file, Materials library, Overrides overrides, MadeHere madeHere) {
        this.file = file;
        this.library = library;
        this.overrides = overrides;
        this.madeHere = madeHere;
        this.beside = new Beside(file);
    }

    Optional<Job> read(Complaints complaints) {
        Optional<Node> root = YamlTree.read(file, Keys.PART, complaints);
        return root.isPresent() ? read(root.get(), complaints) : Optional.empty();
    }

    /** Reads the root of the file. */
    Optional<Job> read(Node root, Complaints complaints) {
        Set<String> words = words(root, new LinkedHashSet<>());
        overrides.resin().ifPresent(words::add);
        library.expect(words);
        return mapping(Keys.PART, this::job).read(root, complaints);
    }

    /** All single values, among which are the ids of the materials. */
    private static Set<String> words(Node node, Set<String> words) {
        if (node instanceof Node.Scalar scalar) {
            words.add(scalar.text());
        } else if (node instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                words(item, words);
            }
        } else if (node instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries().values()) {
                words(entry.value(), words);
            }
        }
        return words;
    }

    private Job job(Fields in) {
        Stock stock = stock(in);
        Yard yard = new YardReader(beside, overrides, madeHere).yard(in, stock);
        Optional<String> currency = yard.currency();
        ContentSet contents = Contents.set(in).orElse(yard.workshop().contents());
        Term<Schedules> stated = in.stated("schedules", Schedules.reading());
        Schedules schedules = stated.value().orElse(new Schedules());
        if (!stated.flawed()) {
            schedules.replace(overrides.schedules(), in.node(), in.complaints());
        }
        var alternatives =
                in.orElse("alternatives", later(() -> schedules.alternatives()), Map.<String, List<String>>of());
        ZoneNames names = new ZoneNames();
        Infusions infusions = new Infusions(overrides.changeLayers());
        var zones = zones(in, new ZoneReader(stock, schedules, names, infusions), stock, contents);
        MadeHere here = madeHere.in(yard);
        var tooling = in.orElse("tooling", later(() -> tooling(currency, here)), List.<Tooling>of());
        Part part = part(in, currency, zones, names, infusions, tooling);
        Workshop place = place(yard.workshop().workshop());
        if (in.complaints().isEmpty()) {
            schedules.complainOfUnused(in.complaints());
            infusions.checkPorosities(part, place, in.complaints());
        }
        return new Job(
                part,
                place,
                yard.prices(),
                stock.materials(),
                alternatives.get(),
                yard.workshop().terms(),
                yard.workshop().quotation(),
                in.complaints().files());
    }

    private Reading<List<Tooling>> tooling(Optional<String> currency, MadeHere here) {
        return new ToolingReader(currency, (node, complaints) -> mould(node, here, complaints)).tooling();
    }

    /** The mould or plug of a part file, made as that says, whatever the part is asked to be made by. */
    private Optional<Part> mould(Node node, MadeHere here, Complaints complaints) {
        Optional<Path> path = beside.read(node, complaints);
        if (path.isEmpty() || here.isMadeOnItself(path.get(), node, complaints)) {
            return Optional.empty();
        }
        Part known = moulds.get(path.get());
        return known != null ? Optional.of(known) : readMould(path.get(), here, complaints);
    }

    private Optional<Part> readMould(Path path, MadeHere here, Complaints complaints) {
        Optional<Job> read = new PartReader(path, library, overrides.forMoulds(), here.on(path)).read(complaints);
        read.ifPresent(job -> moulds.put(path, job.part()));
        return read.map(Job::part);
    }

    private Workshop place(Workshop stated) {
        Workshop place = stated;
        if (overrides.temperature().isPresent()) {
            place = place.withTemperature(overrides.temperature().getAsDouble());
        }
        if (overrides.crew().isPresent()) {
            place = place.withShopFloor(
                    place.shopFloor().withCrew(overrides.crew().getAsInt()));
        }
        return place;
    }

    private static Part part(
            Fields in,
            Optional<String> currency,
            Promise<List<Zone>> zones,
            ZoneNames names,
            Infusions infusions,
            Promise<List<Tooling>> tooling) {
        var name = in.required("part", text());
        var count = in.orElse("count", pieces(), 1);
        var items = in.orElse("items", listOf(mapping(Keys.ITEM, item -> item(item, currency))), List.<Item>of());
        var measured = in.orElse("measured", ZoneReader.MEASURED, Measured.NOTHING);
        var panels = in.orElse("panels", later(() -> new PanelReader(names).panels()), List.<PanelPlan>of());
        var beams = in.orElse("beams", later(() -> new BeamReader(names).beams()), List.<BeamPlan>of());
        var limits = in.orElse("limits", later(() -> LimitsReader.limits()), Limits.NONE);
        var infusion = in.optional("infusion", later(() -> InfusionReader.infusion()));
        in.requireSound();
        return new Part(
                name.get(),
                count.get(),
                zones.get(),
                items.get(),
                measured.get(),
                panels.get(),
                beams.get(),
                limits.get(),
                infusions.ofPart(in, infusion.get(), zones.get()),
                tooling.get());
    }

    private Promise<List<Zone>> zones(Fields in, ZoneReader reader, Stock stock, ContentSet contents) {
        Terms terms = asked(in, stock).within(in, stock);
        return in.required("zones", listOf(reader.zone(terms, contents)));
    }

    private Terms asked(Fields in, Stock stock) {
        Terms outside = Terms.NONE;
        if (overrides.process().isPresent()) {
            outside = outside.asking(overrides.process().get(), in.node());
        }
        if (overrides.resin().isPresent()) {
            Node id = new Node.Scalar(
                    "resin asked for", in.node().position(), overrides.resin().get(), -1);
            outside = outside.asking(Term.read(id, stock.laminatingResin(), in.complaints()));
        }
        return outside;
    }

    private static Item item(Fields in, Optional<String> currency) {
        var name = in.required("name", text());
        var count = in.orElse("count", pieces(), 1);
        var mass = in.required("mass", quantity(Dimension.MASS, Bounds.NOT_NEGATIVE));
        var price = in.optional("price", money(currency));
        in.requireSound();
        return new Item(name.get(), count.get(), mass.get(), price.get());
    }

    private Stock stock(Fields in) {
        OwnMaterials own = new OwnMaterials(library, in.complaints());
        in.stated("materials", Reading.oneOrList(addedTo(own)));
        for (Path asked : overrides.materials()) {
            own.add(asked);
        }
        return own.stock();
    }

    private Reading<Path> addedTo(OwnMaterials own) {
        return (node, complaints) -> {
            Optional<Path> path = beside.read(node, complaints);
            path.ifPresentOrElse(own::add, own::miss);
            return path;
        };
    }
}
