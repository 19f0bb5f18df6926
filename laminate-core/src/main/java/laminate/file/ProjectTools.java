package laminate.file;

import static laminate.file.Reading.listOf;
import static laminate.file.Reading.mapping;
import static laminate.file.Scalars.text;
import static laminate.file.Scalars.wholeNumber;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import laminate.material.Materials;
import laminate.part.Part;
import laminate.part.Tooling;
import laminate.unit.Nearest;

/**
 * The moulds and plugs of a project: those that it names itself, and those that its part files name. The same part file is
 * the same mould, whoever names it. The part file of a tool is read when something is first made on it.
 */
final class ProjectTools extends ReadOnce {

    /** What is made on a tool that has been complained of. */
    static final Optional<MadeOn> FLAWED = Optional.of((here, complaints) -> Optional.empty());

    private static final int MOST_NAMES_SHOWN = 12;
    private static final int MOST_IN_HAND = 10_000;

    private final Beside beside;
    private final Set<String> names = new LinkedHashSet<>();
    private final Set<String> taken = new HashSet<>();
    private final Map<String, ProjectTool> byName = new LinkedHashMap<>();
    private final Map<Path, ProjectTool> byFile = new HashMap<>();
    private final Map<Part, ProjectTool> byPart = new IdentityHashMap<>();
    private final Set<ProjectTool> used = new HashSet<>();
    private final Map<Path, Job> made = new LinkedHashMap<>();
    private final ToolAgreement agreement = new ToolAgreement();
    private boolean namesAreComplete = true;

    ProjectTools(Materials library, Overrides overrides, SharedFiles shared, NamedMaterials materials, Beside beside) {
        super(library, overrides, shared, materials);
        this.beside = beside;
    }

    /** Reads what the project states of its tools, without their part files. */
    void read(Fields in, Optional<String> currency) {
        Term<List<ProjectTool>> stated =
                in.stated("tooling", listOf(mapping(Keys.PROJECT_TOOL, tool -> tool(tool, currency))));
        namesAreComplete &= !stated.flawed() || !names.isEmpty();
        for (ProjectTool tool : byName.values()) {
            tool.madeOn().ifPresent(name -> in.agreed(isKnown(name, in.complaints())));
        }
    }

    private ProjectTool tool(Fields in, Optional<String> currency) {
        in.word("name")
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .ifPresentOrElse(names::add, () -> namesAreComplete = false);
        var name = in.required("name", Scalars.name(taken));
        var part = in.optional("part", beside);
        var stated = ToolingReader.stated(in, currency);
        var inHand = in.orElse("in-hand", wholeNumber(0, MOST_IN_HAND), 0);
        var madeOn = in.optional("made-on", Located.of(text()));
        checkBought(in);
        in.requireSound();
        ProjectTool tool = new ProjectTool(name.get(), in, part.get(), stated, inHand.get(), madeOn.get());
        tool.part().ifPresent(file -> checkFile(file, tool));
        byName.put(tool.name(), tool);
        return tool;
    }

    private static void checkBought(Fields in) {
        if (!in.stands("price") && !in.stands("part")) {
            in.missing(
                    List.of("price", "part"),
                    "this " + Keys.PROJECT_TOOL.kind() + " has neither price nor part; one of them is wanted");
        }
        if (in.stands("price") && !in.stands("part") && in.stands("made-on")) {
            in.complain("made-on", "this says nothing of a mould that is bought; take it out, or give its part file");
        }
    }

    private void checkFile(Path file, ProjectTool tool) {
        ProjectTool earlier = byFile.putIfAbsent(key(file), tool);
        if (earlier != null) {
            throw tool.in()
                    .refusal(
                            "part",
                            "this is the part file of " + Complaints.shown(earlier.name())
                                    + " too; one entry for each mould or plug is accepted");
        }
    }

    /** Reads the name of a tool that something is made on. */
    Reading<Located<String>> named() {
        Reading<Located<String>> name = Located.of(text());
        return (node, complaints) -> name.read(node, complaints).filter(found -> isKnown(found, complaints));
    }

    private boolean isKnown(Located<String> name, Complaints complaints) {
        boolean known = names.contains(name.value()) || !namesAreComplete;
        if (!known) {
            complaints.at(name.node(), Complaints.shown(name.value()) + " is not known; " + hint(name.value()));
        }
        return known;
    }

    private String hint(String name) {
        if (names.isEmpty()) {
            return "the project has no tooling; add tooling: with a list of moulds and plugs";
        }
        String near = Nearest.of(name, names).map(Complaints::didYouMean).orElse("");
        return names.size() > MOST_NAMES_SHOWN
                ? near + "the name of an entry of tooling is wanted"
                : near + "accepted: " + String.join(", ", names);
    }

    /** The tool of a name, to make something on. */
    MadeOn madeOn(Located<String> name) {
        return (here, complaints) -> tooling(name, here, complaints);
    }

    private Optional<Tooling> tooling(Located<String> name, MadeHere here, Complaints complaints) {
        ProjectTool tool = byName.get(name.value());
        if (tool == null) {
            return Optional.empty();
        }
        used.add(tool);
        if (tool.part().isEmpty()) {
            return Optional.of(agreement.noted(tool.tooling(Optional.empty()), tool.in()));
        }
        Path file = tool.part().get();
        if (here.isMadeOnItself(file, name.node(), complaints)) {
            return Optional.empty();
        }
        return mould(file, here, complaints)
                .map(job -> agreement.noted(tool.tooling(Optional.of(job.part())), tool.in()));
    }

    @Override
    Optional<MadeOn> madeOn(Path key) {
        ProjectTool tool = byFile.get(key);
        return tool == null ? Optional.empty() : tool.madeOn().map(name -> madeOn(name));
    }

    @Override
    Optional<Job> mould(Path file, MadeHere here, Complaints complaints) {
        ProjectTool tool = byFile.get(key(file));
        if (tool != null) {
            used.add(tool);
        }
        Optional<Job> job = super.mould(file, here, complaints);
        job.ifPresent(read -> made.put(key(file), read));
        if (tool != null && job.isPresent()) {
            byPart.put(job.get().part(), tool);
        }
        return job;
    }

    @Override
    Tooling noted(Tooling stated, Fields in) {
        ProjectTool tool =
                stated.mould().isPresent() ? byPart.get(stated.mould().get()) : null;
        return agreement.noted(tool == null ? stated : stated.named(tool.name()).withInHand(tool.inHand()), in);
    }

    /** Complains of what only shows when all mouldings have been read. */
    void finish(Optional<List<Job>> mouldings, MadeHere here, Complaints complaints) {
        List<ProjectTool> left = new ArrayList<>(byName.values());
        left.removeAll(used);
        for (ProjectTool tool : left) {
            // Not by mould(): to be read for what is wrong in it is not to be used.
            tool.part().ifPresent(file -> super.mould(file, here, complaints));
        }
        checkCurrency(Yard.currency(here.prices().value()));
        if (complaints.isEmpty() && mouldings.isPresent()) {
            left.removeAll(used);
            left.forEach(ProjectTool::complainOfUse);
            agreement.check(mouldings.get());
        }
    }

    /** The price list may be that of the first moulding, which is known only when that has been read. */
    private void checkCurrency(Optional<String> currency) {
        for (ProjectTool tool : byName.values()) {
            tool.complainOfOtherThan(currency);
        }
    }

    /** The moulds and plugs that are made here, what is made on them after them. */
    List<Job> made(List<Path> files) {
        return made.values().stream().map(job -> job.with(job.part(), files)).toList();
    }
}
