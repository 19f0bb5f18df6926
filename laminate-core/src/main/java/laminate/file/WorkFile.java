package laminate.file;

import java.nio.file.Path;
import java.util.Optional;
import laminate.material.Materials;

/**
 * Reads part files and project files alike: the first is known by {@code part:}, the second by {@code project:}.
 *
 * <pre>{@code
 * for (Job job : WorkFile.read(file, library, Overrides.NONE).jobs()) {
 *     double kilograms = job.estimate().mass().planned();
 * }
 * }</pre>
 */
public final class WorkFile {

    private WorkFile() {}

    /**
     * Reads a part file or a project file with all files that it names.
     *
     * @param file the file; the paths in it begin where it lies
     * @param library the materials that it may name; asked only for those that it does name
     * @param overrides what wins over the file
     * @return a {@link Job} of a part file, a {@link Project} of a project file
     * @throws InputException with all that is wrong in any of the files
     */
    public static Work read(Path file, Materials library, Overrides overrides) {
        return read(file, library, overrides, new SharedFiles());
    }

    /**
     * Reads one of several files, which may name the same workshop, price and material files.
     *
     * @param file the file; the paths in it begin where it lies
     * @param library the materials that it may name; asked only for those that it does name
     * @param overrides what wins over the file
     * @param shared the files that those before it have named, to which those that it names are added
     * @return a {@link Job} of a part file, a {@link Project} of a project file
     * @throws InputException with all that is wrong in any of the files
     */
    public static Work read(Path file, Materials library, Overrides overrides, SharedFiles shared) {
        Complaints complaints = new Complaints();
        Optional<Node> root = YamlTree.read(file, Keys.PART, complaints);
        if (root.isEmpty()) {
            return complaints.settle(Optional.empty());
        }
        return complaints.settle(
                PartReader.isProject(root.get())
                        ? new ProjectReader(file, library, overrides, shared).read(root.get(), complaints)
                        : new PartReader(file, library, overrides, shared).read(root.get(), complaints));
    }
}
