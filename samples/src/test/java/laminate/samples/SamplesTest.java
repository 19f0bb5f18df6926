package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sample part gives its accepted output. Run with {@code -Dgolden.update=true} to accept the present output, then
 * read what has changed.
 */
class SamplesTest {
    private static final Path FOLDER = Program.ROOT.resolve("samples/lake-club");
    private static final Path ACCEPTED = FOLDER.resolve("accepted");
    private static final String CHECK = "-check.txt";

    static List<String> parts() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(SamplesTest::isPart)
                    .map(file -> file.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        }
    }

    /** Those that say what they have to carry. */
    static List<String> loadedParts() throws IOException {
        List<String> loaded = new ArrayList<>();
        for (String part : parts()) {
            if (Files.readAllLines(FOLDER.resolve(part + ".yaml")).stream().anyMatch(SamplesTest::isLoad)) {
                loaded.add(part);
            }
        }
        return loaded;
    }

    @ParameterizedTest
    @MethodSource("parts")
    void givesItsAcceptedEstimate(String part) throws IOException {
        Program.Run run = Program.run("estimate", "samples/lake-club/" + part + ".yaml");

        assertThat(run.complaints()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertAccepted(part + ".txt", run.output());
    }

    /** The club's parts are good enough for what they carry, so every limit is met. */
    @ParameterizedTest
    @MethodSource("loadedParts")
    void givesItsAcceptedCheck(String part) throws IOException {
        Program.Run run = Program.run("check", "samples/lake-club/" + part + ".yaml");

        assertThat(run.complaints()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertAccepted(part + CHECK, run.output());
    }

    private static void assertAccepted(String name, String output) throws IOException {
        assertThat(output.lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        Path accepted = ACCEPTED.resolve(name);
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(ACCEPTED);
            Files.writeString(accepted, output);
        }
        assertThat(output).isEqualTo(Files.readString(accepted));
    }

    @Test
    void noAcceptedOutputIsLeftWithoutItsPart() throws IOException {
        List<String> wanted = new ArrayList<>();
        parts().forEach(part -> wanted.add(part + ".txt"));
        loadedParts().forEach(part -> wanted.add(part + CHECK));
        try (Stream<Path> files = Files.list(ACCEPTED)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }

    private static boolean isLoad(String line) {
        return line.matches("\\s*(load-cases|panels|beams):.*");
    }

    private static boolean isPart(Path file) {
        try {
            return file.toString().endsWith(".yaml")
                    && Files.readAllLines(file).stream().anyMatch(line -> line.startsWith("part:"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
