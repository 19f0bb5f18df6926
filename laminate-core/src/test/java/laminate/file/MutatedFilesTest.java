package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a good file, it is either read or refused with complaints inside the file, and at once. */
class MutatedFilesTest {

    private static final long SEED = Long.getLong("seed", 20260115L);
    private static final Duration LIMIT = Duration.ofSeconds(60);

    private static final String GOOD = """
            part: Bow locker lid   # a comment
            count: 2
            process: hand lay-up
            catalyst: {id: mekp, amount: 1.5 %}
            schedules:
              shell: [mat-300, {reinforcement: roving-600, angle: 45, times: 2}]
            zones:
              - name: "Deckel \\u00e4 𝄞"
                area: 0.62 m²
                trim: {edge: 3.4 m, width: '40 mm'}
                layers:
                  - mat-300
                  - {core: pvc-80, thickness: 10 mm}
                  - {reinforcement: mat-450, fibre-mass-fraction: 32 %}
              - {name: seat, area: 3 ft2, mirror: true, layers: [mat-450]}
              - name: >-
                  side
                  wall
                area: 1e0 m²
                layers: [mat-300, mat-300]
            """;

    @TempDir
    private Path folder;

    @Test
    void goodFileIsRead() {
        SketchFile.Sketch sketch = SketchFile.read("good.yaml", GOOD);
        assertThat(sketch.zones())
                .extracting(SketchFile.Zone::name)
                .containsExactly("Deckel ä 𝄞", "seat", "side wall");
        assertThat(sketch.schedules().get("shell")).hasSize(2);
        assertThat(sketch.zones().get(0).trim()).contains(new SketchFile.Trim(3.4, 0.04));
    }

    @Test
    void mutatedTextIsReadOrRefused() {
        Random random = new Random(SEED);
        assertTimeoutPreemptively(LIMIT, () -> {
            for (int i = 0; i < 10_000; i++) {
                String text = GOOD;
                for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
                    text = Mutations.mutated(text, random);
                }
                assertReadOrRefused(text);
            }
        });
    }

    @Test
    void fileCutAnywhereIsReadOrRefused() {
        for (int end = 0; end <= GOOD.length(); end++) {
            assertReadOrRefused(GOOD.substring(0, end));
            assertReadOrRefused(GOOD.substring(end));
        }
    }

    @Test
    void mutatedBytesAreReadOrRefused() throws IOException {
        Random random = new Random(SEED);
        byte[] good = GOOD.getBytes(StandardCharsets.UTF_8);
        Path file = folder.resolve("bytes.yaml");
        for (int i = 0; i < 500; i++) {
            byte[] bytes = Arrays.copyOf(good, 1 + random.nextInt(good.length));
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            Files.write(file, bytes);
            try {
                SketchFile.read(file);
            } catch (InputException e) {
                assertThat(e.complaints()).isNotEmpty();
            }
        }
    }

    @Test
    void masslyRepeatedPiecesAreRefusedAtOnce() {
        assertTimeoutPreemptively(LIMIT, () -> {
            for (String piece : Mutations.PIECES) {
                assertReadOrRefused(piece.repeat(20_000));
                assertReadOrRefused("part: " + piece.repeat(20_000));
                assertReadOrRefused("zones: [" + (piece + "a ").repeat(5_000));
            }
        });
    }

    private static void assertReadOrRefused(String text) {
        try {
            SketchFile.read("t.yaml", text);
        } catch (InputException e) {
            assertThat(e.complaints()).isNotEmpty();
            long lines = text.split("\r\n|\r|\n", -1).length;
            e.complaints().forEach(complaint -> {
                assertThat(complaint.file()).isEqualTo("t.yaml");
                assertThat((long) complaint.line())
                        .as("%s in:%n%s", complaint, text)
                        .isBetween(1L, lines);
                assertThat(complaint.column()).as("%s in:%n%s", complaint, text).isPositive();
            });
        } catch (RuntimeException | StackOverflowError e) {
            fail(
                    "seed " + SEED + ", neither read nor refused:\n"
                            + text.substring(0, Math.min(2_000, text.length())),
                    e);
        }
    }
}
