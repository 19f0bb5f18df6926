package laminate.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The workshop, or the prices, of the yard that makes several parts, as far as it is known when one of them is read.
 *
 * @param stage how it came to be known
 * @param value what it is, empty where it is not known, not stated or could not be read
 * @param file its file, if it is of one
 */
record OfYard<T>(Stage stage, Optional<T> value, Optional<Path> file) {

    /** How the yard's workshop or prices came to be known. */
    enum Stage {
        /** Not yet: what the next part states becomes the yard's. */
        OPEN,
        /** From a part: what others state must be the same. */
        OF_A_PART,
        /** From the project: what parts state is passed over. */
        OF_THE_PROJECT
    }

    static <T> OfYard<T> open() {
        return new OfYard<>(Stage.OPEN, Optional.empty(), Optional.empty());
    }

    /** What a project states for all its parts, empty where it could not be read. */
    static <T> OfYard<T> ofTheProject(Optional<T> stated, Optional<Path> from) {
        return new OfYard<>(Stage.OF_THE_PROJECT, stated, from);
    }

    boolean isOpen() {
        return stage == Stage.OPEN;
    }

    boolean isOfTheProject() {
        return stage == Stage.OF_THE_PROJECT;
    }

    /** What a part states, unless the project states it for all. */
    OfYard<T> orOfPart(Optional<T> stated, Optional<Path> from) {
        return isOfTheProject() ? this : new OfYard<>(Stage.OF_A_PART, stated, from);
    }

    /** What stands in a file, if this does: then the file need not be read again. */
    Optional<T> in(Optional<Path> other) {
        return file.isPresent() && other.isPresent() && isSame(file.get(), other.get()) ? value : Optional.empty();
    }

    /** Looks first whether they are one: to compare records costs the Java machine some time at the first time. */
    boolean differsFrom(T stated) {
        T known = value.orElse(null);
        return stage == Stage.OF_A_PART && known != stated && !stated.equals(known);
    }

    static boolean isSame(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException e) {
            return one.toAbsolutePath()
                    .normalize()
                    .equals(other.toAbsolutePath().normalize());
        }
    }
}
