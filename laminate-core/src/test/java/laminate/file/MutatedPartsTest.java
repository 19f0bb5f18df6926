package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job with every key there is: whatever is done to one of its files, it is read or refused, and nothing else. */
class MutatedPartsTest {

    private static final long SEED = Long.getLong("seed", 20260115L);
    private static final Duration LIMIT = Duration.ofSeconds(120);
    private static final List<String> NAMES = List.of(
            "part.yaml",
            "project.yaml",
            "hatch.yaml",
            "mould.yaml",
            "workshop.yaml",
            "prices.yaml",
            "stock.yaml",
            "own.yaml");
    private static final Set<String> OF_THE_PROJECT = Set.of("project.yaml", "hatch.yaml");

    @TempDir
    private Path folder;

    private final Map<String, String> good = new LinkedHashMap<>();

    @BeforeEach
    void copyTheGoodFiles() throws IOException {
        for (String name : NAMES) {
            good.put(name, Files.readString(Bench.resource("full").resolve(name)));
            new Bench(folder).put(name, good.get(name));
        }
    }

    @Test
    void goodJobIsReadAndEstimated() {
        Job job = read();
        assertThat(job.part().zones()).hasSize(4);
        assertThat(job.prices()).isPresent();
        assertThat(job.estimate().mass().planned()).isPositive();
    }

    @Test
    void goodProjectIsReadAndItsToolsAreCounted() {
        Project project = readProject();
        assertThat(project.mouldings()).hasSize(2);
        assertThat(project.tools()).hasSize(1);
        assertThat(project.jobs(50)).extracting(job -> job.part().count()).containsExactly(7, 100, 50);
    }

    @Test
    void everyKeyStandsInTheGoodFiles() {
        Set<String> standing = new HashSet<>();
        good.forEach((name, text) -> collectKeys(
                YamlTree.read(name, text, Keys.PART, new Complaints()).orElseThrow(), standing));
        Set<String> all = new TreeSet<>();
        for (Keys keys : Keys.values()) {
            all.addAll(keys.names());
        }
        all.removeAll(standing);
        assertThat(all).isEmpty();
    }

    private static void collectKeys(Node node, Set<String> keys) {
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> {
                keys.add(key);
                collectKeys(entry.value(), keys);
            });
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(item -> collectKeys(item, keys));
        }
    }

    @Test
    void mutatedFilesAreReadOrRefused() {
        Random random = new Random(SEED);
        assertTimeoutPreemptively(LIMIT, () -> {
            for (int i = 0; i < 3_000; i++) {
                String name = NAMES.get(random.nextInt(NAMES.size()));
                String text = good.get(name);
                assertReadOrRefused(
                        name, i % 4 == 0 ? Mutations.mutated(text, random) : Mutations.wordsExchanged(text, random));
            }
        });
    }

    private void assertReadOrRefused(String name, String text) {
        new Bench(folder).put(name, text);
        try {
            if (OF_THE_PROJECT.contains(name)) {
                readProject();
            } else {
                read();
            }
        } catch (InputException e) {
            assertThat(e.complaints()).isNotEmpty();
        } catch (RuntimeException | StackOverflowError e) {
            fail("seed " + SEED + ", neither read nor refused, " + name + ":\n" + text, e);
        }
        new Bench(folder).put(name, good.get(name));
    }

    private Job read() {
        Job job = PartFile.read(folder.resolve("part.yaml"), Bench.STOCK);
        StockFile.read(folder.resolve("stock.yaml"), Bench.STOCK);
        return job;
    }

    private Project readProject() {
        return ProjectFile.read(folder.resolve("project.yaml"), Bench.STOCK, Overrides.NONE);
    }
}
