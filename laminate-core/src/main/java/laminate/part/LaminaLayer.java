package laminate.part;

import java.util.Objects;
import java.util.Optional;
import laminate.process.LayUp;
import laminate.theory.Lamina;

/**
 * A ply given directly by its properties, for teaching and checking.
 *
 * @param lamina elastic constants and expansion
 * @param density density (kg/m³)
 * @param thickness thickness (m)
 * @param angle turns the 1 direction from x (degrees)
 * @param stage the name of its stage, empty text for none
 */
public record LaminaLayer(Lamina lamina, double density, double thickness, double angle, String stage)
        implements Layer {

    /**
     * Checks the ply.
     *
     * @throws IllegalArgumentException if density or thickness is not above zero, or the angle not finite
     */
    public LaminaLayer {
        Objects.requireNonNull(lamina, "lamina");
        Objects.requireNonNull(stage, "stage");
        if (!(thickness > 0 && density > 0) || !Double.isFinite(thickness) || !Double.isFinite(density)) {
            throw new IllegalArgumentException("a ply's thickness and density must be above zero, not " + thickness
                    + " m and " + density + " kg/m³");
        }
        if (!Double.isFinite(angle)) {
            throw new IllegalArgumentException("an angle must be finite, not " + angle);
        }
    }

    @Override
    public Optional<LayUp> laying() {
        return Optional.empty();
    }

    @Override
    public String material() {
        return "lamina";
    }
}
