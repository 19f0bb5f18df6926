package laminate.estimate;

import java.util.List;

/**
 * What the mouldings hold and what must be mixed and bought for them, for all mouldings.
 *
 * @param fibre dry reinforcement in the parts, laps included (kg)
 * @param core dry core and bulking mat in the parts (kg)
 * @param given plies that are given directly (kg)
 * @param resinInPart resin in the parts: in the layers, in the cores and in beds (kg)
 * @param coating coatings in the parts (kg)
 * @param items bought-in items (kg)
 * @param laps what of the fibre and resin lies in laps (kg)
 * @param trimmed what is trimmed off (kg)
 * @param resins resins to mix, by use
 * @param materials materials to buy
 * @param cuts the cutting list by layer
 */
public record Quantities(
        double fibre,
        double core,
        double given,
        double resinInPart,
        double coating,
        double items,
        double laps,
        double trimmed,
        List<ResinQuantity> resins,
        List<MaterialQuantity> materials,
        List<LayerCut> cuts) {

    /** Copies the lists. */
    public Quantities {
        resins = List.copyOf(resins);
        materials = List.copyOf(materials);
        cuts = List.copyOf(cuts);
    }

    /**
     * Mass of the finished parts with their items.
     *
     * @return fibre + core + given plies + resin + coatings + items (kg)
     */
    public double mass() {
        return fibre + core + given + resinInPart + coating + items;
    }

    /**
     * Resin component to mix, coatings left out.
     *
     * @return resin (kg)
     */
    public double resinToMix() {
        double sum = 0;
        for (ResinQuantity resin : resins) {
            sum += resin.use().isCoating() ? 0 : resin.toMix();
        }
        return sum;
    }

    /**
     * Catalyst and hardener, coatings left out.
     *
     * @return agents (kg)
     */
    public double agent() {
        double sum = 0;
        for (ResinQuantity resin : resins) {
            sum += resin.use().isCoating() ? 0 : resin.agent();
        }
        return sum;
    }

    /**
     * Catalyst and hardener by volume, coatings left out.
     *
     * @return agents (m³)
     */
    public double agentVolume() {
        double sum = 0;
        for (ResinQuantity resin : resins) {
            sum += resin.use().isCoating() ? 0 : resin.agentVolume();
        }
        return sum;
    }
}
