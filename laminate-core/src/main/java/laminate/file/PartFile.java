package laminate.file;

import java.nio.file.Path;
import laminate.material.Materials;

/**
 * Reads part files.
 *
 * <pre>{@code
 * Job job = PartFile.read(Path.of("locker-lid.yaml"), library);
 * double kilograms = job.estimate().mass().planned();
 * }</pre>
 */
public final class PartFile {

    private PartFile() {}

    /**
     * Reads a part file with the workshop, price and material files that it names.
     *
     * @param file the part file; the paths in it begin where it lies
     * @param library the materials that a part may name; asked only for those that it does name
     * @return the part, its workshop and prices
     * @throws InputException with all that is wrong in any of the files
     */
    public static Job read(Path file, Materials library) {
        return read(file, library, Overrides.NONE);
    }

    /**
     * Reads a part file, with other files, another process, resin or schedule than it names.
     *
     * @param file the part file; the paths in it begin where it lies
     * @param library the materials that a part may name; asked only for those that it does name
     * @param overrides what wins over the part file
     * @return the part, its workshop and prices
     * @throws InputException with all that is wrong in any of the files
     */
    public static Job read(Path file, Materials library, Overrides overrides) {
        Complaints complaints = new Complaints();
        return complaints.settle(new PartReader(file, library, overrides, new SharedFiles()).read(complaints));
    }
}
