package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that several parts name are read when the first of them does. */
class ReadOnceTest {

    private static final String MOULD = """
            part: Mould
            process: hand lay-up
            resin: polyester-ortho
            zones: [{name: all of it, area: 1 m², layers: [mat-300]}]
            """;

    @TempDir
    private Path folder;

    private final Complaints complaints = new Complaints();
    private final ReadOnce once = new ReadOnce(Bench.STOCK, Overrides.NONE, new SharedFiles());
    private Bench bench;

    @BeforeEach
    void putTheBench() {
        bench = new Bench(folder);
    }

    private Optional<Job> mould(String name) {
        return once.mould(folder.resolve(name), MadeHere.first(folder.resolve("lid.yaml")), complaints);
    }

    @Test
    void aMouldIsReadOnceByWhateverPath() {
        bench.put("mould.yaml", MOULD);
        Job first = mould("mould.yaml").orElseThrow();
        bench.put("mould.yaml", MOULD.replace("Mould", "Another"));

        assertThat(mould("mould.yaml")).containsSame(first);
        assertThat(mould("../" + folder.getFileName() + "/./mould.yaml")).containsSame(first);
        assertThat(complaints.isEmpty()).isTrue();
    }

    @Test
    void aMouldThatIsFlawedIsNotReadAgain() {
        bench.put("mould.yaml", MOULD.replace("1 m²", "1 kg"));
        assertThat(mould("mould.yaml")).isEmpty();
        bench.put("mould.yaml", MOULD);
        assertThat(mould("mould.yaml")).isEmpty();
    }

    @Test
    void materialFilesAreReadOnceTogether() {
        bench.put("own.yaml", "materials: [{material: my-mekp, kind: catalyst, name: Mine, density: 1170 kg/m³}]\n");
        Stock first = once.stock(named("own.yaml"), complaints);

        assertThat(once.stock(named("own.yaml"), complaints)).isSameAs(first);
        assertThat(first.materials().find("my-mekp")).isPresent();
        assertThat(once.stock(new NamedMaterials(), complaints).materials().find("my-mekp"))
                .isEmpty();
    }

    private NamedMaterials named(String file) {
        NamedMaterials named = new NamedMaterials();
        Node root = YamlTree.read("part.yaml", "materials: " + file + "\n", Keys.PART, complaints)
                .orElseThrow();
        named.read(new Fields((Node.Mapping) root, Keys.PART, complaints), new Beside(folder.resolve("part.yaml")));
        return named;
    }
}
