package laminate.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A folder of files that cannot be used, each with the complaints that it earns beside it: {@code NAME.yaml} and
 * {@code NAME.txt}. {@code -Dgolden.update=true} writes the latter anew, for a person to read and accept.
 */
final class Corpus {

    private final Path folder;

    Corpus(String folder) {
        this.folder = Bench.resource(folder);
    }

    /** The names of the files, without their ending. */
    Set<String> names() {
        return named(".yaml");
    }

    /** Checks that reading a file ends in the complaints beside it. */
    void check(String name, Consumer<Path> reading) {
        Path file = folder.resolve(name + ".yaml");
        InputException thrown = catchThrowableOfType(InputException.class, () -> reading.accept(file));
        assertThat(thrown).as("%s is a bad file and has to be refused", name).isNotNull();
        String place = folder + folder.getFileSystem().getSeparator();
        String complaints = thrown.complaints().stream()
                .map(complaint -> complaint.toString().replace(place, ""))
                .collect(Collectors.joining("\n", "", "\n"));
        assertThat(complaints).isEqualTo(accepted(folder.resolve(name + ".txt"), complaints));
    }

    /** Checks that there are as many files as there were at least, and nothing but files with their complaints. */
    void checkComplete(int least) {
        assertThat(names()).hasSizeGreaterThanOrEqualTo(least).isEqualTo(named(".txt"));
        assertThat(named("")).hasSize(2 * names().size());
    }

    private static String accepted(Path beside, String found) {
        try {
            if (Boolean.getBoolean("golden.update")) {
                Files.writeString(beside, found);
            }
            return Files.readString(beside);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Set<String> named(String ending) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(ending))
                    .map(name -> name.substring(0, name.length() - ending.length()))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
