package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A folder of files that cannot be used, each with the complaints that it earns beside it: {@code NAME.yaml} and
 * {@code NAME.txt}. {@code -Dgolden.update=true} writes the latter anew, for a person to read and accept.
 */
class BadFilesTest {

    private static final Path FOLDER = Path.of("src/test/resources/laminate/file/bad");

    static Stream<String> names() throws IOException {
        return named(".yaml").stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void complaintsAreThoseBesideTheFile(String name) throws IOException {
        Path file = FOLDER.resolve(name + ".yaml");
        InputException thrown = catchThrowableOfType(InputException.class, () -> SketchFile.read(file));
        assertThat(thrown).as("%s is a bad file and has to be refused", name).isNotNull();
        String complaints = thrown.complaints().stream()
                .map(complaint -> complaint.toString().replace(FOLDER + File.separator, ""))
                .collect(Collectors.joining("\n", "", "\n"));
        Path beside = FOLDER.resolve(name + ".txt");
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(beside, complaints);
        }
        assertThat(complaints).isEqualTo(Files.readString(beside));
    }

    @Test
    void everyFileHasItsComplaintsAndTheyTheirFile() throws IOException {
        assertThat(named(".yaml")).hasSizeGreaterThanOrEqualTo(40).isEqualTo(named(".txt"));
        try (Stream<Path> all = Files.list(FOLDER)) {
            Predicate<String> ours = name -> name.endsWith(".yaml") || name.endsWith(".txt");
            assertThat(all.map(path -> path.getFileName().toString())).allMatch(ours);
        }
    }

    private static Set<String> named(String ending) throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .map(name -> name.substring(0, name.length() - ending.length()))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
