package laminate.file;

import static laminate.file.Reading.later;
import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.money;
import static laminate.file.Scalars.pieces;
import static laminate.file.Scalars.quantity;
import static laminate.file.Scalars.text;

import java.nio.file.Path;
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

    /** The key by which a project file is known too, where its first one is mistyped. */
    static final String MOULDINGS = "mouldings";

    private final Path file;
    private final Materials library;
    private final Overrides overrides;
    private final MadeHere madeHere;
    private final ReadOnce once;
    private final Beside beside;
    private Optional<MadeOn> madeOn = Optional.empty();
    private MadeHere here;

    PartReader(Path file, Materials library, Overrides overrides, SharedFiles shared) {
        this(file, library, overrides, MadeHere.first(file), new ReadOnce(library, overrides, shared));
    }

    /** Reads a part whose file is the last of the chain. */
    PartReader(Path file, Materials library, Overrides overrides, MadeHere madeHere, ReadOnce once) {
        this.file = file;
        this.library = library;
        this.overrides = overrides;
        this.madeHere = madeHere;
        this.once = once;
        this.beside = new Beside(file);
        this.here = madeHere;
    }

    /** Tells what the part is made on in place of its own tooling, if anything. */
    PartReader madeOn(Optional<MadeOn> inPlace) {
        madeOn = inPlace;
        return this;
    }

    /** The yard as it is known when the part has been read. */
    MadeHere here() {
        return here;
    }

    Optional<Job> read(Complaints complaints) {
        Optional<Node> root = YamlTree.read(file, Keys.PART, complaints);
        return root.isPresent() ? read(root.get(), complaints) : Optional.empty();
    }

    /** Reads the root of the file. */
    Optional<Job> read(Node root, Complaints complaints) {
        if (isProject(root)) {
            complaints.at(
                    root,
                    "this is a project file, which names part files; a part file, which starts with part:, is wanted");
            return Optional.empty();
        }
        if (FileKind.isOther(Keys.PART, root, complaints)) {
            return Optional.empty();
        }
        Set<String> words = words(root, new LinkedHashSet<>());
        overrides.resin().ifPresent(words::add);
        library.expect(words);
        return mapping(Keys.PART, this::job).read(root, complaints);
    }

    /** Whether a file means to be a part file, be it sound or not. */
    static boolean isPart(Node root) {
        return root instanceof Node.Mapping mapping && mapping.entries().containsKey(Keys.PART.first());
    }

    /** Whether a file means to be a project file, be it sound or not: such a one loads more of the program. */
    static boolean isProject(Node root) {
        return root instanceof Node.Mapping mapping
                && !isPart(root)
                && (mapping.entries().containsKey(Keys.PROJECT.first())
                        || mapping.entries().containsKey(MOULDINGS));
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
        Yard yard = new YardReader(beside, overrides, once.shared(), madeHere).yard(in, stock);
        Optional<String> currency = yard.currency();
        ContentSet contents = Contents.set(in).orElse(yard.workshop().contents());
        Schedules schedules = schedules(in);
        var alternatives =
                in.orElse("alternatives", later(() -> schedules.alternatives()), Map.<String, List<String>>of());
        ZoneNames names = new ZoneNames();
        Infusions infusions = new Infusions(overrides.changeLayers());
        var zones = zones(in, new ZoneReader(stock, schedules, names, infusions), stock, contents);
        here = madeHere.in(yard);
        var tooling = tooling(in, currency);
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

    private Schedules schedules(Fields in) {
        Term<Schedules> stated = in.stated("schedules", Schedules.reading());
        Schedules schedules = stated.value().orElse(new Schedules());
        if (!stated.flawed()) {
            schedules.replace(overrides.schedules(), in.node(), in.complaints());
        }
        return schedules;
    }

    /** By the word of a project, else by that of the part's own file. */
    private Promise<List<Tooling>> tooling(Fields in, Optional<String> currency) {
        return madeOn.isPresent()
                ? madeOn(in, madeOn.get())
                : in.orElse("tooling", later(() -> tooling(currency)), List.<Tooling>of());
    }

    private Promise<List<Tooling>> madeOn(Fields in, MadeOn inPlace) {
        in.known("tooling");
        Optional<Tooling> tooling = inPlace.tooling(here, in.complaints());
        return in.given(tooling.isPresent() ? Optional.of(List.of(tooling.get())) : Optional.empty());
    }

    private Reading<List<Tooling>> tooling(Optional<String> currency) {
        return new ToolingReader(currency, this::mould, once).tooling();
    }

    /** The mould or plug of a part file. */
    private Optional<Part> mould(Node node, Complaints complaints) {
        Optional<Path> path = beside.read(node, complaints);
        if (path.isEmpty() || here.isMadeOnItself(path.get(), node, complaints)) {
            return Optional.empty();
        }
        Optional<Job> read = once.mould(path.get(), here, complaints);
        return read.isPresent() ? Optional.of(read.get().part()) : Optional.empty();
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
        NamedMaterials own = new NamedMaterials();
        own.read(in, beside);
        return once.stock(own, in.complaints());
    }
}
