package laminate.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import laminate.material.FibrePly;
import laminate.material.Reinforcement;
import laminate.process.FibreBed;
import laminate.process.FibreContent;
import laminate.process.LayUp;

/**
 * A layer of reinforcement.
 *
 * @param reinforcement what is laid
 * @param angle turns the roll direction from x (degrees)
 * @param turned whether it is laid other face down; the make-up is turned first, then the angle is added
 * @param layUp process, resin and dose
 * @param content the fibre content stated for this layer, empty for that of the workshop or the nominal one
 * @param stage the name of its stage, empty text for none
 */
public record ReinforcementLayer(
        Reinforcement reinforcement,
        double angle,
        boolean turned,
        LayUp layUp,
        Optional<FibreContent> content,
        String stage)
        implements Layer {

    /**
     * Checks the layer.
     *
     * @throws IllegalArgumentException if the angle is not finite, or the fibre content is more than the bed can hold
     */
    public ReinforcementLayer {
        Objects.requireNonNull(reinforcement, "reinforcement");
        Objects.requireNonNull(layUp, "layUp");
        Objects.requireNonNull(content, "content");
        Objects.requireNonNull(stage, "stage");
        if (!Double.isFinite(angle)) {
            throw new IllegalArgumentException("an angle must be finite, not " + angle);
        }
        if (content.isPresent()) {
            FibreBed.check(reinforcement, layUp.resin(), content.get());
        }
    }

    /**
     * A layer along x, right face down, in no named stage, at the usual fibre content.
     *
     * @param reinforcement what is laid
     * @param layUp process, resin and dose
     * @return the layer
     */
    public static ReinforcementLayer of(Reinforcement reinforcement, LayUp layUp) {
        return new ReinforcementLayer(reinforcement, 0, false, layUp, Optional.empty(), "");
    }

    /**
     * This layer with a stated fibre content.
     *
     * @param stated the content
     * @return the layer
     */
    public ReinforcementLayer with(FibreContent stated) {
        return new ReinforcementLayer(reinforcement, angle, turned, layUp, Optional.of(stated), stage);
    }

    /**
     * The plies as they lie in the part: turned if need be, and with the layer's angle added.
     *
     * @return the plies, first towards the mould
     */
    public List<FibrePly> plies() {
        List<FibrePly> asLaid = turned ? reinforcement.turnedPlies() : reinforcement.plies();
        List<FibrePly> plies = new ArrayList<>();
        for (FibrePly ply : asLaid) {
            plies.add(ply.withAngle(ply.angle() + angle));
        }
        return plies;
    }

    @Override
    public Optional<LayUp> laying() {
        return Optional.of(layUp);
    }

    @Override
    public String material() {
        return reinforcement.id();
    }
}
