package laminate.order.pieces;

import java.util.OptionalDouble;
import laminate.estimate.LaidLayer;
import laminate.material.Core;
import laminate.material.FibrePly;
import laminate.material.Form;
import laminate.material.Material;
import laminate.material.Property;
import laminate.material.Reinforcement;
import laminate.order.cut.Turn;
import laminate.part.BulkerLayer;
import laminate.part.CoreLayer;
import laminate.part.LaminaLayer;
import laminate.part.Layer;
import laminate.part.ReinforcementLayer;

/**
 * What is cut for a layer.
 *
 * @param material the material
 * @param thickness thickness of a sheet of core (m)
 * @param massPerArea dry mass (kg/m²)
 * @param angle how its warp lies (degrees)
 * @param turn how it may be turned
 */
record Fabric(Material material, OptionalDouble thickness, double massPerArea, double angle, Turn turn) {

    /**
     * What is cut for a layer.
     *
     * @throws IllegalArgumentException for plies given directly, which nothing is cut for
     */
    static Fabric of(LaidLayer laid) {
        Layer layer = laid.layer();
        double mass = laid.fibreMass() + laid.coreMass();
        if (layer instanceof ReinforcementLayer fabric) {
            Turn turn = turn(fabric.reinforcement());
            return new Fabric(fabric.reinforcement(), OptionalDouble.empty(), mass, fabric.angle(), turn);
        }
        if (layer instanceof CoreLayer core) {
            return new Fabric(core.core(), OptionalDouble.of(core.thickness()), mass, core.angle(), turn(core.core()));
        }
        if (layer instanceof BulkerLayer bulker) {
            return new Fabric(bulker.bulker(), OptionalDouble.empty(), mass, 0, Turn.QUARTER);
        }
        throw new IllegalArgumentException("nothing is cut for " + ((LaminaLayer) layer).material());
    }

    /** A fabric is the same when turned by a quarter if each of its plies is: random, or woven alike both ways. */
    private static Turn turn(Reinforcement reinforcement) {
        for (FibrePly ply : reinforcement.plies()) {
            boolean isBalanced = ply.form().architecture() == Form.Architecture.RANDOM
                    || ply.form().architecture() == Form.Architecture.WOVEN && ply.warpShare() == 0.5;
            if (!isBalanced) {
                return Turn.NONE;
            }
        }
        return Turn.QUARTER;
    }

    private static Turn turn(Core core) {
        return core.figures().value(Property.E1) == core.figures().value(Property.E2)
                        && core.figures().value(Property.G13) == core.figures().value(Property.G23)
                ? Turn.QUARTER
                : Turn.NONE;
    }

    /** Whether all directions of its plane are alike, so that its angle says nothing. */
    boolean isRandom() {
        return !(material instanceof Reinforcement fabric)
                ? turn == Turn.QUARTER
                : fabric.plies().stream().allMatch(ply -> ply.form().architecture() == Form.Architecture.RANDOM);
    }

    /** Laps at seams: cores and bulking mat butt. */
    boolean isLapped() {
        return material instanceof Reinforcement;
    }
}
