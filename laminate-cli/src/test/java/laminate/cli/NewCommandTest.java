package laminate.cli;

import static laminate.cli.Run.laminate;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewCommandTest {
    @TempDir
    private Path folder;

    @Test
    void whatItWritesRunsAsItStands() {
        Path file = folder.resolve("part.yaml");
        assertThat(laminate("new", file)).isEqualTo(new Run(ExitCode.DONE, "", ""));
        Run estimate = laminate("estimate", file);
        assertThat(estimate.exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(estimate.err()).isEmpty();
        assertThat(estimate.out()).contains("Zone: panel", "Zone: edge").doesNotContain("To mind in this schedule");
        assertThat(file).hasContent(laminate("new").out());
    }

    @Test
    void whatItShowsInRemarksRunsToo() throws IOException {
        String text = laminate("new").out().replace("# measured:", "measured:");
        Run estimate = laminate("estimate", Files.writeString(folder.resolve("part.yaml"), text));
        assertThat(estimate.err()).isEmpty();
        assertThat(estimate.out()).contains("Measured").doesNotContain("outside");
    }

    @Test
    void aFileThatIsThereIsOverwrittenOnlyByForce() throws IOException {
        Path file = Files.writeString(folder.resolve("part.yaml"), "mine");
        Run refused = laminate("new", file);
        assertThat(refused.exitCode()).isEqualTo(ExitCode.UNUSABLE_INPUT);
        assertThat(refused.err()).startsWith(file + ": is there already; ").contains("--force");
        assertThat(file).hasContent("mine");
        assertThat(laminate("new", file, "--force").exitCode()).isEqualTo(ExitCode.DONE);
        assertThat(file).content().contains("part: ");
        assertThat(laminate("new", file, folder.resolve("other.yaml")).exitCode())
                .isEqualTo(ExitCode.WRONG_USAGE);
    }
}
