package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A folder of part, workshop, price and material files that mean something impossible, each with the complaints that it
 * earns beside it. The name tells the kind: {@code workshop-…}, {@code prices-…}, {@code material-…}, else a part file.
 * {@code -Dgolden.update=true} writes the complaints anew, for a person to read and accept.
 */
class BadPartsTest {

    private static final Path FOLDER = Bench.resource("bad-parts");

    static Stream<String> names() throws IOException {
        return named(".yaml").stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void complaintsAreThoseBesideTheFile(String name) throws IOException {
        InputException thrown = catchThrowableOfType(InputException.class, () -> read(name));
        assertThat(thrown).as("%s is a bad file and has to be refused", name).isNotNull();
        String complaints = thrown.complaints().stream()
                .map(complaint -> complaint.toString().replace(FOLDER + "/", ""))
                .collect(Collectors.joining("\n", "", "\n"));
        Path beside = FOLDER.resolve(name + ".txt");
        if (Boolean.getBoolean("golden.update")) {
            Files.writeString(beside, complaints);
        }
        assertThat(complaints).isEqualTo(Files.readString(beside));
    }

    @Test
    void everyFileHasItsComplaintsAndTheyTheirFile() throws IOException {
        assertThat(named(".yaml")).hasSizeGreaterThanOrEqualTo(100).isEqualTo(named(".txt"));
    }

    private static Object read(String name) {
        Path file = FOLDER.resolve(name + ".yaml");
        return switch (name.substring(0, Math.max(0, name.indexOf('-')))) {
            case "workshop" -> WorkshopFile.read(file, Bench.STOCK);
            case "prices" -> PriceFile.read(file, Bench.STOCK);
            case "material" -> MaterialFile.read(file, Bench.STOCK);
            default -> PartFile.read(file, Bench.STOCK);
        };
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
