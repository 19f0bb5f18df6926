package laminate.part;

import java.util.Objects;
import java.util.Optional;
import laminate.material.Bulker;
import laminate.process.LayUp;

/**
 * A layer of bulking mat, wetted out with the laminate.
 *
 * @param bulker what is laid
 * @param layUp process, resin and dose
 * @param stage the name of its stage, empty text for none
 */
public record BulkerLayer(Bulker bulker, LayUp layUp, String stage) implements Layer {

    /** Checks that nothing is missing. */
    public BulkerLayer {
        Objects.requireNonNull(bulker, "bulker");
        Objects.requireNonNull(layUp, "layUp");
        Objects.requireNonNull(stage, "stage");
    }

    @Override
    public Optional<LayUp> laying() {
        return Optional.of(layUp);
    }

    @Override
    public String material() {
        return bulker.id();
    }
}
