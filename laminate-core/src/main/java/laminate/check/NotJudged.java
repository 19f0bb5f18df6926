package laminate.check;

import java.util.Objects;

/**
 * A ply whose failure could not be judged.
 *
 * @param ply its number, 0 at the mould face
 * @param material the id of its material
 * @param reason what is missing
 */
public record NotJudged(int ply, String material, String reason) {
    /**
     * Checks that all are there.
     *
     * @param ply its number, 0 at the mould face
     * @param material the id of its material
     * @param reason what is missing
     */
    public NotJudged {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(reason, "reason");
    }
}
