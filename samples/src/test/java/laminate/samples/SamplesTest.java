package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

    static List<String> parts() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(SamplesTest::isPart)
                    .map(file -> file.getFileName().toString().replace(".yaml", ""))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void givesItsAcceptedOutput(String part) throws IOException {
        Program.Run run = Program.run("estimate", "samples/lake-club/" + part + ".yaml");

        assertThat(run.complaints()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.output().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 80);
        Path accepted = ACCEPTED.resolve(part + ".txt");
        if (Boolean.getBoolean("golden.update")) {
            Files.createDirectories(ACCEPTED);
            Files.writeString(accepted, run.output());
        }
        assertThat(run.output()).isEqualTo(Files.readString(accepted));
    }

    @Test
    void noAcceptedOutputIsLeftWithoutItsPart() throws IOException {
        try (Stream<Path> files = Files.list(ACCEPTED)) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".txt", "")))
                    .containsExactlyInAnyOrderElementsOf(parts());
        }
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
