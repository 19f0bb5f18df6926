package laminate.process;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import laminate.material.Figure;
import laminate.material.Status;
import laminate.unit.PriceBasis;

/**
 * How much of a consumable the work uses up.
 *
 * @param material the id of the consumable
 * @param amount how much, in {@code measure}, by the basis; with its source
 * @param measure the measure of the amount: kg, m², m, l or piece
 * @param basis what the amount is counted by
 */
public record ConsumableUse(String material, Figure amount, PriceBasis measure, Basis basis) {

    /** What the amount is counted by. */
    public enum Basis {
        /** By area laid by hand, bagged or infused: the zones' own area (per m²). */
        AREA("m²"),
        /** By mass of resin mixed (per kg). */
        RESIN("kg resin"),
        /** By length of trimmed edge (per m). */
        EDGE("m edge"),
        /** By moulding. */
        MOULDING("moulding");

        private final String word;

        Basis(String word) {
            this.word = word;
        }

        /**
         * The word in files.
         *
         * @return the word
         */
        public String word() {
            return word;
        }
    }

    private static final String SOURCE = "common practice, no source";

    private static final List<ConsumableUse> WETTING_OUT = List.of(
            use("acetone", 0.15, PriceBasis.LITRE, Basis.RESIN),
            use("mixing-pot", 0.7, PriceBasis.PIECE, Basis.RESIN),
            use("brush", 2, PriceBasis.PIECE, Basis.MOULDING),
            use("gloves", 4, PriceBasis.PIECE, Basis.MOULDING));

    private static final List<ConsumableUse> BAGGING = List.of(
            use("peel-ply", 1.15, PriceBasis.M2, Basis.AREA),
            use("release-film", 1.15, PriceBasis.M2, Basis.AREA),
            use("breather", 1.15, PriceBasis.M2, Basis.AREA),
            use("bag-film", 1.3, PriceBasis.M2, Basis.AREA),
            use("sealant-tape", 4, PriceBasis.M, Basis.AREA));

    /**
     * Checks the use.
     *
     * @throws IllegalArgumentException if the amount is below zero, or in a measure that is not one of the above
     */
    public ConsumableUse {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(basis, "basis");
        if (amount.value() < 0) {
            throw new IllegalArgumentException(
                    "the amount of " + material + " must not be below zero, not " + amount.value());
        }
        if (!measure.isMeasure()) {
            throw new IllegalArgumentException(
                    "the amount of " + material + " must be in kg, m², m, l or pieces, not in " + measure);
        }
    }

    /**
     * What a process uses up where the workshop states nothing.
     *
     * @param process the process
     * @return the uses
     */
    public static List<ConsumableUse> usual(Process process) {
        return switch (process) {
            case HAND_LAY_UP -> WETTING_OUT;
            case VACUUM_BAG ->
                Stream.concat(WETTING_OUT.stream(), BAGGING.stream()).toList();
            case INFUSION ->
                List.of(
                        use("gloves", 4, PriceBasis.PIECE, Basis.MOULDING),
                        use("peel-ply", 1.15, PriceBasis.M2, Basis.AREA),
                        use("flow-mesh", 1, PriceBasis.M2, Basis.AREA),
                        use("bag-film", 1.3, PriceBasis.M2, Basis.AREA),
                        use("sealant-tape", 4, PriceBasis.M, Basis.AREA),
                        use("spiral-tube", 1, PriceBasis.M, Basis.AREA),
                        use("feed-hose", 3, PriceBasis.M, Basis.MOULDING),
                        use("infusion-connector", 2, PriceBasis.PIECE, Basis.MOULDING));
        };
    }

    private static ConsumableUse use(String material, double amount, PriceBasis measure, Basis basis) {
        return new ConsumableUse(material, new Figure(amount, SOURCE, Status.COMMON_PRACTICE), measure, basis);
    }
}
