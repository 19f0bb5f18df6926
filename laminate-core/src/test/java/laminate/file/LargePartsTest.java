package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts far larger than any workshop makes: read, or refused before memory fails. */
class LargePartsTest {

    @TempDir
    private Path folder;

    private static String part(int zones, String layers) {
        StringBuilder text =
                new StringBuilder(Bench.WITHOUT_ZONES + "schedules: {shell: [mat-300, mat-450]}\nzones:\n");
        for (int i = 1; i <= zones; i++) {
            text.append("  - {name: zone ")
                    .append(i)
                    .append(", area: 1 m², layers: [")
                    .append(layers)
                    .append("]}\n");
        }
        return text.toString();
    }

    @Test
    void fiveThousandZonesAreRead() {
        assertThat(new Bench(folder)
                        .read(part(5000, "{schedule: shell}, roving-600"))
                        .part()
                        .zones())
                .hasSize(5000);
    }

    @Test
    void layersOfAllZonesTogetherAreBounded() {
        List<String> complaints = new Bench(folder).complaints(part(600, "{times: 1000, layers: [{schedule: shell}]}"));
        assertThat(complaints)
                .first()
                .asString()
                .startsWith("part.yaml:506:5: zones, entry 501: the zones have more than");
    }

    @Test
    void zoneMayHaveTwoThousandLayersAndNoMore() {
        assertThat(new Bench(folder)
                        .read(part(1, "{times: 1000, layers: [{schedule: shell}]}"))
                        .part()
                        .zones()
                        .get(0)
                        .layers())
                .hasSize(2000);
        assertThat(new Bench(folder).complaints(part(1, "{times: 1000, layers: [{schedule: shell}]}, mat-300")))
                .containsExactly("part.yaml:6:40: layers: 2001 layers lie here; 2000 are the most in a zone");
    }
}
