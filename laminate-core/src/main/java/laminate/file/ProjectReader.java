package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.material.Materials;

/** Reads a project file with the part files that it names. */
final class ProjectReader {

    private final Path file;
    private final Materials library;
    private final Overrides overrides;

    ProjectReader(Path file, Materials library, Overrides overrides) {
        this.file = file;
        this.library = library;
        this.overrides = overrides;
    }

    /** Whether a file means to be a project file, be it sound or not. */
    static boolean isProject(Node root) {
        return root instanceof Node.Mapping mapping
                && !mapping.entries().containsKey(Keys.PART.first())
                && (mapping.entries().containsKey(Keys.PROJECT.first())
                        || mapping.entries().containsKey("mouldings"));
    }

    Optional<Project> read(Node root, Complaints complaints) {
        throw new UnsupportedOperationException("not built yet: " + file + library + overrides + root + complaints);
    }
}
