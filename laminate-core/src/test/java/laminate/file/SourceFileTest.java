package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceFileTest {

    private static final String GOOD = "part: Lid\nzones:\n  - {name: Deckel für 𝄞, area: 1 m², layers: [mat-300]}\n";

    @TempDir
    private Path folder;

    private String refusal(Path path) {
        InputException thrown = catchThrowableOfType(InputException.class, () -> SketchFile.read(path));
        assertThat(thrown.complaints()).hasSize(1);
        return thrown.getMessage();
    }

    @Test
    void directoryIsToldAsSuch() {
        assertThat(refusal(folder)).isEqualTo(folder + ": this is a directory; the name of a part file is wanted");
    }

    @Test
    void emptyNameIsTheDirectoryOneIsIn() {
        assertThat(refusal(Path.of(""))).startsWith(".: this is a directory");
    }

    @Test
    void missingFileIsToldAsSuch() {
        Path missing = folder.resolve("lid.yaml");
        assertThat(refusal(missing)).isEqualTo(missing + ": there is no such file; the name of a part file is wanted");
    }

    @Test
    void fileInsideAFileCannotBeRead() throws IOException {
        Path file = Files.writeString(folder.resolve("lid.yaml"), GOOD);
        assertThat(refusal(file.resolve("deeper.yaml"))).contains("the file cannot be read (Not a directory)");
    }

    @Test
    void fileWithoutReadingRightIsToldAsSuch() throws IOException {
        Path file = Files.writeString(folder.resolve("lid.yaml"), GOOD);
        assertThat(file.toFile().setReadable(false)).isTrue();
        assumeFalse(Files.isReadable(file), "the superuser reads everything");
        assertThat(refusal(file)).contains("the file may not be read");
    }

    /** Any failure to read is told as a complaint about the file, here that of an archive damaged in its midst. */
    @Test
    void damagedFileIsToldAsSuch() throws IOException {
        Path archive = folder.resolve("parts.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(archive))) {
            zip.putNextEntry(new ZipEntry("lid.yaml"));
            zip.write(GOOD.getBytes(StandardCharsets.UTF_8));
        }
        byte[] bytes = Files.readAllBytes(archive);
        int packed = 30 + "lid.yaml".length();
        Arrays.fill(bytes, packed, packed + 8, (byte) 0xFF);
        Files.write(archive, bytes);
        try (FileSystem inside = FileSystems.newFileSystem(archive)) {
            assertThat(refusal(inside.getPath("lid.yaml")))
                    .startsWith("lid.yaml: the file cannot be read (")
                    .endsWith("); a part file on a readable disk is wanted")
                    .doesNotContain("null");
        }
    }

    @Test
    void fileAboveTheLimitIsRefusedWithoutBeingParsed() throws IOException {
        Path file = folder.resolve("huge.yaml");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(3L << 30);
        }
        assertThat(refusal(file)).contains("the file is larger than 16 MiB");
    }

    @Test
    void byteOrderMarkIsAcceptedAndDoesNotShiftColumns() throws IOException {
        Path good = Files.writeString(folder.resolve("good.yaml"), "\uFEFF" + GOOD);
        assertThat(SketchFile.read(good).zones())
                .extracting(SketchFile.Zone::name)
                .containsExactly("Deckel für 𝄞");
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "\uFEFFprat: Lid\n" + GOOD);
        assertThat(refusal(bad)).contains("bad.yaml:1:1: 'prat'");
    }

    @Test
    void wrongByteIsPlacedInItsLineWhateverEndsTheLines() throws IOException {
        for (String end : new String[] {"\n", "\r\n", "\r"}) {
            String before = "part: Lid" + end + end + "process: ä𝄞";
            byte[] start = before.getBytes(StandardCharsets.UTF_8);
            byte[] all = Arrays.copyOf(start, start.length + 1);
            all[start.length] = (byte) 0xB2;
            Path file = Files.write(folder.resolve("latin.yaml"), all);
            assertThat(refusal(file))
                    .endsWith(
                            "latin.yaml:3:12: byte 0xB2 is not UTF-8 text (in Windows-1252 it is '²'); save the file as UTF-8");
        }
    }
}
