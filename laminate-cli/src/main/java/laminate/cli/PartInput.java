package laminate.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import laminate.file.InputException;
import laminate.file.Job;
import laminate.file.Overrides;
import laminate.file.SharedFiles;
import laminate.file.WorkFile;
import laminate.material.Materials;
import laminate.process.Process;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The part files that a command is given, with the options that win over what they say. */
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
        files = command.arguments("FILE", "1..*", Path.class, "Part files.");
        workshop = command.option("--workshop", "FILE", Path.class, "Workshop file in place of the part's own.");
        prices = command.option("--prices", "FILE", Path.class, "Price file in place of the part's own.");
        materials = command.repeated(
                "--materials",
                "FILE",
                Path.class,
                "Material file laid over the library and the part's own; may be repeated.");
    }

    /** The files named on the command line; those that a part file names lie beside it and are not known yet. */
    List<Path> files() {
        List<Path> named = new ArrayList<>(parts());
        Command.given(workshop, Path.class).ifPresent(named::add);
        Command.given(prices, Path.class).ifPresent(named::add);
        named.addAll(Command.all(materials, Path.class));
        return named;
    }

    /** The part files. */
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
     * What each part comes to. All files are read before anything is written, and all that is wrong in any of them is
     * said at once.
     *
     * @param overrides what is asked for instead of what the files state
     * @param work on a part; an IllegalArgumentException of it is a complaint about the file
     * @throws UnusableInputException with every complaint
     */
    <T> List<T> each(Overrides overrides, Function<Job, T> work) {
        List<T> results = new ArrayList<>();
        List<String> complaints = new ArrayList<>();
        for (Path file : parts()) {
            try {
                results.add(work.apply(read(file, overrides)));
            } catch (InputException e) {
                e.getMessage()
                        .lines()
                        .filter(line -> !complaints.contains(line))
                        .forEach(complaints::add);
            } catch (IllegalArgumentException e) {
                for (String line : e.getMessage().split("\n")) {
                    complaints.add(file + ": " + line);
                }
            }
        }
        if (!complaints.isEmpty()) {
            throw new UnusableInputException(String.join(System.lineSeparator(), complaints));
        }
        return results;
    }

    /**
     * Reads a part file. A result that would overwrite it, or a file that it names, is refused.
     *
     * @throws InputException with all that is wrong in it
     */
    Job read(Path file, Overrides overrides) {
        Job job = (Job) WorkFile.read(file, library, overrides, shared);
        command.refuseToOverwrite(job.files());
        return job;
    }
}
