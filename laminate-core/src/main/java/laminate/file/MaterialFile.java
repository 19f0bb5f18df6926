package laminate.file;

import java.nio.file.Path;
import java.util.List;
import laminate.material.Material;
import laminate.material.Materials;

/**
 * Reads material files: one material, or a list of them under {@code materials:}. A figure is written with its source, or
 * short by a user who states it: {@code density: 2560 kg/m³}.
 */
public final class MaterialFile {

    private MaterialFile() {}

    /**
     * Reads a user's material file.
     *
     * @param file the file
     * @param known materials that it may refer to: fibres of reinforcements, agents of resins
     * @return the materials in the order of the file; they may refer to each other in any order
     * @throws InputException with all that is wrong in the file
     */
    public static List<Material> read(Path file, Materials known) {
        return read(List.of(file), known);
    }

    /**
     * Reads a user's material files together.
     *
     * @param files the files
     * @param known materials that they may refer to: fibres of reinforcements, agents of resins
     * @return the materials in the order of the files; they may refer to each other in any order, and of two of one id in
     *     different files the later is meant
     * @throws InputException with all that is wrong in any of the files
     */
    public static List<Material> read(List<Path> files, Materials known) {
        Complaints complaints = new Complaints();
        OwnMaterials own = new OwnMaterials(known, complaints);
        files.forEach(own::add);
        return own.settle();
    }

    /**
     * Reads the text of a material file.
     *
     * @param name what complaints call it; one that ends in {@code .json} is read as JSON, any other as YAML
     * @param text the text
     * @param known materials that it may refer to; asked only for the fibres of reinforcements
     * @return the materials in the order of the text
     * @throws InputException with all that is wrong in the text
     */
    public static List<Material> read(String name, String text, Materials known) {
        Complaints complaints = new Complaints();
        OwnMaterials own = new OwnMaterials(known, complaints);
        own.add(name, text);
        return own.settle();
    }
}
