package laminate.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code laminate new}: a commented part file to start from, which runs as it stands. */
@Command(
        name = NewCommand.NAME,
        description = "Write a commented part file to start from; it runs as it stands.",
        footer = {"", "Example:", "  laminate new lid.yaml && laminate estimate lid.yaml"})
final class NewCommand implements Callable<Integer> {
    static final String NAME = "new";

    private static final String STARTER = "starter.yaml";

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The file; without it, standard output.")
    private Path file;

    @Option(names = "--force", description = "Overwrite a file that is there.")
    private boolean force;

    /** Made by the command line. */
    NewCommand() {}

    @Override
    public Integer call() {
        if (file != null && !force && Files.exists(file)) {
            throw new UnusableInputException(
                    file + ": is there already; give another name, or --force to overwrite it");
        }
        String starter = starter();
        Output.write(Optional.ofNullable(file), spec.commandLine().getOut(), out -> out.append(starter));
        return ExitCode.DONE;
    }

    private static String starter() {
        try (InputStream in = NewCommand.class.getResourceAsStream(STARTER)) {
            if (in == null) {
                throw new IllegalStateException("The program is incomplete: " + STARTER + " is not in its jar.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
