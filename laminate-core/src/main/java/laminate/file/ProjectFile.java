package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.material.Materials;

/**
 * Reads project files.
 *
 * <pre>{@code
 * Project lockers = ProjectFile.read(Path.of("lockers.yaml"), library, Overrides.NONE);
 * List<Job> forThreeSets = lockers.jobs(3);
 * }</pre>
 */
public final class ProjectFile {

    private ProjectFile() {}

    /**
     * Reads a project file with the part files that it names, and what these name.
     *
     * @param file the project file; the paths in it begin where it lies
     * @param library the materials that parts may name; asked only for those that they do name
     * @param overrides what wins over project and part files; process, resin and schedules are of the mouldings alone
     * @return the project
     * @throws InputException with all that is wrong in any of the files
     */
    public static Project read(Path file, Materials library, Overrides overrides) {
        Complaints complaints = new Complaints();
        Optional<Node> root = YamlTree.read(file, Keys.PROJECT, complaints);
        return complaints.settle(
                root.isPresent()
                        ? new ProjectReader(file, library, overrides, new SharedFiles()).read(root.get(), complaints)
                        : Optional.empty());
    }
}
