package laminate.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Runs the packaged program as a user would, from the root of the project unless told otherwise. */
final class Program {
    static final Path ROOT =
            Path.of(System.getProperty("laminate.root")).toAbsolutePath().normalize();
    private static final Path JAR = Path.of(System.getProperty("laminate.jar"));

    /**
     * What a run came to.
     *
     * @param exitCode the exit code
     * @param output standard output
     * @param complaints standard error
     */
    record Run(int exitCode, String output, String complaints) {}

    private Program() {}

    static Run run(String... arguments) {
        return runIn(ROOT, List.of(arguments));
    }

    static Run runIn(Path folder, List<String> arguments) {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", JAR.toString()));
        command.addAll(arguments);
        try {
            Path complaints = Files.createTempFile("laminate", ".err");
            Process process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectError(complaints.toFile())
                    .start();
            String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int exitCode = process.waitFor();
            String said = Files.readString(complaints);
            Files.delete(complaints);
            return new Run(exitCode, output, said);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
