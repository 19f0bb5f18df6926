package laminate.order.pieces;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is cut for one or more parts, and how.
 *
 * @param pieces the pieces in the order in which they are laid, part by part and zone by zone
 * @param materials how they are cut, material by material
 * @param remarks what is not planned, and why
 */
public record Cutting(List<CutPiece> pieces, List<MaterialCut> materials, List<String> remarks) {
    /** Nothing is planned. */
    public static final Cutting NONE = new Cutting(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Cutting {
        pieces = List.copyOf(pieces);
        materials = List.copyOf(materials);
        remarks = List.copyOf(remarks);
    }

    /**
     * How a material is cut.
     *
     * @param material the id
     * @param thickness thickness of a sheet of core (m), empty for anything else
     * @return its plan; empty if nothing of it is planned
     */
    public Optional<MaterialCut> find(String material, OptionalDouble thickness) {
        return materials.stream()
                .filter(cut ->
                        cut.material().equals(material) && cut.thickness().equals(thickness))
                .findFirst();
    }
}
