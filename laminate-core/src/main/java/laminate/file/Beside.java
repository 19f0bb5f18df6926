package laminate.file;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Reads the path of a file, taken from where the file lies that names it. */
final class Beside extends ScalarReading<Path> {

    private final Path file;

    Beside(Path file) {
        this.file = file;
    }

    /** The path of a file that need not be there, empty where the text cannot be one. */
    Optional<Path> path(String text) {
        try {
            return Optional.of(file.resolveSibling(text.strip()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    @Override
    Path of(String text) {
        Path path = path(text)
                .orElseThrow(() -> new IllegalArgumentException("this cannot be the name of a file; a path is wanted"));
        if (!Files.exists(path)) {
            throw new IllegalArgumentException(
                    "there is no file " + path + "; a path is wanted that begins where the file lies that names it");
        }
        if (Files.isDirectory(path)) {
            throw new IllegalArgumentException(path + " is a directory; the name of a file is wanted");
        }
        return path;
    }
}
