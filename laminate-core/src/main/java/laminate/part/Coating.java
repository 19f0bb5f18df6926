package laminate.part;

import java.util.Objects;
import laminate.material.Resin;
import laminate.process.Dose;

/**
 * A coating of a zone. Gelcoat and barrier coat lie at the mould face, flowcoat and paint on the inside; it carries no
 * load.
 *
 * @param material the coating
 * @param dose its agent and amount
 * @param film how thick each coat is applied
 * @param coats how many coats, each of that film
 */
public record Coating(Resin material, Dose dose, Film film, int coats) {

    /**
     * Checks the coating.
     *
     * @throws IllegalArgumentException if the material is not a coating, there is no coat, or the dose is outside its
     *     range
     */
    public Coating {
        Objects.requireNonNull(film, "film");
        if (!material.use().isCoating()) {
            throw new IllegalArgumentException(
                    material.id() + " is a " + material.use().word() + " resin, not a coating");
        }
        if (coats < 1) {
            throw new IllegalArgumentException("a coating has one coat or more, not " + coats);
        }
        dose = Dose.of(material, dose.agent(), dose.ratio());
    }

    /**
     * Whether it lies at the mould face.
     *
     * @return true for gelcoat and barrier coat
     */
    public boolean atMouldFace() {
        return material.use() == Resin.Use.GELCOAT || material.use() == Resin.Use.BARRIER;
    }
}
