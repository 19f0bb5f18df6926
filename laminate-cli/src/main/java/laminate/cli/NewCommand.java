package laminate.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** {@code laminate new}: a commented part file to start from, which runs as it stands. */
final class NewCommand extends Command {
    static final String NAME = "new";

    private static final String STARTER = "starter.yaml";

    private final PositionalParamSpec files =
            arguments("FILE", "0..1", Path.class, "The file; without it, standard output.");
    private final OptionSpec force = flag("--force", "Overwrite a file that is there.");

    NewCommand() {
        super(
                NAME,
                "Write a commented part file to start from; it runs as it stands.",
                "laminate new lid.yaml && laminate estimate lid.yaml");
    }

    @Override
    public Integer call() {
        Optional<Path> file = all(files, Path.class).stream().findFirst();
        if (file.isPresent() && !isSet(force) && Files.exists(file.get())) {
            throw new UnusableInputException(
                    file.get() + ": is there already; give another name, or --force to overwrite it");
        }
        String starter = starter();
        return print(file, out -> out.append(starter));
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
