package laminate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.channels.ClosedChannelException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputTest {
    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();

    @Test
    void aFileIsWrittenWhole() throws IOException {
        Path file = folder.resolve("result.txt");
        write(file, text -> text.append("g/m²\n"));
        assertThat(file).hasBinaryContent(new byte[] {'g', '/', 'm', (byte) 0xC2, (byte) 0xB2, '\n'});
        assertThat(out.toString()).isEmpty();
        assertThat(Files.list(folder)).containsExactly(file);
    }

    @Test
    void aFailureLeavesTheOldFileAndNothingBesideIt() throws IOException {
        Path file = Files.writeString(folder.resolve("result.txt"), "old");
        assertThatThrownBy(() -> write(file, text -> {
                    text.append("half");
                    throw new IOException("no room");
                }))
                .isInstanceOf(UnusableInputException.class)
                .hasMessage(file + ": cannot be written: no room");
        assertThat(file).hasContent("old");
        assertThat(Files.list(folder)).containsExactly(file);
    }

    @Test
    void aLinkStaysALink() throws IOException {
        Path file = Files.writeString(folder.resolve("result.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), file);
        write(link, text -> text.append("new"));
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("new");
    }

    @Test
    void aPlaceThatCannotBeWrittenIsNamed() {
        assertThatThrownBy(() -> write(folder, text -> text.append("x")))
                .hasMessage(folder + ": cannot be written: it is a folder");
        Path nowhere = folder.resolve("none/result.txt");
        assertThatThrownBy(() -> write(nowhere, text -> text.append("x")))
                .hasMessage(nowhere + ": cannot be written: there is no such folder");
    }

    @ParameterizedTest
    @CsvSource({"No space left on device,true", "Broken pipe,false", "The pipe is being closed,false"})
    void aFullDiskIsAFailureAndAClosedPipeIsNot(String why, boolean isFailure) {
        StandardOutput stream = new StandardOutput(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(why);
            }
        });
        PrintWriter writer = new PrintWriter(stream);
        writer.print("results");
        writer.flush();
        assertThat(stream.failure()).isEqualTo(isFailure ? Optional.of(why) : Optional.empty());
    }

    @Test
    void aFailureWithoutWordsIsAFailureToo() {
        StandardOutput stream = new StandardOutput(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new ClosedChannelException();
            }
        });
        PrintWriter writer = new PrintWriter(stream);
        writer.print("results");
        writer.flush();
        assertThat(stream.failure()).contains(ClosedChannelException.class.getName());
    }

    @Test
    void anOutputThatTakesAllHasNoFailure() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        StandardOutput stream = new StandardOutput(bytes);
        stream.write('a');
        stream.write(new byte[] {'b', 'c'});
        stream.flush();
        assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo("abc");
        assertThat(stream.failure()).isEmpty();
    }

    private void write(Path file, Output.Print print) {
        Output.write(Optional.of(file), new PrintWriter(out), print);
    }
}
