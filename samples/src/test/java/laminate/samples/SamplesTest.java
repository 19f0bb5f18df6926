package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sample part gives its accepted output by every command that suits it, and every project by those that tell more of it
 * than of its parts. Run with {@code -Dgolden.update=true} to
 * accept the present output, then read what has changed.
 */
class SamplesTest {
    private static final Path FOLDER = Program.ROOT.resolve("samples/lake-club");
    private static final Path ACCEPTED = FOLDER.resolve("accepted");
    private static final String ANY = ".*";
    private static final String PROJECT = "project:.*";

    /** The commands, each with what a part file has that it suits. */
    private enum Command {
        ESTIMATE("estimate", "", ANY),
        CHECK("check", "-check", "\\s*(load-cases|panels|beams):.*"),
        COMPARE("compare", "-compare", "tooling:.*"),
        MIX("mix", "-mix", ANY),
        JOBSHEET("jobsheet", "-jobsheet", "tooling:.*"),
        INFUSE("infuse", "-infuse", "\\s*infusion:.*"),
        ORDER(
                "order",
                "-order",
                "\\s*outline:.*",
                "--cutting",
                "--stock",
                "samples/lake-club/stock.yaml",
                "--date",
                "2026-03-02"),
        QUOTE("quote", "-quote", "tooling:.*");

        private final String word;
        private final String suffix;
        private final String wanted;
        private final List<String> options;

        /** Whether it tells of a project what it does not tell of the parts one by one. */
        private boolean isOfProjects() {
            return this == COMPARE || this == ORDER || this == QUOTE;
        }

        private boolean suits(List<String> lines) {
            return lines.stream().anyMatch(line -> line.matches(PROJECT))
                    ? isOfProjects()
                    : lines.stream().anyMatch(line -> line.matches(wanted));
        }

        Command(String word, String suffix, String wanted, String... options) {
            this.word = word;
            this.suffix = suffix;
            this.wanted = wanted;
            this.options = List.of(options);
        }

        Program.Run run(String part) {
            List<String> arguments = new ArrayList<>(List.of(word, "samples/lake-club/" + part + ".yaml"));
            arguments.addAll(options);
            return Program.run(arguments.toArray(String[]::new));
        }
    }

    /** A command for a part. */
    private record Job(Command command, String part) {
        String accepted() {
            return part + command.suffix + ".txt";
        }

        @Override
        public String toString() {
            return command.word + " " + part;
        }
    }

    static List<Job> jobs() throws IOException {
        List<Job> jobs = new ArrayList<>();
        for (Path file : partFiles()) {
            List<String> lines = Files.readAllLines(file);
            for (Command command : Command.values()) {
                if (command.suits(lines)) {
                    jobs.add(new Job(command, file.getFileName().toString().replace(".yaml", "")));
                }
            }
        }
        return jobs;
    }

    private static List<Path> partFiles() throws IOException {
        List<Path> parts = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".yaml"))
                    .sorted()
                    .toList()) {
                if (Files.readAllLines(file).stream()
                        .anyMatch(line -> line.startsWith("part:") || line.matches(PROJECT))) {
                    parts.add(file);
                }
            }
        }
        return parts;
    }

    /** The club's parts are good enough for what they carry and fill in time, so every limit is met. */
    @ParameterizedTest
    @MethodSource("jobs")
    void givesItsAcceptedOutput(Job job) throws IOException {
        Program.Run run = job.command().run(job.part());

        assertThat(run.complaints()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertAccepted(job.accepted(), run.output());
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
        List<String> wanted = jobs().stream().map(Job::accepted).toList();
        try (Stream<Path> files = Files.list(ACCEPTED)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }
}
