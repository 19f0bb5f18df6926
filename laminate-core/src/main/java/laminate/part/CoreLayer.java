package laminate.part;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import laminate.material.Core;
import laminate.process.CoreFinish;
import laminate.process.Grooves;
import laminate.process.LayUp;

/**
 * A core.
 *
 * <p>The resin that its faces and openings take up is the layer's own: it adds mass, no thickness and no stiffness. A
 * bed of paste takes the place of the resin at the face towards the mould; it is a ply of its own with the paste's
 * modulus.
 *
 * @param core what is laid
 * @param thickness thickness of the sheet (m)
 * @param angle turns the sheet's length from x (degrees)
 * @param finish the finish of its faces
 * @param layUp process, resin and dose of the resin it takes up
 * @param bed the paste that it is bedded in, empty for none
 * @param stage the name of its stage, empty text for none
 */
public record CoreLayer(
        Core core, double thickness, double angle, CoreFinish finish, LayUp layUp, Optional<Bed> bed, String stage)
        implements Layer {

    /**
     * Checks the layer.
     *
     * @throws IllegalArgumentException if the thickness is not above zero, the angle not finite, the grooves meet, or
     *     the core cannot be laid by the process
     */
    public CoreLayer {
        Objects.requireNonNull(finish, "finish");
        Objects.requireNonNull(bed, "bed");
        Objects.requireNonNull(stage, "stage");
        if (!(thickness > 0) || !Double.isFinite(thickness)) {
            throw new IllegalArgumentException("the thickness of a core must be above zero, not " + thickness + " m");
        }
        if (!Double.isFinite(angle)) {
            throw new IllegalArgumentException("an angle must be finite, not " + angle);
        }
        if (finish.grooves().isPresent()) {
            checkGrooves(core, thickness, finish.grooves().get());
        }
        CoreFinish.faceUptake(core, layUp.process());
    }

    /**
     * A plain core along x, not bedded, in no named stage.
     *
     * @param core what is laid
     * @param thickness thickness of the sheet (m)
     * @param layUp process, resin and dose of the resin it takes up
     * @return the layer
     */
    public static CoreLayer of(Core core, double thickness, LayUp layUp) {
        return new CoreLayer(core, thickness, 0, CoreFinish.PLAIN, layUp, Optional.empty(), "");
    }

    private static void checkGrooves(Core core, double thickness, Grooves cut) {
        if (cut.faces() * cut.depth() >= thickness) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s of %.1f mm cannot hold grooves %.1f mm deep in %s",
                    core.id(),
                    thickness * 1000,
                    cut.depth() * 1000,
                    cut.faces() == 1 ? "one face" : "both faces"));
        }
    }

    @Override
    public Optional<LayUp> laying() {
        return Optional.of(layUp);
    }

    @Override
    public String material() {
        return core.id();
    }
}
