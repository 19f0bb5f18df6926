package laminate.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import laminate.file.InputException;
import laminate.file.Job;
import laminate.file.Overrides;
import laminate.file.Project;
import laminate.file.SharedFiles;
import laminate.file.Work;
import laminate.file.WorkFile;
import laminate.material.Materials;
import laminate.part.Item;
import laminate.process.Process;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The part and project files that a command is given, with the options that win over what they say. */
final class PartInput {
    /** Reads a process. */
    static final Words<Process> PROCESSES = new Words<>(Process.values(), Process::word);

    private final Command command;
    private final PositionalParamSpec files;
    private final Optional<OptionSpec> process;
    private final OptionSpec workshop;
    private final OptionSpec prices;
    private final OptionSpec materials;
    private final Materials library;
    private final SharedFiles shared = new SharedFiles();
    private final List<Item> toBuy = new ArrayList<>();
    private Optional<OptionSpec> sets = Optional.empty();

    /** Declares files and options of a command. */
    PartInput(Command command, Materials library) {
        this(
                command,
                library,
                Optional.of(command.option(
                        "--process",
                        "PROCESS",
                        PROCESSES,
                        "hand-lay-up, vacuum-bag or infusion for every layer, whatever the file says.")));
    }

    /** Declares files and options of a command that has its own way to ask for a process. */
    static PartInput withoutProcess(Command command, Materials library) {
        return new PartInput(command, library, Optional.empty());
    }

    private PartInput(Command command, Materials library, Optional<OptionSpec> process) {
        this.command = command;
        this.library = library;
        this.process = process;
        files = command.arguments("FILE", "1..*", Path.class, "Part files or project files.");
        workshop = command.option("--workshop", "FILE", Path.class, "Workshop file in place of the file's own.");
        prices = command.option("--prices", "FILE", Path.class, "Price file in place of the file's own.");
        materials = command.repeated(
                "--materials",
                "FILE",
                Path.class,
                "Material file laid over the library and the file's own; may be repeated.");
    }

    /** Declares the number of sets that are made of a project. */
    PartInput withSets() {
        sets = Optional.of(
                command.option("--sets", "NUMBER", new Counts.One(), "How many sets of a project; one if not given."));
        return this;
    }

    /** The files named on the command line; those that a file names lie beside it and are not known yet. */
    List<Path> files() {
        List<Path> named = new ArrayList<>(parts());
        Command.given(workshop, Path.class).ifPresent(named::add);
        Command.given(prices, Path.class).ifPresent(named::add);
        named.addAll(Command.all(materials, Path.class));
        return named;
    }

    /** The part and project files. */
    List<Path> parts() {
        return Command.all(files, Path.class);
    }

    /** What these options ask for instead of what the files state. */
    Overrides overrides() {
        return new Overrides(
                process.isPresent() ? Command.given(process.get(), Process.class) : Optional.empty(),
                Command.given(workshop, Path.class),
                Command.given(prices, Path.class),
                Command.all(materials, Path.class));
    }

    /** What each part comes to, by these options alone. */
    <T> List<T> each(Function<Job, T> work) {
        return each(overrides(), work);
    }

    /**
     * What each part comes to; of a project all that is to be made, plugs and moulds first. All files are read before anything
     * is written, and all that is wrong in any of them is said at once.
     *
     * @param overrides what is asked for instead of what the files state
     * @param work on a part; an IllegalArgumentException of it is a complaint about its file
     * @throws UnusableInputException with every complaint
     */
    <T> List<T> each(Overrides overrides, Function<Job, T> work) {
        List<T> results = new ArrayList<>();
        byFile(overrides, true, work).forEach(results::addAll);
        return results;
    }

    /**
     * What each part comes to, as {@link #each}; of a project, parts that have nothing to tell are left out, unless none has.
     *
     * @param overrides what is asked for instead of what the files state
     * @param tools whether moulds and plugs of a project are wanted, or its mouldings alone
     * @param work on a part; an IllegalArgumentException of it is a complaint about its file
     * @param idle whether a part has nothing to tell
     * @throws UnusableInputException with every complaint
     */
    <T> List<T> telling(Overrides overrides, boolean tools, Function<Job, T> work, Predicate<T> idle) {
        List<T> results = new ArrayList<>();
        for (List<T> ofFile : byFile(overrides, tools, work)) {
            List<T> telling = ofFile.stream().filter(idle.negate()).toList();
            results.addAll(telling.isEmpty() ? ofFile : telling);
        }
        return results;
    }

    /** The moulds and plugs that are bought for what {@link #each} has gone through. */
    List<Item> toBuy() {
        return toBuy;
    }

    private <T> List<List<T>> byFile(Overrides overrides, boolean tools, Function<Job, T> work) {
        Faults faults = new Faults();
        List<List<T>> results = new ArrayList<>();
        boolean anyProject = false;
        for (Path file : parts()) {
            List<T> ofFile = new ArrayList<>();
            try {
                Work read = read(file, overrides);
                anyProject |= read instanceof Project;
                if (tools && read instanceof Project project) {
                    toBuy.addAll(project.toBuy(givenSets().orElse(1)));
                }
                for (Job job : tools ? jobs(read) : read.mouldings()) {
                    String part = read instanceof Project ? job.part().name() + ": " : "";
                    addTo(ofFile, work, job, faults, file + ": " + part);
                }
            } catch (InputException | IllegalArgumentException e) {
                faults.add(file + ": ", e);
            }
            results.add(ofFile);
        }
        faults.settle();
        refuseSets(anyProject);
        return results;
    }

    private static <T> void addTo(List<T> results, Function<Job, T> work, Job job, Faults faults, String place) {
        try {
            results.add(work.apply(job));
        } catch (IllegalArgumentException e) {
            faults.add(place, e);
        }
    }

    /**
     * What each file comes to.
     *
     * @param work on a file; an IllegalArgumentException of it is a complaint about the file
     * @throws UnusableInputException with every complaint
     */
    <T> List<T> eachFile(Function<Work, T> work) {
        Faults faults = new Faults();
        List<T> results = new ArrayList<>();
        for (Path file : parts()) {
            try {
                results.add(work.apply(read(file, overrides())));
            } catch (InputException | IllegalArgumentException e) {
                faults.add(file + ": ", e);
            }
        }
        faults.settle();
        return results;
    }

    private List<Job> jobs(Work work) {
        return work instanceof Project project ? project.jobs(givenSets().orElse(1)) : work.jobs();
    }

    private Optional<Integer> givenSets() {
        return sets.isPresent() ? Command.given(sets.get(), Integer.class) : Optional.empty();
    }

    private void refuseSets(boolean anyProject) {
        command.refuse(givenSets().isPresent() && !anyProject, "--sets goes with a project file");
    }

    /**
     * Reads a file. A result that would overwrite it, or a file that it names, is refused.
     *
     * @throws InputException with all that is wrong in it
     */
    Work read(Path file, Overrides overrides) {
        Work work = WorkFile.read(file, library, overrides, shared);
        command.refuseToOverwrite(work.files());
        return work;
    }
}
