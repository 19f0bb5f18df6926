package laminate.plan;

import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.estimate.ResinUse;
import laminate.process.Process;

/**
 * What is laid in one go, wet in wet, on all zones that take it.
 *
 * @param number its place in the plan, from 1
 * @param name its name: that of the schedule's stage, or what it is, with its part where a stage is laid in several
 * @param kind what is done in it
 * @param process the process
 * @param layers what is laid, in order
 * @param thickness thickest laminate or film of it in any zone (m)
 * @param dryTime time that the crew takes before resin is drawn in: laying dry, bedding cores and bagging (s)
 * @param wetTime time that the crew takes to use up the mixes, with mixing them (s); while one mix is drawn in the next is
 *     stirred, so that an infusion waits for its first alone
 * @param bagTime time that the crew takes to fit a bag over what is still wet (s), 0 without one
 * @param infusing what of the wet time goes on infusing, and what tells so; empty for a stage that is not infused
 * @param start when it starts
 * @param end when the last mix is used up and the bag, if any, is on
 * @param gelled when the last mix has gelled where it lies, empty where the gel time is not known
 * @param resins the resins it takes, with their mixes
 * @param bond what it is laid on; empty for the first on the mould
 * @param cautions what to mind in this stage
 */
public record Stage(
        int number,
        String name,
        Kind kind,
        Process process,
        List<StageLayer> layers,
        double thickness,
        double dryTime,
        double wetTime,
        double bagTime,
        Optional<InfusingTime> infusing,
        ClockTime start,
        ClockTime end,
        Optional<ClockTime> gelled,
        List<StageResin> resins,
        Optional<Bond> bond,
        List<Caution> cautions) {

    /** What is done in a stage. */
    public enum Kind {
        /** A coat at the mould face. */
        MOULD_COAT,
        /** Layers wetted out by hand, pressed under a bag or not. */
        LAMINATE,
        /** Cores bedded or pressed into wet resin. */
        CORE,
        /** Layers and cores laid dry and infused. */
        INFUSION,
        /** A coat on the inner face. */
        INNER_COAT;

        /**
         * Whether it is a coating.
         *
         * @return true for either coat
         */
        public boolean isCoat() {
            return this == MOULD_COAT || this == INNER_COAT;
        }
    }

    /** Copies the lists. */
    public Stage {
        layers = List.copyOf(layers);
        resins = List.copyOf(resins);
        cautions = List.copyOf(cautions);
    }

    /**
     * The mixes of all its resins, in the order they are made.
     *
     * @return the mixes
     */
    public List<Mix> mixes() {
        return resins.stream().flatMap(resin -> resin.mixes().stream()).toList();
    }

    /**
     * The resin that is drawn in, not the paste that cores are bedded in.
     *
     * @return it, empty for a stage that is not infused
     */
    public Optional<StageResin> drawn() {
        return drawn(kind, resins);
    }

    static Optional<StageResin> drawn(Kind kind, List<StageResin> resins) {
        return kind == Kind.INFUSION
                ? resins.stream().filter(resin -> !isBed(resin)).findFirst()
                : Optional.empty();
    }

    private static boolean isBed(StageResin resin) {
        return resin.use().equals(ResinUse.BONDING);
    }

    /**
     * Whether mixes could be made of every resin.
     *
     * @return true if each is used up in time
     */
    public boolean fits() {
        return resins.stream().allMatch(StageResin::fits);
    }
}
