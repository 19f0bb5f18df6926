package laminate.plan;

import java.util.List;
import java.util.Optional;
import laminate.estimate.Caution;
import laminate.unit.Dimension;

/**
 * What the crew takes to the mould: a page for each stage.
 *
 * @param plan the plan it is made from
 * @param pages a page for each stage, in order
 */
public record JobSheet(MixPlan plan, List<Page> pages) {

    /** Copies the pages. */
    public JobSheet {
        pages = List.copyOf(pages);
    }

    /**
     * The sheets of a plan.
     *
     * @param plan the plan
     * @return a page for each stage
     */
    public static JobSheet of(MixPlan plan) {
        return new JobSheet(plan, plan.stages().stream().map(JobSheets::page).toList());
    }

    /**
     * The sheet of a stage.
     *
     * @param stage the stage
     * @param steps what to tick off, in order
     * @param readings what to write down
     * @param cautions what to mind, those of this stage first
     */
    public record Page(Stage stage, List<Step> steps, List<Reading> readings, List<Caution> cautions) {
        /** Copies the lists. */
        public Page {
            steps = List.copyOf(steps);
            readings = List.copyOf(readings);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * A step to tick off.
     *
     * @param action what is done
     * @param mix the mix that is weighed, for {@link Action#MIX}
     * @param layer what is laid or applied, for {@link Action#LAY}, {@link Action#LAY_DRY} and {@link Action#COAT}
     */
    public record Step(Action action, Optional<Mix> mix, Optional<StageLayer> layer) {}

    /** What is done in a step. */
    public enum Action {
        /** The surface is ground, or washed and abraded. */
        PREPARE_SURFACE("prepare the surface"),
        /** A mix is weighed and stirred. */
        MIX("weigh and mix"),
        /** A coat is applied. */
        COAT("apply"),
        /** A layer is laid and wetted out, or a core bedded. */
        LAY("lay"),
        /** A layer or core is laid dry. */
        LAY_DRY("lay dry"),
        /** The bag is fitted, and the vacuum drawn and checked. */
        BAG("fit the bag, draw the vacuum, check for leaks"),
        /** The resin is drawn in. */
        INFUSE("infuse"),
        /** The crew waits for the gel. */
        AWAIT_GEL("wait until it has gelled");

        private final String words;

        Action(String words) {
            this.words = words;
        }

        /**
         * What is done, in words.
         *
         * @return the words
         */
        public String words() {
            return words;
        }
    }

    /** What is written down in a stage. */
    public enum Reading {
        /** Air at the mould. */
        AIR_TEMPERATURE("air temperature", Optional.of(Dimension.TEMPERATURE)),
        /** Resin before it is mixed. */
        RESIN_TEMPERATURE("resin temperature", Optional.of(Dimension.TEMPERATURE)),
        /** Relative humidity. */
        HUMIDITY("relative humidity", Optional.of(Dimension.FRACTION)),
        /** Batch of the resin. */
        RESIN_BATCH("batch number of the resin", Optional.empty()),
        /** Batch of the catalyst or hardener. */
        AGENT_BATCH("batch number of catalyst or hardener", Optional.empty()),
        /** Batches of reinforcement and core. */
        REINFORCEMENT_BATCH("batch numbers of reinforcement and core", Optional.empty()),
        /** Reinforcement as cut. */
        DRY_MASS("mass of reinforcement laid", Optional.of(Dimension.MASS)),
        /** Resin used, pots weighed back. */
        RESIN_USED("resin used, left-overs taken off", Optional.of(Dimension.MASS)),
        /** Wet film of a coat. */
        FILM_THICKNESS("wet film", Optional.of(Dimension.LENGTH)),
        /** Thickness after the stage. */
        THICKNESS("thickness", Optional.of(Dimension.LENGTH)),
        /** Vacuum reached. */
        VACUUM("vacuum", Optional.of(Dimension.PRESSURE)),
        /** Pressure lost in the drop test. */
        PRESSURE_DROP("pressure lost in the drop test", Optional.of(Dimension.PRESSURE)),
        /** Clock at the start. */
        START("time started", Optional.empty()),
        /** Clock as the last mix is used up. */
        END("time ended", Optional.empty()),
        /** Clock as it gels. */
        GELLED("time gelled", Optional.empty()),
        /** Who did it. */
        INITIALS("initials", Optional.empty());

        private final String words;
        private final Optional<Dimension> dimension;

        Reading(String words, Optional<Dimension> dimension) {
            this.words = words;
            this.dimension = dimension;
        }

        /**
         * What is read, in words.
         *
         * @return the words
         */
        public String words() {
            return words;
        }

        /**
         * What it is measured in.
         *
         * @return the dimension; empty for a time of day, a number on a label or a name
         */
        public Optional<Dimension> dimension() {
            return dimension;
        }
    }
}
