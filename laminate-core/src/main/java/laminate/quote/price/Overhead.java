package laminate.quote.price;

import java.util.Objects;

/**
 * The costs of the yard that no single part causes, as a share of a base that is stated and used once.
 *
 * @param rate the share of the base
 * @param base what it is a share of; each with what rejects add to it
 */
public record Overhead(double rate, Base base) {

    /** What an overhead is a share of. */
    public enum Base {
        /** Labour, that of rejects included. */
        LABOUR("labour"),
        /** Materials, consumables, items and labour, those of rejects included. */
        DIRECT_COST("direct cost");

        private final String word;

        Base(String word) {
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

    /** No overhead. */
    public static final Overhead NONE = new Overhead(0, Base.LABOUR);

    /**
     * Checks the rate.
     *
     * @throws IllegalArgumentException if it is below zero or not finite
     */
    public Overhead {
        Objects.requireNonNull(base, "base");
        Shares.checkNotNegative("an overhead", rate);
    }
}
