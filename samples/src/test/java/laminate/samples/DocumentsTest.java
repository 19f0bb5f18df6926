package laminate.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The documents cannot lie: every command that README.md shows with its output is run, and every part file it shows is
 * estimated. In the output shown, a line {@code ...} stands for lines left out.
 */
class DocumentsTest {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");
    private static final String PROMPT = "$ laminate-cli/laminate ";

    /**
     * A command and the output that is shown for it.
     *
     * @param arguments what follows the program
     * @param shown the lines shown
     */
    record Shown(String arguments, List<String> shown) {}

    static List<Shown> commands() throws IOException {
        List<Shown> commands = new ArrayList<>();
        for (String block : blocks("console")) {
            for (String line : block.lines().toList()) {
                if (line.startsWith(PROMPT)) {
                    commands.add(new Shown(line.substring(PROMPT.length()), new ArrayList<>()));
                } else {
                    commands.get(commands.size() - 1).shown().add(line);
                }
            }
        }
        return commands;
    }

    @ParameterizedTest
    @MethodSource("commands")
    void printsWhatTheReadmeShows(Shown command) {
        Program.Run run = Program.run(command.arguments().split(" "));

        assertThat(run.complaints()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.output()).matches(pattern(command.shown()));
    }

    @Test
    void estimatesEveryPartFileThatTheReadmeShows(@TempDir Path folder) throws IOException {
        List<String> parts = blocks("yaml").stream()
                .filter(block -> block.contains("part:") && !isProject(block))
                .toList();
        assertThat(parts).isNotEmpty();
        for (String text : parts) {
            Path file = Files.writeString(folder.resolve("part.yaml"), text);
            Program.Run run = Program.runIn(folder, List.of("estimate", file.toString()));
            assertThat(run.complaints()).isEmpty();
            assertThat(run.exitCode()).isZero();
        }
    }

    /** A project needs the files that it names: the one shown is a sample, which has them beside it. */
    @Test
    void showsASampleForAProjectFile() throws IOException {
        List<String> projects =
                blocks("yaml").stream().filter(DocumentsTest::isProject).toList();

        assertThat(projects).containsExactly(Files.readString(Program.ROOT.resolve("samples/lake-club/lockers.yaml")));
    }

    private static boolean isProject(String yaml) {
        return yaml.lines().anyMatch(line -> line.startsWith("project:"));
    }

    @Test
    void namesTheTestCommandThatEveryChangeMustPass() throws IOException {
        String command = "mvn -B -ntp verify";
        assertThat(readme()).contains(command);
        assertThat(Files.readString(Program.ROOT.resolve(".ci/run")).lines().map(String::strip))
                .contains(command + " -P ci");
    }

    private static Pattern pattern(List<String> shown) {
        StringBuilder pattern = new StringBuilder();
        for (String line : shown) {
            pattern.append(line.equals("...") ? "(?:.*\\R)*?" : Pattern.quote(line) + "\\R");
        }
        return Pattern.compile(pattern.toString());
    }

    private static List<String> blocks(String language) throws IOException {
        List<String> blocks = new ArrayList<>();
        Matcher matcher = BLOCK.matcher(readme());
        while (matcher.find()) {
            if (matcher.group(1).equals(language)) {
                blocks.add(matcher.group(2));
            }
        }
        return blocks;
    }

    private static String readme() throws IOException {
        return Files.readString(Program.ROOT.resolve("README.md"));
    }
}
