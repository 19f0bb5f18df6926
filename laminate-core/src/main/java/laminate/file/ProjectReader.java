package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.pieces;
import static laminate.file.Scalars.text;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import laminate.material.Materials;

/**
 * Reads a project file with the part files that it names. What the project states of the yard comes first, then the tools,
 * of which the part files are read when something is made on them, then the mouldings one after the other; what several of
 * them name is read once.
 */
final class ProjectReader {

    private final Path file;
    private final Materials library;
    private final Overrides overrides;
    private final SharedFiles shared;
    private final Beside beside;
    private final Map<Path, Node> mouldings = new HashMap<>();

    ProjectReader(Path file, Materials library, Overrides overrides, SharedFiles shared) {
        this.file = file;
        this.library = library;
        this.overrides = overrides;
        this.shared = shared;
        this.beside = new Beside(file);
    }

    Optional<Project> read(Node root, Complaints complaints) {
        if (PartReader.isPart(root)) {
            complaints.at(root, "this is a part file; a project file, which starts with project:, is wanted");
            return Optional.empty();
        }
        return mapping(Keys.PROJECT, this::project).read(root, complaints);
    }

    private Project project(Fields in) {
        var name = in.required("project", text());
        NamedMaterials materials = new NamedMaterials();
        materials.read(in, beside);
        ProjectTools tools = new ProjectTools(library, overrides, shared, materials, beside);
        MadeHere here = yard(in, tools.stock(new NamedMaterials(), in.complaints()));
        tools.read(in, Yard.currency(here.prices().value()));
        MouldingReader reader = new MouldingReader(tools, here);
        var jobs = in.required(PartReader.MOULDINGS, listOf(mapping(Keys.MOULDING, reader::moulding)));
        tools.finish(jobs.value(), reader.here, in.complaints());
        in.agreed(in.complaints().isEmpty());
        in.requireSound();
        List<Path> files = in.complaints().files();
        return new Project(name.get(), ofFiles(jobs.get(), files), tools.made(files), files);
    }

    /** What the project, or who asks for it, states of the yard for all its parts. */
    private MadeHere yard(Fields in, Stock stock) {
        Yard yard = new YardReader(beside, overrides, shared, MadeHere.inProject(OfYard.open(), OfYard.open()))
                .yard(in, stock);
        boolean ownWorkshop = in.stands("workshop") || overrides.workshop().isPresent();
        boolean ownPrices = in.stands("prices") || overrides.prices().isPresent();
        return MadeHere.inProject(
                ownWorkshop ? OfYard.ofTheProject(Optional.of(yard.workshop()), yard.workshopFile()) : OfYard.open(),
                ownPrices ? OfYard.ofTheProject(yard.prices(), yard.priceFile()) : OfYard.open());
    }

    private static List<Job> ofFiles(List<Job> jobs, List<Path> files) {
        List<Job> of = new ArrayList<>();
        for (Job job : jobs) {
            of.add(job.with(job.part(), files));
        }
        return of;
    }

    /** Reads the mouldings one after the other, the yard of the first for the next where the project states none. */
    private final class MouldingReader {

        private final ProjectTools tools;
        private MadeHere here;

        MouldingReader(ProjectTools tools, MadeHere here) {
            this.tools = tools;
            this.here = here;
        }

        Job moulding(Fields in) {
            var part = in.required("part", Located.of(beside));
            var count = in.optional("count", pieces());
            var madeOn = in.optional("made-on", tools.named());
            in.given(part.value().flatMap(path -> once(path, in.complaints())));
            Optional<Job> job = part.value().flatMap(path -> read(path.value(), madeOn, in.complaints()));
            in.given(job);
            in.requireSound();
            Job made = job.orElseThrow();
            return count.get().isPresent() ? made.withCount(count.get().get()) : made;
        }

        private Optional<Job> read(Path path, Promise<Optional<Located<String>>> madeOn, Complaints complaints) {
            PartReader reader = new PartReader(path, library, overrides, here.on(path), tools);
            Optional<MadeOn> tool =
                    madeOn.value().isPresent() ? madeOn.get().map(name -> tools.madeOn(name)) : ProjectTools.FLAWED;
            Optional<Job> job = reader.madeOn(tool).read(complaints);
            if (here.isOpen()) {
                here = here.asIn(reader.here());
            }
            return job;
        }
    }

    /** A moulding stands once; how often it is made is told by its count. */
    private Optional<Path> once(Located<Path> part, Complaints complaints) {
        Node earlier = mouldings.putIfAbsent(ReadOnce.key(part.value()), part.node());
        if (earlier == null) {
            return Optional.of(part.value());
        }
        complaints.at(
                part.node(),
                "this moulding stands in line " + earlier.position().line()
                        + " already; count: tells how many are in a set");
        return Optional.empty();
    }
}
