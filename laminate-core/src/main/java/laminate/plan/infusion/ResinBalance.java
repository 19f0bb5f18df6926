package laminate.plan.infusion;

import java.util.List;
import java.util.Objects;
import laminate.estimate.ResinUse;

/**
 * Where the infused resin of one moulding goes: as the estimate reckons it from the workshop's losses, and as the plans of
 * the infusions say. Mixed is the sum over the places, none of which is counted twice.
 *
 * @param use the resin and what it is mixed for
 * @param shares every place, in the order of {@link Place}
 * @param remarks where plan and losses differ, and what to write so that the estimate agrees
 */
public record ResinBalance(ResinUse use, List<Share> shares, List<String> remarks) {

    /** Where resin goes. */
    public enum Place {
        /** In the laminate and at the faces of cores. */
        LAMINATE("laminate"),
        /** In grooves, holes and kerfs of cores; in the part too. */
        CORE_OPENINGS("core grooves"),
        /** In the margin that is cut off. */
        TRIMMED("trimmed off"),
        /** In peel ply, release film and breather. */
        BAG("peel ply and bag"),
        /** In the flow mesh. */
        MESH("flow mesh"),
        /** In hoses and spiral tubes. */
        LINES("hoses and spiral tube"),
        /** Left in the feed bucket. */
        BUCKET("feed bucket"),
        /** Run over into the catch pot. */
        CATCH_POT("catch pot"),
        /** Gone to the air. */
        EVAPORATED("evaporated");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        /**
         * The words in print.
         *
         * @return the words
         */
        public String word() {
            return word;
        }
    }

    /**
     * What goes to one place.
     *
     * @param place the place
     * @param estimated as the estimate reckons it (kg)
     * @param planned as the plans say, the estimate's where they say nothing (kg)
     */
    public record Share(Place place, double estimated, double planned) {
        /** Checks that nothing is missing. */
        public Share {
            Objects.requireNonNull(place, "place");
        }
    }

    /** Copies the lists. */
    public ResinBalance {
        Objects.requireNonNull(use, "use");
        shares = List.copyOf(shares);
        remarks = List.copyOf(remarks);
    }

    /**
     * All that is mixed for one moulding by the estimate.
     *
     * @return resin with its hardener (kg)
     */
    public double estimated() {
        return shares.stream().mapToDouble(Share::estimated).sum();
    }

    /**
     * All that is mixed for one moulding by the plans.
     *
     * @return resin with its hardener (kg)
     */
    public double planned() {
        return shares.stream().mapToDouble(Share::planned).sum();
    }

    /**
     * What goes to a place.
     *
     * @param place the place
     * @return its share
     */
    public Share at(Place place) {
        return shares.get(place.ordinal());
    }
}
