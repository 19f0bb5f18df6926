package laminate.check;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * First-ply strengths of one laminate as multiples of another's; empty where one of the two has plies without strength.
 *
 * @param bendingX moment per width about which a strip along x fails, of its two senses the weaker
 * @param bendingY the same of a strip along y
 * @param tensionX force per width along x
 * @param tensionY force per width along y
 */
public record StrengthRatios(
        OptionalDouble bendingX, OptionalDouble bendingY, OptionalDouble tensionX, OptionalDouble tensionY) {
    /**
     * Checks that all are there.
     *
     * @param bendingX moment per width that a strip along x fails at
     * @param bendingY the same of a strip along y
     * @param tensionX force per width along x
     * @param tensionY force per width along y
     */
    public StrengthRatios {
        Objects.requireNonNull(bendingX, "bendingX");
        Objects.requireNonNull(bendingY, "bendingY");
        Objects.requireNonNull(tensionX, "tensionX");
        Objects.requireNonNull(tensionY, "tensionY");
    }
}
