package laminate.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The material files that a part or project file names, as far as they are there. */
final class NamedMaterials {

    private final List<Path> files = new ArrayList<>();
    private boolean complete = true;

    /** Reads {@code materials:}, one file or several; each that is not there has been complained of. */
    void read(Fields in, Beside beside) {
        in.stated("materials", Reading.oneOrList((node, complaints) -> note(beside.read(node, complaints))));
    }

    private Optional<Path> note(Optional<Path> found) {
        if (found.isPresent()) {
            files.add(found.get());
        } else {
            complete = false;
        }
        return found;
    }

    List<Path> files() {
        return files;
    }

    /** Whether all of them are there: if not, what is unknown may be known in one of the others. */
    boolean isComplete() {
        return complete;
    }
}
