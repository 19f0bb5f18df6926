package laminate.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import laminate.file.MaterialFile;
import laminate.material.Agent;
import laminate.material.FibrePly;
import laminate.material.Material;
import laminate.material.MaterialKind;
import laminate.material.Reinforcement;
import laminate.material.Resin;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialLibraryTest {
    private static final MaterialLibrary LIBRARY = new MaterialLibrary();

    static List<String> ids() {
        return LIBRARY.ids();
    }

    @Test
    void listsEveryFileOnceInOrder() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/laminate/library"))) {
            List<String> names =
                    files.map(file -> file.getFileName().toString()).sorted().toList();
            assertThat(names).allMatch(name -> name.endsWith(".yaml"));
            assertThat(ids())
                    .containsExactlyInAnyOrderElementsOf(names.stream()
                            .map(name -> name.replace(".yaml", ""))
                            .toList());
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyMaterialIsWhatItsFileIsNamed(String id) {
        assertThat(LIBRARY.find(id))
                .hasValueSatisfying(material -> assertThat(material.id()).isEqualTo(id));
    }

    @Test
    void holdsWhatAWorkshopBuys() {
        Map<MaterialKind, Long> count = ids().stream()
                .map(id -> LIBRARY.find(id).orElseThrow())
                .collect(Collectors.groupingBy(Material::kind, Collectors.counting()));
        assertThat(count.get(MaterialKind.FIBRE)).isGreaterThanOrEqualTo(7);
        assertThat(count.get(MaterialKind.REINFORCEMENT)).isGreaterThanOrEqualTo(45);
        assertThat(count.get(MaterialKind.CORE)).isGreaterThanOrEqualTo(18);
        assertThat(count.get(MaterialKind.RESIN)).isGreaterThanOrEqualTo(14);
        assertThat(count.keySet()).containsExactlyInAnyOrder(MaterialKind.values());
    }

    @ParameterizedTest
    @MethodSource("ids")
    void whatAMaterialRefersToIsThere(String id) {
        Material material = LIBRARY.find(id).orElseThrow();
        if (material instanceof Resin resin) {
            assertThat(resin.cures())
                    .allSatisfy(cure -> assertThat(LIBRARY.find(cure.agent()))
                            .hasValueSatisfying(agent -> assertThat(agent).isInstanceOf(Agent.class)));
            assertThat(resin.gelPoints())
                    .allMatch(point -> resin.cureBy(point.agent()).isPresent());
        } else if (material instanceof Reinforcement reinforcement) {
            assertThat(reinforcement.plies())
                    .extracting(FibrePly::fibre)
                    .allMatch(fibre ->
                            LIBRARY.find(fibre.id()).filter(fibre::equals).isPresent());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "mat-451", "MAT-450", "mat-450.yaml", "../library/mat-450", "ids", "mat 450"})
    void findsNothingElse(String id) {
        assertThat(LIBRARY.find(id)).isEmpty();
    }

    @Test
    void readsAMaterialOnceForAllThreads() {
        MaterialLibrary fresh = new MaterialLibrary();
        List<Material> found = IntStream.range(0, 64)
                .parallel()
                .mapToObj(
                        i -> fresh.find(i % 2 == 0 ? "biaxial-600" : "e-glass").orElseThrow())
                .toList();
        assertThat(found.stream().map(System::identityHashCode).distinct()).hasSize(2);
        assertThat(fresh.find("biaxial-600").orElseThrow()).isSameAs(found.get(0));
    }

    @Test
    void whatIsExpectedIsFoundAsEver() {
        MaterialLibrary fresh = new MaterialLibrary();
        fresh.expect(List.of("biaxial-600", "Bow locker lid", "no-such-material", "../ids"));
        assertThat(fresh.find("biaxial-600")).isEqualTo(LIBRARY.find("biaxial-600"));
        assertThat(fresh.find("no-such-material")).isEmpty();
    }

    @Test
    void anInterruptedCallerGetsItsMaterialAndKeepsTheInterrupt() {
        Thread.currentThread().interrupt();
        Optional<Material> found = new MaterialLibrary().find("mat-450");
        assertThat(Thread.interrupted()).isTrue();
        assertThat(found).isEqualTo(LIBRARY.find("mat-450"));
    }

    /** The library is packed as JSON: nothing may be lost on the way from the YAML in which it is written. */
    @ParameterizedTest
    @MethodSource("ids")
    void isPackedAsWritten(String id) throws IOException {
        String written = Files.readString(Path.of("src/main/resources/laminate/library", id + ".yaml"));
        assertThat(LIBRARY.find(id))
                .hasValue(MaterialFile.read(id + ".yaml", written, LIBRARY).get(0));
    }
}
